import { columns, harmless as shown, visible } from './width.ts'

/** A line of a text with marks under a part of it. */
export interface Excerpt {
  readonly line: string
  readonly marks: string
}

const most = 100
const ahead = 30
// Only so much of a line is looked at: a compact job file is one line of megabytes.
const enough = 4 * most

/** A part of a line that is at most 100 columns wide, from 30 columns before `from` on when it is long, and carets under `from` up to `to`. Offsets in UTF-16 code units. */
export function excerpt(line: string, from: number, to: number): Excerpt {
  const start = line.length <= enough && columns(shown(line)) <= most ? 0 : back(line, from)
  const before = (start > 0 ? '…' : '') + shown(line.slice(start, from))
  const part = cut(shown(line.slice(from, Math.max(from, Math.min(to, from + enough)))), most - columns(before))
  const after = cut(shown(line.slice(Math.max(to, from), Math.max(to, from) + enough)), most - columns(before + part))
  return { line: before + part + after, marks: ' '.repeat(columns(before)) + '^'.repeat(Math.max(1, columns(part))) }
}

/** The offset some columns before another one, at the beginning of a character. */
function back(line: string, from: number): number {
  const before = [...line.slice(Math.max(0, from - 4 * ahead), from)].reverse()
  return from - fitting(before, ahead).join('').length
}

/** A text cut to a number of columns; the last of them says that it was cut. */
function cut(text: string, width: number): string {
  if (columns(text) <= width) return text
  if (width < 1) return ''
  return `${fitting([...text], width - 1).join('')}…`
}

/** As many characters as fit into a number of columns. */
function fitting(characters: readonly string[], width: number): readonly string[] {
  let left = width
  const end = characters.findIndex((character) => {
    left -= columns(visible(character))
    return left < 0
  })
  return end < 0 ? characters : characters.slice(0, end)
}
