import { inch, inches, type Known, type Length, type LengthReckoning, number } from '@evenhem/length'
import { expect, test } from 'vitest'
import {
  areSwapped,
  compareCount,
  compareFinishedLength,
  compareFirstToLast,
  explained,
  floorAt,
  highestFloor,
  makeUp,
  meantFromFloor,
  ringPlaces,
  stackOfShare,
  widthAllowed,
} from '../src/arithmetic/index.ts'
import { defaults } from '../src/defaults.ts'

// Each of these fails when one sign, one comparison or one default of the arithmetic is turned over. Edges are trade practice, no source, but where said.

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/order' })
const rise = (value: number): LengthReckoning => ({
  name: '/t#y',
  what: 'y',
  value: inches(value),
  unit: 'length',
  how: 'given',
  terms: [],
})
const inInches = (known: { readonly value: number }): number => known.value / inch
const signs = (reckoning: LengthReckoning) => reckoning.terms.map((term) => term.sign)

const range = { deeper: inches(0.25), shallower: inches(0.125) }
const leads = (measured: number) => compareFinishedLength(inches(89), inches(measured), inches(0.0625), range).leads
test('pins take up what their range allows to the last, on each side its own', () => {
  expect([leads(89.25), leads(89.3125)]).toEqual(['reset pins', 'call the workroom'])
  expect([leads(88.875), leads(88.8125)]).toEqual(['reset pins', 'call the workroom'])
})
test('a panel of exactly 72 is still held to the half inch', () => {
  expect(compareFirstToLast(inches(72), inches(72.5625), inches(0.5), inches(72)).within).toBe(false)
  expect(compareFirstToLast(inches(73), inches(73.71875), inches(0.5), inches(72)).within).toBe(true)
})
test('as many as needed are enough', () =>
  expect(compareCount(24, 24)).toEqual({ needed: 24, came: 24, missing: 0, spare: 0, enough: true }))
test('swapped panels may each be off by just the tolerance', () =>
  expect(areSwapped([inches(89), inches(90)], [inches(90.125), inches(88.875)], inches(0.125))).toBe(true))
test('one panel that is off is not swapped with one that is as ordered', () => {
  expect(areSwapped([inches(89), inches(90)], [inches(88), inches(90)], inches(0.125))).toBe(false)
  expect(areSwapped([inches(89), inches(90)], [inches(89), inches(91)], inches(0.125))).toBe(false)
})
test('a share of exactly 72 may be off by what is allowed, a wider one by a hundredth', () => {
  const allowed = (share: number) => inInches(widthAllowed('/t', rise(share), at(0.5)))
  expect([allowed(72), allowed(73), allowed(80)]).toEqual([0.5, 0.73, 0.8])
  expect(signs(widthAllowed('/t', rise(80), at(0.5)))).toEqual([1, 1])
})

const slope = [
  { x: at(31), y: at(-0.125) },
  { x: at(69), y: at(-0.375) },
]
test('the floor halfway between two points that are off the level line is halfway between both', () => {
  const floor = floorAt('/t#f', slope, at(50))
  expect(inInches(floor)).toBe(-0.25)
  expect(signs(floor)).toEqual([1, 1, 1, 1, 1])
})
test('the floor is highest where the drapery ends, when it rises to there', () => {
  expect(inInches(highestFloor('/t', [{ x: at(0), y: at(0.25) }, ...slope], at(0), at(69))[2])).toBe(0.25)
  expect(inInches(highestFloor('/t', [{ x: at(0), y: at(-0.5) }, ...slope], at(0), at(31))[2])).toBe(-0.125)
})
test('a floor point right under an end of the drapery is told once', () =>
  expect(highestFloor('/t', slope, at(31), at(69))[2].terms.length).toBe(2))
test('a rod ordered above the floor stands above its highest point', () =>
  expect(inInches(meantFromFloor('/t', rise(0.25), at(91)))).toBe(91.25))

test('a deduction explains a difference that is off by just as much as allowed, and one as small as that explains nothing', () => {
  const deductions = { eye: { value: inches(2.125), put: 'off' } } as const
  expect(explained(inches(2.1875), deductions, inches(0.0625))).toEqual([{ what: 'eye', how: 'forgotten' }])
  expect(explained(inches(-2.0625), deductions, inches(0.0625))).toEqual([{ what: 'eye', how: 'twice' }])
  expect(explained(inches(2.25), deductions, inches(0.0625))).toEqual([])
  expect(explained(inches(0.0625), { small: { value: inches(0.0625), put: 'off' } }, inches(0.0625))).toEqual([])
})

const { hooks } = makeUp('/t', {
  pleats: { ...number(10), from: '/p' },
  leadingFlat: at(1),
  firstToLast: at(36),
  return: at(3.5),
})
test.each([
  ['left', -6, [31, 30, 26, 22, 18, 14, 10, 6, 2, -2, -6, -6], [6, 4.8, 3.6, 2.4, 1.2, 0, -1.2, -2.4, -3.6, -4.8, -6, -6]],
  [
    'right',
    68,
    [31, 32, 36, 40, 44, 48, 52, 56, 60, 64, 68, 68],
    [56, 57.2, 58.4, 59.6, 60.8, 62, 63.2, 64.4, 65.6, 66.8, 68, 68],
  ],
] as const)('every hook of the %s panel has its place, drawn and stacked', (outer, coverEnd, drawn, stacked) => {
  const places = ringPlaces(
    { panel: outer, outer, hooks, leadingFlat: inches(1), atWall: true, isStationary: false },
    inches(31),
    inches(coverEnd),
    inches(12),
  )
  expect(places.map((place) => place.drawn)).toEqual(drawn.map(inches))
  expect(places.map((place) => place.stacked)).toEqual(stacked.map(inches))
})
test('the numbers under an estimated stack are shown as they are', () =>
  expect(signs(stackOfShare('/t', rise(39), 12, at(0.25))[1] as LengthReckoning)).toEqual([1, 1, 1]))

test('the defaults of the trade', () =>
  expect(Object.fromEntries(Object.entries(defaults).map(([name, each]) => [name, inInches(each)]))).toMatchObject({
    heightsAgree: 0.125,
    returnShort: 0.125,
    returnOver: 1,
    widthOff: 0.5,
    lengthOff: 0.25,
    pairOff: 0.125,
  }))
