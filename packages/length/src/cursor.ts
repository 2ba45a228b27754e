/** A place in a text that is being read, moved on by `take`. */
export interface Cursor {
  readonly text: string
  at: number
}

/** Spaces that people and word processors put into a number: space, tab, no-break, thin, hair, figure and their like. */
export const gap = '[ \\t\\u00a0\\u2000-\\u200a\\u202f\\u205f]'
/** The slash, the fraction slash and the division slash. */
export const slash = '[/\\u2044\\u2215]'
/** Hyphen-minus, hyphen, no-break hyphen, en dash: what joins `86-1/2` and `7'-2"`. The minus sign U+2212 does not. */
export const hyphen = '[-\\u2010\\u2011\\u2013]'

/** A pattern that matches at the cursor only. */
export const pattern = (source: string): RegExp => new RegExp(source, 'iy')

/** What stands at the cursor; the cursor stays. Null at the end of the text: no pattern is for nothing. */
export function see(cursor: Cursor, what: RegExp): RegExpExecArray | null {
  if (cursor.at >= cursor.text.length) return null
  what.lastIndex = cursor.at
  return what.exec(cursor.text)
}

/** What stands at the cursor, which moves behind it; null and no move when the pattern does not match. */
export function take(cursor: Cursor, what: RegExp): RegExpExecArray | null {
  const found = see(cursor, what)
  if (found) cursor.at = what.lastIndex
  return found
}

const gaps = pattern(`${gap}+`)
/** Moves over spaces; says whether the text ends there. */
export function atEnd(cursor: Cursor): boolean {
  take(cursor, gaps)
  return cursor.at >= cursor.text.length
}
