import { sayIn } from '@evenhem/job'
import { englishLabels, type Labels, type Say, sayEnglish, saySpanish, spanishLabels } from '@evenhem/job/read'
import { tapes } from '@evenhem/length'
import { createSay } from '@evenhem/planner/say'
import type { Values, Words } from '@evenhem/plugin'
import { logWords, spanishLogWords } from '@evenhem/site-log'
import { type CliCode, english } from './words.ts'
import { spanish } from './words-es.ts'

export const languages = ['en', 'es'] as const
export type Language = (typeof languages)[number]

/** What a sentence is filled with: text, a count, another sentence, or one of the reader's. */
export type Filling = string | number | Phrase | Refusal
export type Fillings = Readonly<Record<string, Filling>>
export interface Phrase {
  readonly code: CliCode
  readonly values?: Fillings
}
/** Why the reader of job files refused something. */
export interface Refusal {
  readonly refused: string
  readonly values: Parameters<Say>[1]
}
/** Says a sentence of the command line. */
export type Voice = (code: CliCode, values?: Fillings) => string

/** How the readers of job files and logs say what they found. */
export const reader: Readonly<Record<Language, { readonly say: Say; readonly labels: Labels }>> = {
  en: { say: both(sayEnglish, sayIn(logWords)), labels: englishLabels },
  es: { say: both(saySpanish, sayIn(spanishLogWords)), labels: spanishLabels },
}
function both(ofJob: Say, ofLog: Say): Say {
  return (code, values) => (code.startsWith('log/') ? ofLog : ofJob)(code, values)
}

export const tables: Readonly<Record<Language, Readonly<Record<CliCode, string>>>> = { en: english, es: spanish }
const wordsOf = (table: Readonly<Record<string, string>>): Words =>
  Object.fromEntries(Object.entries(table).map(([code, says]) => [code, { says }]))

export function voiceIn(language: Language): Voice {
  const words = { [language]: wordsOf(tables[language]) }
  // No sentence of its own holds a length, so that any tape does.
  const { say } = createSay({ words: [words], language, tape: tapes.sixteenths })
  const filled = (value: Filling): Values[string] => {
    if (typeof value === 'string') return value
    if (typeof value === 'number') return { count: value }
    return 'code' in value ? voice(value.code, value.values) : reader[language].say(value.refused, value.values).says
  }
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
