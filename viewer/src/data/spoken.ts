import { type Length, spokenLength } from '@evenhem/length'
import { language } from '../words.ts'
import type { Amount } from './amount.ts'

/** A number as a screen reader should say it: “93 and one eighth inches”; a bare number as it is written. */
export const spoken = (amount: Amount): string =>
  amount.unit === 'none' ? amount.text : spokenLength({ ...amount, unit: amount.unit, off: 0 as Length }, language)
