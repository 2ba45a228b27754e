import { readFileSync } from 'node:fs'
import { inch, inches, type Known, type Length, tapes } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { createSay, wordsOf } from '@evenhem/planner/say'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { exampleOf } from '../../../tests/tools/examples.ts'
import { cordFor } from '../src/arithmetic/index.ts'
import { cordLimits } from '../src/cord-limits.ts'

const text = readFileSync(new URL('../../../schema/examples/how-it-is-drawn/job.json', import.meta.url), 'utf8')
const planner = createPlanner(plugins)
/** The checks of a window with this code when the job is in this country. */
function checksOf(code: string, window: string, country = 'US', change = (job: string): string => job) {
  const { ordered, found, places } = exampleOf('drawn', change(text.replace('"country": "US"', `"country": "${country}"`)))
  const place = places.find((each) => each.endsWith(`/${window}`)) ?? ''
  return planner.window(ordered, found, place).checks.filter((check) => check.code === code)
}
/** What they say. */
const said = (...of: Parameters<typeof checksOf>) =>
  checksOf(...of).map(({ verdict, values, stops }) => [verdict, values.what ?? values.how, stops])
/** The same job with other obstacles, or none that anybody looked for, on the walls of each window. */
const withObstacles = (change: (obstacles: readonly object[]) => readonly object[] | undefined) => (job: string) =>
  JSON.stringify(JSON.parse(job), (name, value) => (name === 'obstacles' ? change(value) : value))

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
test('and no reason lifts it', () => {
  const reasoned = (job: string) =>
    JSON.stringify(JSON.parse(job), (name, value) => (name === 'treatments' ? value.map(overridden) : value))
  const overridden = (treatment: object) => ({
    ...treatment,
    found: { ...(treatment as { found?: object }).found, overrides: { 'drapery/cord-device': 'The customer was asked.' } },
  })
  for (const window of ['loop-unrecorded', 'loop-without'])
    expect(checksOf('drapery/cord-device', window, 'US', reasoned)).toMatchObject([{ isFirm: true, stops: 'hand-over' }])
  const lifted = checksOf('drapery/cord-device', 'loop-without', 'US', reasoned).map(({ override }) => override)
  expect(lifted).toEqual([undefined])
})
test('each country has its own limits, and none borrows another’s', () => {
  // A free cord of 12 in, 30.5 cm, that ends 40 in, 101.6 cm, above the floor.
  expect(said('drapery/cord-length', 'free-cord', 'US')).toEqual([['fail', 'free', 'hand-over']])
  expect(said('drapery/cord-length', 'free-cord', 'CA')).toEqual([['fail', 'free', 'hand-over']])
  expect(said('drapery/cord-length', 'free-cord', 'GB')).toEqual([['fail', 'lowest', 'hand-over']])
  // It is long enough to form a loop of 22 cm, and nobody said whether it does.
  expect(said('drapery/cord-length', 'free-cord', 'AU')).toEqual([['unknown', 'low', undefined]])
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
test('a free cord forms no loop longer than itself, so that in Australia one of less than 22 cm is short enough', () => {
  const cord =
    (length: string, more = '') =>
    (job: string) =>
      job.replace('"freeCord": "12"', `"freeCord": "${length}"${more}`)
  const verdict = (...of: Parameters<typeof cord>) => said('drapery/cord-length', 'free-cord', 'AU', cord(...of))
  expect(verdict('219 mm')).toEqual([['pass', 'low', undefined]])
  expect(verdict('220 mm')).toEqual([['unknown', 'low', undefined]])
})
test('every limit is the one that its source gives: value in millimetres, and how it was read', () => {
  const given = cordLimits.flatMap(({ countries: [country], freeCord, loop, lowest, lowLoop }) =>
    [freeCord, loop, lowest, lowLoop?.shorter, lowLoop?.above].flatMap((limit) =>
      limit ? [[country, limit.value / 1_000_000, limit.source, limit.basis]] : [],
    ),
  )
  expect(given).toEqual([
    ['US', 0, 'ANSI/WCMA A100.1-2022, a voluntary standard', 'read (secondary)'],
    ['CA', 220, 'Corded Window Coverings Regulations, SOR/2019-97, section 5, pulled with 35 N', 'read'],
    ['CA', 440, 'Corded Window Coverings Regulations, SOR/2019-97, section 7, pulled with 35 N', 'read'],
    ['AU', 220, 'Corded Internal Window Coverings Safety Standard 2014', 'read'],
    ['AU', 1600, 'Corded Internal Window Coverings Safety Standard 2014', 'read'],
    ['IE', 1600, 'advice of the National Standards Authority of Ireland', 'read'],
    ['GB', 1500, 'EN 13120, as summaries give it', 'read (secondary)'],
  ])
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
// The same rod, told from the ceiling and not from the floor: its top is where the panels put it, 89 1/4, whatever the order says of it.
test('an outlet is found where the order says the rod’s height in another way, or not at all', () => {
  const lead = (length: string) => (job: string) =>
    job.replaceAll('"top": "89 1/4"', '"belowCeiling": "8"').replace('"lead": "8 ft"', `"lead": "${length}"`)
  expect(said('drapery/power', 'motor-outlet', 'US', lead('74 1/4'))).toEqual([['pass', 'outlet', undefined]])
  expect(said('drapery/power', 'motor-outlet', 'US', lead('74 3/16'))).toEqual([['fail', 'outlet', 'drill']])
})
// An outlet at the ceiling: from 89 1/4 up to 95 it is 5 3/4, and 3 across: 8 3/4.
test('a lead goes up to an outlet above the rod', () => {
  const raised = withObstacles((all) => all.map((one) => ({ ...one, bottom: '95' })))
  const high = (length: string) => (job: string) => raised(job.replace('"lead": "8 ft"', `"lead": "${length}"`))
  expect(said('drapery/power', 'motor-outlet', 'US', high('8 3/4'))[0]?.[0]).toBe('pass')
  expect(said('drapery/power', 'motor-outlet', 'US', high('8 11/16'))[0]?.[0]).toBe('fail')
})
test('a wall on which nobody looked for an outlet is no wall without one', () => {
  const none = withObstacles(() => [])
  const nobody = withObstacles(() => undefined)
  expect(said('drapery/power', 'motor-outlet', 'US', none)).toEqual([['fail', 'nowhere', 'drill']])
  expect(said('drapery/power', 'motor-outlet', 'US', nobody)).toEqual([['unknown', 'unsaid', undefined]])
})
test.each(['en', 'es'])('a motor says what powers it, or that nothing does (%s)', (language) => {
  const { say } = createSay({ words: wordsOf(plugins), language, tape: tapes.sixteenths })
  const sentence = (power: string) => {
    const [check] = checksOf('drapery/power', 'motor-outlet', 'US', (job) =>
      job.replace('"power": "outlet"', `"power": "${power}"`),
    )
    return say(check?.says ?? 'drapery/power', check?.values)
  }
  for (const power of ['battery', 'hard-wired', 'none', 'outlet']) expect(sentence(power)).toMatch(/ motor|outlet|enchufe|toma/)
})
test('a new cord is twice the rod and the drop, and 6 in (cord-01: 84 and 72 make 318)', () => {
  const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
  expect((cordFor('/test#cord', at(84), at(72), at(6)).at(-1)?.value ?? 0) / inch).toBe(318)
})
test('no country stands twice', () => {
  const all = cordLimits.flatMap(({ countries }) => countries)
  expect(new Set(all).size).toBe(all.length)
})
