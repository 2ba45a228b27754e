import type { Words } from '@evenhem/plugin'
import { checkWords } from './words-checks.ts'
import { checkWords as comprobaciones } from './words-checks-es.ts'
import { stepWords } from './words-steps.ts'
import { stepWords as pasos } from './words-steps-es.ts'

const en = { ...stepWords, ...checkWords } satisfies Words
const es: Readonly<Record<keyof typeof en, Words[string]>> = { ...pasos, ...comprobaciones }
export const words: Readonly<Record<string, Words>> = { en, es }
