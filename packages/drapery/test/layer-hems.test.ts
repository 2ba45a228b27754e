import { readFileSync } from 'node:fs'
import { inch } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import rules from '../../../schema/job/1/job.schema.json' with { type: 'json' }
import { example, exampleOf } from '../../../tests/tools/examples.ts'
import { stackRules } from '../src/arithmetic/index.ts'

const planner = createPlanner(plugins)
const text = readFileSync(new URL('../../../schema/examples/sheers-behind/job.json', import.meta.url), 'utf8')
/** The plan of a window of an example; `text`: of that job. */
const planOf = (name: string, window: string, text?: string) => {
  const { ordered, found, places } = text === undefined ? example(name) : exampleOf(name, text)
  return planner.window(ordered, found, places.find((each) => each.endsWith(`/${window}`)) ?? '')
}
const hems = (...of: Parameters<typeof planOf>) =>
  planOf(...of)
    .checks.filter(({ code }) => code === 'drapery/layer-hems')
    .map(({ at, verdict, values }) => [
      at.split('/').at(-1),
      verdict,
      values.way,
      (values.above as { readonly length: number }).length / inch,
    ])

// The drapery clears the floor by 1/2. The sheer: 3/4, 1, 1/2 and 1 1/2, which is 1/4, 1/2, 0 and 1 more.
test('a sheer hangs a quarter to half an inch higher than the drapery in front of it, or it is said', () => {
  expect(hems('two-and-three-layers', 'two')).toEqual([['sheer', 'pass', 'higher', 0.25]])
  expect(hems('sheers-behind', 'higher')).toEqual([['sheer', 'pass', 'higher', 0.5]])
  expect(hems('sheers-behind', 'level')).toEqual([['sheer', 'warn', 'level', 0]])
  expect(hems('sheers', 'higher', text.replace('"clearance": "1"', '"clearance": "1 1/2"'))).toEqual([
    ['sheer', 'warn', 'higher', 1],
  ])
})
// Of three layers the middle one is lined: its hem is level with the one in front, as two draperies are.
test('a lined layer is not judged against the next one', () => {
  expect(hems('two-and-three-layers', 'three')).toEqual([['sheer', 'pass', 'higher', 0.25]])
})
test('a sheer to the sill and a drapery that lies on the floor are meant so', () => {
  const toTheSill = text
    .replace('"clearance": "1"', '"clearance": "1", "hemAt": "sill"')
    .replace('"glass": {', '"sill": { "top": "30" }, "glass": {')
  expect(hems('sheers', 'higher', toTheSill)).toEqual([])
  expect(hems('sheers', 'higher', text.replace('"clearance": "1/2"', '"clearance": "-1"'))).toEqual([])
})

const stack = (window: string, treatment: string) =>
  planOf('sheers-behind', window)
    .reckonings.filter(({ name }) => name.includes(`/${treatment}/panels/left#stack`))
    .map(({ name, what, value }) => [name.split('#')[1], what, value / inch])
// Glass of 54: a third is 18, 9 a side. Each sheer has 10 carriers of 5/8, 6 1/4, which is less.
test('a workroom chooses the published rule that its stacks go by', () => {
  expect(stack('higher', 'sheer').filter(([name]) => !String(name).startsWith('stack-by-'))).toEqual([
    ['stack-rule', 'drapery/stack-by-glass-third', 9],
    ['stack', 'drapery/stack', 9],
  ])
})
// The sheer covers half of 80 and half of the overlap of 3: 41 1/2, a third of which is 13.8333.
test('while the glass is not measured a third of the share stands in, by its name, and the glass is asked for', () => {
  const [rule, whole] = stack('glass-not-measured', 'sheer')
  expect([rule?.[1], whole?.[2]]).toEqual(['drapery/stack-rule', expect.closeTo(13.8333, 4)])
  expect(planOf('sheers-behind', 'glass-not-measured').asks.map(({ at }) => at.split('/').slice(-2).join('/'))).toEqual([
    'glass/fromLeft',
    'glass/width',
  ])
})
test('a rule that the format takes is one of those that are reckoned, and the other way round', () => {
  expect(stackRules.map(({ says }) => says)).toEqual(rules.$defs.rules.properties.stackBy.enum)
})
