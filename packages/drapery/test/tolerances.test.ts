import type { Job } from '@evenhem/job'
import { inch, inches } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { plugins } from '@evenhem/plugins'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { differenceOf } from '../src/decisions.ts'

// Tolerances of what is read: common practice, no source, but the finished length (see defaults). Each can be set by the workroom.
const planner = createPlanner(plugins)
const { ordered } = example('panels-came-wrong')
const window = '/rooms/garden-room/windows/w1'
const over = `${window}/treatments/over`
const opening = `${window}/walls/a/openings/o`
type Change = readonly [place: string, value: unknown]
const laid = (job: Job, changes: readonly Change[]) => changes.reduce<Job>((each, [at, value]) => changed(each, at, value), job)
const planOf = (found: readonly Change[], order: readonly Change[] = []) => {
  const job = laid(ordered, order)
  return planner.window(laid(job, found), job, window)
}
const verdict = (code: string, found: readonly Change[], order: readonly Change[] = []) =>
  planOf(found, order).checks.find((check) => check.code === code && check.at !== over)?.verdict
const rules = (value: object): Change => ['/job/workroom/rules', value]
const panels = (size: string, value: number): readonly Change[] =>
  ['left', 'right'].map((side) => [`${over}/panels/${side}/${size}`, inches(value)] as const)

describe('a finished length over 108', () => {
  const long = panels('finishedLength', 120)
  const read = (value: number, more: readonly Change[] = []) =>
    verdict('drapery/as-ordered', [[`${over}/panels/left/finishedLength`, inches(value)]], [...long, ...more])
  test('may be off twice as much', () => expect([read(120.5), read(120.5625)]).toEqual(['pass', 'fail']))
  test('may be off what the workroom says', () =>
    expect([read(120.75, [rules({ longOff: inches(0.75) })]), read(120.8125, [rules({ longOff: inches(0.75) })])]).toEqual([
      'pass',
      'fail',
    ]))
  test('is 108 and not yet over it', () =>
    expect(
      verdict('drapery/as-ordered', [[`${over}/panels/left/finishedLength`, inches(108.375)]], panels('finishedLength', 108)),
    ).toBe('fail'))
})

test('pins of a pair may be as far apart as its lengths, or as the workroom says', () => {
  const pins = (...order: readonly Change[]) =>
    verdict('drapery/pins-alike', [[`${over}/panels/right/pin`, inches(0.6875)]], order)
  expect([pins(), pins(rules({ pairOff: inches(0.1875) })), pins(rules({ pinsPair: inches(0.1875) }))]).toEqual([
    'warn',
    'pass',
    'pass',
  ])
})

describe('an opening', () => {
  const read = (place: string, value: number, ...order: readonly Change[]) =>
    verdict('drapery/opening-read', [[`${opening}/${place}`, inches(value)]], order)
  test.each([
    ['casing/width', 62],
    ['casing/top', 86.25],
    ['casing/bottom', 24],
    ['sill/top', 28],
  ])('%s may be 1/8 off either way, and more is looked at', (place, was) => {
    expect([0.125, -0.125, 0.1875, -0.1875].map((off) => read(place, was + off))).toEqual(['pass', 'pass', 'warn', 'warn'])
    expect(read(place, was + 0.1875, rules({ openingOff: inches(0.1875) }))).toBe('pass')
  })
  test('that was read as it was ordered, or that the order does not know, is not spoken of', () => {
    expect(read('casing/width', 62)).toBeUndefined()
    expect(read('apron/bottom', 20)).toBeUndefined()
  })
  test('is decided about at its window, as it was read', () => {
    const found: Change = [`${opening}/casing/width`, inches(62.5)]
    const text = `go on: ${differenceOf(inches(62.5), inches(62))}`
    const [way] = planOf([found]).checks.find(({ code }) => code === 'drapery/opening-read')?.ways ?? []
    expect(way?.put).toEqual([{ at: `${window}/found/decided/a.o.casing.width`, value: text }])
    const decided: Change = [`${window}/found/decided`, { 'a.o.casing.width': text }]
    expect(verdict('drapery/opening-read', [found, decided])).toBe('pass')
    expect(verdict('drapery/opening-read', [[`${opening}/casing/width`, inches(62.75)], decided])).toBe('warn')
  })
})

test('every size of a panel is asked for with what is expected and how far it may be off', () => {
  const step = planOf([]).steps.find(({ id }) => id === 'measure-panels')
  const left = step?.captures?.filter(({ at }) => at.startsWith(`${over}/panels/left/`))
  const inInches = (value: unknown) => (value as { readonly length: number }).length / inch
  expect(left?.map(({ at, expected, tolerance }) => [at.split('/').at(-1), inInches(expected), inInches(tolerance)])).toEqual([
    ['finishedLength', 89, 0.25],
    ['firstToLast', 37.5, 0.5],
    ['return', 3.5, 0.125],
    ['pin', 0.5, 0.0625],
  ])
})

test('a panel without a return is not asked for one, and a wide one may be off a hundredth', () => {
  const step = planOf(
    [],
    [
      [`${over}/panels/left/return`, 0],
      [`${over}/panels/left/firstToLast`, inches(80)],
    ],
  ).steps.find(({ id }) => id === 'measure-panels')
  const left = step?.captures?.filter(({ at }) => at.startsWith(`${over}/panels/left/`))
  expect(left?.map(({ at }) => at.split('/').at(-1))).toEqual(['finishedLength', 'firstToLast', 'pin'])
  expect(left?.[1]?.tolerance).toEqual({ length: inches(0.8) })
})
