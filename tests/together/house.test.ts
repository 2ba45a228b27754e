import { inch, type Length } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { describe, expect, test } from 'vitest'
import { example } from '../tools/examples.ts'

// Every number here was worked out by hand from the order, not by our functions.

const { found, ordered } = example('heron-point')
const planner = createPlanner(plugins)
const planOf = (window: string) => {
  const at = `/rooms/${window.replace('/', '/windows/')}`
  const plan = planner.window(found, ordered, at)
  const of = (name: string): number =>
    plan.reckonings.find((each) => each.name === `${at}/treatments/over#${name}`)?.value ?? Number.NaN
  const inches = (...names: readonly string[]): readonly number[] => names.map((name) => of(name) / inch)
  const mm = (...names: readonly string[]): readonly number[] => names.map((name) => of(name) / 1e6)
  // biome-ignore lint/suspicious/noExplicitAny: facts are plain data, read by name
  const fact = (id: string): any => plan.facts.find((each) => each.id === id)?.value
  return { plan, inches, mm, fact }
}

describe('three windows on one rod, with a support and a splice where the panels meet', () => {
  const { inches, fact } = planOf('living-room/w3')
  test('casings at 0, 36 and 72 of 30 each are one frame of 102, passed by 9 on each side', () =>
    expect(inches('frame-right', 'frame-width', 'cover-left', 'cover-right', 'meets')).toEqual([102, 102, -9, 111, 51]))
  test('brackets stand a ring room inside the ends, the rod runs half a ring beyond them, and the splice is at the support', () =>
    expect(inches('bracket-left', 'bracket-right', 'rod-end-left', 'rod-end-right', 'rod-needed', 'splice-only')).toEqual([
      -8, 110, -9.125, 111.125, 120.25, 51,
    ]))
  test('the top of the rod is hem 1/2 + 87 1/2 − 1/2 + 2 1/8; every hole has its own floor', () => {
    expect(inches('top-of-rod', 'top-of-plate', 'top-of-support')).toEqual([89.625, 89.125, 88.25])
    // the floor falls 1/8 in 60: 1/480 at the left bracket, 1/8 at the support, 1/8 + 59/480 at the right
    const floors = [-1 / 480, -0.125, -0.125 - 59 / 480]
    const expected = [88.5 - floors[0]!, 87.75 - floors[1]!, 88.5 - floors[2]!, 86.25 + 0.125]
    for (const [i, value] of inches(
      'from-floor-left-top',
      'from-floor-support-middle-top',
      'from-floor-right-top',
      'from-floor-support-middle-lower',
    ).entries())
      expect(value).toBeCloseTo(expected[i]!, 6)
  })
  test('17 rings a panel: one outside, 16 in its own bay, the leading rings on either side of the support', () =>
    expect(fact('drapery/hook-map@1').threading.map((each: { count: number }) => each.count)).toEqual([1, 16, 16, 1]))
  test('finials end 2 1/2 beyond the rod; the wall angle stands at the parked ring, its hole 1/4 under the hang line', () =>
    expect(
      inches('reach-left', 'reach-right', 'hang-line', 'hole-return-left', 'from-floor-return-left', 'from-floor-return-right'),
    ).toEqual([-11.625, 113.625, 87.5, 87.25, 87.25, 87.5]))
  test('drawn, spaces are 58 1/2 in 15: 3.9; aside, a third of 60 is 20 and its 17 rings stand 1 1/4 apart', () => {
    const left = fact('drapery/hook-map@1').places.filter(({ panel }: { panel: string }) => panel === 'left')
    const at = (n: number) => [left[n - 1].drawn / inch, left[n - 1].stacked / inch]
    expect([1, 2, 3, 16, 17, 18].map(at)).toEqual([
      [51, 11],
      [49.5, 9.75],
      [45.6, 8.5],
      [-5.1, -7.25], // not −7 3/4: half a bracket of 1 1/4 and half a ring keep it 3/4 from the bracket at −8
      [-9, -9],
      [-9, -9],
    ])
  })
})

test('a high window: 1/2 + 138 − 1/2 + 2 1/8, supported in the middle of 74 between its brackets', () => {
  const { inches, fact } = planOf('stair-hall/w1')
  expect(
    inches('cover-left', 'cover-right', 'meets', 'bracket-left', 'bracket-right', 'rod-end-left', 'reach-right', 'span-1'),
  ).toEqual([-8, 68, 30, -7, 67, -8.125, 70.625, 37])
  expect(
    inches('top-of-rod', 'top-of-plate', 'hole-left-top', 'hole-left-lower', 'top-of-support', 'hole-support-middle-lower'),
  ).toEqual([140.125, 139.625, 139, 137.375, 138.75, 136.75])
  expect(fact('drapery/hook-map@1').threading.map((each: { count: number }) => each.count)).toEqual([1, 10, 10, 1])
})

describe('a one-way draw', () => {
  test('symmetric: its leading bracket stands like the other, and the cloth stops half a bracket and half a ring short of it', () =>
    expect(
      planOf('dining-room/w1').inches(
        'cover-left',
        'cover-right',
        'bracket-left',
        'bracket-right',
        'drawn-right',
        'passes-right',
      ),
    ).toEqual([-6, 42, -5, 41, 40.25, 4.25]))
  test('reach: its leading bracket stands half a bracket and half a ring beyond what it covers', () =>
    expect(planOf('dining-room/w2').inches('bracket-left', 'bracket-right', 'rod-end-left', 'reach-left', 'passes-left')).toEqual(
      [-6.75, 41, -7.875, -10.375, 6],
    ))
  test('one panel has one return: thirteen pleats take fourteen rings and one place at the wall', () => {
    const { places, bearers, threading } = planOf('dining-room/w1').fact('drapery/hook-map@1')
    expect([places.length, bearers.value, threading.map((each: { count: number }) => each.count)]).toEqual([15, 14, [1, 13, 0]])
  })
})

describe('stationary panels that lie an inch on the floor', () => {
  const { inches, fact } = planOf('bedroom/w1')
  test('hem −1, top of rod −1 + 89 − 1/2 + 2 1/8', () => expect(inches('hem', 'top-of-rod')).toEqual([-1, 89.625]))
  test('each covers its own 14, from the end of the rod inward', () =>
    expect(
      fact('drapery/coverage@1').shares.map((share: Record<string, { value: Length }>) => [
        share.end!.value / inch,
        share.leading!.value / inch,
      ]),
    ).toEqual([
      [-10, 4],
      [58, 44],
    ]))
  test('without a return the outer edge has the ring that parks outside, and the last pleat hangs inside', () => {
    const { places, threading } = fact('drapery/hook-map@1')
    const left = places
      .filter((place: { panel: string }) => place.panel === 'left')
      .map((place: { drawn: Length }) => place.drawn / inch)
    expect([left[0], left[1], left.at(-2), left.at(-1)]).toEqual([4, 2.5, -8.25, -10])
    expect(threading.map((each: { count: number }) => each.count)).toEqual([1, 10, 1])
  })
  test('drawn aside they are where they were', () => {
    for (const place of fact('drapery/hook-map@1').places) expect(place.stacked).toBe(place.drawn)
  })
})

test('in millimetres, above a stool: 900 + 12 + 1320 − 12 + 54', () =>
  expect(
    planOf('bedroom/w2').mm(
      'hem',
      'top-of-rod',
      'top-of-plate',
      'hole-left-top',
      'bracket-left',
      'bracket-right',
      'rod-end-left',
      'rod-end-right',
    ),
  ).toEqual([912, 2274, 2262, 2247, -125, 1325, -153, 1353]))
test('below an apron the hem is its bottom less the clearance: 28 − 1', () =>
  expect(planOf('bedroom/w3').inches('hem', 'top-of-rod', 'hole-return-left')).toEqual([27, 89.625, 87.25]))
test('two windows of one room hang alike on floors that are not: rods and hems on one line', () =>
  expect(planOf('living-room/w2').inches('top-of-rod', 'hem')).toEqual(planOf('living-room/w1').inches('top-of-rod', 'hem')))
