import { type Length, spokenLength } from '@evenhem/length'
import { fill, language, words } from '../words.ts'
import type { Amount } from './amount.ts'

/** A number as a screen reader should say it: “93 and one eighth inches”, “about 2286 millimetres”; a bare number as it is written. */
export function spoken(amount: Amount): string {
  const number = amount.unit === 'none' ? amount.text : spokenLength({ ...amount, unit: amount.unit, off: 0 as Length }, language)
  return (amount.off ?? 0) === 0 ? number : fill(words.about, { number })
}
