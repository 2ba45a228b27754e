import { inch, inches, type Known, type Length, number } from '@evenhem/length'
import { expect, test } from 'vitest'
import {
  carrierPlaces,
  carriersNeeded,
  coverEnds,
  type Hook,
  hooksAlong,
  overlapped,
  pairShares,
  type Takers,
  underCeiling,
} from '../src/arithmetic/index.ts'

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
const hooks = (pleats: number): readonly Hook[] => [
  { n: 1, on: 'leading-edge', across: 0 as Length },
  ...Array.from({ length: pleats }, (_, i): Hook => ({ n: i + 2, on: 'pleat', pleat: i + 1, across: inches(2 + 4 * i) })),
  { n: pleats + 2, on: 'outer-edge', across: inches(2 + 4 * pleats) },
]
/** `m1 m3 c1 c2 … end back`. */
const written = (pleats: number, takers: Takers, atWall = false): string =>
  carrierPlaces({ hooks: hooks(pleats), atWall }, takers)
    .map((place) => ('number' in place ? `${place.to[0]}${place.number}` : place.to))
    .join(' ')

test('leading edge and first pleat go to the first and third hole of the master, the last two to the end bracket', () => {
  expect(written(5, { masterHoles: 3, endHoles: 2 })).toBe('m1 m3 c1 c2 c3 end back')
})
test('with one hook hole, or none, carriers take the others', () => {
  expect(written(5, { masterHoles: 3, endHoles: 1 })).toBe('m1 m3 c1 c2 c3 c4 only')
  expect(written(5, { masterHoles: 3, endHoles: 0 })).toBe('m1 m3 c1 c2 c3 c4 c5')
})
test('a master of two holes has no third; one of one hole takes the leading edge alone; stationary panels have none', () => {
  expect(written(3, { masterHoles: 2, endHoles: 2 })).toBe('m1 m2 c1 end back')
  expect(written(3, { masterHoles: 1, endHoles: 2 })).toBe('m1 c1 c2 end back')
  expect(written(3, { masterHoles: 0, endHoles: 2 })).toBe('c1 c2 c3 end back')
})
test('an outer edge that is held at the wall leaves the end bracket to the last pleat', () => {
  expect(written(5, { masterHoles: 3, endHoles: 2 }, true)).toBe('m1 m3 c1 c2 c3 end wall')
  expect(written(5, { masterHoles: 3, endHoles: 0 }, true)).toBe('m1 m3 c1 c2 c3 c4 wall')
})
test('carriers needed are pleats less 2, 1 or 0 for 2, 1 or 0 hook holes', () => {
  const needed = (endHoles: Takers['endHoles']) => {
    const to = carrierPlaces({ hooks: hooks(11), atWall: false }, { masterHoles: 3, endHoles })
    const of = (...kinds: readonly string[]) => number(to.filter((place) => kinds.includes(place.to)).length)
    const sum = { master: of('master'), end: of('end', 'back', 'only'), wall: of('wall') }
    return carriersNeeded('/test', { value: 11, from: '/pleats' }, sum).value
  }
  expect([needed(2), needed(1), needed(0)]).toEqual([9, 10, 11])
})

test('drawn, hooks stand at their pleats and the last at the end; stacked, the leading edge has come back', () => {
  const panel = {
    panel: 'left',
    outer: 'left' as const,
    hooks: hooks(3),
    leadingFlat: inches(2),
    atWall: false,
    isStationary: false,
  }
  const places = hooksAlong(panel, inches(30), inches(-12), inches(9))
  expect(places.map(({ drawn }) => drawn / inch)).toEqual([30, 28, 8, -12, -12])
  expect(places.map(({ stacked }) => stacked / inch)).toEqual([-3, -6, -9, -12, -12])
})

test('each panel of a pair is its share and half the overlap', () => {
  const ends = coverEnds('/test', { frame: { right: at(60), width: at(60) }, rodWidth: at(84), pastLeft: at(12) })
  if (!ends) throw new Error('no ends')
  const { leading, covers } = overlapped('/test', pairShares('/test', ends, {}), at(3.5))
  expect([leading.left, leading.right, covers.left, covers.right].map(({ value }) => value / inch)).toEqual([
    31.75, 28.25, 43.75, 43.75,
  ])
})

// Ceiling 97 1/4 at the left and 97 at the right of 84; floor 0 at the left, 1/4 in the middle, 0 at the right. Drop 1 1/4, pin 1/4, length 95 3/4.
// Hem = ceiling − 1 1/4 + 1/4 − 95 3/4 = ceiling − 96 3/4: 1/2 at the left, 3/8 in the middle, 1/4 at the right; clear of the floor 1/2, 1/8, 1/4.
test('under a ceiling the clearance is worked out at the left, in the middle and at the right, and the tightest place sets the hang line', () => {
  const panel = (id: string, left: number, right: number) => ({
    panel: id,
    finishedLength: at(95.75),
    pin: at(0.25),
    left: at(left),
    right: at(right),
  })
  const hung = underCeiling(
    '/test',
    { left: at(-12), right: at(72) },
    at(1.25),
    [
      { x: at(-12), y: at(97.25) },
      { x: at(72), y: at(97) },
    ],
    [
      { x: at(-12), y: at(0) },
      { x: at(30), y: at(0.25) },
      { x: at(72), y: at(0) },
    ],
    undefined,
    [panel('left', -12, 30), panel('right', 30, 72)],
  )
  expect([hung.left, hung.middle, hung.right].map(({ value }) => value / inch)).toEqual([0.5, 0.125, 0.25])
  expect(hung.hangLine.value / inch).toBe(97.125 - 1.25)
  expect(hung.panels.map(({ clears }) => clears.value / inch)).toEqual([0.125, 0.125])
})
