import {
  centimetre,
  type Length,
  metre,
  millimetre,
  type QuantityKind,
  readLength,
  readQuantity,
  type Tape,
  tapes,
  weightOfArea,
  writeLength,
} from '@evenhem/length'
import { expect, test } from 'vitest'
import cases from './references.json' with { type: 'json' }

// Published cases, copied with their source and basis beside every number. Each is put to the product's own functions.

const length = (text: string): Length => {
  const read = readLength(text, 'in')
  return read.ok ? read.value : (Number.NaN as Length)
}
const si = (text: string, kind: QuantityKind): number => {
  const read = readQuantity(text, kind)
  return read.ok ? read.value : Number.NaN
}
const onTape = (inches: string, tape: Tape): number => Number(writeLength(length(inches), tape).whole)
const eighths = (inches: number): number => length(writeLength(length(`${inches}`), tapes.eighths).text) / length('1')

type Numbers = Readonly<Record<string, number>>
type Given = Readonly<Record<string, number | readonly number[]>>
interface Case {
  readonly id: string
  readonly source: { readonly title: string }
  readonly basis: string
  readonly inputs: Readonly<Record<string, { readonly value: number | readonly number[] }>>
  readonly expected: Readonly<Record<string, { readonly value: number | readonly number[] }>>
  readonly tolerance: Readonly<Record<string, number | { readonly abs?: number; readonly rel?: number }>>
  readonly published?: Readonly<Record<string, { readonly value: number; readonly roundingHalfUnit: number }>>
}

const linear = ({ oz_per_linear_yard, width }: Numbers) => ({
  y: weightOfArea(si(`${oz_per_linear_yard} oz/yd`, 'linearWeight'), length(`${width} in`)) * 1000,
})
const worked: Readonly<Record<string, (given: never) => Given>> = {
  'units-01': () => ({ inch_mm: length('1 in') / millimetre, foot_m: length('1 ft') / metre, yard_m: length('1 yd') / metre }),
  'units-02': ({ a, b }: Numbers) => ({
    a_cm: onTape(`${a}`, { unit: 'cm', step: centimetre }),
    b_cm: onTape(`${b}`, tapes.centimetresToTheMillimetre),
  }),
  'units-03': ({ values }: { values: readonly number[] }) => ({ rounded: values.map(eighths) }),
  'U-02': ({ x }: Numbers) => ({ y: si(`${x} g/m2`, 'arealWeight') / si('1 oz/yd2', 'arealWeight') }),
  'U-03': () => ({
    lb_kg: si('1 lb', 'mass'),
    lbf_N: si('1 lbf', 'force'),
    oz_g: si('1 oz', 'mass') * 1000,
    g0: si('1 kgf', 'force') / si('1 kg', 'mass'),
  }),
  'U-04': () => ({ in: length('1 in') / millimetre, ft: length('1 ft') / metre, yd: length('1 yd') / metre }),
  'U-05': () => ({
    lbf_ft: si('1 lbf/ft', 'lineLoad'),
    lbf_in: si('1 lbf/in', 'lineLoad'),
    lbfin: si('1 lbf·in', 'moment'),
    lbfft: si('1 lbf·ft', 'moment'),
    psi: si('1 psi', 'pressure'),
    psf: si('1 psf', 'pressure'),
  }),
  'U-06': ({ x }: Numbers) => ({ y: si(`${x} lbf/in`, 'lineLoad') / si('1 N/mm', 'lineLoad') }),
  'U-07': linear,
  'U-08': linear,
}

const plain = (values: Case['inputs']): Given =>
  Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]))
const allowed = (value: number, tolerance: Case['tolerance'][string] = 0): number =>
  typeof tolerance === 'number' ? tolerance : (tolerance.abs ?? (tolerance.rel ?? 0) * Math.abs(value))
const near = (found: number | undefined, value: number, within: number, name: string) =>
  expect(Math.abs((found ?? Number.NaN) - value), `${name}: ${found}`).toBeLessThanOrEqual(within)

for (const { id, source, basis, inputs, expected, tolerance, published = {} } of cases as unknown as readonly Case[]) {
  test(`${id}: ${source.title} (${basis})`, () => {
    const found = worked[id]?.(plain(inputs) as never) ?? {}
    for (const [name, value] of Object.entries(plain(expected))) {
      const ours = [found[name] ?? []].flat()
      for (const [i, one] of [value].flat().entries()) near(ours[i], one, allowed(one, tolerance[name]), name)
    }
    for (const [name, printed] of Object.entries(published))
      near(found[name] as number, printed.value, printed.roundingHalfUnit, name)
  })
}
test('every published case is worked', () => expect(Object.keys(worked).sort()).toEqual(cases.map(({ id }) => id).sort()))
