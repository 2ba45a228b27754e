import { checks, layers, parts, type Rule, reckonings, rule, steps } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner } from '../src/index.ts'
import { house, many, one, over, pluginOf, under, w1 } from './invented.ts'

const [width, area] = [one('width'), one('area')]
const wrong = (run: (at: string) => object, gives: Rule['gives'] = { width }): Rule => ({
  ...rule({ id: 'bad', on: 'treatment', needs: {}, gives, codes: ['p/bad'] }).run(() => ({})),
  run: ({ at }) => run(at),
})
const needs = rule({ id: 'needs', on: 'treatment', needs: { width }, gives: { area }, codes: ['p/needs'] }).run(
  (_, { width }) => ({ area: width }),
)
const well = rule({ id: 'well', on: 'treatment', needs: {}, gives: { checks } }).run(({ at }) => ({
  checks: [{ code: 'p/well', verdict: 'pass', at, values: {} }],
}))
const planOf = (bad: Rule) => createPlanner([pluginOf('p', [bad, needs, well])]).window(house, house, w1)
const faultOf = (bad: Rule) => {
  const [fault, again, ...more] = planOf(bad).faults
  expect([again?.at, more]).toEqual([over, []])
  return [fault?.what, fault?.message]
}

test('a crash costs its rule at that place: plugin, rule and place are named, the rest stands', () => {
  const plan = planOf(
    wrong((at) => {
      if (at === over) throw new Error('off the ladder')
      return { width: 1 }
    }),
  )
  expect(plan.faults).toEqual([
    { plugin: 'p', rule: 'bad', at: over, what: 'threw', message: 'Unexpected error in p/bad: off the ladder' },
  ])
  expect(plan.facts.map(({ id, at }) => [id, at])).toEqual([
    ['test/area@1', under],
    ['test/width@1', under],
  ])
  expect(plan.checks.map(({ code, on, because }) => [code, on, because])).toEqual([
    ['p/well', under, undefined],
    ['p/bad', over, 'faulted'],
    ['p/needs', over, 'faulted'],
    ['p/well', over, undefined],
  ])
})

test('a check held up by a crash says by which rule', () => {
  expect(
    planOf(
      wrong(() => {
        throw undefined
      }),
    ).checks.find(({ code }) => code === 'p/needs'),
  ).toMatchObject({ verdict: 'unknown', says: 'host/faulted', values: { first: 'p/bad' } })
})

test('nothing that is thrown stops a plan', () => {
  for (const thrown of [
    undefined,
    null,
    7,
    'text',
    Object.create(null),
    {
      get message() {
        throw new Error('again')
      },
    },
  ]) {
    expect(
      planOf(
        wrong(() => {
          throw thrown
        }),
      ).faults[0]?.what,
    ).toBe('threw')
  }
})

test('a fact that was not declared is a fault', () => {
  expect(faultOf(wrong(() => ({ width: 1, height: 2 })))).toEqual([
    'undeclared',
    'Unexpected "height" from p/bad, expected width; declare it under `gives`',
  ])
})

test('an answer that is no object is a fault', () => {
  expect(faultOf(wrong(() => [] as object))).toEqual([
    'malformed',
    'Unexpected answer [] from p/bad, expected an object of facts or { ask: […] }',
  ])
  expect(faultOf(wrong(() => undefined as unknown as object))[0]).toBe('malformed')
  expect(faultOf(wrong(async () => ({ width: 1 })))[0]).toBe('malformed')
})

test('an ask without places, or beside facts, is a fault', () => {
  expect(faultOf(wrong(() => ({ ask: [] })))).toEqual([
    'malformed',
    'Unexpected ask [] from p/bad, expected a list of absolute places; make them with below(at, …)',
  ])
  expect(faultOf(wrong(() => ({ ask: ['clearance'] })))[0]).toBe('malformed')
  expect(faultOf(wrong(() => ({ ask: ['/job'], width: 1 })))).toEqual([
    'malformed',
    'Unexpected "width" beside "ask" from p/bad, expected one or the other; split the rule',
  ])
})

test('a fact of a list must come as a list', () => {
  expect(faultOf(wrong(() => ({ list: 1 }), { list: many('list') }))).toEqual([
    'malformed',
    'Unexpected 1 for test/list@1 from p/bad, expected a list',
  ])
})

test('what the host collects must have what the host relies on', () => {
  const given = (gives: Rule['gives'], value: unknown) => faultOf(wrong(() => ({ given: [value] }), gives))[1]
  expect(given({ given: checks }, null)).toBe('Unexpected null among checks from p/bad, expected an object')
  expect(given({ given: checks }, { code: 'p/x', at: over, verdict: 'good', values: {} })).toBe(
    'Unexpected "verdict": "good" among checks from p/bad, expected one of pass, warn, fail, unknown',
  )
  expect(given({ given: steps }, { id: 'x', code: 'p/x', stage: 'later' })).toBe(
    'Unexpected "stage": "later" among steps from p/bad, expected one of unpack, check-in, mark, drill, mount, hang, true-up, dress, finish, hand-over',
  )
  expect(given({ given: parts }, { what: 'p/x', count: Number.NaN })).toBe(
    'Unexpected "count": null among parts from p/bad, expected a number',
  )
  expect(given({ given: layers }, { view: 'plan', depth: 1 })).toBe(
    'Unexpected "marks": undefined among layers from p/bad, expected a list',
  )
  expect(given({ given: reckonings }, { name: 'x', what: 'p/x', value: 1, terms: {} })).toBe(
    'Unexpected "terms": {} among reckonings from p/bad, expected a list',
  )
})

test('where facts are checked, one that its schema refuses is a fault', () => {
  const checkFact = ({ id }: { readonly id: string }, value: unknown) =>
    id === 'test/width@1' && typeof value !== 'number' ? 'must be number' : undefined
  const planner = createPlanner([pluginOf('p', [wrong(() => ({ width: 'wide' })), needs])], { checkFact })
  expect(planner.window(house, house, w1)).toMatchObject({
    facts: [],
    faults: [
      { what: 'refused', at: under, message: 'Unexpected value of test/width@1 from p/bad: must be number' },
      { at: over },
    ],
  })
})
