import { compose, words as drawingWords, screen } from '@evenhem/drawing'
import { type Job, type Place, valueAt } from '@evenhem/job'
import { tapes } from '@evenhem/length'
import { createPlanner, overridePlace, type WindowPlan } from '@evenhem/planner'
import { createSay, wordsOf } from '@evenhem/planner/say'
import { plugins } from '@evenhem/plugins'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import type { PunchPoint } from '../src/points.ts'

const planner = createPlanner(plugins)
const { ordered } = example('left-to-mend')
const w1 = '/rooms/garden-room/windows/w1'
const w2 = '/rooms/garden-room/windows/w2'
const over = `${w1}/treatments/over`
/** The first window with these points and no others; `found`: what is under its own. */
function withPoints(points: Readonly<Record<string, object>>, found: object = {}): Job {
  const [room] = ordered.rooms
  const [window] = room?.windows ?? []
  const changed = { ...window, found: { ...window?.found, ...found }, with: { 'punch-list': { points } } }
  return { ...ordered, rooms: [{ ...room, windows: [changed] }] } as Job
}
const planOf = (job: Job): WindowPlan => planner.window(job, job, w1)
const plan = (points: Readonly<Record<string, object>>, found?: object) => planOf(withPoints(points, found))
const pointsOf = ({ facts }: WindowPlan): readonly PunchPoint[] =>
  (facts.find(({ id }) => id === 'punch-list/points@1')?.value ?? []) as readonly PunchPoint[]
const said = ({ checks }: WindowPlan, code: string) =>
  checks.filter((check) => check.code === `punch-list/${code}`).map(({ verdict, stops }) => [verdict, stops])
const closed = ({ steps }: WindowPlan) => new Set(steps.flatMap((step) => (step.closed.length > 0 ? [step.stage] : [])))
const whole = { what: 'A bracket is loose', owner: 'installer', by: '2026-12-01' }

test.each([
  ['open', 'fail', 'hand-over'],
  ['accepted as it is', 'fail', 'hand-over'],
  ['mended', 'unknown', 'hand-over'],
  ['looked at', 'pass', undefined],
])('an unsafe point that is %s: %s', (state, verdict, stops) => {
  const found = plan({ p1: { ...whole, unsafe: true, state } })
  expect(said(found, 'unsafe')).toEqual([[verdict, stops]])
  expect(said(found, 'open')).toEqual([])
  expect([...closed(found)]).toEqual(stops ? ['hand-over'] : [])
})

test('no reason lifts an unsafe point, under its code or what it is about, and nobody is offered to give one', () => {
  const overrides = { 'punch-list/unsafe': 'The customer was asked.', 'punch-list/unsafe p1': 'The customer was asked.' }
  for (const state of ['open', 'mended', 'accepted as it is']) {
    const found = plan({ p1: { ...whole, unsafe: true, state } }, { overrides })
    const [check] = found.checks.filter(({ code }) => code === 'punch-list/unsafe')
    expect([check?.override, check && overridePlace(check)]).toEqual([undefined, undefined])
    expect([...closed(found)]).toEqual(['hand-over'])
  }
})

test('an unsafe point stops though nobody has said what is wrong or who mends it', () => {
  const found = plan({ p1: { unsafe: true } })
  expect(said(found, 'unsafe')).toEqual([['fail', 'hand-over']])
  expect(said(found, 'agreed')).toEqual([['unknown', undefined]])
  expect(found.asks.map(({ at }) => at)).toContain(`${w1}/with/punch-list/points/p1/what`)
})

test('an ordinary point is looked at while it is open, and stops nothing', () => {
  const states = ['open', 'mended', 'looked at', 'accepted as it is'] as const
  const found = plan(Object.fromEntries(states.map((state, n) => [`p${n}`, { ...whole, state }])))
  expect(said(found, 'open').map(([verdict]) => verdict)).toEqual(['warn', 'pass', 'pass', 'pass'])
  expect([...closed(found)]).toEqual([])
})

test('a point by itself is open, and not unsafe', () => {
  expect(pointsOf(plan({ p1: whole }))[0]).toMatchObject({
    id: 'p1',
    number: 1,
    state: 'open',
    isUnsafe: false,
    before: [],
    after: [],
  })
})

test('numbers follow the names, digits as numbers, whatever was put first', () => {
  const points = pointsOf(plan({ p10: whole, p9: whole, a: whole }))
  expect(points.map(({ id, number }) => `${number} ${id}`)).toEqual(['1 a', '2 p9', '3 p10'])
})

test('what may be decided is put at the point', () => {
  const found = plan({ p1: { what: 'A spot' } })
  const ways = found.checks.filter(({ verdict }) => verdict !== 'pass').flatMap((check) => check.ways ?? [])
  const own = ways.flatMap(({ code, put }) => put.map(({ at, value }) => [code, at.slice(w1.length), value]))
  const at = '/with/punch-list/points/p1'
  expect(own.filter(([, place]) => String(place).startsWith(at))).toEqual([
    ['punch-list/way-mended', `${at}/state`, 'mended'],
    ['punch-list/way-accepted', `${at}/state`, 'accepted as it is'],
    ['punch-list/way-workroom', `${at}/owner`, 'workroom'],
    ['punch-list/way-installer', `${at}/owner`, 'installer'],
    ['punch-list/way-trade', `${at}/owner`, 'other trade'],
    ['punch-list/way-customer', `${at}/owner`, 'customer'],
  ])
})

test('whoever mends it is called, one’s own is mended, what is unsafe first, and the customer is walked past all that is left', () => {
  const found = plan({
    p1: { ...whole, owner: 'workroom' },
    p2: { ...whole, unsafe: true },
    p3: { ...whole, state: 'mended' },
    p4: { ...whole, state: 'looked at' },
  })
  const steps = found.steps.filter(({ plugin }) => plugin === 'punch-list')
  expect(steps.map(({ stage, id }) => `${stage} ${id}`)).toEqual(['finish mend-p2', 'finish call-p1', 'hand-over walk'])
  expect(steps[0]?.cautions).toEqual(['punch-list/caution-unsafe', 'drapery/caution-ladder', 'drapery/caution-drill'])
  const choices = steps[2]?.captures?.map(({ at, choices }) => [at.split('/').at(-2), choices?.includes('accepted as it is')])
  expect(choices).toEqual([
    ['p1', true],
    ['p2', false],
    ['p3', true],
  ])
})

test('a point whose name no step could have costs no rule', () => {
  const found = plan({ 'Küche/1': { ...whole, unsafe: true } })
  expect(found.faults).toEqual([])
  expect(found.steps.find(({ id }) => id === 'mend-k-che-1')).toBeDefined()
})

test('points whose names look alike have a step each, also when one of them is done with', () => {
  const ids = (state: string) => {
    const { steps } = plan({ P1: { ...whole, state }, p1: whole, 'p 2': whole, 'p-2': whole })
    return steps.filter(({ stage, plugin }) => stage === 'finish' && plugin === 'punch-list').map(({ id }) => id)
  }
  expect(ids('open').sort()).toEqual(['mend-p-2', 'mend-p-2-3', 'mend-p1', 'mend-p1-4'])
  expect(ids('looked at').sort()).toEqual(['mend-p-2', 'mend-p-2-3', 'mend-p1-4'])
})

describe('pins', () => {
  const spots = (at: Place, state: 'drawn' | 'stacked' = 'drawn') =>
    plan({ p1: { ...whole, at } })
      .layers.filter((layer) => layer.by === 'punch-list/pins' && layer.state === state)
      .flatMap(({ marks }) => marks.flatMap((mark) => ('at' in mark && mark.kind === 'finding' ? [mark.at] : [])))
  const hole = (name: string): number => {
    const { reckonings } = planOf(ordered)
    return (reckonings.find((each) => each.name === `${over}#${name}`)?.value ?? Number.NaN) / 1e6
  }

  test('on a panel they go with it when it is drawn aside', () => {
    const [[drawn = 0] = []] = spots(`${over}/panels/left`)
    const [[stacked = 0] = []] = spots(`${over}/panels/left`, 'stacked')
    expect(stacked).toBeLessThan(drawn - 100)
  })
  test('on a bracket and on a number of its hole they are at the hole', () => {
    const [bracket] = spots(`${over}/found/brackets/left`)
    expect(bracket?.[1]).toBeCloseTo(hole('hole-left-top'), 6)
    expect(spots(`${over}#hole-left-top`)).toEqual([bracket])
    expect(spots(`${over}#hole-return-left`)[0]?.[1]).toBeCloseTo(hole('hole-return-left'), 6)
  })
  test('on an opening they are in its middle, on anything else of a layer in the middle of its rod', () => {
    const casing = valueAt(ordered, `${w1}/walls/a/openings/o/casing`) as { width: number; top: number; bottom: number }
    expect(spots(`${w1}/walls/a/openings/o/casing/top`)).toEqual([[casing.width / 2e6, (casing.top + casing.bottom) / 2e6]])
    expect(spots(`${over}/clearance`)).toHaveLength(1)
  })
  test('nowhere is no pin: at another window, at nothing that is drawn', () => {
    for (const at of ['/rooms/garden-room/windows/w2/treatments/over', `${w1}/floor`, `${w1}/walls/none/openings/o`, '/'])
      expect(spots(at)).toEqual([])
  })
  test('they are drawn with their numbers and told in words', () => {
    const { say, length } = createSay({ words: [...wordsOf(plugins), drawingWords], language: 'en', tape: tapes.sixteenths })
    const { layers } = planOf(ordered)
    const scene = compose(layers, {
      view: 'elevation',
      state: 'drawn',
      width: 700,
      height: 600,
      sizes: screen,
      say,
      write: length,
    })
    const findings = scene.items.flatMap((item) => (item.kind === 'finding' ? [[item.verdict, item.words]] : []))
    expect(findings).toEqual([
      ['warn', 'look: point 1'],
      ['fail', 'stop: point 2'],
      ['warn', 'look: point 3'],
      ['warn', 'look: point 4'],
      ['pass', 'pass: point 5'],
    ])
    const numbers = scene.items.flatMap((item) => (item.kind === 'caption' && item.role === 'mark' ? [item.words.text] : []))
    expect(numbers).toEqual(['1', '2', '3', '4', '5'])
  })
})

test('the points of a job are its own, and an ordinary one closes nothing at a window', () => {
  const whole = planner.job(ordered, ordered)
  expect(whole.facts.map(({ id, at }) => [id, at])).toContainEqual(['punch-list/job-points@1', ''])
  expect(whole.checks.filter(({ code }) => code === 'punch-list/open')).toHaveLength(1)
  const well = planner.window(ordered, ordered, w2).checks.filter(({ code }) => code === 'punch-list/unsafe-in-house')
  expect(well.map(({ verdict, at }) => [verdict, at])).toEqual([['pass', '/with/punch-list/points/p2']])
})

test('what is unsafe at no window stops the hand-over of every window, those without points too', () => {
  const inHouse = (state: string) => {
    const points = { p1: { what: 'A floor board is loose', unsafe: true, state } }
    return planOf({ ...withPoints({}), with: { 'punch-list': { points } } } as Job)
  }
  for (const [state, verdict] of [['open', 'fail'] as const, ['mended', 'unknown'] as const]) {
    expect(said(inHouse(state), 'unsafe-in-house')).toEqual([[verdict, 'hand-over']])
    expect([...closed(inHouse(state))]).toEqual(['hand-over'])
  }
  expect([...closed(planOf(withPoints({})))]).toEqual([])
})
