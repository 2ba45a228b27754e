import { inch, inches, type Known, type Length, type LengthReckoning } from '@evenhem/length'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { alongRod, alongWalls, cornerAngle, pairShares, placeAlong, rodBetween, setBack } from '../src/arithmetic/index.ts'

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
const place = (value: number): LengthReckoning => ({
  name: '/test#x',
  what: 'x',
  value: inches(value),
  unit: 'length',
  how: 'given',
  terms: [],
})
const back = (out: number, degrees: number): LengthReckoning =>
  setBack('/test#back', at(out), cornerAngle('/test#angle', { value: degrees, from: '/test' }))
const corner = (x: number, out: number, degrees: number) => ({
  wall: 'a',
  next: 'b',
  x: at(x),
  degrees,
  back: back(out, degrees),
})

test('in a square corner the rod turns as far from it as it stands off the wall; around an outside one it is as much longer', () => {
  expect(back(4, 90).value / inch).toBeCloseTo(4, 9)
  expect(back(4, 270).value / inch).toBeCloseTo(-4, 9)
  expect(back(4, 180).value).toBe(0)
})
// tan 67.5° = 1 + √2, so at 135° it is 4 × (√2 − 1).
test('in the corner of an eight-sided bay it turns at projection × (√2 − 1)', () => {
  expect(back(4, 135).value / inch).toBeCloseTo(4 * (Math.SQRT2 - 1), 7)
})
test('a rod around a bay is shorter than its walls by two set-backs a corner', () => {
  const bay = [corner(0, 4, 135), corner(60, 4, 135)]
  expect(rodBetween('/test#rod', 'rod', bay, place(-24), place(84)).value / inch).toBeCloseTo(108 - 4 * 4 * (Math.SQRT2 - 1), 6)
})
test('a pair around a square corner shares the rod and not the walls', () => {
  // 40 before the corner and 60 after it, 4 off: 36 + 56 = 92 of rod, 46 each; the left panel ends 10 beyond the turn, 14 from the corner.
  const ends = { working: [], left: place(0), right: place(100), width: at(92) }
  const { left, meets } = pairShares('/test', ends, {}, [corner(40, 4, 90)])
  expect([left.value / inch, meets.value / inch]).toEqual([46, 54])
})
test('so far along the rod from a place, to either side', () => {
  const around = [corner(40, 4, 90)]
  const from = { what: 'from', x: place(30) }
  const by = { what: 'by', length: at(10) }
  expect(placeAlong('/test#p', 'p', around, from, by, 1).value / inch).toBe(48)
  expect(placeAlong('/test#p', 'p', around, { ...from, x: place(48) }, by, -1).value / inch).toBe(30)
})

// 4 off a wall that turns at 40: around an outside corner the rod turns at 44 of its own, before an inside one at 36.
describe.each([
  ['outside', 270, 44, 68],
  ['inside', 90, 36, 52],
] as const)('a place exactly at an %s corner', (_, degrees, turn, whole) => {
  // 20 more of wall beyond the corner: 24 of rod around an outside one, 16 in an inside one.
  const around = [corner(40, 4, degrees)]
  test('is where the rod turns, from either side, and there and back', () => {
    expect(alongRod(0, around, inches(40)) / inch).toBeCloseTo(turn, 9)
    expect(rodBetween('/test#r', 'r', around, place(0), place(40)).value / inch).toBeCloseTo(turn, 9)
    expect(rodBetween('/test#r', 'r', around, place(40), place(60)).value / inch).toBeCloseTo(whole - turn, 9)
    expect(rodBetween('/test#r', 'r', around, place(0), place(60)).value / inch).toBeCloseTo(whole, 9)
  })
})
test('a pair that meets around an outside corner of two equal walls meets at the corner', () => {
  // 40 and 40 of wall, 4 longer on each: 88 of rod, 44 each, which is the turn.
  const ends = { working: [], left: place(0), right: place(80), width: at(88) }
  const { meets, left } = pairShares('/test', ends, {}, [corner(40, 4, 270)])
  expect([meets.value / inch, left.value / inch]).toEqual([40, 44])
  const said = pairShares('/test', ends, { meets: at(40) }, [corner(40, 4, 270)])
  expect([said.left.value / inch, said.right.value / inch]).toEqual([44, 44])
})
// Around an outside corner at 40 the rod has 40 to 48 of its length where no wall is behind it; 42 is among them, 50 is 2 beyond the corner.
test.each([
  [42, 40],
  [44, 40],
  [47, 40],
  [50, 42],
  [38, 38],
])('%i along the rod around an outside corner is at %i along the walls', (by, x) => {
  const found = placeAlong('/test#p', 'p', [corner(40, 4, 270)], { what: 'from', x: place(0) }, { what: 'by', length: at(by) }, 1)
  expect(found.value / inch).toBe(x)
  expect(found.terms.reduce((all, { value, sign }) => all + value * sign, 0)).toBe(found.value)
})

/** The same by walking the rod in steps along each wall, as a tape would. */
function walked(
  left: number,
  corners: readonly { readonly x: number; readonly out: number; readonly degrees: number }[],
  x: number,
): number {
  const backs = corners.map(({ out, degrees }) => out / Math.tan((degrees * Math.PI) / 360))
  return corners.reduce((all, { x: turn }, i) => (x > turn ? all - 2 * (backs[i] as number) : all), x - left)
}
test('there and back along the rod is the same place, and as far as a tape says', () => {
  const bay = fc.record({
    out: fc.integer({ min: 1, max: 8 }),
    first: fc.integer({ min: 60, max: 179 }),
    second: fc.integer({ min: 60, max: 300 }),
  })
  fc.assert(
    fc.property(bay, fc.integer({ min: -60, max: 200 }), ({ out, first, second }, x) => {
      const corners = [corner(40, out, first), corner(120, out, second)]
      const reach = Math.max(...corners.map(({ back: { value } }) => Math.abs(value) / inch))
      fc.pre(reach < 30 && [40, 120].every((turn) => Math.abs(x - turn) > reach + 0.01))
      const along = alongRod(inches(-60), corners, inches(x))
      expect(along / inch).toBeCloseTo(
        walked(
          -60,
          [
            { x: 40, out, degrees: first },
            { x: 120, out, degrees: second },
          ],
          x,
        ),
        5,
      )
      expect(alongWalls(inches(-60), corners, along) / inch).toBeCloseTo(x, 9)
    }),
  )
})
test('without a corner a way along the rod is one along the wall', () => {
  expect(alongRod(inches(3), [], inches(10)) / inch).toBe(7)
  expect(alongWalls(inches(3), [], inches(7)) / inch).toBe(10)
})
