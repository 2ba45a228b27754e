import fc from 'fast-check'
import { expect, test } from 'vitest'
import { solverOf } from '../src/equations.ts'

const entry = fc.double({ min: -1, max: 1, noNaN: true })
const square = (size: number) =>
  fc.array(fc.array(entry, { minLength: size, maxLength: size }), { minLength: size, maxLength: size })
const sets = fc
  .integer({ min: 1, max: 6 })
  .chain((size) => fc.tuple(square(size), fc.array(entry, { minLength: size, maxLength: size })))

test('what is found fulfils every equation', () =>
  fc.assert(
    fc.property(sets, ([rows, right]) => {
      // The diagonal is made large, so that the equations settle something; the columns are turned round, so that rows must be swapped.
      const strong = rows.map((row, i) => row.map((each, j) => each + (j === rows.length - 1 - i ? 8 : 0)))
      const found = solverOf(strong)?.(right) ?? []
      for (const [i, row] of strong.entries())
        expect(row.reduce((sum, each, j) => sum + each * (found[j] ?? Number.NaN), 0)).toBeCloseTo(right[i] ?? Number.NaN, 9)
    }),
  ))
test('the largest entry of a column is divided by, not a tiny one that happens to come first', () => {
  const found = solverOf([
    [1e-9, 1],
    [1, 1],
  ])?.([1, 2])
  expect(found).toEqual([expect.closeTo(1, 8), expect.closeTo(1, 8)])
})
test('equations that say the same, or very nearly, settle nothing', () => {
  for (const last of [1, 1 + 4e-15])
    expect(
      solverOf([
        [1, 1],
        [1, last],
      ]),
    ).toBeUndefined()
})
test('no equations are solved by nothing', () => expect(solverOf([])?.([])).toEqual([]))
