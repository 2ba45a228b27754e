import { readFileSync } from 'node:fs'
import { inch, inches, type Known, type Length } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { exampleOf } from '../../../tests/tools/examples.ts'
import { cordFor } from '../src/arithmetic/index.ts'
import { cordLimits } from '../src/cord-limits.ts'

const text = readFileSync(new URL('../../../schema/examples/how-it-is-drawn/job.json', import.meta.url), 'utf8')
const planner = createPlanner(plugins)
/** What a check says of a window when the job is in this country. */
function said(code: string, window: string, country = 'US', change = (job: string): string => job) {
  const { ordered, found, places } = exampleOf('drawn', change(text.replace('"country": "US"', `"country": "${country}"`)))
  const place = places.find((each) => each.endsWith(`/${window}`)) ?? ''
  const plan = planner.window(ordered, found, place)
  return plan.checks
    .filter((check) => check.code === code)
    .map(({ verdict, values, stops }) => [verdict, values.what ?? values.how, stops])
}

test('a loop stops the hand-over until its device is recorded as fixed and proven', () => {
  expect(said('drapery/cord-device', 'loop-proven')).toEqual([['pass', undefined, undefined]])
  expect(said('drapery/cord-device', 'loop-unrecorded')).toEqual([['unknown', undefined, 'hand-over']])
  expect(said('drapery/cord-device', 'loop-without')).toEqual([['fail', undefined, 'hand-over']])
  expect(said('drapery/cord-device', 'by-hand')).toEqual([])
})
test('and closes only the steps of the hand-over', () => {
  const { ordered, found, places } = exampleOf('drawn', text)
  const plan = planner.window(ordered, found, places.find((each) => each.endsWith('/loop-unrecorded')) ?? '')
  const closed = plan.steps.filter((step) => step.closed.length > 0)
  expect([...new Set(closed.map(({ stage }) => stage))]).toEqual(['hand-over'])
})
test('each country has its own limits, and none borrows another’s', () => {
  // A free cord of 12 in, 30.5 cm, that ends 40 in, 101.6 cm, above the floor.
  expect(said('drapery/cord-length', 'free-cord', 'US')).toEqual([['fail', 'free', 'hand-over']])
  expect(said('drapery/cord-length', 'free-cord', 'CA')).toEqual([['fail', 'free', 'hand-over']])
  expect(said('drapery/cord-length', 'free-cord', 'GB')).toEqual([['fail', 'lowest', 'hand-over']])
  expect(said('drapery/cord-length', 'free-cord', 'AU')).toEqual([['pass', 'none', undefined]])
  expect(said('drapery/cord-length', 'free-cord', 'JP')).toEqual([['unknown', 'country', undefined]])
})
test('22 cm of free cord and 44 cm of loop are the most in Canada', () => {
  const cord = (length: string) => (job: string) => job.replace('"freeCord": "12"', `"freeCord": "${length}"`)
  expect(said('drapery/cord-length', 'free-cord', 'CA', cord('22 cm'))).toEqual([['pass', 'free', undefined]])
  expect(said('drapery/cord-length', 'free-cord', 'CA', cord('221 mm'))).toEqual([['fail', 'free', 'hand-over']])
  const loop = (length: string) => (job: string) => job.replace('"looseLoop": "2"', `"looseLoop": "${length}"`)
  expect(said('drapery/cord-length', 'loop-proven', 'CA', loop('44 cm'))).toEqual([['pass', 'loop', undefined]])
  expect(said('drapery/cord-length', 'loop-proven', 'CA', loop('441 mm'))).toEqual([['fail', 'loop', 'hand-over']])
})
test('a loop of 22 cm is too long in Australia unless it is wholly above 160 cm', () => {
  const loop = (length: string, lowest: string) => (job: string) =>
    job.replace('"looseLoop": "2"', `"looseLoop": "${length}"`).replace('"lowest": "36"', `"lowest": "${lowest}"`)
  expect(said('drapery/cord-length', 'loop-proven', 'AU', loop('219 mm', '36'))).toEqual([['pass', 'low', undefined]])
  expect(said('drapery/cord-length', 'loop-proven', 'AU', loop('220 mm', '160 cm'))).toEqual([['fail', 'low', 'hand-over']])
  expect(said('drapery/cord-length', 'loop-proven', 'AU', loop('220 mm', '1601 mm'))).toEqual([['pass', 'low', undefined]])
})
test('in a public place of the United States what people work is 15 to 48 in above the floor', () => {
  const high = (at: string) => (job: string) => job.replace('"handle": "54"', `"handle": "${at}"`)
  const verdict = (at: string) => said('drapery/within-reach', 'wand-too-high', 'US', high(at))[0]?.[0]
  expect(['14 15/16', '15', '48', '48 1/16'].map(verdict)).toEqual(['fail', 'pass', 'pass', 'fail'])
  expect(said('drapery/within-reach', 'wand-too-high', 'CA')[0]?.[0]).toBe('unknown')
  const home = (job: string) => job.replace('"public": true', '"public": false')
  expect(said('drapery/within-reach', 'wand-too-high', 'US', home)).toEqual([])
})
// From the left end at −12 to the outlet's right edge at −15 it is 3 across; from 89 1/4 down to its top edge at 18 it is 71 1/4: 74 1/4 in all.
test('a motor’s lead goes across and down the wall to its outlet', () => {
  const lead = (length: string) => (job: string) => job.replace('"lead": "8 ft"', `"lead": "${length}"`)
  expect(said('drapery/power', 'motor-outlet', 'US', lead('74 1/4'))).toEqual([['pass', 'outlet', undefined]])
  expect(said('drapery/power', 'motor-outlet', 'US', lead('74 3/16'))).toEqual([['fail', 'outlet', 'drill']])
  expect(said('drapery/power', 'motor-unsaid')).toEqual([['unknown', 'unsaid', undefined]])
})
test('a new cord is twice the rod and the drop, and 6 in (cord-01: 84 and 72 make 318)', () => {
  const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
  expect((cordFor('/test#cord', at(84), at(72), at(6)).at(-1)?.value ?? 0) / inch).toBe(318)
})
test('no country stands twice', () => {
  const all = cordLimits.flatMap(({ countries }) => countries)
  expect(new Set(all).size).toBe(all.length)
})
