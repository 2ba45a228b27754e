import { inWholes } from './amount.ts'
import { centimetre, foot, furthest, inch, type Length, metre, millimetre, wholeNanometres, yard } from './length.ts'
import { measure } from './measure.ts'
import { type Parsed, parse } from './parse.ts'
import { isProblem, problem, type Refused } from './problem.ts'

/** What a number without a unit is in. */
export type BareUnit = 'in' | 'mm' | 'cm'

/** A length that was read. `exact` is false when what was written is no whole number of nanometres (1/3 in) and was rounded to the nearest. */
export interface ReadLength {
  readonly ok: true
  readonly value: Length
  readonly exact: boolean
}

const bareUnits = { in: inch, mm: millimetre, cm: centimetre } as const satisfies Readonly<Record<BareUnit, Length>>

const lengths = measure('86 1/2', [
  { name: 'in', size: inch, also: ['inch', 'inches', '"', '”', '“', '″', "''", '’’', '′′'] },
  { name: 'ft', size: foot, also: ['foot', 'feet', "'", '’', '‘', '′'], smaller: { name: 'in', limit: foot / inch } },
  { name: 'yd', size: yard, also: ['yard', 'yards'] },
  { name: 'mm', size: millimetre, also: ['millimetre', 'millimetres', 'millimeter', 'millimeters'] },
  { name: 'cm', size: centimetre, also: ['centimetre', 'centimetres', 'centimeter', 'centimeters'] },
  { name: 'm', size: metre, also: ['metre', 'metres', 'meter', 'meters'] },
])

/**
 * Reads a length as people write it: `86 1/2`, `86-1/2`, `86½`, `86.5`, `7' 2 1/2"`, `7 ft 2 1/2 in`, `2197 mm`, `219.7 cm`, `−5/8`.
 * A number without a unit is in `units`; after feet it is inches. One sign in front counts for the whole. Capitals do not matter.
 *
 * Decimals and fractions are worked out exactly and then rounded once to the nanometre, half-way cases away from zero; `exact` says
 * whether anything was lost. Nothing is lost from inches to 64ths (1/64 in is 396,875 nm) and from six decimals of a millimetre; thirds lose.
 * A number is read as its shortest decimals: 0.1 is a tenth.
 *
 * What is ambiguous or impossible is refused with its columns, never guessed: `86,5`, `861/2`, `7 2`, `5' 14"`. So is text of more than
 * 40 characters and anything beyond ±9,000 km, up to which lengths are exact. Never throws.
 */
export function readLength(text: string | number, units: BareUnit): ReadLength | Refused {
  return typeof text === 'number' ? readNumber(text, bareUnits[units]) : readText(text, bareUnits[units])
}

/** Most lengths of a job look like this, and a job has thousands: read without the grammar, four times as fast, always exact. */
const common = /^(\d{1,7})(?:[ -](\d{1,2})\/(2|4|8|16|32|64))?$/

function readText(text: string, bare: Length): ReadLength | Refused {
  const [, whole, numerator = '0', denominator = '1'] = common.exec(text) ?? []
  if (whole !== undefined && Number(numerator) < Number(denominator)) {
    return { ok: true, value: (Number(whole) * bare + Number(numerator) * (bare / Number(denominator))) as Length, exact: true }
  }
  const parsed = parse(text, lengths)
  return isProblem(parsed) ? { ok: false, problem: parsed } : lengthOf(text, parsed, bare)
}

function readNumber(number: number, bare: Length): ReadLength | Refused {
  const written = String(number)
  if (!Number.isFinite(number)) {
    return { ok: false, problem: problem('length/not-finite', 0, written.length, { got: written, example: lengths.example }) }
  }
  if (!written.includes('e')) return readText(written, bare)
  // Below a millionth and from 1e21 up JavaScript writes an exponent. The first is a few nanometres at most, the second too far.
  const value = wholeNanometres(number * bare)
  return Math.abs(value) > furthest ? tooLarge(written, 0, written.length) : { ok: true, value, exact: value === number * bare }
}

function lengthOf(text: string, { negative, first, second }: Parsed, bare: Length): ReadLength | Refused {
  const one = inWholes(first.amount, first.unit?.size ?? bare)
  const two = second ? inWholes(second.amount, inch) : { value: 0, exact: true }
  const value = one.value + two.value
  if (value > furthest) return tooLarge(text, first.from, second?.to ?? first.to)
  return { ok: true, value: (negative && value > 0 ? -value : value) as Length, exact: one.exact && two.exact }
}

const tooLarge = (text: string, from: number, to: number): Refused => ({
  ok: false,
  problem: problem('length/too-large', from, to, { got: text.slice(from, to), most: '9000 km' }),
})
