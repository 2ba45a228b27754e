import { checks, type Plugin, rule } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner } from '../src/index.ts'
import { house, many, one, over, pluginOf, put, under, w1 } from './invented.ts'

const [width, area] = [one('width'), one('area')]
const clearance = rule({ id: 'ask', on: 'treatment', needs: {}, gives: { width }, codes: ['p/width'] }).run(({ it, at }) =>
  it.clearance === undefined ? { ask: [`${at}/clearance`] } : { width: it.clearance },
)
const reads = rule({ id: 'area', on: 'treatment', needs: { width }, gives: { area } }).run((_, { width }) => ({
  area: width * 2,
}))
const checked = rule({ id: 'check', on: 'treatment', needs: { area }, gives: { checks }, codes: ['p/area'] }).run(
  ({ at }, { area }) => ({
    checks: [{ code: 'p/area', verdict: area > 2 ? 'pass' : 'fail', at, values: {} }],
  }),
)
const p = pluginOf('p', [clearance, reads, checked])
const plan = (job: typeof house, ...plugins: readonly Plugin[]) => createPlanner(plugins).window(job, job, w1)
const half = put(house, `${under}/clearance`, 2)

test('a rule that asks holds up all that need its facts, directly or not', () => {
  const { asks, facts, faults } = plan(half, p)
  expect(asks).toEqual([{ at: `${over}/clearance`, holds: 3 }])
  expect(facts.map(({ id, at }) => [id, at])).toEqual([
    ['test/area@1', under],
    ['test/width@1', under],
  ])
  expect(faults).toEqual([])
})

test('while a rule asks or waits each of its codes is unknown, and says which places it waits for', () => {
  expect(plan(half, p).checks.filter(({ on }) => on === over)).toEqual(
    [
      {
        code: 'p/width',
        says: 'host/waits',
        verdict: 'unknown',
        at: over,
        values: { count: { count: 1 }, first: `${over}/clearance` },
        by: 'p/ask',
        on: over,
        because: 'waits',
        waits: [`${over}/clearance`],
      },
      {
        code: 'p/area',
        says: 'host/waits',
        verdict: 'unknown',
        at: over,
        values: { count: { count: 1 }, first: `${over}/clearance` },
        by: 'p/check',
        on: over,
        because: 'waits',
        waits: [`${over}/clearance`],
      },
    ].sort((a, b) => (a.by < b.by ? -1 : 1)),
  )
})

test('an unknown check has its own sentence where the plugin has words for it', () => {
  const worded = pluginOf('p', [clearance], { words: { en: { 'p/width.unknown': { says: 'Not known.' } } } })
  expect(plan(house, worded).checks).toMatchObject([{ says: 'p/width.unknown', because: 'waits' }, { says: 'p/width.unknown' }])
})

test('once the place is filled nothing waits', () => {
  const { asks, checks } = plan(put(half, `${over}/clearance`, 1), p)
  expect([asks, checks.map(({ verdict }) => verdict)]).toEqual([[], ['pass', 'fail']])
})

test('maybe does not wait', () => {
  const reader = pluginOf('r', [
    rule({ id: 'x', on: 'treatment', needs: { width: { maybe: width } }, gives: { seen: one<string>('seen') } }).run(
      (_, { width }) => ({ seen: `${width}` }),
    ),
  ])
  expect(
    plan(half, p, reader)
      .facts.filter(({ id }) => id === 'test/seen@1')
      .map(({ value }) => value),
  ).toEqual(['2', 'undefined'])
})

test('a rule that gathers waits for all below it', () => {
  const total = one('total', 'window')
  const reader = pluginOf('r', [
    rule({ id: 'x', on: 'window', needs: { all: { each: width } }, gives: { total } }).run((_, { all }) => ({
      total: all.length,
    })),
  ])
  expect(plan(half, p, reader).asks).toEqual([{ at: `${over}/clearance`, holds: 4 }])
  expect(plan(put(half, `${over}/clearance`, 1), p, reader).facts.find(({ id }) => id === 'test/total@1')?.value).toBe(2)
})

test('a list waits for all its givers', () => {
  const list = many('list')
  const giver = (id: string, ask: boolean) =>
    rule({ id, on: 'treatment', needs: {}, gives: { list } }).run(({ at }) => (ask ? { ask: [`${at}/rod/top`] } : { list: [1] }))
  const needs = rule({ id: 'needs', on: 'treatment', needs: { list }, gives: { width } }).run((_, { list }) => ({
    width: list.length,
  }))
  expect(plan(half, pluginOf('r', [giver('a', false), giver('b', true), needs])).asks).toEqual([
    { at: `${under}/rod/top`, holds: 2 },
    { at: `${over}/rod/top`, holds: 2 },
  ])
  expect(plan(half, pluginOf('r', [giver('a', false), giver('b', false), needs])).facts.map(({ value }) => value)).toEqual([
    [1, 1],
    [1, 1],
    2,
    2,
  ])
})

test('asks come in walking order: as they stand in the job, what is not there yet after what is', () => {
  const places = [`${over}/clearance`, `${w1}/floor/a/y`, `${under}/rod/top`, '/hardware/g/rod', `${under}/draw`, '/job/country']
  const asks = rule({ id: 'x', on: 'window', needs: {}, gives: {} }).run(() => ({ ask: places }))
  expect(plan(house, pluginOf('p', [asks])).asks.map(({ at }) => at)).toEqual([
    '/job/country',
    '/hardware/g/rod',
    `${under}/draw`,
    `${under}/rod/top`,
    `${over}/clearance`,
    `${w1}/floor/a/y`,
  ])
})

test('an answer may ask for several places; each holds up the rule', () => {
  const asks = rule({ id: 'x', on: 'window', needs: {}, gives: {}, codes: ['p/x'] }).run(() => ({
    ask: [`${over}/a`, `${under}/b`, `${over}/a`],
  }))
  const { checks, asks: list } = plan(house, pluginOf('p', [asks]))
  expect(list).toEqual([
    { at: `${under}/b`, holds: 1 },
    { at: `${over}/a`, holds: 1 },
  ])
  expect(checks[0]?.waits).toEqual([`${under}/b`, `${over}/a`])
})

test('a window waits for what its job asks', () => {
  const inJob = one('in-job', 'job')
  const rules = [
    rule({ id: 'j', on: 'job', needs: {}, gives: { inJob } }).run(() => ({ ask: ['/job/country'] })),
    rule({ id: 'w', on: 'window', needs: { inJob }, gives: {} }).run(() => ({})),
  ]
  expect(plan(house, pluginOf('p', rules)).asks).toEqual([{ at: '/job/country', holds: 1 }])
})
