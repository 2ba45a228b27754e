import { type Check, checks, type On, type Plugin, rule, type Step, steps } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner, inTheWay, missingOf, nextStep, overridePlace, type PlannedStep, stagesOf } from '../src/index.ts'
import { house, over, pluginOf, put, under, w1 } from './invented.ts'

const list: readonly Step[] = [
  { id: 'count', stage: 'unpack', code: 'p/count', captures: [{ at: `${over}/found/came/p`, as: 'count' }] },
  { id: 'mark', stage: 'mark', code: 'p/mark' },
  { id: 'drill', stage: 'drill', code: 'p/drill' },
]
const work = pluginOf('p', [rule({ id: 'work', on: 'treatment', needs: {}, gives: { steps } }).run(() => ({ steps: list }))])
const fails = (on: On, at: string, stops: Check['stops'] = 'drill'): Plugin =>
  pluginOf('judge', [
    rule({ id: 'x', on, needs: {}, gives: { checks } }).run((subject) => ({
      checks: subject.at === at ? [{ code: 'judge/x', verdict: 'fail', at, values: {}, ...(stops ? { stops } : {}) }] : [],
    })),
  ])
const plan = (done: readonly string[] = [], ...others: readonly Plugin[]) => {
  const job = done.reduce((each, step) => put(each, step, true), house)
  return createPlanner([work, ...others]).window(job, job, w1)
}
const doneAt = (treatment: string, ...ids: readonly string[]) => ids.map((id) => `${treatment}/found/done/p/${id}`)
const shown = (each: ReturnType<typeof stagesOf>) => each.map(({ stage, done, standing }) => `${stage} ${done} ${standing}`)

test('the stages of a window come in order, with how many of their steps are done', () => {
  const some = plan([...doneAt(under, 'count', 'mark'), ...doneAt(over, 'count')])
  expect(shown(stagesOf(some))).toEqual(['unpack 2 done', 'mark 1 open', 'drill 0 open'])
})

test('a stage is closed when each of its steps that is left is closed, and says by what', () => {
  const stages = stagesOf(plan([], fails('window', w1)))
  expect(shown(stages)).toEqual(['unpack 0 open', 'mark 0 open', 'drill 0 closed'])
  expect(stages.map((each) => each.inTheWay.map(({ code }) => code))).toEqual([[], [], ['judge/x']])
})

test('a stage with one treatment closed is open for the other, and still says what is in the way', () => {
  const drill = stagesOf(plan([], fails('treatment', over))).at(-1)
  expect([drill?.standing, drill?.inTheWay.map(({ on }) => on)]).toEqual(['open', [over]])
})

test('what is done is not in the way of anything, whatever failed later', () => {
  const drill = stagesOf(plan([...doneAt(under, 'drill'), ...doneAt(over, 'drill')], fails('window', w1))).at(-1)
  expect([drill?.standing, drill?.inTheWay]).toEqual(['done', []])
})

test('next is the first step that is neither done nor closed', () => {
  const name = (step: PlannedStep | undefined) => step && `${step.id} ${step.on.split('/').at(-1)}`
  expect(name(nextStep(plan()))).toBe('count under')
  expect(name(nextStep(plan(doneAt(under, 'count'))))).toBe('count over')
  expect(name(nextStep(plan(doneAt(over, 'count'), fails('treatment', under, 'unpack'))))).toBe('mark over')
  expect(nextStep(plan([], fails('window', w1, 'unpack')))).toBeUndefined()
})

test('the checks that close a step stand in the plan', () => {
  const closed = plan([], fails('treatment', over))
  expect(closed.steps.filter(({ id }) => id === 'drill').map((step) => inTheWay(closed, step).length)).toEqual([0, 1])
})

test('a capture is missing until somebody read it; a reading that was taken back is missing again', () => {
  const step = plan().steps[1] as PlannedStep
  const at = `${over}/found/came/p`
  expect(missingOf(step, {})).toEqual([{ at, as: 'count' }])
  expect(missingOf(step, { [at]: { value: 0 } })).toEqual([])
  expect(missingOf(step, { [at]: { value: undefined } })).toEqual([{ at, as: 'count' }])
  expect(missingOf({}, {})).toEqual([])
})

test('a reason goes to the window or the treatment that a check is of, under its code and what it is about', () => {
  expect(overridePlace({ code: 'judge/x', on: over })).toBe(`${over}/found/overrides/judge~1x`)
  expect(overridePlace({ code: 'judge/x', about: 'left 1/2', on: w1 })).toBe(`${w1}/found/overrides/judge~1x left 1~12`)
  expect(['/rooms/r1', ''].map((on) => overridePlace({ code: 'judge/x', on }))).toEqual([undefined, undefined])
})
