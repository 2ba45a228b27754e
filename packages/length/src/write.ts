import { furthest, type Length } from './length.ts'
import { inchesInAFoot, unitOf } from './tapes.ts'
import type { Tape, Written } from './written.ts'

/**
 * Writes a length as a tape shows it, rounded to the tape's step; a length half-way between two marks goes to the one further from zero.
 * `off` is what rounding added: 0 for nothing, positive when what is shown is more than the length, negative when it is less.
 * Inches: `86 1/2`, `5/8`, `0`, always in lowest terms and without a unit. Feet and inches: `7 ft 2 1/2 in`, `7 ft 0 in`, and below a foot
 * `2 1/2 in`. Millimetres and centimetres have as many decimals as the step needs: `2197 mm`, `219.7 cm`, `220.0 cm`.
 * The minus sign is U+2212; what is shown as zero has none.
 * Throws a RangeError for a step that is not whole nanometres or, with inches, no whole part of an inch; and for what is no length.
 */
export function writeLength(length: Length, tape: Tape): Written {
  if (!(Math.abs(length) <= furthest)) throw new RangeError(`Unexpected length ${length}, expected nanometres within ±9000 km`)
  const steps = wholeSteps(Math.abs(length), tape.step)
  const negative = length < 0 && steps > 0
  const shown = steps * tape.step
  const off = ((negative ? -shown : shown) - length) as Length
  return { ...(tape.unit === 'mm' || tape.unit === 'cm' ? metric(steps, tape, negative) : inches(steps, tape, negative)), off }
}

/** How many steps are nearest, half-way cases up. By remainder, since a quotient of large numbers can hide a half. */
function wholeSteps(size: number, step: number): number {
  const rest = size % step
  return (size - rest) / step + (2 * rest >= step ? 1 : 0)
}

type Shown = Omit<Written, 'off'>
const sign = (negative: boolean): string => (negative ? '−' : '')

function inches(steps: number, tape: Tape, negative: boolean): Shown {
  const parts = stepsInAnInch(tape)
  const above = steps % parts
  const whole = (steps - above) / parts
  const shared = commonDivisor(above, parts)
  const fraction = above === 0 ? {} : { numerator: above / shared, denominator: parts / shared }
  const feet = tape.unit === 'ft-in' ? Math.floor(whole / inchesInAFoot) : 0
  const left = whole - feet * inchesInAFoot
  const digits = left === 0 && above > 0 && feet === 0 ? '' : String(left)
  const number = [digits, above === 0 ? '' : `${fraction.numerator}/${fraction.denominator}`].filter(Boolean).join(' ')
  const text = `${sign(negative)}${feet > 0 ? `${feet} ft ` : ''}${number}${tape.unit === 'ft-in' ? ' in' : ''}`
  return { text, negative, ...(feet > 0 && { feet }), whole: digits, ...fraction, unit: tape.unit }
}

function stepsInAnInch({ step, unit }: Tape): number {
  const parts = unitOf[unit] / step
  if (Number.isInteger(parts) && parts >= 1) return parts
  throw new RangeError(`Unexpected step of ${step} nm, expected a whole part of an inch; use one of the tapes`)
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b))

function metric(steps: number, tape: Tape, negative: boolean): Shown {
  const decimals = decimalsOf(tape)
  const whole = decimalText(steps * tape.step, unitOf[tape.unit], decimals)
  return { text: `${sign(negative)}${whole} ${tape.unit}`, negative, whole, unit: tape.unit }
}

/** Nanometres in a metric unit; a multiple of the last decimal, so nothing is rounded here. */
function decimalText(nanometres: number, unit: number, decimals: number): string {
  const rest = nanometres % unit
  const whole = String((nanometres - rest) / unit)
  return decimals === 0 ? whole : `${whole}.${String(rest / (unit / 10 ** decimals)).padStart(decimals, '0')}`
}

/** How many decimals of a metric unit the step needs; every whole number of nanometres has some. */
function decimalsOf({ step, unit }: Tape): number {
  if (!Number.isInteger(step) || step < 1)
    throw new RangeError(`Unexpected step of ${step} nm, expected whole nanometres; use one of the tapes`)
  return [0, 1, 2, 3, 4, 5, 6].find((n) => step % (unitOf[unit] / 10 ** n) === 0) ?? 7
}
