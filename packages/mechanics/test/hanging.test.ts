import { expect, test } from 'vitest'
import { type Beam, type Hanging, type Hung, hung, type Loads, sagBetween } from '../src/index.ts'

const bare: Loads = { spread: [], points: [] }
const over = (...at: readonly number[]): Beam => ({
  from: 0,
  to: at.at(-1) ?? 0,
  stiffness: [{ from: 0, ei: 100 }],
  supports: at.map((x) => ({ at: x })),
})
const found = (beam: Beam, panels: readonly Hanging[], own = bare, steps?: number): Hung => {
  const all = hung(beam, own, panels, steps)
  if (!all) throw new Error('Unexpected beam that folds, expected one that stands')
  return all
}
const close = (value: number) => expect.closeTo(value, 9)

/** It hangs on the left end of a rod of 2: stacked on the first half metre, drawn over all of it. */
const fromLeft: Hanging = { outer: 0, drawn: 2, stacked: 0.5, weight: 40 }
const fromRight: Hanging = { outer: 2, drawn: 0, stacked: 1.5, weight: 40 }

test('a panel that is drawn is carried by both ends alike, one that is stacked by its own end', () => {
  const stacked = (40 * 0.25) / 2
  const [near, far] = [
    { most: close(40 - stacked), least: close(20), mostWhen: [0] },
    { most: close(20), least: close(stacked), mostWhen: [1] },
  ]
  expect(found(over(0, 2), [fromLeft]).carried).toEqual([near, far])
  expect(found(over(0, 2), [fromRight]).carried).toEqual([far, near])
})
test('drawn half way it lies half way between', () => {
  const { reactions } = found(over(0, 2), [fromLeft]).bent([0.5])
  expect(reactions).toEqual([close(40 - (40 * 0.625) / 2), close((40 * 0.625) / 2)])
})
test('what hangs on the rod anyway comes to what the panels do', () => {
  const own: Loads = { spread: [{ from: 0, to: 2, each: 10 }], points: [{ at: 1, force: 6 }] }
  const { carried, sags } = found(over(0, 2), [fromLeft], own)
  expect(carried[1]).toEqual({ most: close(33), least: close(18), mostWhen: [1] })
  expect(sags[0]?.value).toBeGreaterThan(found(over(0, 2), [fromLeft]).sags[0]?.value ?? Number.NaN)
})
test('a panel that covers nothing weighs where it hangs', () => {
  const { carried } = found(over(0, 2), [{ outer: 0.5, drawn: 0.5, stacked: 0.5, weight: 40 }])
  expect(carried.map(({ most }) => most)).toEqual([close(30), close(10)])
})
test('of ways to draw that come to the same the first is told', () => {
  const { carried } = found(over(0, 2), [{ ...fromLeft, weight: 0 }])
  expect(carried.map(({ mostWhen }) => mostWhen)).toEqual([[0], [0]])
})
test('a support out of line adds its part once', () => {
  const beam = over(0, 1, 2)
  const low = { ...beam, supports: [{ at: 0 }, { at: 1, down: 0.003 }, { at: 2 }] }
  const added = (found(low, []).carried[1]?.most ?? 0) - (found(beam, []).carried[1]?.most ?? 0)
  const pair = [fromLeft, fromRight].map((panel) => ({ ...panel, drawn: 1 }))
  const [one, other] = [found(beam, pair), found(low, pair)]
  expect(added).toBeLessThan(-1)
  expect(other.carried[1]?.most).toEqual(close((one.carried[1]?.most ?? 0) + added))
})

/** Every way to draw two panels in so many steps. */
const ways = (steps: number) =>
  Array.from({ length: (steps + 1) ** 2 }, (_, i) => [Math.floor(i / (steps + 1)) / steps, (i % (steps + 1)) / steps] as const)
test.each<readonly [string, Beam]>([
  ['one bay', over(0, 2)],
  ['two uneven bays', over(0, 1.2, 2)],
  [
    'three bays, the first of them stiffer',
    {
      ...over(0, 0.7, 1.4, 2),
      stiffness: [
        { from: 0, ei: 300 },
        { from: 0.7, ei: 80 },
      ],
    },
  ],
])('of %s no other way to draw is worse, and each way that is told is as bad as is told', (_, beam) => {
  const pair = [fromLeft, fromRight].map((panel) => ({ ...panel, drawn: 1 }))
  const own: Loads = { spread: [{ from: 0, to: 2, each: 4 }], points: [] }
  const all = found(beam, pair, own, 8)
  for (const { from, to, value, when } of all.sags) {
    const worst = Math.max(...ways(8).map((drawn) => sagBetween(all.bent(drawn), from, to).value))
    expect(sagBetween(all.bent(when), from, to).value).toBe(value)
    expect(value / worst).toBeGreaterThan(0.995)
  }
  for (const [i, { most, least }] of all.carried.entries()) {
    const each = ways(8).map((drawn) => all.bent(drawn).reactions[i] ?? Number.NaN)
    expect([most, least]).toEqual([close(Math.max(...each)), close(Math.min(...each))])
  }
})
