import { tapes } from '@evenhem/length'
import { createSay } from '@evenhem/planner/say'
import type { Values, Words } from '@evenhem/plugin'
import { type CliCode, english } from './words.ts'
import { spanish } from './words-es.ts'

export const languages = ['en', 'es'] as const
export type Language = (typeof languages)[number]

/** What a sentence is filled with: text, a count, or another sentence. */
export type Fillings = Readonly<Record<string, string | number | Phrase>>
export interface Phrase {
  readonly code: CliCode
  readonly values?: Fillings
}
/** Says a sentence of the command line. */
export type Voice = (code: CliCode, values?: Fillings) => string

export const tables: Readonly<Record<Language, Readonly<Record<CliCode, string>>>> = { en: english, es: spanish }
const wordsOf = (table: Readonly<Record<string, string>>): Words =>
  Object.fromEntries(Object.entries(table).map(([code, says]) => [code, { says }]))

export function voiceIn(language: Language): Voice {
  const words = { [language]: wordsOf(tables[language]) }
  // No sentence of its own holds a length, so that any tape does.
  const { say } = createSay({ words: [words], language, tape: tapes.sixteenths })
  const filled = (value: string | number | Phrase): Values[string] =>
    typeof value === 'string' ? value : typeof value === 'number' ? { count: value } : voice(value.code, value.values)
  const voice: Voice = (code, values = {}) =>
    say(code, Object.fromEntries(Object.entries(values).map(([name, value]) => [name, filled(value)])))
  return voice
}

/** Which language a command line asks for, before anything else about it is known; English when it does not say. */
export function languageIn(words: readonly string[]): Language {
  const at = words.lastIndexOf('--lang')
  const given = at >= 0 ? words[at + 1] : words.findLast((word) => word.startsWith('--lang='))?.slice('--lang='.length)
  return languages.find((each) => each === given) ?? 'en'
}
