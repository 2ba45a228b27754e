import { type Amount, amountAt, builtFraction } from './amount.ts'
import { atEnd, type Cursor, gap, hyphen, pattern, take } from './cursor.ts'
import { type Measure, type NamedUnit, unitNamed } from './measure.ts'
import { isProblem, type LengthProblem, problem } from './problem.ts'
import { leftOver, noNumber, unitRefused } from './surprise.ts'

/** Text longer than this holds more than one number and its unit. The format's schema says the same. */
export const mostCharacters = 40

/** A number and its unit; no unit when none is named. */
export interface Part {
  readonly amount: Amount
  readonly unit: NamedUnit | undefined
  readonly from: number
  readonly to: number
}

/** What a text says: a sign for the whole, and one part, or two when a smaller unit follows: 7 ft 2 in. */
export interface Parsed {
  readonly negative: boolean
  readonly first: Part
  readonly second?: Part
}

const sign = pattern(`(?:\\+|\\u2212|${hyphen})${gap}*`)
const numberAhead = `(?=[\\d.]|${builtFraction})`
const beforeSecond = pattern(`${gap}*${numberAhead}`)
const joinedSecond = pattern(`(?:${gap}*|${hyphen}|${gap}+${hyphen}${gap}+)${numberAhead}`)

/** Reads a whole text as one quantity of a measure. Never throws. */
export function parse(text: string, measure: Measure): Parsed | LengthProblem {
  if (text.length > mostCharacters) return tooLong(text)
  const cursor = { text, at: 0 }
  if (atEnd(cursor)) return problem('length/empty', 0, text.length, { example: measure.example })
  const signed = take(cursor, sign)?.[0]
  const first = part(cursor, measure, signed !== undefined)
  if (isProblem(first)) return first
  const negative = signed !== undefined && signed[0] !== '+'
  if (atEnd(cursor)) return { negative, first }
  const second = secondPart(cursor, first, measure, signed !== undefined)
  return isProblem(second) ? second : { negative, first, second }
}

const tooLong = (text: string): LengthProblem =>
  problem('length/too-long', mostCharacters, text.length, { count: String(text.length), most: String(mostCharacters) })

function part(cursor: Cursor, measure: Measure, signed: boolean): Part | LengthProblem {
  const amount = amountAt(cursor)
  if (amount === undefined) return noNumber(cursor, measure)
  if (isProblem(amount)) return amount
  const { from, to } = amount
  if (atEnd(cursor)) return { amount, unit: undefined, from, to }
  const name = take(cursor, measure.find)?.[0]
  if (name === undefined) return unitRefused(cursor, { from, to, signed, follows: false }, measure)
  return { amount, unit: unitNamed(measure, name), from, to: cursor.at }
}

/** What follows the first part: the smaller unit that goes with it, or a problem. */
function secondPart(cursor: Cursor, first: Part, measure: Measure, signed: boolean): Part | LengthProblem {
  const smaller = first.unit?.smaller
  const before = { from: first.from, to: first.to, signed, follows: smaller !== undefined }
  const here = cursor.at
  cursor.at = first.to
  if (!take(cursor, smaller ? joinedSecond : beforeSecond)) return leftOver({ ...cursor, at: here }, before, measure)
  const second = part(cursor, measure, signed)
  if (isProblem(second)) return second
  const refused = doNotGoTogether(cursor.text, first, second, measure)
  if (refused) return refused
  if (atEnd(cursor)) return second
  return leftOver(cursor, { from: second.from, to: second.to, signed, follows: false }, measure)
}

function doNotGoTogether(text: string, first: Part, second: Part, { example }: Measure): LengthProblem | undefined {
  const smaller = first.unit?.smaller
  const values = { got: text.slice(second.from, second.to), before: text.slice(first.from, first.to), example }
  const refuse = (code: 'length/mixed-units' | 'length/two-numbers' | 'length/carry', more = {}) =>
    problem(code, second.from, second.to, { ...values, ...more })
  if (second.unit && second.unit.name !== smaller?.name) return refuse('length/mixed-units')
  if (!smaller) return refuse('length/two-numbers')
  if (Number(first.amount.numerator) !== 0) return firstNotWhole(text, first)
  return Number(second.amount.whole) >= smaller.limit
    ? refuse('length/carry', { limit: `${smaller.limit} ${smaller.name}` })
    : undefined
}

const firstNotWhole = (text: string, { amount, unit }: Part): LengthProblem =>
  problem('length/first-not-whole', amount.from, amount.to, { got: text.slice(amount.from, amount.to), unit: unit?.name ?? '' })
