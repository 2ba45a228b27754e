import { inch, inches, type Known, type Length, type LengthReckoning } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import {
  alongRod,
  alongWalls,
  carriersNeeded,
  cornerAngle,
  glassCovered,
  type HungPanel,
  rodBetween,
  setBack,
  underCeiling,
} from '../src/arithmetic/index.ts'

// One test for each change of a sign or a comparison that nothing else noticed; figures worked out by hand.

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
const count = (value: number): Known<number> => ({ value, from: '/test' })
const inInches = ({ value }: LengthReckoning): number => Math.round((value / inch) * 10_000) / 10_000
const place = (value: number): LengthReckoning => ({
  name: '/test#x',
  what: 'x',
  value: inches(value),
  unit: 'length',
  how: 'given',
  terms: [],
})
const point = (x: number, y: number) => ({ x: at(x), y: at(y) })
const panel = (name: string, left: number, right: number, pin: number, length: number): HungPanel => ({
  panel: name,
  pin: at(pin),
  finishedLength: at(length),
  left: at(left),
  right: at(right),
})

describe('two panels under a ceiling that is 1 lower at 40, over a floor that is 1/2 higher at 60', () => {
  const under = underCeiling(
    '/test',
    { left: at(0), right: at(100) },
    at(1),
    [point(0, 96), point(40, 95), point(100, 96)],
    [point(0, 0), point(60, 0.5), point(100, 0)],
    undefined,
    [panel('left', 0, 50, 0.5, 94), panel('right', 50, 100, 0.25, 93)],
  )
  // At 40 the hooks bear at 94: hem 94 + 1/2 − 94 = 1/2, over a floor at 40/60 × 1/2 = 1/3, so it clears 1/6.
  test('the left one sets the line, at 40', () =>
    expect([under.sets, inInches(under.hangLine), inInches(under.hem), inInches(under.top)]).toEqual(['left', 94, 0.5, 94.5]))
  // The right one is tightest at 50: 94 1/6 + 1/4 − 93 = 1 5/12, over 5/12; its hem on the line is 94 + 1/4 − 93.
  test('each panel has the least of its own places', () =>
    expect(under.panels.map(({ panel, hem, clears }) => [panel, inInches(hem), inInches(clears)])).toEqual([
      ['left', 0.5, 0.1667],
      ['right', 1.25, 1],
    ]))
  test('at the left end, in the middle and at the right end', () =>
    expect([under.left, under.middle, under.right].map(inInches)).toEqual([1.5, 0.25, 2.25]))
  test('points at the ends are the ends, and are not looked at twice', () =>
    expect(under.working.map(({ name }) => name).filter((name) => name.includes('#bears-'))).toEqual([
      '/test#bears-left',
      '/test#bears-middle',
      '/test#bears-right',
      '/test#bears-point-1',
      '/test#bears-point-2',
    ]))
  test('a point outside what is covered is not looked at', () => {
    const outside = underCeiling(
      '/test',
      { left: at(0), right: at(100) },
      at(1),
      [point(-20, 96), point(120, 96)],
      [],
      undefined,
      [panel('one', 0, 100, 0, 94)],
    )
    expect(outside.working.some(({ name }) => name.includes('point'))).toBe(false)
  })
  test('of panels that clear the same, the first sets the line', () =>
    expect(
      underCeiling('/test', { left: at(0), right: at(100) }, at(1), [point(0, 96)], [], undefined, [
        panel('a', 0, 50, 0, 94),
        panel('b', 50, 100, 0, 94),
      ]).sets,
    ).toBe('a'))
})

describe('around corners', () => {
  const corner = (x: number, degrees: number) => ({
    wall: 'a',
    next: 'b',
    x: at(x),
    degrees,
    back: setBack('/test#back', at(4), cornerAngle('/test#angle', { value: degrees, from: '/test' })),
  })
  test('what a set-back is worked out from adds nothing with a sign turned over', () => {
    const angle = cornerAngle('/test#angle', { value: 90, from: '/test' })
    expect([...angle.terms, ...setBack('/test#back', at(4), angle).terms].map(({ sign }) => sign)).toEqual([1, 1, 1])
  })
  // 4 off the wall: the rod turns 4 before an inside corner at 40, 4 beyond an outside one; the turn is the one place that both walls share.
  test.each([
    [90, 36],
    [270, 44],
  ])('the very corner of %i degrees is where the rod turns, %i along it', (degrees, along) =>
    expect(Math.round(alongRod(0, [corner(40, degrees)], inches(40)) / inch)).toBe(along),
  )
  // The first turn takes 8 away; the second turns at 116 of the walls, so at 108 of the rod.
  test('in the shadow of a second corner every place is its turn', () =>
    expect(Math.round(alongRod(0, [corner(40, 90), corner(120, 90)], inches(118)) / inch)).toBe(108))
  test('the turn itself is on the wall before it', () => expect(alongWalls(0, [corner(40, 90)], inches(36)) / inch).toBe(36))
  test.each([
    [50, 60, 10],
    [10, 20, 10],
    [40, 60, 16],
    [20, 40, 16],
    [40, 40, 0],
    [20, 60, 32],
  ])('between %i and %i a square corner at 40 leaves %i of rod', (from, to, rod) =>
    expect(inInches(rodBetween('/test#rod', 'rod', [corner(40, 90)], place(from), place(to)))).toBe(rod),
  )
})

test.each([
  [0, 10, 4],
  [1, 9, 5],
])(
  'with %i hooks at the wall a panel of 10 pleats with a hook in its master carrier and one in its end bracket needs %i carriers',
  (wall, carriers, terms) => {
    const needed = carriersNeeded('/test', count(10), { master: count(1), end: count(1), wall: count(wall) })
    expect([needed.value, needed.terms.length]).toEqual([carriers, terms])
  },
)
test('glass covered is the larger of nothing and what reaches over it', () => {
  const [, covered] = glassCovered('/test', 'left', place(-8), place(6), { left: at(0), right: at(40) })
  expect([covered.value, covered.terms.map(({ sign }) => sign)]).toEqual([0, [1, 1]])
})
