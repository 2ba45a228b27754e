import { inch } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'

const { ordered, found, places } = example('two-and-three-layers')
const planner = createPlanner(plugins)
const planOf = (window: string) => planner.window(ordered, found, places.find((each) => each.endsWith(`/${window}`)) ?? '')
const checksOf = (window: string, code: string) =>
  planOf(window)
    .checks.filter((check) => check.code === code)
    .map(({ verdict, at, values }) => {
      const length = (values.apart ?? values.gap) as { readonly length: number } | undefined
      return [at.split('/').at(-1), verdict, length && length.length / inch]
    })

// Hooks bear 1 1/2, 3 1/2 and 6 out from the wall.
test('each layer is judged against the one behind it', () => {
  expect(checksOf('three', 'drapery/layers')).toEqual([
    ['over', 'pass', 2],
    ['front', 'pass', 2.5],
  ])
})
// The sheer's rod runs from −10 to 70, the middle one's from −12 to 72, the front one covers −16 to 76: 2, then 4 to the nearer of both.
test('returns take in all that hangs behind them, whatever hardware it is', () => {
  expect(checksOf('three', 'drapery/return-clears')).toEqual([
    ['over', 'pass', 2],
    ['front', 'pass', 4],
  ])
  // −15 to 75 behind −12 to 72.
  expect(checksOf('two-wrong', 'drapery/return-clears')).toEqual([['over', 'fail', 3]])
})
// 89 1/4 − 1 1/4 = 88: hem 3/4 + 87 1/2 − pin 1 3/8 + drop 1 1/8 is 88 too; with 87 it is 1/2 lower.
test('a rod in double brackets is where they carry it, or it is said', () => {
  expect(checksOf('two', 'drapery/double-bracket')).toEqual([['sheer', 'pass', 0]])
  expect(checksOf('two-wrong', 'drapery/double-bracket')).toEqual([['sheer', 'fail', 0.5]])
  expect(checksOf('no-double', 'drapery/double-bracket')[0]?.[1]).toBe('unknown')
})
test('double brackets are marked, drilled and counted once', () => {
  const plan = planOf('two')
  const holes = plan.facts
    .filter(({ id }) => id === 'drapery/holes@1')
    .flatMap(({ value }) => value as readonly { readonly id: string }[])
  expect(holes.length).toBe(6)
  const count = (what: string) => plan.parts.filter((part) => part.what === what).reduce((all, part) => all + part.count, 0)
  expect([count('traverse/part-bracket'), count('traverse/part-support'), count('traverse/part-screw')]).toEqual([2, 1, 6])
  expect([count('traverse/part-rod'), count('traverse/part-master')]).toEqual([2, 4])
  expect(plan.steps.filter(({ id }) => id === 'drill').length).toBe(1)
})
test('layers go up from the glass outward', () => {
  const mounted = planOf('three').steps.filter(({ id }) => id === 'mount')
  expect(mounted.map(({ on }) => on.split('/').at(-1))).toEqual(['sheer', 'over', 'front'])
})
