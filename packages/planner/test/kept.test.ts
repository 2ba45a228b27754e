import type { Job } from '@evenhem/job'
import { parts, rule } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner } from '../src/index.ts'
import { house, one, over, pluginOf, put, w1 } from './invented.ts'

const width = one('width')
const inJob = one('in-job', 'job')
const inRoom = one('in-room', 'room')

/** A planner that notes the places where its rule ran. */
function noting() {
  const ran: string[] = []
  const planner = createPlanner([
    pluginOf('p', [
      rule({ id: 'x', on: 'treatment', needs: {}, gives: { width, parts } }).run(({ it, at }) => {
        ran.push(at)
        return { width: it.clearance ?? 1, parts: [{ what: 'p/part', count: 1 }] }
      }),
      rule({ id: 'sum', on: 'room', needs: { all: { each: width } }, gives: { inRoom } }).run((_, { all }) => ({
        inRoom: all.reduce((sum, { value }) => sum + value, 0),
      })),
      rule({ id: 'all', on: 'job', needs: { rooms: { each: inRoom }, all: { each: width } }, gives: { inJob } }).run(
        (_, { rooms, all }) => ({ inJob: rooms.reduce((sum, { value }) => sum + value, 0) * 100 + all.length }),
      ),
    ]),
  ])
  const ranFor = (job: Job, ordered = house) => {
    ran.length = 0
    planner.job(job, ordered)
    return [...ran]
  }
  return { planner, ran, ranFor }
}
const everywhere = [
  `${w1}/treatments/under`,
  over,
  '/rooms/r1/windows/w2/treatments/over',
  '/rooms/r2/windows/w1/treatments/over',
]

test('a job plans every window once, and again none', () => {
  const { ranFor } = noting()
  expect([ranFor(house), ranFor(house)]).toEqual([everywhere, []])
})

test('one reading re-plans one window', () => {
  const { ranFor } = noting()
  ranFor(house)
  expect(ranFor(put(house, `${over}/clearance`, 5))).toEqual(everywhere.slice(0, 2))
})

test('a reading in a room re-plans its windows, one at an entry of hardware those that hang on it', () => {
  const { ranFor } = noting()
  ranFor(house)
  const carpeted = put(house, '/rooms/r2/floor', 'carpet')
  expect(ranFor(carpeted)).toEqual(everywhere.slice(3))
  expect(ranFor(put(carpeted, '/hardware/g/name', 'Thin wire'))).toEqual(everywhere.slice(0, 2))
})

test('a change of the order or of the job’s head is seen', () => {
  const { ranFor } = noting()
  ranFor(house)
  expect(ranFor(house, put(house, `${over}/clearance`, 5))).toEqual(everywhere.slice(0, 2))
  expect(ranFor(put(house, '/job/country', 'GB'))).toEqual(everywhere)
})

test('what a rule on the job reads re-plans all windows when it changes', () => {
  const inJob = one('in-job', 'job')
  const names = rule({ id: 'n', on: 'job', needs: {}, gives: { inJob } }).run(({ it }) => ({
    inJob: it.hardware?.[0]?.name.length ?? 0,
  }))
  const reads = rule({ id: 'x', on: 'treatment', needs: { inJob }, gives: { width } }).run((_, { inJob }) => ({ width: inJob }))
  const planner = createPlanner([pluginOf('p', [names, reads])])
  const values = (job: Job) => planner.window(job, house, '/rooms/r2/windows/w1').facts.map(({ value }) => value)
  expect([values(house), values(put(house, '/hardware/h/name', 'Long pole'))]).toEqual([[4], [9]])
})

test('a sheet is kept while the window is the same, and is the same object', () => {
  const { planner, ran } = noting()
  const first = planner.window(house, house, w1)
  expect(planner.window(put(house, '/rooms/r2/floor', 'carpet'), house, w1)).toBe(first)
  expect(ran).toEqual(everywhere.slice(0, 2))
})

test('of many sheets the last ones are kept, and a sheet planned again is equal', () => {
  const { planner, ran } = noting()
  const windows = Array.from({ length: 12 }, (_, at) => ({
    ...structuredClone(house.rooms[1]?.windows[0]),
    id: `w${at}`,
  })) as Job['rooms'][0]['windows']
  const job: Job = { ...house, rooms: [{ id: 'r', name: 'R', windows }] }
  const plans = windows.map(({ id }) => planner.window(job, job, `/rooms/r/windows/${id}`))
  ran.length = 0
  expect(planner.window(job, job, '/rooms/r/windows/w11')).toBe(plans[11])
  expect(planner.window(job, job, '/rooms/r/windows/w0')).toEqual(plans[0])
  expect(ran).toEqual(['/rooms/r/windows/w0/treatments/over'])
})

test('the job’s plan sums up every window and holds what room and job gathered', () => {
  const plan = noting().planner.job(put(house, `${over}/clearance`, 5), house)
  expect(plan.windows.map(({ window, parts, facts }) => [window, parts.length, facts.map(({ value }) => value)])).toEqual([
    [w1, 2, [1, 5]],
    ['/rooms/r1/windows/w2', 1, [1]],
    ['/rooms/r2/windows/w1', 1, [1]],
  ])
  expect(plan.facts).toEqual([
    { id: 'test/in-job@1', at: '', value: 804 },
    { id: 'test/in-room@1', at: '/rooms/r1', value: 7 },
    { id: 'test/in-room@1', at: '/rooms/r2', value: 1 },
  ])
})

test('what was gathered is new after a reading, also from windows that were kept', () => {
  const { planner } = noting()
  planner.job(house, house)
  expect(planner.job(put(house, `${over}/clearance`, 5), house).facts[0]?.value).toBe(804)
})

test('the job’s plan counts verdicts, and puts the asks of all windows in walking order', () => {
  const asks = rule({ id: 'x', on: 'treatment', needs: {}, gives: {}, codes: ['p/x'] }).run(({ at }) => ({
    ask: [`${at}/clearance`, '/job/country'],
  }))
  const plan = createPlanner([pluginOf('p', [asks])]).job(house, house)
  expect(plan.windows.map(({ verdicts }) => verdicts.unknown)).toEqual([2, 1, 1])
  expect(plan.asks).toEqual([{ at: '/job/country', holds: 4 }, ...everywhere.map((at) => ({ at: `${at}/clearance`, holds: 1 }))])
})

test('faults of windows, rooms and the job are together in the job’s plan', () => {
  const on = (['job', 'room', 'window'] as const).map((level) =>
    rule({ id: level, on: level, needs: {}, gives: {} }).run(() => {
      throw new Error(level)
    }),
  )
  expect(
    createPlanner([pluginOf('p', on)])
      .job(house, house)
      .faults.map(({ rule, at }) => `${rule} ${at}`),
  ).toEqual([
    'job ',
    'room /rooms/r1',
    'room /rooms/r2',
    `window ${w1}`,
    'window /rooms/r1/windows/w2',
    'window /rooms/r2/windows/w1',
  ])
})
