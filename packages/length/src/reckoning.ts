import { twelveDigits } from './digits.ts'
import { type Length, wholeNanometres } from './length.ts'

/** Where a value stands: a place in the job (`/rooms/…`), another reckoning (`/rooms/…#name`), a default of the trade (`trade:name`) or a plain number (`number:2`). */
export type From = string

/** A value that knows where it stands. A reckoning is one too, under its own name. */
export interface Known<T extends number = number> {
  readonly value: T
  readonly from: From
}

/** One line of a reckoning. `value` is as held at `from`, never negated; `sign` says how it enters a sum. */
export interface Term {
  readonly what: string
  readonly sign: 1 | -1
  readonly value: number
  readonly from: From
}

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
export interface LengthReckoning extends Reckoning {
  readonly value: Length
  readonly unit: 'length'
}

const fromOf = (known: Known | Reckoning): From => ('name' in known ? known.name : known.from)

/** A term that adds. `what` is a code of words. */
export const plus = (what: string, known: Known | Reckoning): Term => ({ what, sign: 1, value: known.value, from: fromOf(known) })
/** A term that takes away. */
export const minus = (what: string, known: Known | Reckoning): Term => ({
  what,
  sign: -1,
  value: known.value,
  from: fromOf(known),
})

/** A reckoned length as a value that stands under the reckoning's name. */
export const known = ({ value, name }: LengthReckoning): Known<Length> => ({ value, from: name })

/** A plain number as a term of a product or a quotient. */
export const number = (value: number): Known<number> => ({ value, from: `number:${value}` })

/**
 * What a reckoning's terms come to by its `how`: lengths to the nanometre, counts to the whole, all else to twelve digits.
 * Undefined when they come to nothing: for `formula`, whose working is in words, and for terms that `how` can do nothing with.
 */
export function comesTo(how: How, terms: readonly Term[], unit: Unit = 'length'): number | undefined {
  const [first, ...others] = terms.map((term) => term.sign * term.value)
  if (first === undefined) return how === 'sum' ? 0 : undefined
  const found = combined(how, first, others)
  if (found === undefined || !Number.isFinite(found)) return undefined
  return unit === 'length' || unit === 'count' ? wholeNanometres(found) : twelveDigits(found)
}

function combined(how: How, first: number, others: readonly number[]): number | undefined {
  switch (how) {
    case 'given':
      return others.length === 0 ? first : undefined
    case 'sum':
      return others.reduce((total, value) => total + value, first)
    case 'times':
      return others.reduce((total, value) => total * value, first)
    case 'divided':
      return first / others.reduce((total, value) => total * value, 1)
    case 'least':
      return Math.min(first, ...others)
    case 'most':
      return Math.max(first, ...others)
    case 'formula':
      return undefined
  }
}

/**
 * What is wrong with a reckoning, in words for whoever made it; undefined when its working comes to its value.
 * A formula is only asked for its source, a length and a count for being whole.
 */
export function checkReckoning({ name, value, unit, how, terms, source }: Reckoning): string | undefined {
  const whole = unit === 'length' || unit === 'count'
  if (!(whole ? Number.isSafeInteger(value) : Number.isFinite(value))) {
    return `Unexpected value ${value} of ${name}, expected a ${whole ? 'whole' : 'finite'} number; round it where it is made`
  }
  if (how === 'formula')
    return source ? undefined : `Unexpected formula without a source in ${name}, expected the code of its words; name it`
  const expected = comesTo(how, terms, unit)
  if (expected === (whole ? value : twelveDigits(value))) return undefined
  const working = `${how} of ${terms.length === 0 ? 'no terms' : terms.map((term) => term.sign * term.value).join(', ')}`
  return `Unexpected value ${value} of ${name}, expected ${expected ?? 'terms that come to one'} (${working}); let the value follow from its terms`
}

const lengths =
  (how: 'sum' | 'times' | 'divided' | 'least' | 'most' | 'given') =>
  (name: string, what: string, ...terms: readonly Term[]): LengthReckoning => ({
    name,
    what,
    value: comesTo(how, terms) as Length,
    unit: 'length',
    how,
    terms,
  })

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
export const count = (name: string, what: string, ...terms: readonly Term[]): Reckoning => ({
  name,
  what,
  value: comesTo('sum', terms, 'count') as number,
  unit: 'count',
  how: 'sum',
  terms,
})
/** A length worked out in another way; `value` is rounded to the nanometre here, `source` names the formula. */
export const formula = (
  name: string,
  what: string,
  value: number,
  source: string,
  ...terms: readonly Term[]
): LengthReckoning => ({ name, what, value: wholeNanometres(value), unit: 'length', how: 'formula', terms, source })
