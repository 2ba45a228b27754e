import { lengthWords, spanishLengthWords } from '@evenhem/length'
import { sayIn } from '../say-words.ts'
import type { Severity } from './finding.ts'
import { jobWords } from './words.ts'
import { spanishJobWords } from './words-es.ts'

export type { Said, Say } from '../say-words.ts'

/** Says a code of a job file in English. */
export const sayEnglish = sayIn({ ...lengthWords, ...jobWords })
/** Says a code of a job file in Spanish. */
export const saySpanish = sayIn({ ...spanishLengthWords, ...spanishJobWords })

/** What stands before a sentence: how grave it is, or that it helps. */
export type Labels = Readonly<Record<Severity | 'help', string>>
export const englishLabels: Labels = { error: 'error', warning: 'warning', info: 'info', help: 'help' }
export const spanishLabels: Labels = { error: 'error', warning: 'advertencia', info: 'nota', help: 'ayuda' }
