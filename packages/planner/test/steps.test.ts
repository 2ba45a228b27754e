import { type Check, checks, type On, type Plugin, type Rule, rule, type Step, steps } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner, overridePlace } from '../src/index.ts'
import { house, over, pluginOf, put, under, w1 } from './invented.ts'

const step = (id: string, stage: Step['stage'], ...after: readonly string[]): Step => ({
  id,
  stage,
  code: `p/${id}`,
  ...(after.length > 0 ? { after } : {}),
})
const givesSteps = (id: string, on: On, ...list: readonly Step[]): Plugin =>
  pluginOf(id, [rule({ id: 'work', on, needs: {}, gives: { steps } }).run(() => ({ steps: list }))])
const fails = (on: On, stops: Check['stops'], more: Partial<Check> = {}): Plugin =>
  pluginOf('judge', [
    rule({ id: 'x', on, needs: {}, gives: { checks } }).run(({ at }) => ({
      checks: at === w1 || at === over ? [{ code: 'judge/x', verdict: 'fail', at, values: {}, stops, ...more }] : [],
    })),
  ])
const plan = (plugins: readonly Plugin[], job = house) => createPlanner(plugins).window(job, job, w1)
const order = (...plugins: readonly Plugin[]) => plan(plugins).steps.map(({ plugin, id }) => `${plugin}/${id}`)
const closed = (plugins: readonly Plugin[], job = house) =>
  plan(plugins, job)
    .steps.filter((each) => each.closed.length > 0)
    .map(({ id, on }) => `${id} ${on.split('/').at(-1)}`)

test('steps come by stage, then by plugin and id', () => {
  const p = givesSteps('p', 'window', step('hang', 'hang'), step('b', 'unpack'), step('a', 'unpack'))
  expect(order(givesSteps('q', 'window', step('0', 'unpack')), p)).toEqual(['p/a', 'p/b', 'q/0', 'p/hang'])
})

test('a stranger’s step finds its place', () => {
  const ours = givesSteps('ours', 'window', step('left', 'mark'), step('right', 'mark', 'left'), step('check', 'mark', 'right'))
  expect(order(ours, givesSteps('a-stranger', 'window', step('extra', 'mark', 'ours/left')))).toEqual([
    'ours/left',
    'a-stranger/extra',
    'ours/right',
    'ours/check',
  ])
})

test('after a step that is not there, or of another stage, is after nothing', () => {
  expect(order(givesSteps('p', 'window', step('a', 'mark', 'none', 'z'), step('b', 'mark'), step('z', 'hang')))).toEqual([
    'p/a',
    'p/b',
    'p/z',
  ])
})

test('each treatment has its own steps, all of a stage for the inner before the outer', () => {
  const steps = plan([givesSteps('p', 'treatment', step('b', 'mark', 'a'), step('a', 'mark'))]).steps
  expect(steps.map(({ id, on }) => `${id} ${on.split('/').at(-1)}`)).toEqual(['a under', 'b under', 'a over', 'b over'])
})

test('a step is not after one of another treatment', () => {
  const run: Rule['run'] = ({ at }) => ({ steps: [at === over ? step('z', 'mark') : step('a', 'mark', 'z')] })
  const plugin = pluginOf('p', [{ ...rule({ id: 'work', on: 'treatment', needs: {}, gives: { steps } }).run(() => ({})), run }])
  expect(plan([plugin]).steps.map(({ id }) => id)).toEqual(['a', 'z'])
})

test('steps that each come after another stand by name, and are a fault', () => {
  const { steps, faults } = plan([givesSteps('p', 'window', step('a', 'mark', 'b'), step('b', 'mark', 'a'), step('c', 'mark'))])
  expect(steps.map(({ id }) => id)).toEqual(['c', 'a', 'b'])
  expect(faults).toMatchObject([
    {
      plugin: 'p',
      rule: 'work',
      at: w1,
      what: 'order',
      message: 'Unexpected steps that each come after another: p/a, p/b; they stand by name, take one `after` out',
    },
  ])
})

const both = [
  givesSteps('p', 'treatment', step('mark', 'mark'), step('drill', 'drill'), step('hang', 'hang')),
  givesSteps('q', 'window', step('tidy', 'finish')),
]

test('a failing check closes the steps from its stage on, of its treatment and of its window', () => {
  expect(closed([...both, fails('treatment', 'drill')])).toEqual(['drill over', 'hang over', 'tidy w1'])
})

test('a failing check of the window closes the steps of all its treatments', () => {
  expect(closed([...both, fails('window', 'hang')])).toEqual(['hang under', 'hang over', 'tidy w1'])
})

test('a check that warns, passes or stops nothing closes nothing', () => {
  expect([
    closed([...both, fails('window', 'mark', { verdict: 'warn' })]),
    closed([...both, fails('window', undefined)]),
  ]).toEqual([[], []])
})

test('a reason given for a failing check opens its steps, and stands beside the check', () => {
  const job = put(house, `${over}/found/overrides/judge~1x`, 'The customer was asked.')
  expect(closed([...both, fails('treatment', 'drill')], job)).toEqual([])
  expect(plan([fails('treatment', 'drill')], job).checks).toMatchObject([
    { verdict: 'fail', override: 'The customer was asked.' },
  ])
  const counted = (of: typeof house) => createPlanner([fails('treatment', 'drill')]).job(of, of).windows[0]?.verdicts.fail
  expect([counted(house), counted(job)]).toEqual([1, 0])
})

test('an empty reason opens nothing', () => {
  expect(closed([...both, fails('treatment', 'hang')], put(house, `${over}/found/overrides/judge~1x`, ' '))).toEqual([
    'hang over',
    'tidy w1',
  ])
})

test('a step is done when its place says so', () => {
  const job = put(house, `${under}/found/done/p/mark`, true)
  expect(plan(both, job).steps.filter(({ done }) => done)).toMatchObject([
    { id: 'mark', on: under, doneAt: `${under}/found/done/p/mark` },
  ])
})

test('a step that somebody said is not done, or took back, is not done', () => {
  const dones = [false, undefined].map((value) =>
    plan(both, put(house, `${under}/found/done/p/mark`, value)).steps.some(({ done }) => done),
  )
  expect(dones).toEqual([false, false])
})

test('a reason at one treatment opens nothing of another; one at the window opens both', () => {
  const fail = pluginOf('judge', [
    rule({ id: 'x', on: 'treatment', needs: {}, gives: { checks } }).run(({ at }) => ({
      checks: [{ code: 'judge/x', verdict: 'fail', at, values: {}, stops: 'drill' }],
    })),
  ])
  const at = (place: string) => closed([both[0] as Plugin, fail], put(house, `${place}/found/overrides/judge~1x`, 'Asked.'))
  expect(at(over)).toEqual(['drill under', 'hang under'])
  expect(at(w1)).toEqual([])
})

test('a reason for what one check is about lifts no other of its code, and holds only while that is the same', () => {
  const abouts = (about: string, key: string) =>
    plan(
      [
        pluginOf('judge', [
          rule({ id: 'x', on: 'treatment', needs: {}, gives: { checks } }).run(({ at }) => ({
            checks: (at === over ? ['right 1', about] : []).map((each) => ({
              code: 'judge/x',
              about: each,
              verdict: 'fail' as const,
              at,
              values: {},
              stops: 'drill' as const,
            })),
          })),
        ]),
      ],
      put(house, `${over}/found/overrides/${key}`, 'Asked.'),
    ).checks.map(({ override }) => override)
  expect(abouts('left 2', 'judge~1x left 2')).toEqual([undefined, 'Asked.'])
  expect(abouts('left 3', 'judge~1x left 2')).toEqual([undefined, undefined])
  expect(abouts('left 3', 'judge~1x')).toEqual(['Asked.', 'Asked.'])
})

test('a reason opens what a check closes that nobody could judge yet', () => {
  const job = put(house, `${over}/found/overrides/judge~1x`, 'Proven on the phone.')
  const unknown = fails('treatment', 'drill', { verdict: 'unknown' })
  expect(closed([...both, unknown])).toEqual(['drill over', 'hang over', 'tidy w1'])
  expect(closed([...both, unknown], job)).toEqual([])
  expect(plan([unknown], job).checks).toMatchObject([{ verdict: 'unknown', override: 'Proven on the phone.' }])
})

test('no reason lifts a firm check: not for its code, not for what it is about, at no level', () => {
  const firm = fails('treatment', 'drill', { isFirm: true })
  const places = [over, w1].map((at) => put(house, `${at}/found/overrides/judge~1x`, 'The customer was asked.'))
  for (const job of places) {
    expect(closed([...both, firm], job)).toContain('drill over')
    expect(plan([firm], job).checks.map(({ override }) => override)).toEqual([undefined])
  }
  expect(plan([firm]).checks.map(overridePlace)).toEqual([undefined])
})
