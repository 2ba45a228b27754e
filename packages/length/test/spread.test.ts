import { inches, type Length, spacesOf, spread } from '@evenhem/length'
import { expect, test } from 'vitest'

test('three spaces in ten nanometres are 3, 4 and 3, and add up', () => {
  expect(spread(10 as Length, 3)).toEqual([0, 3, 7, 10])
  expect(spacesOf(spread(10 as Length, 3))).toEqual([3, 4, 3])
})
test('seven spaces over 26 1/2 inches end at 26 1/2 inches', () => {
  expect(spread(inches(26.5), 7).at(-1)).toBe(inches(26.5))
})
test('one space is the whole', () => expect(spread(inches(4), 1)).toEqual([0, inches(4)]))
test('nothing spreads to nothing', () => expect(spread(0 as Length, 3)).toEqual([0, 0, 0, 0]))
test('a negative total runs the other way, nanometre by nanometre', () => {
  expect(spread(-10 as Length, 3)).toEqual([0, -3, -7, -10])
})
test('fewer than two positions have no spaces', () => {
  expect([spacesOf([]), spacesOf([5 as Length])]).toEqual([[], []])
})
test.each([0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY, 1_000_001])('%d spaces are refused', (n) => {
  expect(() => spread(inches(1), n)).toThrow(`Unexpected ${n} spaces, expected a whole number from 1 to 1000000`)
})
