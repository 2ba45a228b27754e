import { comesTo, inch, inches, type Known, type Length } from '@evenhem/length'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  areSwapped,
  compareCount,
  compareFinishedLength,
  compareFirstToLast,
  comparePair,
  comparePin,
  compareReturn,
  coverEnds,
  coverLess,
  explained,
  finialTip,
  floorAt,
  fromCasing,
  fromFloor,
  highestFloor,
  makeUp,
  meantFromCasing,
  pairShares,
  returnHoleHeight,
  returnLess,
  ringsOver,
  rodEnd,
  type Span,
  spaceLeft,
  stackOfShare,
  straight,
} from '../src/arithmetic/index.ts'

const at = (value: number, from = '/order'): Known<Length> => ({ value: inches(value), from })
const given = (value: number) =>
  ({ name: '/t#given', what: 'given', value: inches(value), unit: 'length', how: 'given', terms: [] }) as const
const span = (width: number, left?: number): Span => ({
  ...(left === undefined ? {} : { left: at(left) }),
  right: at((left ?? 0) + width),
  width: at(width),
})
const inInches = (known: { readonly value: number }): number => known.value / inch
const points = [
  { x: at(-7), y: at(0) },
  { x: at(31), y: at(-0.125) },
  { x: at(69), y: at(-0.375) },
]

test('the floor at a point that was read is that reading', () => expect(inInches(floorAt('/t#f', points, at(31)))).toBe(-0.125))
test('the floor between two points is straight', () => expect(inInches(floorAt('/t#f', points, at(12)))).toBe(-0.0625))
test('the floor beyond the outer points is level', () => {
  expect(inInches(floorAt('/t#f', points, at(-20)))).toBe(0)
  expect(inInches(floorAt('/t#f', points, at(80)))).toBe(-0.375)
})
test('without points the floor is the level line', () =>
  expect(floorAt('/t#f', [], at(3))).toMatchObject({ value: 0, terms: [{ from: 'number:0' }] }))
test('a hump between the ends is the highest floor', () =>
  expect(
    inInches(
      highestFloor(
        '/t',
        [
          { x: at(0), y: at(0) },
          { x: at(10), y: at(0.25) },
          { x: at(20), y: at(0) },
        ],
        at(0),
        at(20),
      )[2],
    ),
  ).toBe(0.25))
test('a hump outside the drapery does not lift its hem', () =>
  expect(
    inInches(
      highestFloor(
        '/t',
        [
          { x: at(-9), y: at(1) },
          { x: at(0), y: at(0) },
          { x: at(20), y: at(0) },
        ],
        at(0),
        at(20),
      )[2],
    ),
  ).toBe(0))
test('an interpolated floor comes to what its terms say', () => {
  fc.assert(
    fc.property(fc.integer({ min: -6, max: 68 }), (x) => {
      const { value, how, terms } = floorAt('/t#f', points, at(x))
      const [place, x1, y1, x2, y2] = terms.map((term) => term.value) as [number, number, number, number, number]
      expect(value).toBe(how === 'formula' ? Math.round(straight(place, x1, y1, x2, y2)) : comesTo(how, terms))
    }),
  )
})

test('the rod runs half a ring past the parked ring, and the finial starts there', () => {
  const [, left] = rodEnd('/t', 'left', { coverEnd: given(-8) }, at(0.25))
  const [, right] = rodEnd('/t', 'right', { coverEnd: given(70) }, at(0.25))
  expect([left, right].map(inInches)).toEqual([-8.125, 70.125])
  expect([finialTip('/t', 'left', left, at(2.5)), finialTip('/t', 'right', right, at(2.5))].map(inInches)).toEqual([
    -10.625, 72.625,
  ])
})
test('wall left over is the free wall less what the hardware takes of it', () => {
  expect(inInches(spaceLeft('/t', 'left', given(-10.625), at(19), span(62)))).toBe(8.375)
  expect(inInches(spaceLeft('/t', 'right', given(72.625), at(10), span(62)))).toBe(-0.625)
})
test('a place is measured outward from the nearer edge of the casing', () => {
  expect(inInches(fromCasing('/t#c', 'left', given(-7), span(62)))).toBe(7)
  expect(inInches(fromCasing('/t#c', 'right', given(69), span(62)))).toBe(7)
  expect(inInches(fromCasing('/t#c', 'left', given(1), span(62)))).toBe(-1)
})
test('a hole over a low floor reads higher on the tape', () =>
  expect(inInches(fromFloor('/t#h', given(90), given(-0.375)))).toBe(90.375))
test('the wall angle’s hole is below the hang line', () =>
  expect(inInches(returnHoleHeight('/t#h', given(89), at(0.25)))).toBe(88.75))
test('a rod may be ordered above the casing', () => expect(inInches(meantFromCasing('/t', at(86.25), at(4)))).toBe(90.25))

test('the map of a panel closes: flats, spaces and pleats add up to both widths', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 60 }),
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 16, max: 2000 }),
      fc.integer({ min: 0, max: 80 }),
      (pleats, leading, first, back) => {
        const made = makeUp('/t', {
          pleats: { value: pleats, from: '/p' },
          leadingFlat: at(leading / 16),
          firstToLast: at(first / 16),
          return: at(back / 16),
          flatWidth: at(200),
        })
        expect(made.finishedWidth.value).toBe(inches((leading + first + back) / 16))
        expect(Math.abs(made.space.value * (pleats - 1) - inches(first / 16))).toBeLessThan(pleats)
        expect(Math.abs((made.pleat?.value ?? 0) * pleats + made.finishedWidth.value - inches(200))).toBeLessThan(pleats)
        expect(made.hooks.at(-1)?.across).toBe(made.finishedWidth.value)
        expect(made.hooks[pleats]?.across).toBe(inches((leading + first) / 16))
      },
    ),
  )
})
test('the two shares of a pair are its rod width, to the nanometre or one', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9_000_000_000 }), fc.integer({ min: 1, max: 9_000_000_000 }), (casing, rod) => {
      const width = { value: casing as Length, from: '/c' }
      const ends = coverEnds('/t', { frame: { right: width, width }, rodWidth: { value: rod as Length, from: '/r' } })!
      const { left, right } = pairShares('/t', ends, {})
      expect(Math.abs(left.value + right.value - rod)).toBeLessThanOrEqual(1)
      expect(ends.right.value - ends.left.value).toBe(rod)
    }),
  )
})
test('cloth over the share is positive, a gap negative', () => {
  expect(inInches(coverLess('/t', at(1.5), at(37.5), undefined, given(38.75)))).toBe(0.25)
  expect(inInches(coverLess('/t', at(1.5), at(37), undefined, given(38.75)))).toBe(-0.25)
})
test('a return wider than the projection is positive', () => expect(inInches(returnLess('/t#r', at(4), at(3.5)))).toBe(0.5))
test('rings missing are negative', () =>
  expect(ringsOver('/t', { value: 20, from: '/r' }, { ...given(0), unit: 'count', value: 24 }).value).toBe(-4))
test('a stack is never less than its rings side by side', () => {
  expect(inInches(stackOfShare('/t', given(39), 12, at(0.25)).at(-1)!)).toBe(13)
  expect(inInches(stackOfShare('/t', given(6), 12, at(0.25)).at(-1)!)).toBe(3)
})

const allowances = {
  pin: { value: inches(0.5), put: 'on' },
  eye: { value: inches(2.125), put: 'off' },
} as const
test('a deduction that was forgotten makes a panel long by it, one taken twice short', () => {
  expect(explained(inches(2.125), allowances, inches(0.0625))).toEqual([{ what: 'eye', how: 'forgotten' }])
  expect(explained(inches(-2.125), allowances, inches(0.0625))).toEqual([{ what: 'eye', how: 'twice' }])
  expect(explained(inches(1), allowances, inches(0.0625))).toEqual([])
})
test('the pin setting is put on: forgotten it makes a panel short by it, added twice long', () => {
  expect(explained(inches(-0.5), allowances, inches(0.0625))).toEqual([{ what: 'pin', how: 'forgotten' }])
  expect(explained(inches(0.5), allowances, inches(0.0625))).toEqual([{ what: 'pin', how: 'twice' }])
})
test('equal allowances cannot be told apart', () =>
  expect(
    explained(inches(0.5), { pin: allowances.pin, clearance: { value: inches(0.5), put: 'off' } }, inches(0.0625)).length,
  ).toBe(2))

const range = { deeper: inches(0.25), shallower: inches(0.25) }
test('a finished length within a quarter goes on', () =>
  expect(compareFinishedLength(inches(89), inches(89.25), inches(0.25), range)).toMatchObject({ within: true, leads: 'go on' }))
test('a long panel past the tolerance that pins can take up has its pins set deeper', () =>
  expect(compareFinishedLength(inches(89), inches(89.25), inches(0.125), range)).toMatchObject({
    within: false,
    leads: 'reset pins',
    by: inches(0.25),
  }))
test('a short panel past what pins can take up is the workroom’s', () =>
  expect(compareFinishedLength(inches(89), inches(88.5), inches(0.25), range)).toMatchObject({
    leads: 'call the workroom',
    difference: inches(-0.5),
  }))
test('a pair may differ by an eighth and no more', () => {
  expect(comparePair(inches(89), inches(89.125), inches(0.125)).within).toBe(true)
  expect(comparePair(inches(89), inches(89.1875), inches(0.125))).toMatchObject({ within: false, by: inches(0.1875) })
})
test('first to last may be off by a half up to 72, and by a hundredth beyond', () => {
  expect(compareFirstToLast(inches(72), inches(72.5), inches(0.5), inches(72)).within).toBe(true)
  expect(compareFirstToLast(inches(100), inches(101), inches(0.5), inches(72)).within).toBe(true)
  expect(compareFirstToLast(inches(100), inches(98.9), inches(0.5), inches(72)).within).toBe(false)
})
test('a return may be an eighth short and a half over', () => {
  expect(compareReturn(inches(3.5), inches(3.375), inches(0.125), inches(0.5)).within).toBe(true)
  expect(compareReturn(inches(3.5), inches(3.25), inches(0.125), inches(0.5)).within).toBe(false)
  expect(compareReturn(inches(3.5), inches(4), inches(0.125), inches(0.5)).within).toBe(true)
})
test('a pin an eighth off is reset by an eighth', () =>
  expect(comparePin(inches(0.5), inches(0.375), inches(0.0625))).toMatchObject({ leads: 'reset pins', by: inches(0.125) }))
test('missing things stop, surplus is spare', () => {
  expect(compareCount(24, 22)).toMatchObject({ missing: 2, spare: 0, enough: false })
  expect(compareCount(24, 26)).toMatchObject({ missing: 0, spare: 2, enough: true })
})
test('panels in each other’s bags are found', () => {
  expect(areSwapped([inches(89), inches(90)], [inches(90), inches(89)], inches(0.125))).toBe(true)
  expect(areSwapped([inches(89), inches(89)], [inches(89), inches(89)], inches(0.125))).toBe(false)
})
