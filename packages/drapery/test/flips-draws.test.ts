import { inch, inches, type Known, type Length, type LengthReckoning } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import {
  between,
  casingSpan,
  clearOf,
  clearsBase,
  coverEnds,
  fromCasing,
  isHalfOn,
  leadingBracket,
  lowestCeiling,
  makeUp,
  meantFromCeiling,
  oneWayShare,
  pairShares,
  pastCasing,
  ringPlaces,
  ringsByBay,
  settles,
  spaceLeft,
  widthsApart,
} from '../src/arithmetic/index.ts'

// What turning over one sign or comparison of one-way draws, several openings, supports, ceilings and obstacles would change.

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/order' })
const rise = (value: number): LengthReckoning => ({
  name: '/t#x',
  what: 'x',
  value: inches(value),
  unit: 'length',
  how: 'given',
  terms: [],
})
const inInches = (known: { readonly value: number }): number => known.value / inch
const signs = (reckoning: LengthReckoning) => reckoning.terms.map((term) => term.sign)

describe('a first casing that does not begin at 0', () => {
  // casings from 4 to 34 and from 40 to 70
  const frame = casingSpan('/t', [
    { id: 'a', x: at(4), width: at(30) },
    { id: 'b', x: at(40), width: at(30) },
  ])
  test('the frame is 66 wide and ends at 70', () => expect([inInches(frame.width), inInches(frame.right)]).toEqual([66, 70]))
  test('a cover that passes it by 6 and 8 runs from −2 to 78', () => {
    const ends = coverEnds('/t', { frame, pastLeft: at(6), pastRight: at(8) })
    expect([inInches(ends!.left), inInches(ends!.right), inInches(ends!.width)]).toEqual([-2, 78, 80])
    const passes = pastCasing('/t', ends!.left, ends!.right, frame)
    expect([inInches(passes.left), inInches(passes.right)]).toEqual([6, 8])
  })
  test('a rod width and what passes on the right say where it begins', () =>
    expect(inInches(coverEnds('/t', { frame, rodWidth: at(80), pastRight: at(8) })!.left)).toBe(-2))
  test('of wall 30 wide beside it, a tip at −10 leaves 16', () =>
    expect(inInches(spaceLeft('/t', 'left', rise(-10), at(30), frame))).toBe(16))
  test('a support at 37 stands 33 from its left edge', () =>
    expect(inInches(fromCasing('/t', 'middle', rise(37), frame))).toBe(33))
})

describe('shares', () => {
  const ends = coverEnds('/t', { frame: { right: at(48), width: at(48) }, pastLeft: at(8), pastRight: at(8) })!
  test('a left share of 20 from −8 meets at 12 and leaves 44', () => {
    const { meets, left, right } = pairShares('/t', ends, { leftShare: at(20) })
    expect([meets, left, right].map(inInches)).toEqual([12, 20, 44])
  })
  test('one panel has all 64', () => expect(inInches(oneWayShare('/t', ends))).toBe(64))
  test('covering 64 where 60 was ordered is 4 too much', () => expect(inInches(widthsApart('/t', at(64), at(60)))).toBe(4))
})

test('a symmetric leading ring stops 3/4 inside its bracket, at either side', () => {
  const drawn = (side: 'left' | 'right', end: number) =>
    inInches(leadingBracket('/t', side, 'symmetric', rise(end), at(1), rise(0.75)).drawn)
  expect([drawn('left', -6), drawn('right', 42)]).toEqual([-4.25, 40.25])
})
test('a reaching bracket stands 3/4 beyond what is covered, at either side', () => {
  const bracket = (side: 'left' | 'right', end: number) =>
    inInches(leadingBracket('/t', side, 'reach', rise(end), at(1), rise(0.75)).bracket)
  expect([bracket('left', -6), bracket('right', 42)]).toEqual([-6.75, 42.75])
})
test('from one place to another is no less than 0', () =>
  expect([between('/t', 'x', rise(3), rise(8)), between('/t', 'x', rise(8), rise(3))].map(inInches)).toEqual([5, 5]))

test('every edge of what must stay clear is shown with a plus', () => {
  const block = { left: 0, right: 1, bottom: 0, top: 1, near: 0, far: 1 } as Parameters<typeof clearOf>[1]
  const edges = { left: at(0), width: at(1), bottom: at(0), height: at(1) }
  expect(signs(clearOf('/t', block, block, edges))).toEqual([1, 1, 1, 1])
})
test('length and percentage of what settles are shown with a plus', () =>
  expect(signs(settles('/t', at(80), { value: 2, from: '/order' }))).toEqual([1, 1]))

describe('a plate 2 wide and a casing from 0 to 30, half an inch from either', () => {
  const isHalf = (left: number) => isHalfOn({ left, right: left + 2 }, { left: 0, right: 30 }, 0.5)
  test('clear of it by the gap is off it, by less is half on it', () =>
    expect([-2.5, -2.25, 30.5, 30.25].map(isHalf)).toEqual([false, true, false, true]))
  test('inside it by the gap is on it, by less is half on it', () =>
    expect([0.5, 0.25, 27.5, 27.75].map(isHalf)).toEqual([false, true, false, true]))
})

describe('the lowest ceiling from 0 to 40', () => {
  const over = (...points: readonly (readonly [number, number])[]) =>
    lowestCeiling(
      '/t',
      points.map(([x, y]) => ({ x: at(x), y: at(y) })),
      at(0),
      at(40),
    )[2]
  test('is the least of it', () => expect(inInches(over([0, 100], [20, 99], [40, 101]))).toBe(99))
  test('does not count what is lower beyond its ends', () =>
    expect(inInches(over([-20, 90], [0, 100], [40, 101], [60, 90]))).toBe(100))
  test('counts a point at its very end once, as that end', () =>
    expect(over([0, 100], [20, 99], [40, 101]).terms.map(({ what }) => what)).toEqual([
      'drapery/ceiling-left-end',
      'drapery/ceiling-point',
      'drapery/ceiling-right-end',
    ]))
  test('less 12 is where a rod 12 under it is meant to be', () =>
    expect(inInches(meantFromCeiling('/t', over([20, 99]), at(12)))).toBe(87))
})

test('a hem at 29 clears an apron at 30 by 1 and a floor at 28 1/2 by 1/2', () => {
  const clears = (to: 'apron' | 'floor', height: number) => inInches(clearsBase('/t', { at: to, height: at(height) }, rise(29)))
  expect([clears('apron', 30), clears('floor', 28.5)]).toEqual([1, 0.5])
})

const pleated = { pleats: { value: 3, from: '/order' }, leadingFlat: at(2), firstToLast: at(8), return: at(0) }
test('without a return the outer flat is part of the finished width', () =>
  expect(inInches(makeUp('/t', { ...pleated, outerFlat: at(1) }).finishedWidth)).toBe(11))
test('without a return the leading edge is drawn back to the stack, outer flat and all', () => {
  const { hooks } = makeUp('/t', { ...pleated, outerFlat: at(1) })
  const panel = { panel: 'p', outer: 'left', hooks, leadingFlat: inches(2), outerFlat: inches(1) } as const
  const places = ringPlaces({ ...panel, atWall: false, isStationary: false }, inches(11), inches(0), inches(4))
  expect(places.map(({ stacked }) => stacked / inch)).toEqual([4, 3, 2, 1, 0])
})

test('rings at a support’s own place hang on their panel’s side of it, in whichever order supports are named', () => {
  const rings = [5, 10, 15, 20, 25].map((x) => ({ x: inches(x), outer: 'left' as const }))
  expect(ringsByBay(rings, [inches(20), inches(10)])).toEqual([2, 2, 1])
  expect(
    ringsByBay(
      rings.map(({ x }) => ({ x, outer: 'right' as const })),
      [inches(20), inches(10)],
    ),
  ).toEqual([1, 2, 2])
})
