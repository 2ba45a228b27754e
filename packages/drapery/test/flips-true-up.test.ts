import { inch, inches, type Known, type Length, type LengthReckoning } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import {
  type ChainHook,
  chainOf,
  clearsAfter,
  type Held,
  hookDrawn,
  leastLeft,
  liftOf,
  moveBrackets,
  setPins,
  trueUp,
} from '../src/arithmetic/index.ts'

// One test for each change of a sign or a comparison that nothing else noticed; figures worked out by hand.

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
const place = (value: number): LengthReckoning => ({
  name: `/test#${value}`,
  what: 'x',
  value: inches(value),
  unit: 'length',
  how: 'given',
  terms: [],
})
const eighth = inches(1 / 8)
const rings = { least: inches(1 / 4), most: inches(3 / 4), step: eighth }
const inInches = (lengths: readonly number[]): readonly number[] => lengths.map((length) => length / inch)
/** Hooks of one panel without a return, their pins at 1/2. */
const panel = (...lifts: readonly number[]): readonly ChainHook[] =>
  chainOf([{ hooks: lifts.map((lift) => ({ pin: inches(0.5), lift: inches(lift) })), back: false }], eighth, inches(1 / 16))

test('where a hook hangs follows from both ends of its panel, neither taken away', () =>
  expect(hookDrawn('/test#1', inches(12), place(30), place(0)).terms.map(({ sign }) => sign)).toEqual([1, 1]))
test('a hem 1/4 farther below the apron than ordered rises by that, one above a floor comes down by it', () =>
  expect(inInches([liftOf('apron', inches(3 / 4), inches(1 / 2)), liftOf('floor', inches(3 / 4), inches(1 / 2))])).toEqual([
    1 / 4,
    -1 / 4,
  ]))
test('a pin from 1/2 to 3/4 leaves 1 1/4 of 1 above the floor, and 3/4 of 1 below the apron', () => {
  const after = (hemAt: 'floor' | 'apron') => clearsAfter('/test#2', hemAt, place(1), at(1 / 2), place(3 / 4)).value
  expect(inInches([after('floor'), after('apron')])).toEqual([5 / 4, 3 / 4])
})

describe('pins that would do as well', () => {
  // The first hook leaves 3/4 whatever is done, and its pin at 3/4 pulls the second to 5/8 at least: 1/16 less than it needs, as 3/4 is more.
  const chain = panel(1, 3 / 16)
  test('the shallower is taken', () => expect(inInches(setPins(chain, rings).pins)).toEqual([3 / 4, 5 / 8]))
  test('sixteenths, which leave no less at the worst hook, are not', () =>
    expect(inInches(trueUp(chain, rings, eighth).pins)).toEqual([3 / 4, 5 / 8]))
  test('eighths that leave just the tolerance stand', () =>
    expect(inInches(trueUp(panel(3 / 16), rings, inches(1 / 16)).pins)).toEqual([5 / 8]))
})

describe('brackets that would do as well', () => {
  const held = (supports: Held['supports']): Held => ({
    left: { x: 0 as Length, least: inches(3 / 8) },
    right: { x: inches(80), least: inches(3 / 8) },
    supports,
  })
  const rules = { step: eighth, most: inches(3 / 8), inLine: inches(1 / 16), tolerance: eighth }
  test('of up and down the first is taken', () => {
    const hooks = [1, -1].map((lift) => ({ x: 0 as Length, lift: inches(lift) }))
    expect(moveBrackets(hooks, held([]), { ...rules, tolerance: inches(2) })).toMatchObject({ left: 0, right: inches(3 / 8) })
  })
  test('a support that rises by just 1/16 is in line', () => {
    // At five sixths of the way the left bracket's 3/8 come to 1/16.
    const support = { x: inches(200 / 3), least: inches(3 / 8) }
    const hooks = [
      { x: 0 as Length, lift: inches(3 / 8) },
      { x: inches(80), lift: 0 as Length },
    ]
    expect(moveBrackets(hooks, held([support]), rules)).toMatchObject({ left: inches(3 / 8), right: 0, remains: 0 })
  })
})

describe('what pins can leave at the least, each to the end of its range', () => {
  const least = (...lifts: readonly number[]) => leastLeft(panel(...lifts), rings) / inch
  test('from 1/2 they reach 1/4 up and 1/4 down', () => {
    expect([least(1), least(-1), least(1 / 4), least(-1 / 4), least(0)]).toEqual([3 / 4, 3 / 4, 0, 0, 0])
  })
  test('the worst hook counts', () => expect(least(1 / 2, -3 / 8, 0)).toBe(1 / 4))
  test('a pin beyond the range may stay, and reaches nothing beyond itself', () => {
    const beyond = (pin: number, lift: number) =>
      leastLeft([{ pin: inches(pin), lift: inches(lift), apart: eighth }], rings) / inch
    expect([beyond(1, 1 / 2), beyond(1, -1), beyond(1 / 8, -1 / 2), beyond(1 / 8, 1)]).toEqual([1 / 2, 1 / 4, 1 / 2, 3 / 8])
  })
})
