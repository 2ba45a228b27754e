import { canSet } from './faces.ts'

/** Makes text fit the fonts of a document, and keeps what they lack. */
export interface Letterer {
  readonly lost: ReadonlySet<string>
  /** Text of a picture. */
  readonly picture: (text: string) => string
  /** A member of the document's data, as `JSON.stringify` hands it on. */
  readonly member: (name: string, value: unknown) => unknown
}

/** Members that are names in the document or are not set in lines. */
const asItIs: ReadonlySet<string> = new Set(['id', 'to', 'file', 'hash', 'alternative', 'title'])
/** As long as a word gets in any language that a report is written in. What is longer may be broken after a sign or this many letters. */
const longWord = /\S{29,}/g
const breakable = (text: string): string => text.replace(longWord, (word) => word.replace(/[-/.@_,]|[^-/.@_,]{28}/gu, '$&\u200b'))

export function letterer(): Letterer {
  const lost = new Set<string>()
  const set = (text: string): string =>
    text.replace(/[^\u0020-\u007e]/gu, (letter) => {
      if (letter === '\n') return letter
      if (/\s/.test(letter) && letter !== '\u00a0') return ' '
      if (canSet(letter.codePointAt(0) as number)) return letter
      lost.add(letter)
      return '?'
    })
  return {
    lost,
    picture: set,
    member: (name, value) => (typeof value !== 'string' ? value : asItIs.has(name) ? set(value) : breakable(set(value))),
  }
}
