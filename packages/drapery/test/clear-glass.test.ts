import { inch } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'

const { ordered, found, places } = example('open-and-clear')
const planner = createPlanner(plugins)
const said = (window: string) => {
  const plan = planner.window(ordered, found, places.find((each) => each.endsWith(`/${window}`)) ?? '')
  const check = plan.checks.find(({ code }) => code === 'drapery/clear-glass')
  const inInches = (name: string) =>
    ((check?.values[name] as { readonly length?: number } | undefined)?.length ?? Number.NaN) / inch
  return { verdict: check?.verdict, clear: inInches('clear'), least: inInches('least'), most: inInches('most') }
}

// Rod 66 from −3 to 63, overlap 3 1/2: each panel covers 33 + 1 3/4 = 34 3/4 and stacks a third of it, 11.5833; the glass is from 3 to 57.
// So each covers −3 + 11.5833 − 3 = 5.5833 of it, and 54 − 2 × 5.5833 = 42.8333 is clear.
test('what an estimate leaves too little of may only warn', () => {
  const { verdict, clear } = said('perhaps-not')
  expect(verdict).toBe('warn')
  expect(clear).toBeCloseTo(42.8333, 4)
})
// The widest published stack is half of the window, 15 a side: −3 + 15 − 3 = 9 each, 36 clear. The narrowest is a tenth to a quarter by lining, 15 % of 60 is 4 1/2
// a side: −3 + 4 1/2 − 3 is less than nothing, 54 clear.
test('the published rules are told as a range', () => {
  expect([said('perhaps-not').least, said('perhaps-not').most]).toEqual([36, 54])
})
// Measured, 14 a side covers −3 + 14 − 3 = 8 each: 38. 7 1/2 a side covers 1 1/2 each: 51.
test('a measured stack decides, either way', () => {
  expect([said('measured').verdict, said('measured').clear]).toEqual(['fail', 38])
  expect([said('better-than-thought').verdict, said('better-than-thought').clear]).toEqual(['pass', 51])
})
test('glass that nobody measured is asked for', () => {
  expect(said('no-glass').verdict).toBe('unknown')
})
