import { asNumber } from './amount.ts'
import { twelveDigits } from './digits.ts'
import { type Length, metre } from './length.ts'
import { type Hint, type Measure, measure, type NamedUnit } from './measure.ts'
import { type Part, parse } from './parse.ts'
import { isProblem, type LengthProblem, problem, type Refused } from './problem.ts'

/** A quantity that was read, in the SI unit of its kind, to twelve digits. */
export interface ReadQuantity {
  readonly ok: true
  readonly value: number
}

// Exact by definition: NIST SP 811 (2008), Appendix B.8. Everything below follows from these.
const inchInMetres = 0.0254
const footInMetres = 0.3048
const yardInMetres = 0.9144
const pound = 0.45359237
const ounce = pound / 16
/** What a kilogram weighs, N. */
export const kilogramForce = 9.80665
const poundForce = pound * kilogramForce

const unit = (name: string, size: number, ...also: readonly string[]): NamedUnit => ({ name, size, also })
const meant = (name: string): Hint => ({ code: 'length/unit-misspelt', meant: name })
const linear = (name: string): Hint => ({ code: 'length/linear-weight', meant: name })
const poundForceMeant = meant('lbf')

const mass = measure('2.4 kg', [
  unit('kg', 1, 'kilogram', 'kilograms'),
  unit('g', 1 / 1000, 'gram', 'grams'),
  { name: 'lb', size: pound, also: ['lbs', 'pound', 'pounds'], smaller: { name: 'oz', limit: 16 } },
  unit('oz', ounce, 'ounce', 'ounces'),
])
const arealWeight = measure(
  '320 g/m2',
  [
    unit('g/m2', 1 / 1000, 'gsm', 'g/sq m', 'g per m2', 'grams per square metre', 'grams per square meter'),
    unit('kg/m2', 1),
    unit(
      'oz/yd2',
      ounce / yardInMetres ** 2,
      'oz/sq yd',
      'oz per sq yd',
      'oz per yd2',
      'oz per square yard',
      'ounces per square yard',
    ),
  ],
  { g: meant('g/m2'), oz: meant('oz/yd2'), 'g/m': linear('g/m2'), 'oz/yd': linear('oz/yd2'), 'oz/lin': linear('oz/yd2') },
)
const linearWeight = measure('12 oz/yd', [
  unit('g/m', 1 / 1000),
  unit('kg/m', 1),
  unit('oz/yd', ounce / yardInMetres, 'oz/lin yd', 'oz/linear yd'),
])
const force = measure(
  '120 N',
  [
    unit('N', 1, 'newton', 'newtons'),
    unit('kN', 1000, 'kilonewton', 'kilonewtons'),
    unit('lbf', poundForce, 'pound-force', 'pounds-force'),
    unit('kgf', kilogramForce, 'kilogram-force', 'kilograms-force'),
  ],
  { lb: poundForceMeant, lbs: poundForceMeant, pound: poundForceMeant, pounds: poundForceMeant, kg: meant('kgf') },
)
const lineLoad = measure('40 N/m', [
  unit('N/m', 1),
  unit('N/mm', 1000),
  unit('lbf/ft', poundForce / footInMetres),
  unit('lbf/in', poundForce / inchInMetres),
])
const moment = measure('3.5 N·m', [
  unit('N·m', 1, 'Nm', 'N m'),
  unit('N·mm', 1 / 1000, 'Nmm', 'N mm'),
  unit('lbf·in', poundForce * inchInMetres, 'lbf in', 'in·lbf', 'in lbf'),
  unit('lbf·ft', poundForce * footInMetres, 'lbf ft', 'ft·lbf', 'ft lbf'),
])
const pressure = measure('30 psi', [
  unit('Pa', 1),
  unit('kPa', 1000),
  unit('N/mm2', 1e6),
  unit('psi', poundForce / inchInMetres ** 2, 'lbf/in2'),
  unit('psf', poundForce / footInMetres ** 2, 'lbf/ft2'),
])
const angle = measure('90°', [unit('deg', Math.PI / 180, '°', 'degree', 'degrees'), unit('rad', 1, 'radian', 'radians')])
const ratio = measure('2 %', [unit('%', 1 / 100, 'percent', 'per cent'), unit('times', 1, 'x', '×')])

const measures = { mass, arealWeight, linearWeight, force, lineLoad, moment, pressure, angle, ratio } as const satisfies Readonly<
  Record<string, Measure>
>

/** The sorts of quantity that text is read as. */
export type QuantityKind = keyof typeof measures

/**
 * Reads a quantity with its unit into a plain number of the SI unit of its kind, rounded to twelve digits:
 * `mass` kg (kg, g, lb, oz, `7 lb 4 oz`), `arealWeight` kg/m² (g/m2, g/m², gsm, oz/yd2), `linearWeight` kg/m (g/m, oz/yd), `force` N (N, kN, lbf, kgf),
 * `lineLoad` N/m (N/m, lbf/ft, lbf/in), `moment` N·m (N·m, lbf·in, lbf·ft), `pressure` Pa (Pa, psi, psf), `angle` rad (deg, °, rad),
 * `ratio` (%, ×; alone without a unit: `0.02` is 2 %). The unit is never guessed: lb is a mass, lbf a force, oz/yd needs a width.
 * Numbers are written as in lengths, and what is refused has the same codes and columns. Never throws.
 */
export function readQuantity(text: string | number, kind: QuantityKind): ReadQuantity | Refused {
  const found = typeof text === 'number' ? fromNumber(text, kind) : fromText(text, kind)
  return typeof found === 'number' ? { ok: true, value: twelveDigits(found) } : { ok: false, problem: found }
}

function fromNumber(number: number, kind: QuantityKind): number | LengthProblem {
  const written = String(number)
  if (!Number.isFinite(number))
    return problem('length/not-finite', 0, written.length, { got: written, example: measures[kind].example })
  return kind === 'ratio' ? number : noUnit(written, 0, written.length, measures[kind])
}

function fromText(text: string, kind: QuantityKind): number | LengthProblem {
  const parsed = parse(text, measures[kind])
  if (isProblem(parsed)) return parsed
  const { first, second, negative } = parsed
  if (first.unit === undefined && kind !== 'ratio') return noUnit(text, first.from, first.to, measures[kind])
  const size = inSi(first) + (second ? inSi({ ...second, unit: second.unit ?? smallerOf(first, measures[kind]) }) : 0)
  return negative ? -size : size
}

const inSi = ({ amount, unit }: Part): number => asNumber(amount) * (unit?.size ?? 1)

/** The unit that a second number has when it names none: ounces after pounds. */
const smallerOf = ({ unit }: Part, { named }: Measure): NamedUnit | undefined => named.get(unit?.smaller?.name ?? '')

const noUnit = (text: string, from: number, to: number, { units }: Measure): LengthProblem =>
  problem('length/unit-missing', from, to, { got: text.slice(from, to), units })

/**
 * The weight of an area of cloth, kg/m², from its weight by running length, kg/m, and its width: the one divided by the other.
 * ASTM D3776, mass per unit area from mass per linear yard and width.
 */
export const weightOfArea = (linearWeight: number, width: Length): number => twelveDigits(linearWeight / (width / metre))
