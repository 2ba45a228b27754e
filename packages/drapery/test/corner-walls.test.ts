import { readFileSync } from 'node:fs'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { exampleOf } from '../../../tests/tools/examples.ts'

const text = readFileSync(new URL('../../../schema/examples/around-the-corner/job.json', import.meta.url), 'utf8')
const asksOf = (change: (job: string) => string) => {
  const { ordered, found, places } = exampleOf('corner', change(text))
  const plan = createPlanner(plugins).window(ordered, found, places.find((each) => each.endsWith('/bay')) ?? '')
  return plan.asks.map(({ at }) => at.split('/walls/')[1]).filter((at) => at?.includes('/space/'))
}

test('around corners only the walls at the two ends of the rod are asked what is free beside them', () => {
  const without = (job: string) => JSON.stringify(JSON.parse(job), (name, value) => (name === 'space' ? undefined : value))
  expect(asksOf(without)).toEqual(['left/space/left', 'right/space/right'])
})
