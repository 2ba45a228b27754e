import fc from 'fast-check'
import { expect, test } from 'vitest'
import { spread, type Wish } from '../src/spread.ts'

const wishes = fc
  .array(fc.record({ at: fc.integer({ min: -200, max: 900 }), slot: fc.integer({ min: 20, max: 60 }) }), { maxLength: 12 })
  .map((all): readonly Wish[] => all.toSorted((a, b) => a.at - b.at))
const gaps = (all: readonly Wish[], places: readonly number[]) =>
  all.slice(1).map((wish, n) => (places[n + 1] as number) - (places[n] as number) - (wish.slot + (all[n] as Wish).slot) / 2)

test('who has room stands where it wishes', () =>
  expect(
    spread(
      [
        { at: 100, slot: 40 },
        { at: 200, slot: 40 },
      ],
      0,
      700,
    ),
  ).toEqual([100, 200]))
test('a crowd stands around its middle', () =>
  expect(
    spread(
      [
        { at: 100, slot: 40 },
        { at: 100, slot: 40 },
        { at: 100, slot: 40 },
      ],
      0,
      700,
    ),
  ).toEqual([60, 100, 140]))
test('nobody stands outside', () =>
  expect(
    spread(
      [
        { at: -50, slot: 40 },
        { at: 900, slot: 40 },
      ],
      0,
      700,
    ),
  ).toEqual([20, 680]))
test('nobody to place is no places', () => expect(spread([], 0, 700)).toEqual([]))
test('the order is kept and neighbours stand apart', () => {
  fc.assert(
    fc.property(wishes, (all) => {
      expect(gaps(all, spread(all, 0, 900)).every((gap) => gap > -1e-6)).toBe(true)
    }),
  )
})
test('all stand inside when there is room for all', () => {
  fc.assert(
    fc.property(wishes, (all) => {
      const [first, last] = [spread(all, 0, 900)[0] ?? 450, spread(all, 0, 900).at(-1) ?? 450]
      expect(first - (all[0]?.slot ?? 0) / 2).toBeGreaterThanOrEqual(-1e-6)
      expect(last + (all.at(-1)?.slot ?? 0) / 2).toBeLessThanOrEqual(900 + 1e-6)
    }),
  )
})
