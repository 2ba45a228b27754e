import type { ReadingUnit } from '@evenhem/length'
import { en } from './words/en.ts'
import { es } from './words/es.ts'

/** The same keys with any text: a key that a language lacks, or has too much, does not compile. */
export type Texts<T> = { readonly [K in keyof T]: T[K] extends string ? string : Texts<T[K]> }
/** All that the viewer says by itself. */
export type Words = Texts<typeof en>
/** A language that the viewer speaks. */
export type Language = 'en' | 'es'

export const tables: Readonly<Record<Language, Words>> = { en, es }
export const languages = Object.keys(tables) as readonly Language[]

/** The words of the language that the reader chose. A live binding: whoever draws reads it anew. */
export let words: Words = en
/** The language that the reader chose. */
export let language: Language = 'en'
/** Told when the language changes. */
export const languageChange = new EventTarget()

/** From now on the viewer speaks this language. */
export function speak(chosen: Language): void {
  words = tables[chosen]
  language = chosen
  languageChange.dispatchEvent(new Event('change'))
}

/** The first letter of a sentence or a title, large. */
export const capital = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1)

/** Puts values into the holes of a sentence: `fill('step {n}', { n: 7 })`. */
export const fill = (sentence: string, values: Readonly<Record<string, string | number>>): string =>
  sentence.replaceAll(/\{(\w+)\}/g, (hole, name: string) => String(values[name] ?? hole))

/** `one` when there is one, else `many` with its number. */
export const counted = (n: number, one: string, many: string): string => (n === 1 ? one : fill(many, { n }))

/** What the unit control says. Metric of an order in inches is rounded, and says so. */
export const unitNames = (unit: ReadingUnit, ordered: 'in' | 'mm' | 'cm'): string => {
  if (unit === 'in') return 'in 1/16'
  if (unit === 'ft-in') return 'ft-in'
  return ordered === 'in' ? fill(words.metricRounded, { unit }) : unit
}
