import { lengthWords } from '@evenhem/length'
import type { Values } from './finding.ts'
import { jobWords } from './words.ts'

/** A sentence, and what else helps. */
export interface Said {
  readonly says: string
  readonly help?: string
}
/** Says a code. Values from a job are put in as they are. */
export type Say = (code: string, values: Values) => Said

const words: Readonly<Record<string, Said>> = { ...lengthWords, ...jobWords }
const fill = (sentence: string, values: Values): string =>
  sentence.replaceAll(/\{(\w+)\}/g, (gap, name: string) => (Object.hasOwn(values, name) ? String(values[name]) : gap))

/** Says a code of a job file in English. The sentences have no plurals, so filling their gaps is enough. A code without words says itself. */
export const sayEnglish: Say = (code, values) => {
  const said = Object.hasOwn(words, code) ? words[code] : undefined
  return { says: fill(said?.says ?? code, values), ...(said?.help && { help: fill(said.help, values) }) }
}
