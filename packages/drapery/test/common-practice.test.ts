import { inch, inches, type Known, type Length, type LengthReckoning } from '@evenhem/length'
import { expect, test } from 'vitest'
import {
  agreeing,
  coverEnds,
  endBracket,
  heights,
  heightsApart,
  holeHeight,
  makeUp,
  marksAt,
  meantFromFloor,
  pairShares,
  pastCasing,
  ringPlaces,
  ringsNeeded,
  spreadOf,
  topOfPlate,
  topOfRod,
} from '../src/arithmetic/index.ts'

// Check values that are common practice, no source.

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/order' })
const level: LengthReckoning = {
  name: '/w#floor',
  what: 'drapery/highest-floor',
  value: 0 as Length,
  unit: 'length',
  how: 'given',
  terms: [],
}
const onFloor = { at: 'floor', height: { value: 0 as Length, from: '/w#floor' } } as const
const thirty = { right: at(30), width: at(30) }
const inInches = (known: { readonly value: number }): number => known.value / inch

test('top of rod to bottom of drapery 86 and clearance 1/2 put the top of a bracket 1/2 below the rod at 86', () => {
  const rod = topOfRod(
    '/t',
    heights('/t', onFloor, at(0.5), [{ panel: 'left', finishedLength: at(84), pin: at(0.5) }]).hangLine,
    at(2.5),
  )
  expect(inInches(rod)).toBe(86.5)
  expect(inInches(topOfPlate('/t', rod, at(-0.5)))).toBe(86)
})

test('a rod of 36 on a casing of 30 passes it by 3 on each side, and its brackets stand 2 outside it', () => {
  const { left, right } = coverEnds('/t', { frame: thirty, rodWidth: at(36) })!
  const past = pastCasing('/t', left, right, thirty)
  expect([inInches(past.left), inInches(past.right)]).toEqual([3, 3])
  expect(inInches(endBracket('/t', 'left', left, at(1)))).toBe(-2)
  expect(inInches(endBracket('/t', 'right', right, at(1)))).toBe(32)
})

test('an extension that is not even moves both cover ends, and the meeting point with them', () => {
  const ends = coverEnds('/t', { frame: thirty, rodWidth: at(36), pastLeft: at(2) })!
  expect([ends.left, ends.right, pairShares('/t', ends, {}).meets].map(inInches)).toEqual([-2, 34, 16])
})

test('a panel of ten pleats has twelve hooks, and eleven rings when its return goes to the wall', () => {
  expect(tenPleats().hooks.map((hook) => hook.on)).toEqual(['leading-edge', ...Array(10).fill('pleat'), 'outer-edge'])
  expect(ringsNeeded('/t', [{ panel: 'left', pleats: { value: 10, from: '/p' }, atWall: true }]).at(-1)?.value).toBe(11)
  expect(ringsNeeded('/t', [{ panel: 'left', pleats: { value: 10, from: '/p' }, atWall: false }]).at(-1)?.value).toBe(12)
})

test('one ring parks outside the bracket on a return side, and the return takes none', () => {
  const places = ringPlaces(
    { panel: 'right', outer: 'right', hooks: tenPleats().hooks, leadingFlat: inches(1), atWall: true, isStationary: false },
    inches(31),
    inches(68),
    inches(12),
  )
  expect(places.filter((place) => place.parksOutside).map((place) => place.ring)).toEqual([11])
  expect(places.at(-1)).toMatchObject({ hook: { on: 'outer-edge' }, parksOutside: false })
  expect(places.at(-1)).not.toHaveProperty('ring')
})

test('two rings park outside a bracket where there is no return', () => {
  const places = ringPlaces(
    { panel: 'right', outer: 'right', hooks: tenPleats().hooks, leadingFlat: inches(1), atWall: false, isStationary: false },
    inches(31),
    inches(68),
    inches(12),
  )
  expect(places.filter((place) => place.parksOutside).map((place) => place.ring)).toEqual([11, 12])
})

test('drawn, a panel runs from the meeting point to its cover end; stacked, it comes back to its stack', () => {
  const places = ringPlaces(
    { panel: 'left', outer: 'left', hooks: tenPleats().hooks, leadingFlat: inches(1), atWall: true, isStationary: false },
    inches(31),
    inches(-6),
    inches(12),
  )
  expect(inInches({ value: places[0]!.drawn })).toBe(31)
  expect(inInches({ value: places[1]!.drawn })).toBe(30)
  expect(inInches({ value: places[10]!.drawn })).toBe(-6)
  expect([places[0]!.stacked, places[10]!.stacked].map((x) => x / inch)).toEqual([6, -6])
})

test('rings inside a bracket come no nearer to it than half a bracket and half a ring, and no nearer to one another than a ring', () => {
  const near = (outer: 'left' | 'right', end: number, nearest: number) =>
    ringPlaces(
      { panel: outer, outer, hooks: tenPleats().hooks, leadingFlat: inches(1), atWall: true, isStationary: false },
      inches(31),
      inches(end),
      inches(2),
      { nearest: inches(nearest), ringWidth: inches(0.25) },
    ).map((place) => place.stacked / inch)
  // ten rings inside, the tenth hook at 1 3/4 from the end, each a quarter further in; the pleat at the end and the return stay there
  expect(near('right', 68, 66.25)).toEqual([64, 64.25, 64.5, 64.75, 65, 65.25, 65.5, 65.75, 66, 66.25, 68, 68])
  expect(near('left', -6, -4.25)).toEqual([-2, -2.25, -2.5, -2.75, -3, -3.25, -3.5, -3.75, -4, -4.25, -6, -6])
  // where there is room they stand as the stack has them
  expect(near('right', 68, 67.875).slice(0, 2)).toEqual([65.625, 65.875])
})

test('without a return the last pleat hangs an outer flat inside the end, and the spaces fill what is left', () => {
  const { hooks } = makeUp('/t', {
    pleats: { value: 10, from: '/p' },
    leadingFlat: at(1),
    firstToLast: at(36),
    return: at(0),
    outerFlat: at(1.5),
  })
  const places = ringPlaces(
    { panel: 'right', outer: 'right', hooks, leadingFlat: inches(1), outerFlat: inches(1.5), atWall: false, isStationary: false },
    inches(31),
    inches(69.5),
    inches(12),
  )
  // 69 1/2 − 31 − 1 − 1 1/2 = 36 in nine spaces of 4
  expect(places.slice(1).map((place) => place.drawn / inch)).toEqual([32, 36, 40, 44, 48, 52, 56, 60, 64, 68, 69.5])
})

test('three marks that agree within 1/8 agree, and one that is 3/16 off does not', () => {
  const first = { hole: at(90), head: at(86), ceiling: at(103) }
  const there = (head: number, ceiling: number) => marksAt('/t#m', first, { head: at(head), ceiling: at(ceiling) })
  expect(agreeing(there(86.125, 103), inches(0.125))).toEqual([['ceiling', 'head', 'floor']])
  expect(spreadOf(Object.values(there(86.125, 103)))).toBe(inches(0.125))
  expect(agreeing(there(86.1875, 103), inches(0.125))).toEqual([['ceiling', 'floor']])
  expect(inInches(there(86.1875, 103).head ?? level)).toBe(90.1875)
  expect(inInches(there(86, 102.75).ceiling ?? level)).toBe(89.75)
})

test('a deeper pin lifts heading and hem: the hang line comes down by as much', () => {
  const hung = (pin: number) => heights('/t', onFloor, at(0.5), [{ panel: 'left', finishedLength: at(84), pin: at(pin) }])
  expect(inInches(hung(0.75).hangLine) - inInches(hung(0.5).hangLine)).toBe(-0.25)
  expect(hung(0.75).top.value).toBe(hung(0.5).top.value)
})

test('the longer of two panels sets the rod, and the shorter hangs higher by the difference', () => {
  const hung = heights('/t', onFloor, at(0.5), [
    { panel: 'left', finishedLength: at(84), pin: at(0.5) },
    { panel: 'right', finishedLength: at(84.125), pin: at(0.5) },
  ])
  expect(inInches(hung.hangLine)).toBe(84.125)
  expect(hung.panels.map((panel) => inInches(panel.hem))).toEqual([0.625, 0.5])
})

test('a plate may stand above its rod, and a hole is counted down from it', () => {
  const plate = topOfPlate('/t', { ...level, value: inches(86) }, at(0.25))
  expect([inInches(plate), inInches(holeHeight('/t#h', plate, at(0.625)))]).toEqual([86.25, 85.625])
})

test('panels that ask for a higher rod than ordered are long by the difference', () => {
  const meant = meantFromFloor('/t', level, at(86))
  expect(inInches(heightsApart('/t', { ...level, value: inches(86.5) }, meant))).toBe(0.5)
})

const tenPleats = () =>
  makeUp('/t', { pleats: { value: 10, from: '/p' }, leadingFlat: at(1), firstToLast: at(36), return: at(3.5) })
