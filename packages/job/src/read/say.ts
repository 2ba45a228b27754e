import { lengthWords, spanishLengthWords } from '@evenhem/length'
import type { Severity, Values } from './finding.ts'
import { jobWords } from './words.ts'
import { spanishJobWords } from './words-es.ts'

/** A sentence, and what else helps. */
export interface Said {
  readonly says: string
  readonly help?: string
}
/** Says a code. Values from a job are put in as they are. */
export type Say = (code: string, values: Values) => Said

type Words = Readonly<Record<string, Said>>
const english: Words = { ...lengthWords, ...jobWords }
const spanish: Words = { ...spanishLengthWords, ...spanishJobWords }
const fill = (sentence: string, values: Values): string =>
  sentence.replaceAll(/\{(\w+)\}/g, (gap, name: string) => (Object.hasOwn(values, name) ? String(values[name]) : gap))

/** The sentences have no plurals, so filling their gaps is enough. A code without words says itself. */
const sayIn =
  (words: Words): Say =>
  (code, values) => {
    const said = Object.hasOwn(words, code) ? words[code] : undefined
    return { says: fill(said?.says ?? code, values), ...(said?.help && { help: fill(said.help, values) }) }
  }

/** Says a code of a job file in English. */
export const sayEnglish = sayIn(english)
/** Says a code of a job file in Spanish. */
export const saySpanish = sayIn(spanish)

/** What stands before a sentence: how grave it is, or that it helps. */
export type Labels = Readonly<Record<Severity | 'help', string>>
export const englishLabels: Labels = { error: 'error', warning: 'warning', info: 'info', help: 'help' }
export const spanishLabels: Labels = { error: 'error', warning: 'advertencia', info: 'nota', help: 'ayuda' }
