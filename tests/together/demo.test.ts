import { inch } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../tools/examples.ts'

// The demo window, worked out by hand. Inches; heights above the level line unless from the floor.
// floor 0 left, -1/8 middle, -3/8 right; clearance 1/2; finished length 89; pin 1/2; eye drop 2 1/8; plate 1/2 below the rod; holes 5/8 and 2 1/4 down

const planner = createPlanner(plugins)
const planned = (name: string) => {
  const { found, ordered, places } = example(name)
  return planner.window(found, ordered, places[0]!)
}
const inInches = (plan: ReturnType<typeof planned>, name: string): number =>
  (plan.reckonings.find((each) => each.name.endsWith(name))?.value ?? Number.NaN) / inch
const verdicts = (plan: ReturnType<typeof planned>) => Object.fromEntries(plan.checks.map((check) => [check.code, check.verdict]))

test.each([
  ['#highest-floor', 0],
  ['#hem', 0.5],
  ['#hang-line', 89],
  ['over#top', 89.5],
  ['#top-of-rod', 91.125],
  ['#top-of-plate', 90.625],
  ['#from-floor-left-top', 90],
  ['#from-floor-left-lower', 88.375],
  ['#from-floor-right-top', 90.375],
  ['#from-floor-right-lower', 88.75],
  ['#from-floor-return-left', 88.75],
  ['#from-floor-return-right', 89.125],
  ['#cover-left', -8],
  ['#cover-right', 70],
  ['#meets', 31],
  ['#bracket-left', -7],
  ['#bracket-right', 69],
  ['#rod-end-left', -8.125],
  ['#rod-end-right', 70.125],
  ['#reach-left', -10.625],
  ['#reach-right', 72.625],
  ['#wall-left-over-left', 8.375],
  ['#wall-left-over-right', 12.875],
  ['#rod-cut', 78.25],
  ['#bracket-to-bracket', 76],
  ['left#space', 3.75],
  ['left#finished-width', 42.5],
  ['left#pleat', 5.5],
  ['left#stack', 13],
] as const)('%s is %d', (name, value) => expect(inInches(planned('tern-hollow'), name)).toBe(value))

test('the demo window passes every check', () =>
  expect(new Set(planned('tern-hollow').checks.map((check) => check.verdict))).toEqual(new Set(['pass'])))
test('it has 26 hooks: 24 in rings, 2 at the wall, a ring outside each bracket', () => {
  const map = planned('tern-hollow').facts.find((fact) => fact.id === 'drapery/hook-map@1')?.value as {
    places: readonly { to: string; note?: string }[]
    bearers: { value: number }
    threading: readonly { count: number }[]
  }
  expect(map.places.length).toBe(26)
  expect(map.bearers.value).toBe(24)
  expect(map.places.filter((place) => place.to === 'rod-and-ring/to-wall').length).toBe(2)
  expect(map.threading.map((each) => each.count)).toEqual([1, 22, 1])
})
test('a longer left panel and a lower floor at the right re-plan the window', () => {
  const plan = planned('tern-hollow-found')
  expect(inInches(plan, '#hang-line')).toBe(89.125)
  expect(inInches(plan, '#top-of-rod')).toBe(91.25)
  expect(inInches(plan, '#hem-right')).toBe(0.625)
  expect(inInches(plan, '#from-floor-left-top')).toBe(90.125)
  expect(inInches(plan, '#from-floor-right-top')).toBe(90.625)
  expect(inInches(plan, '#wall-left-over-left')).toBe(8.25)
})
test('who read it, and when, stands at the place of the reading', () => {
  const { read } = example('tern-hollow-found')
  expect(read.readings['/rooms/garden-room/windows/w1/treatments/over/panels/left/finishedLength']).toEqual({
    value: 89.125 * inch,
    by: 'Installer, tablet 1',
    when: '2026-11-30T09:12:00-05:00',
  })
})
test.each([
  ['rod-too-short', { 'drapery/coverage': 'fail' }],
  ['returns-do-not-fit', { 'drapery/return-fits': 'warn' }],
  ['rings-missing', { 'rod-and-ring/rings': 'fail' }],
  ['finial-does-not-fit', { 'drapery/wall-fits': 'fail' }],
  ['pin-setting-forgotten', { 'drapery/rod-height': 'fail' }],
  ['panels-do-not-meet', { 'drapery/panel-width': 'warn' }],
  ['pair-unlike', { 'drapery/hems-alike': 'fail' }],
  ['panels-came-wrong', { 'drapery/hems-alike': 'warn' }],
  ['returns-not-said', { 'drapery/return-held': 'warn' }],
  ['rod-above-casing', { 'drapery/rod-height': 'pass' }],
] as const)('%s shows %o', (name, expected) => expect(verdicts(planned(name))).toMatchObject(expected))
test('nothing is drilled while a return is too narrow', () => {
  const plan = planned('returns-do-not-fit')
  expect(plan.checks.filter((check) => check.verdict === 'fail').map((check) => check.stops)).toEqual(['drill'])
  expect(
    plan.steps
      .filter((step) => 'closed' in step && (step as { closed?: readonly string[] }).closed?.length)
      .map((step) => step.stage)[0],
  ).toBe('drill')
})
test('what is not measured is asked for in walking order, and its checks are not known', () => {
  const plan = planned('not-measured-yet')
  expect(plan.asks.map((ask) => ask.at.slice('/rooms/garden-room/windows/w1'.length))).toEqual([
    '/walls/a/openings/o/casing/width',
    '/walls/a/space/left',
    '/walls/a/space/right',
    '/treatments/over/panels/right/finishedLength',
    '/treatments/over/with/rod-and-ring/rings',
  ])
  expect(plan.checks.filter((check) => check.verdict !== 'unknown').map((check) => check.code)).toEqual([
    'drapery/finished-floor',
    'drapery/floor-read',
  ])
})

test('each difference of the panels that came leads somewhere', () => {
  const checks = planned('panels-came-wrong').checks.filter((check) => check.code === 'drapery/as-ordered')
  expect(checks.map(({ at, verdict, stops }) => [at.split('/').slice(-2).join('/'), verdict, stops])).toEqual([
    ['left/finishedLength', 'fail', 'mark'],
    ['right/firstToLast', 'pass', undefined],
    ['right/pin', 'warn', undefined],
  ])
})
test('a pin setting that was forgotten is named', () => {
  const check = planned('pin-setting-forgotten').checks.find((each) => each.code === 'drapery/rod-height')
  expect(check?.values).toMatchObject({ way: 'short', apart: { length: inch / 2 }, cause: { code: 'drapery/pin.forgotten' } })
})
test('a reading is expected to be what was ordered, not what was read', () => {
  const step = planned('tern-hollow-found').steps.find((each) => each.id === 'measure-panels')
  const lengths = step?.captures?.filter(({ at }) => at.endsWith('/finishedLength'))
  expect(lengths?.map((capture) => capture.expected)).toEqual([{ length: 89 * inch }, { length: 89 * inch }])
})
