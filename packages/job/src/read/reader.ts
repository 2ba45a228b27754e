import { error, type Finding, type Spot, type Values } from './finding.ts'

/** A text that is being read for its tree, from `at` on. */
export interface Reader {
  readonly text: string
  at: number
  readonly faults: Finding[]
  /** The brackets that are open and the character that closes each. */
  readonly open: { readonly start: number; readonly closes: string }[]
}

// A file that is no JSON at all has a fault at every character; these many say it. Behind a nesting that is too deep nothing is read.
const mostFaults = 100

export function fault(reader: Reader, code: string, from: number, to: number, values: Values = {}, other?: Spot): void {
  if (reader.faults.length < mostFaults && reader.faults.at(-1)?.code !== 'job/too-deep')
    reader.faults.push(error(code, { from, to }, values, other))
}

/** What matches a sticky pattern here; empty when nothing does. */
export function see(reader: Reader, pattern: RegExp): string {
  pattern.lastIndex = reader.at
  return pattern.exec(reader.text)?.[0] ?? ''
}

/** What matches here, and moves behind it. */
export function take(reader: Reader, pattern: RegExp): string {
  const found = see(reader, pattern)
  reader.at += found.length
  return found
}

/** The character here; empty at the end of the text. */
export const here = (reader: Reader): string =>
  reader.at < reader.text.length ? String.fromCodePoint(reader.text.codePointAt(reader.at) ?? 0) : ''

/** How a character is named: `U+00A0`. */
export const codeOf = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`

const space = /[ \t\r\n]+/y
const comment = /\/\/[^\r\n]*|\/\*[\s\S]*?(?:\*\/|$)/y
const otherSpace = /[\v\f\u0085\u00a0\u1680\u2000-\u200b\u2028\u2029\u202f\u205f\u3000\ufeff]+/y

/** Moves over spaces, and over what is taken for one but is none. */
export function skip(reader: Reader): void {
  for (let from = -1; from !== reader.at; ) {
    from = reader.at
    take(reader, space)
    const note = take(reader, comment)
    if (note !== '') fault(reader, 'job/comment', reader.at - note.length, reader.at)
    const odd = take(reader, otherSpace)
    if (odd !== '') fault(reader, 'job/space', reader.at - odd.length, reader.at, { got: codeOf(odd) })
  }
}
