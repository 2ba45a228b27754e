import { expect, test } from 'vitest'
import { type RowLimits, type Stretch, seats, type Way } from '../src/tiers.ts'

const limits: RowLimits = { low: 0, high: 1000, tick: 5, clear: 5 }
const way = (along: number, captioned = false): Way => ({ along, near: 10, far: 10, captioned })
const stretch = (low: number, high: number, label = 40): Stretch => ({ low, high, ways: [way(label)] })
const tiers = (...all: readonly Stretch[]) => seats(all, limits).map((seat) => seat.tier)

test('a chain stands in one row', () => expect(tiers(stretch(0, 100), stretch(100, 300), stretch(300, 400))).toEqual([0, 0, 0]))
test('what overlaps stands in rows of its own', () => expect(tiers(stretch(0, 200), stretch(100, 300))).toEqual([0, 1]))
test('what is long stands outside the short that it spans, whatever the order', () => {
  expect(tiers(stretch(0, 400), stretch(0, 100), stretch(100, 400))).toEqual([1, 0, 0])
  expect(tiers(stretch(0, 400), stretch(180, 210))).toEqual([1, 0])
})
test('a label without room goes outside the last tick', () => {
  const [, , last] = seats([stretch(0, 100), stretch(100, 300), stretch(300, 340)], limits)
  expect(last).toMatchObject({ tier: 0, outside: true, mid: 370 })
})
test('at the end of the page it goes outside the first tick', () => {
  expect(seats([stretch(960, 1000)], limits)[0]).toMatchObject({ outside: true, mid: 930 })
})
test('in the middle of a chain it goes to a row of its own', () =>
  expect(tiers(stretch(0, 100), stretch(100, 120), stretch(120, 300))).toEqual([0, 1, 0]))
test('a caption is dropped before a label goes outside', () => {
  expect(seats([{ low: 0, high: 70, ways: [way(100, true), way(40)] }], limits)[0]).toMatchObject({
    outside: false,
    way: { captioned: false },
  })
})
test('nothing to seat is no seats', () => expect(seats([], limits)).toEqual([]))
test('the same stretch twice has two rows', () => expect(tiers(stretch(0, 100), stretch(0, 100))).toEqual([0, 1]))
