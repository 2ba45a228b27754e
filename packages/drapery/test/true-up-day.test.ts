import { below } from '@evenhem/job'
import { inch, inches, type Length } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { plugins } from '@evenhem/plugins'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import type { TrueUp } from '../src/facts/true-up.ts'
import { decidedText, hemDecided, isToRead, moveIn, moveText } from '../src/rules/hem-decided.ts'
import { pinRangeOf } from '../src/rules/true-up.ts'

const planner = createPlanner(plugins)
const { ordered } = example('tern-hollow')
const window = '/rooms/garden-room/windows/w1'
const at = `${window}/treatments/over`
type Entry = readonly [place: string, value?: unknown]
type Job = typeof ordered

const put = (job: Job, entries: readonly Entry[]): Job =>
  entries.reduce((all, [place, value]) => changed(all, place.startsWith('/') ? place : `${at}/${place}`, value), job)
const read = (panel: string, ...hems: readonly (readonly [hook: number, inches: number])[]): readonly Entry[] =>
  hems.map(([n, value]) => [`found/hemsRead/${panel}/${n}`, inches(value)])
const planOf = (job: Job) => planner.window(job, ordered, window)
const evenOf = (job: Job) => planOf(job).checks.find(({ code }) => code === 'drapery/hem-even')
const upOf = (job: Job) => planOf(job).facts.find(({ id }) => id === 'drapery/true-up@1')?.value as TrueUp
/** A job in which somebody took a way out: what it puts stands where it says. */
const taken = (job: Job, code: string): Job => {
  const way = evenOf(job)?.ways?.find((one) => one.code === `drapery/${code}`)
  if (!way) throw new Error(`no ${code}`)
  return put(
    job,
    way.put.map(({ at, value }) => [at, typeof value === 'object' && 'length' in value ? value.length : value] as const),
  )
}
const ways = (job: Job) => evenOf(job)?.ways?.map(({ code }) => code.replace('drapery/', ''))
const step = (job: Job, id: string) => planOf(job).steps.find((one) => one.id === id)

const rising = [...read('left', [1, 1 / 2], [7, 1 / 2], [12, 1 / 2]), ...read('right', [1, 1 / 2], [7, 5 / 8], [12, 3 / 4])]

describe('a hem from hanging to even, entry by entry', () => {
  const hung = put(ordered, [['found/hungOn', '2026-11-30']])
  const once = put(hung, rising)
  const set = taken(once, 'way-hem-pins')
  const partly = put(set, read('right', [7, 1 / 2]))
  const again = put(partly, read('right', [12, 9 / 16]))
  test('before it hangs nothing is said', () => expect(evenOf(ordered)).toBeUndefined())
  test('once it hangs it is to be read, and nothing waits for that', () =>
    expect(evenOf(hung)).toMatchObject({ verdict: 'unknown', values: { how: 'unread', count: { count: 2 } } }))
  test('one reading of a panel is none', () =>
    expect(evenOf(put(hung, rising.slice(0, 4)))).toMatchObject({ values: { how: 'unread', count: { count: 1 } } }))
  test('read, it is too high at the wall, and nothing is dressed', () =>
    expect(evenOf(once)).toMatchObject({
      verdict: 'fail',
      stops: 'dress',
      values: { hook: { count: 12 }, off: { length: inch / 4 }, way: 'high', reads: { length: (3 * inch) / 4 } },
    }))
  test('its ways: pins first, then the bracket that leaves more, the workroom last', () =>
    expect(ways(once)).toEqual(['way-hem-pins', 'way-hem-brackets', 'way-hem-panel-back']))
  test('a step says the nine pins, hook by hook', () =>
    expect(step(once, 'set-pins')?.numbers?.map(({ what, value }) => [what.replace('drapery/hook-', ''), value / inch])).toEqual([
      ...[5, 6, 7, 8, 9].map((n) => [`right-${n}`, 3 / 8]),
      ...[10, 11, 12, 13].map((n) => [`right-${n}`, 1 / 4]),
    ]))
  test('pins are set: the old readings say nothing of that, and are to be taken again', () => {
    expect(evenOf(set)).toMatchObject({ verdict: 'unknown', values: { how: 'again', count: { count: 1 } } })
    expect(evenOf(set)?.stops).toBeUndefined()
    expect(step(set, 'set-pins')?.values).toMatchObject({ how: 'decided', count: { count: 9 } })
  })
  test('what is expected then is what the pins should have made of it', () =>
    expect(step(set, 'read-hem')?.captures?.map(({ expected }) => (expected as { length: number }).length / inch)).toEqual(
      Array(6).fill(0.5),
    ))
  test('while one that should have changed stands, it is still to be read', () =>
    expect(evenOf(partly)).toMatchObject({ verdict: 'unknown', values: { how: 'again' } }))
  test('read again it is even', () =>
    expect(evenOf(again)).toMatchObject({
      verdict: 'pass',
      values: { least: { length: inch / 2 }, most: { length: (9 * inch) / 16 } },
    }))
  test('and its pins are those that were set', () =>
    expect(upOf(again).panels[1]?.hooks.map(({ pin }) => pin.value / inch)).toEqual([
      ...Array(4).fill(1 / 2),
      ...Array(5).fill(3 / 8),
      ...Array(4).fill(1 / 4),
    ]))
  test('pins that changed nothing: whoever reads the same says so, and it is too high again', () => {
    const same = taken(set, 'way-hem-read-again')
    expect(evenOf(same)).toMatchObject({ verdict: 'fail', values: { hook: { count: 12 } } })
  })
  test('weeks later it has settled: the same again, from the pins that were set', () => {
    const settled = put(again, [
      ...read('left', [1, 5 / 16], [7, 5 / 16], [12, 5 / 16]),
      ...read('right', [1, 5 / 16], [7, 5 / 16], [12, 3 / 8]),
    ])
    expect(evenOf(settled)).toMatchObject({ verdict: 'fail', values: { way: 'low' } })
    const trued = taken(settled, 'way-hem-pins')
    expect(evenOf(trued)).toMatchObject({ verdict: 'unknown', values: { count: { count: 2 } } })
    expect(
      evenOf(
        put(trued, [...read('left', [1, 1 / 2], [7, 1 / 2], [12, 1 / 2]), ...read('right', [1, 1 / 2], [7, 1 / 2], [12, 1 / 2])]),
      )?.verdict,
    ).toBe('pass')
  })
  test('pins are withdrawn with what was decided: all is as it was', () => {
    const pins = [5, 6, 7, 8, 9, 10, 11, 12, 13].map((n): Entry => [`found/pins/right/${n}`])
    expect(evenOf(put(set, [...pins, ['found/decided/hem-right']]))).toEqual(evenOf(once))
  })
})

describe('a bracket that moves', () => {
  const moved = taken(put(ordered, rising), 'way-hem-brackets')
  test('both hems are to be read again, and a step says how far it goes and where its hole then is', () => {
    expect(evenOf(moved)).toMatchObject({ verdict: 'unknown', values: { count: { count: 2 } } })
    expect(step(moved, 'move-bracket-right')).toMatchObject({
      values: { by: { length: (3 * inch) / 8 }, way: 'down', to: { length: 90 * inch } },
      captures: [{ at: `${at}/found/brackets/right/floorToHole`, expected: { length: 90 * inch } }],
    })
  })
  test('its mark goes from the hole as it was read, where it was', () => {
    const read = put(ordered, [...rising, ['found/brackets/right/floorToHole', inches(90.5)]])
    expect(step(taken(read, 'way-hem-brackets'), 'move-bracket-right')?.values).toMatchObject({ to: { length: 90.125 * inch } })
  })
  test('a hollow wall wants three quarters, which brings nothing here', () => {
    const hollow: Entry = [`${window}/walls/a/buildUp/behind`, 'hollow']
    expect(ways(put(ordered, [hollow, ...rising]))).toEqual(['way-hem-pins', 'way-hem-panel-back'])
  })
  test('on a casing it is screwed into wood', () => {
    const onCasing: readonly Entry[] = [
      [`${window}/walls/a/buildUp/behind`, 'hollow'],
      ['mount', 'casing'],
    ]
    expect(ways(put(ordered, [...onCasing, ...rising]))).toContain('way-hem-brackets')
  })
})

describe('what a hem is measured from', () => {
  const sill = (hemAt: string, hem: number) =>
    put(ordered, [
      ['hemAt', hemAt],
      [`${window}/walls/a/openings/o/apron`, { bottom: inches(22) }],
      ...read('left', [1, hem], [12, hem]),
      ...read('right', [1, hem], [12, hem]),
    ])
  const pins = (job: Job) => upOf(job).panels[0]?.hooks[0]?.set.value
  test('above a stool a hem that reads more hangs too high, below an apron too low', () => {
    expect(evenOf(sill('sill', 3 / 4))?.values).toMatchObject({ way: 'high' })
    expect(evenOf(sill('apron', 3 / 4))?.values).toMatchObject({ way: 'low' })
    expect([pins(sill('sill', 3 / 4)), pins(sill('apron', 3 / 4))].map((pin) => (pin ?? 0) / inch)).toEqual([1 / 4, 3 / 4])
    expect(upOf(sill('apron', 3 / 4)).panels[0]?.hooks[0]?.after?.value).toBe(inch / 2)
    expect(taken(sill('apron', 3 / 4), 'way-hem-pins').rooms[0]?.windows[0]?.treatments[0]?.found?.decided?.['hem-left']).toBe(
      'pins; read 1: 19.05 mm, 12: 19.05 mm; meant 1: 12.7 mm, 12: 12.7 mm',
    )
  })
  test('a break of 1 that reads 1/2 on the floor is too high', () => {
    const lying = put(ordered, [
      ['clearance', inches(-1)],
      ['draw', 'stationary'],
      ['panels', ordered.rooms[0]?.windows[0]?.treatments[0]?.panels.map((panel) => ({ ...panel, covers: inches(20) }))],
      ...read('left', [1, -0.5], [12, -0.5]),
      ...read('right', [1, -1], [12, -1]),
    ])
    expect(evenOf(lying)?.values).toMatchObject({ way: 'high', off: { length: inch / 2 } })
    expect(evenOf(lying)?.ways?.[0]).toMatchObject({ code: 'drapery/way-hem-brackets-pins' })
  })
  test('an older reading of a whole panel holds all along', () => {
    const whole = put(ordered, [['found/hems', { left: inches(0.5), right: inches(0.75) }]])
    expect(evenOf(whole)?.values).toMatchObject({ way: 'high', off: { length: inch / 4 } })
  })
  test('a hem that is off by no more than the tolerance is even, and the workroom may want it nearer', () => {
    const near = put(ordered, [...read('left', [1, 5 / 8], [12, 1 / 2]), ...read('right', [1, 1 / 2], [12, 3 / 8])])
    expect(evenOf(near)?.verdict).toBe('pass')
    expect(evenOf(put(near, [['/job/workroom', { name: 'W', rules: { hemEven: inches(1 / 16) } }]]))?.verdict).toBe('fail')
  })
  test('readings below hooks that are not there are no readings', () =>
    expect(evenOf(put(ordered, [...read('left', [0, 1], [99, 1], [1, 0.5]), ...rising.slice(3)]))?.values).toMatchObject({
      how: 'unread',
    }))
})

describe('opened over a high floor', () => {
  const deep: readonly Entry[] = [
    [`${window}/floor/middle/y`, inches(-1 / 2)],
    [`${window}/floor/right/y`, inches(-1 / 2)],
    ...['left', 'right'].flatMap((panel): readonly Entry[] => [
      [`panels/${panel}/pin`, inches(3 / 4)],
      [`panels/${panel}/finishedLength`, inches(89.25)],
    ]),
  ]
  const hem = put(ordered, [...deep, ...read('left', [1, 1], [7, 3 / 4], [12, 1 / 2]), ...read('right', [1, 1], [7, 1], [12, 1])])
  const numbers = (code: string) => evenOf(hem)?.ways?.find((one) => one.code === `drapery/${code}`)?.values
  test('half the correction is offered after the whole one, and more is left under the open panel', () => {
    expect(ways(hem)?.slice(0, 2)).toEqual(['way-hem-pins', 'way-hem-pins-half'])
    const [whole, half] = [numbers('way-hem-pins'), numbers('way-hem-pins-half')] as Record<string, { length: number }>[]
    expect(half?.open?.length).toBeGreaterThan((whole?.open?.length ?? 0) + inch / 8)
    expect(half?.off?.length).toBeGreaterThan(whole?.off?.length ?? 0)
  })
  test('where the floor is level there is no half', () =>
    expect(ways(put(hem, [[`${window}/floor`, []]]))).not.toContain('way-hem-pins-half'))
})

test('a bracket in the ceiling never moves, nor one that is another treatment’s', () => {
  expect(ways(put(ordered, [['mount', 'ceiling'], ...rising]))).toEqual(['way-hem-pins', 'way-hem-panel-back'])
  expect(ways(put(ordered, [['bracketsOf', 'under'], ...rising]))).toEqual(['way-hem-pins', 'way-hem-panel-back'])
})
describe('the range of pins', () => {
  const { job } = ordered
  const it = (pin: number, heading?: number) =>
    ({
      panels: [{ id: 'p', pin: inches(pin), ...(heading ? { heading: { kind: 'x', height: inches(heading) } } : {}) }],
    }) as never
  const drop = { value: inches(1.5), from: '/drop' }
  const range = (...of: readonly [drawnAs: 'rings' | 'carriers', pin: number, heading?: number]) => {
    const { least, most, step } = pinRangeOf(it(of[1], of[2]), '/at', job, { drawnAs: of[0], drop, rodHeight: inches(0.75) })
    return [least.value, most, step].map((length) => length / inch)
  }
  test('on rings 1/4 to 3/4, and never in the last 1/2 of a heading', () => {
    expect(range('rings', 0.5, 4)).toEqual([1 / 4, 3 / 4, 1 / 8])
    expect(range('rings', 0.5, 1)).toEqual([1 / 4, 1 / 2, 1 / 8])
    expect(range('rings', 0.5)).toEqual([1 / 4, 3 / 4, 1 / 8])
  })
  test('in front of a traverse rod from where the heading covers it to 1/2 above the heading’s edge', () => {
    expect(range('carriers', 1.625, 4)).toEqual([3 / 2, 7 / 2, 1 / 8])
    expect(range('carriers', 1.625)).toEqual([3 / 2, 1.625, 1 / 8])
  })
  test('under it so that the heading does not meet it', () => expect(range('carriers', 0.5, 4)).toEqual([1 / 4, 3 / 4, 1 / 8]))
  test('where nobody knows how far carriers drop, as on rings', () =>
    expect(pinRangeOf(it(0.5), '/at', job, { drawnAs: 'carriers' }).most).toBe(inches(3 / 4)))
})

test('what is decided is read back as it was written, to the nanometre', () => {
  const said = { how: 'pins', read: { 1: 1 as Length, 12: inches(1 / 64) }, meant: { 1: -7 as Length, 12: inches(3) } }
  expect(hemDecided(decidedText(said))).toEqual(said)
  expect(hemDecided('let it be')).toEqual({ how: 'let it be', read: {}, meant: {} })
  expect(moveIn(moveText(inches(-3 / 8), inches(90)))).toEqual({ by: inches(-3 / 8), to: inches(90) })
  expect(moveIn(moveText(inches(3 / 8), inches(90)))).toEqual({ by: inches(3 / 8), to: inches(90) })
  expect(moveIn('a little up')).toBeUndefined()
})
test('it is to be read until every reading that should have changed did, and one did at all', () => {
  const [a, b] = [inches(1), inches(2)]
  const decided = { how: 'pins', read: { 1: a, 2: a }, meant: { 1: a, 2: b } }
  expect(isToRead(decided, { 1: a, 2: a })).toBe(true)
  expect(isToRead(decided, { 1: b, 2: a })).toBe(true)
  expect(isToRead(decided, { 1: a, 2: b })).toBe(false)
  expect(isToRead({ ...decided, meant: decided.read }, { 1: a, 2: a })).toBe(true)
  expect(isToRead({ how: 'read again', read: {}, meant: {} }, { 1: a })).toBe(false)
})
test('cloth that settles has a day to look again, two weeks on or as the workroom has it', () => {
  const settles = put(ordered, [
    ['/fabrics/oat-linen/settling', 1],
    ['found/hungOn', '2026-12-20'],
  ])
  const again = (job: Job) => planOf(job).checks.find(({ code }) => code === 'drapery/look-again')
  expect(again(settles)?.ways?.[0]?.put).toEqual([{ at: below(at, 'found', 'lookAgain'), value: '2027-01-03' }])
  expect(again(put(settles, [['/job/workroom', { name: 'W', rules: { lookAgainAfter: 30 } }]]))?.values).toMatchObject({
    date: '2027-01-19',
  })
  expect(again(put(settles, [['found/lookAgain', '2027-01-04']]))?.verdict).toBe('pass')
  expect(again(put(settles, [['found/hungOn']]))).toBeUndefined()
  expect(again(put(settles, [['/fabrics/oat-linen/settling', 0]]))).toBeUndefined()
})
