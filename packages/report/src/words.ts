import type { Words } from '@evenhem/plugin'
import { en } from './words.en.ts'
import { es } from './words.es.ts'

/** What the report itself says. Everything about a window comes from the plan, in the words of the plugins that planned it. */
export const words: Readonly<Record<ReportLanguage, Words>> = { en, es }

/** Languages that the report itself speaks. Codes without words in one of them are said in English. */
export const reportLanguages = ['en', 'es'] as const
export type ReportLanguage = (typeof reportLanguages)[number]
