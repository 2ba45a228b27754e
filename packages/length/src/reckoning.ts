import type { Length } from './length.ts'

/** Where a value stands: a place in the job (`/rooms/…`), another reckoning (`/rooms/…#name`), a default of the trade (`trade:name`) or a plain number (`number:2`). */
export type From = string

/** A value that knows where it stands. A reckoning is one too, under its own name. */
export interface Known<T extends number = number> { readonly value: T; readonly from: From }

/** One line of a reckoning. `value` is as held at `from`, never negated; `sign` says how it enters a sum. */
export interface Term { readonly what: string; readonly sign: 1 | -1; readonly value: number; readonly from: From }

export type How = 'given' | 'sum' | 'times' | 'divided' | 'least' | 'most' | 'formula'
export type Unit = 'length' | 'count' | 'ratio' | 'mass' | 'force' | 'angle'

/** A number with its working, flat: a term's `from` is opened by name. Lengths are whole nanometres. */
export interface Reckoning {
  /** Unique in a job: the place of the subject, `#`, and what it is: `/rooms/den/windows/w1/treatments/over#top-of-rod`. */
  readonly name: string
  readonly what: string
  readonly value: number
  readonly unit: Unit
  readonly how: How
  readonly terms: readonly Term[]
  /** The code of the formula, whose words say how it works and where it is published, when it is. */
  readonly source?: string
}

/** A reckoning whose value is a length. */
export interface LengthReckoning extends Reckoning { readonly value: Length; readonly unit: 'length' }

const fromOf = (known: Known | Reckoning): From => ('name' in known ? known.name : known.from)

/** A term that adds. `what` is a code of words. */
export const plus = (what: string, known: Known | Reckoning): Term => ({ what, sign: 1, value: known.value, from: fromOf(known) })
/** A term that takes away. */
export const minus = (what: string, known: Known | Reckoning): Term => ({ what, sign: -1, value: known.value, from: fromOf(known) })

/** A plain number as a term of a product or a quotient. */
export const number = (value: number): Known<number> => ({ value, from: `number:${value}` })

/** What a reckoning's terms come to by its `how`, products and quotients to the nanometre (or the whole count); undefined for `formula`, whose working is in words. */
export function comesTo(how: How, terms: readonly Term[]): number | undefined {
  const signed = terms.map((term) => term.sign * term.value)
  switch (how) {
    case 'given': return signed.length === 1 ? signed[0] : undefined
    case 'sum': return signed.reduce((total, value) => total + value, 0)
    case 'times': return Math.round(signed.reduce((total, value) => total * value, 1))
    case 'divided': return Math.round((signed[0] ?? 0) / signed.slice(1).reduce((total, value) => total * value, 1))
    case 'least': return Math.min(...signed)
    case 'most': return Math.max(...signed)
    case 'formula': return undefined
  }
}

const lengths = (how: 'sum' | 'times' | 'divided' | 'least' | 'most' | 'given') => (name: string, what: string, ...terms: readonly Term[]): LengthReckoning =>
  ({ name, what, value: comesTo(how, terms) as Length, unit: 'length', how, terms })

/** A length that is the sum of its terms. */
export const sum = lengths('sum')
/** A length that is the product of a length and plain numbers. */
export const times = lengths('times')
/** A length shared out: the first term divided by the others. */
export const divided = lengths('divided')
/** The smallest of its terms; at least one. */
export const least = lengths('least')
/** The largest of its terms; at least one. */
export const most = lengths('most')
/** A length taken over unchanged from one place. */
export const given = lengths('given')
/** A count that is the sum of its terms. */
export const count = (name: string, what: string, ...terms: readonly Term[]): Reckoning =>
  ({ name, what, value: comesTo('sum', terms) as number, unit: 'count', how: 'sum', terms })
/** A length worked out in another way; `value` is rounded to the nanometre here, `source` names the formula. */
export const formula = (name: string, what: string, value: number, source: string, ...terms: readonly Term[]): LengthReckoning =>
  ({ name, what, value: Math.round(value) as Length, unit: 'length', how: 'formula', terms, source })
