import { checks, rule } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner, planText } from '../src/index.ts'
import { house, one, over, pluginOf, under, w1 } from './invented.ts'

const width = one('width')
const total = one('total', 'window')

test('facts flow from treatments to their window and back', () => {
  const plugin = pluginOf('p', [
    rule({ id: 'width', on: 'treatment', needs: {}, gives: { width } }).run(({ it }) => ({ width: it.id.length })),
    rule({ id: 'total', on: 'window', needs: { widths: { each: width } }, gives: { total } }).run((_, { widths }) => ({ total: widths.reduce((sum, { value }) => sum + value, 0) })),
    rule({ id: 'share', on: 'treatment', needs: { width, total }, gives: { checks }, codes: ['p/share'] })
      .run(({ at }, { width, total }) => ({ checks: [{ code: 'p/share', verdict: 'pass', at, values: { share: { ratio: width / total } } }] })),
  ])
  const plan = createPlanner([plugin]).window(house, house, w1)
  expect(plan.facts).toEqual([{ id: 'test/total@1', at: w1, value: 9 }, { id: 'test/width@1', at: under, value: 5 }, { id: 'test/width@1', at: over, value: 4 }])
  expect(plan.checks.map((check) => [check.by, check.at, check.values])).toEqual([['p/share', under, { share: { ratio: 5 / 9 } }], ['p/share', over, { share: { ratio: 4 / 9 } }]])
  expect(planText(plan)).toBe(`${JSON.stringify(plan, null, 2)}\n`)
})
