import { foot, inch, type Length, millimetre, readLength, yard } from '@evenhem/length'
import { describe, expect, test } from 'vitest'

const sevenTwoAndAHalf = 7 * foot + 2.5 * inch
const accepted: readonly (readonly [text: string, nanometres: number])[] = [
  // inches, in a job that is in inches
  ['86', 86 * inch],
  ['86 1/2', 86.5 * inch],
  ['86-1/2', 86.5 * inch],
  ['86‑1/2', 86.5 * inch],
  ['86–1/2', 86.5 * inch],
  ['86.5', 86.5 * inch],
  ['.5', inch / 2],
  ['086.50', 86.5 * inch],
  ['86½', 86.5 * inch],
  ['86 ½', 86.5 * inch],
  ['86-½', 86.5 * inch],
  ['86 1⁄2', 86.5 * inch],
  ['86 1∕2', 86.5 * inch],
  ['86 1 / 2', 86.5 * inch],
  ['  86 1/2  ', 86.5 * inch],
  ['86\u00a01/2', 86.5 * inch],
  ['86\u20091/2', 86.5 * inch],
  ['86\u202f½', 86.5 * inch],
  ['86\t1/2', 86.5 * inch],
  ['86  1/2', 86.5 * inch],
  ['1/2', inch / 2],
  ['0/8', 0],
  ['4/8', inch / 2],
  ['3/64', 3 * 396_875],
  ['0', 0],
  ['86"', 86 * inch],
  ['86 1/2 "', 86.5 * inch],
  ['86 1/2”', 86.5 * inch],
  ['86 1/2“', 86.5 * inch],
  ['86 1/2″', 86.5 * inch],
  ["86''", 86 * inch],
  ['86’’', 86 * inch],
  ['86′′', 86 * inch],
  ['86 in', 86 * inch],
  ['86in.', 86 * inch],
  ['86 IN', 86 * inch],
  ['1 inch', inch],
  ['86 Inches', 86 * inch],
  // built fractions
  ['⅛', inch / 8],
  ['¼', inch / 4],
  ['⅜', (inch / 8) * 3],
  ['⅝', (inch / 8) * 5],
  ['¾', (inch / 4) * 3],
  ['⅞', (inch / 8) * 7],
  ['⅕', inch / 5],
  ['⅒', inch / 10],
  ['⅙ ft', 2 * inch],
  // signs
  ['-1/2', -inch / 2],
  ['−1/2', -inch / 2],
  ['–1/2', -inch / 2],
  ['- 5/8', (-inch / 8) * 5],
  ['+3', 3 * inch],
  ['+ 1/2', inch / 2],
  ['-0', 0],
  ['−7 ft 2 1/2 in', -sevenTwoAndAHalf],
  [`-7'-2 1/2"`, -sevenTwoAndAHalf],
  // feet and inches
  [`7' 2 1/2"`, sevenTwoAndAHalf],
  [`7'2-1/2"`, sevenTwoAndAHalf],
  [`7'-2 1/2"`, sevenTwoAndAHalf],
  [`7' - 2 1/2"`, sevenTwoAndAHalf],
  ['7’ 2 1/2”', sevenTwoAndAHalf],
  ['7′ 2½″', sevenTwoAndAHalf],
  ['7‘ 2½“', sevenTwoAndAHalf],
  [`7' 2 1/2''`, sevenTwoAndAHalf],
  ["7' 2 1/2", sevenTwoAndAHalf],
  ['7 ft 2 1/2 in', sevenTwoAndAHalf],
  ['7ft2.5in', sevenTwoAndAHalf],
  ['7 ft. 2 1/2 in.', sevenTwoAndAHalf],
  ['7 feet 2 1/2 inches', sevenTwoAndAHalf],
  ['7 ft 0 in', 7 * foot],
  ['7 ft ½ in', 7 * foot + inch / 2],
  [`0' 11 63/64"`, 12 * inch - 396_875],
  ['7 feet', 7 * foot],
  ['1 foot', foot],
  ["7'", 7 * foot],
  ['7.5 ft', 7.5 * foot],
  ['7 1/2 ft', 7.5 * foot],
  ['2 yd', 2 * yard],
  ['1 yard', yard],
  // metric
  ['2197 mm', 2_197_000_000],
  ['2197mm', 2_197_000_000],
  ['2197 MM', 2_197_000_000],
  ['219.7 cm', 2_197_000_000],
  ['2.197 m', 2_197_000_000],
  ['2197 1/2 mm', 2_197_500_000],
  ['1 millimetre', millimetre],
  ['3 millimeters', 3 * millimetre],
  ['1 centimeter', 10 * millimetre],
  ['2 metres', 2000 * millimetre],
  // exact decimals
  ['0.1 mm', 100_000],
  ['0.3 mm', 300_000],
  ['0.000001 mm', 1],
  ['0.015625', 396_875],
  ['1.005 mm', 1_005_000],
  ['2.000000001 m', 2_000_000_001],
  ['9000000 m', 9_000_000_000_000_000],
]

describe('what people write is read, exactly', () => {
  test.each(accepted)('%s', (text, value) => expect(readLength(text, 'in')).toEqual({ ok: true, value, exact: true }))
})

const rounded: readonly (readonly [text: string, nanometres: number])[] = [
  ['1/3', 8_466_667],
  ['⅓', 8_466_667],
  ['⅔', 16_933_333],
  ['-⅔', -16_933_333],
  ['1/128', 198_438],
  ['-1/128', -198_438],
  ['0.0000004 mm', 0],
  ['0.0000005 mm', 1],
  ['-0.0000005 mm', -1],
  ['0.00000049999999999999999 mm', 0],
  ['0.00000050000000000000000000 mm', 1],
  ['0.9999999995 m', 1_000_000_000],
  ['0.99999999949999999999 m', 999_999_999],
  ['0.99999999949999 m', 999_999_999],
  ['7\' 1/3"', 7 * foot + 8_466_667],
  ['1/7 ft', 43_542_857],
  ['33.3333333333333333333333333333333 in', 846_666_667],
  ['0.0000000000000000000000000000000001 mm', 0],
]
describe('what is no whole number of nanometres is rounded once, half-way away from zero, and says so', () => {
  test.each(rounded)('%s', (text, value) => expect(readLength(text, 'in')).toEqual({ ok: true, value, exact: false }))
})

test('a number without a unit is in the job’s units', () => {
  expect(['in', 'mm', 'cm'].map((unit) => readLength('86 1/2', unit as 'in'))).toEqual([
    { ok: true, value: 2_197_100_000, exact: true },
    { ok: true, value: 86_500_000, exact: true },
    { ok: true, value: 865_000_000, exact: true },
  ])
})
test('a unit that is named wins over the job’s units', () => {
  expect(readLength('86 in', 'mm')).toEqual(readLength('86', 'in'))
})
test('after feet a number is inches, whatever the job’s units', () => {
  expect(readLength("7' 2", 'mm')).toEqual(readLength('86', 'in'))
})

const numbers: readonly (readonly [number, 'in' | 'mm' | 'cm', number])[] = [
  [86.5, 'in', 2_197_100_000],
  [0.1, 'mm', 100_000],
  [0.7, 'cm', 7_000_000],
  [1.005, 'mm', 1_005_000],
  [-0.625, 'in', -15_875_000],
  [0, 'in', 0],
  [-0, 'in', 0],
  [1e-7, 'cm', 1],
  [9_000_000_000, 'mm', 9_000_000_000_000_000],
]
describe('a number is read as its shortest decimals', () => {
  test.each(numbers)('%d %s', (number, units, value) =>
    expect(readLength(number, units)).toEqual({ ok: true, value, exact: true }),
  )
})
test('a number of thirds says that it was rounded', () => {
  expect(readLength(86.33333333333333, 'in')).toEqual({ ok: true, value: 2_192_866_667, exact: false })
})

test('a sixty-fourth of an inch is 396,875 nanometres, and every tape mark a whole number of them', () => {
  for (let n = 0; n < 64; n++) expect(readLength(`${n}/64`, 'in')).toEqual({ ok: true, value: n * 396_875, exact: true })
})
test('lengths are exact to 9,000 km: the next nanometre is still another number', () => {
  const furthest = readLength('9000000 m', 'in')
  const before = readLength('8999999.999999999 m', 'in')
  expect(furthest.ok && before.ok && furthest.value - before.value).toBe(1)
  expect(Number.isSafeInteger(furthest.ok && furthest.value)).toBe(true)
})
test('the value is a plain JSON number', () => {
  const read = readLength('86 1/2', 'in')
  expect(JSON.parse(JSON.stringify(read))).toEqual({ ok: true, value: 2_197_100_000 as Length, exact: true })
})
