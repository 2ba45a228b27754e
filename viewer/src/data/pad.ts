import { inch, type Length, millimetre, readLength } from '@evenhem/length'
import type { Form } from './form.ts'
import { rawLength } from './raw.ts'

/** What has been keyed in so far: on the pad a whole number and a fraction, or text from a keyboard. */
export interface Keyed {
  readonly unit: 'in' | 'mm' | 'count'
  readonly negative: boolean
  readonly whole: string
  /** Sixteenths of an inch, or tenths of a millimetre. */
  readonly parts: number
  /** Typed on a keyboard: counts instead of the others while it is there. */
  readonly typed: string
}
export const nothingKeyed = (unit: Keyed['unit']): Keyed => ({ unit, negative: false, whole: '', parts: 0, typed: '' })

/** What is keyed as a value, and how it is written into the log; `none` while there is nothing, a code while it cannot be read. */
export type KeyedValue =
  | { readonly is: 'none' }
  | { readonly is: 'value'; readonly read: number; readonly raw: string | number }
  | { readonly is: 'wrong'; readonly code: string; readonly values: Readonly<Record<string, string>> }

const value = (read: number, raw: string | number): KeyedValue => ({ is: 'value', read, raw })

export function keyedValue(keyed: Keyed): KeyedValue {
  if (keyed.typed.trim() !== '') return typedValue(keyed)
  const { unit, whole, parts, negative } = keyed
  if (whole === '' && parts === 0) return { is: 'none' }
  const sign = negative ? -1 : 1
  const size = Number(whole || '0')
  if (unit === 'count') return value(sign * size, sign * size)
  const length = (sign *
    (unit === 'in' ? size * inch + parts * (inch / 16) : size * millimetre + parts * (millimetre / 10))) as Length
  return value(length === 0 ? 0 : length, unit === 'in' ? rawLength(length) : `${length / millimetre} mm`)
}

function typedValue({ typed, unit }: Keyed): KeyedValue {
  if (unit === 'count')
    return /^\d{1,9}$/.test(typed.trim())
      ? value(Number(typed), Number(typed))
      : { is: 'wrong', code: 'pad/no-count', values: { got: typed.trim() } }
  const read = readLength(typed.trim(), unit)
  if (!read.ok) return { is: 'wrong', code: read.problem.code, values: { ...read.problem.values } }
  return value(read.value, /mm|cm|m\b/i.test(typed) || unit === 'mm' ? `${read.value / millimetre} mm` : rawLength(read.value))
}

const mostDigits = 7

/** One more digit; after a fraction a new number begins. */
export const withDigit = (keyed: Keyed, digit: string): Keyed =>
  keyed.parts > 0
    ? { ...nothingKeyed(keyed.unit), negative: keyed.negative, whole: digit }
    : { ...keyed, typed: '', whole: `${keyed.whole === '0' ? '' : keyed.whole}${digit}`.slice(0, mostDigits) }
export const withParts = (keyed: Keyed, parts: number): Keyed => ({ ...keyed, typed: '', parts })
/** One more character from a keyboard. */
export const typedMore = (keyed: Keyed, character: string): Keyed => ({
  ...keyed,
  typed: (keyed.typed || keyed.whole) + character,
})
export const turned = (keyed: Keyed): Keyed => ({ ...keyed, negative: !keyed.negative })
export const shorter = (keyed: Keyed): Keyed => {
  if (keyed.typed !== '') return { ...keyed, typed: keyed.typed.slice(0, -1) }
  return keyed.parts > 0 ? { ...keyed, parts: 0 } : { ...keyed, whole: keyed.whole.slice(0, -1) }
}
/** The same length in the other unit, as near as its pad can show. */
export function inUnit(keyed: Keyed, unit: 'in' | 'mm'): Keyed {
  const now = keyedValue(keyed)
  return now.is === 'value' ? keyedOf(now.read, unit) : nothingKeyed(unit)
}
/** A value as it would have been keyed in. */
export function keyedOf(read: number, unit: Keyed['unit']): Keyed {
  const negative = read < 0
  if (unit === 'count') return { ...nothingKeyed(unit), negative, whole: String(Math.abs(read)) }
  const step = unit === 'in' ? inch / 16 : millimetre / 10
  const steps = Math.round(Math.abs(read) / step)
  const many = unit === 'in' ? 16 : 10
  return { unit, negative, whole: String(Math.floor(steps / many)), parts: steps % many, typed: '' }
}

/** A value that is plausible at its place; else the end that it passes. */
export function outside(form: Form, read: number): { readonly end: 'least' | 'most'; readonly limit: number } | undefined {
  if (!('least' in form) && !('most' in form)) return undefined
  const { least, most } = form as { readonly least?: number; readonly most?: number }
  if (least !== undefined && read < least) return { end: 'least', limit: least }
  return most !== undefined && read > most ? { end: 'most', limit: most } : undefined
}
