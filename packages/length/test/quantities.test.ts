import { inches, type QuantityKind, readQuantity, twelveDigits, weightOfArea } from '@evenhem/length'
import { describe, expect, test } from 'vitest'

const accepted: readonly (readonly [text: string | number, kind: QuantityKind, si: number])[] = [
  ['2.4 kg', 'mass', 2.4],
  ['320 g', 'mass', 0.32],
  ['1 lb', 'mass', 0.45359237],
  ['7 lbs', 'mass', 3.17514659],
  ['12 oz.', 'mass', 0.3401942775],
  ['7 lb 4 oz', 'mass', 3.2885446825],
  ['7 lb 4', 'mass', 3.2885446825],
  ['7 lb 4 1/2 oz', 'mass', 3.30271944406],
  ['1/2 lb', 'mass', 0.226796185],
  ['-1 kg', 'mass', -1],
  ['320 g/m2', 'arealWeight', 0.32],
  ['320g/m²', 'arealWeight', 0.32],
  ['320 g/m^2', 'arealWeight', 0.32],
  ['320 g / m2', 'arealWeight', 0.32],
  ['320 gsm', 'arealWeight', 0.32],
  ['9.5 oz/yd2', 'arealWeight', 0.322104601011],
  ['9 1/2 oz/yd²', 'arealWeight', 0.322104601011],
  ['9.5 oz per sq yd', 'arealWeight', 0.322104601011],
  ['12 oz/yd', 'linearWeight', 0.372040985892],
  ['120 N', 'force', 120],
  ['1.2 kN', 'force', 1200],
  ['20 lbf', 'force', 88.9644323052],
  ['10 kgf', 'force', 98.0665],
  ['3 N·m', 'moment', 3],
  ['3 N m', 'moment', 3],
  ['3 Nm', 'moment', 3],
  ['90°', 'angle', 1.57079632679],
  ['90 deg', 'angle', 1.57079632679],
  ['-45 degrees', 'angle', -0.785398163397],
  ['1.5 rad', 'angle', 1.5],
  ['2 %', 'ratio', 0.02],
  ['2%', 'ratio', 0.02],
  ['2 1/2 percent', 'ratio', 0.025],
  ['0.02', 'ratio', 0.02],
  ['2½', 'ratio', 2.5],
  ['2.5x', 'ratio', 2.5],
  [0.1, 'ratio', 0.1],
  [-0, 'ratio', 0],
]
describe('quantities are read with their unit, to SI and twelve digits', () => {
  test.each(accepted)('%s as %s is %d', (text, kind, value) => expect(readQuantity(text, kind)).toEqual({ ok: true, value }))
})
test('a number without a unit is no mass', () => {
  expect(readQuantity(320, 'mass')).toMatchObject({ ok: false, problem: { code: 'length/unit-missing', column: 1, end: 4 } })
})
test('a number that is not finite is refused', () => {
  expect(readQuantity(Number.NaN, 'ratio')).toMatchObject({ ok: false, problem: { code: 'length/not-finite' } })
})
test('cloth by the running yard weighs its weight by area once its width is known', () => {
  expect(weightOfArea(0.372040985892, inches(54))).toBeCloseTo(0.2712459798, 10)
})
test('twelve digits leave what a person could mean and drop the last bits', () => {
  expect([0.1 + 0.2, 1 / 3, -0, 1e300, 123456789012345].map(twelveDigits)).toEqual([
    0.3, 0.333333333333, 0, 1e300, 123456789012000,
  ])
})
