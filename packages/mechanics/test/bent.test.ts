import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Beam, type Bent, downAt, type Loads, largestMoment, momentAt, momentPeaks, sagBetween } from '../src/index.ts'
import { loaded, under } from './rods.ts'

const rod = (more: Partial<Beam>): Beam => ({
  from: 0,
  to: 2,
  stiffness: [{ from: 0, ei: 100 }],
  supports: [{ at: 0 }, { at: 2 }],
  ...more,
})
const even = (from: number, to: number, each: number): Loads => ({ spread: [{ from, to, each }], points: [] })
/** Many places from one to another. */
const many = (from: number, to: number): readonly number[] =>
  Array.from({ length: 201 }, (_, i) => from + (i * (to - from)) / 200)
/** How far below the straight line between two places the rod is at the lowest of many. */
function looked(bent: Bent, from: number, to: number): number {
  const [start, end] = [downAt(bent, from), downAt(bent, to)]
  return Math.max(...many(from, to).map((x) => downAt(bent, x) - start - ((end - start) * (x - from)) / (to - from)))
}
/** The same loads, the second and third lot of them upward. */
const pushed = ({ spread, points }: Loads): Loads => ({
  points,
  spread: spread.map((each, i) => ({ ...each, each: i > 0 ? -each.each : each.each })),
})

test('the lowest place below the line from one support to the next is found, however these stand', () => {
  fc.assert(
    fc.property(loaded, fc.boolean(), ([beam, loads], isPushed) => {
      const bent = under(beam, isPushed ? pushed(loads) : loads)
      for (const [i, { at: to }] of beam.supports.slice(1).entries()) {
        const from = beam.supports[i]?.at ?? Number.NaN
        const { at, value } = sagBetween(bent, from, to)
        const [seen, line] = [
          looked(bent, from, to),
          downAt(bent, from) + ((downAt(bent, to) - downAt(bent, from)) * (at - from)) / (to - from),
        ]
        expect(value).toBeGreaterThanOrEqual(seen - 1e-12)
        expect([at >= from, at <= to]).toEqual([true, true])
        expect(downAt(bent, at) - line).toBeCloseTo(value, 12)
      }
    }),
    { numRuns: 200, seed: 11 },
  )
})
test('the largest moment is found, and is nowhere larger', () => {
  fc.assert(
    fc.property(loaded, ([beam, loads]) => {
      const bent = under(beam, loads)
      const { at, value } = largestMoment(bent)
      const seen = Math.max(...many(beam.from, beam.to).map((x) => Math.abs(momentAt(bent, x))))
      expect(value).toBeGreaterThanOrEqual(seen - 1e-9)
      expect(Math.abs(momentAt(bent, at))).toBeCloseTo(value, 6)
      for (const peak of momentPeaks(bent)) expect(momentAt(bent, peak.at)).toBeCloseTo(peak.value, 6)
    }),
    { numRuns: 200, seed: 12 },
  )
})
test('of two moments that are as large the left one is told', () => {
  const beam = rod({ from: -0.5, to: 2.5, stiffness: [{ from: -0.5, ei: 100 }] })
  const tips = [-0.5, 2.5].map((at) => ({ at, force: 10 }))
  expect(largestMoment(under(beam, { spread: [], points: tips }))).toEqual({ at: 0, value: 5 })
})

/** A rod of two stiffnesses that lies over 0 and 2 and runs on; in its middle nothing is sheared. */
const arched: Beam = rod({
  from: -0.5,
  to: 2.5,
  stiffness: [
    { from: -0.5, ei: 100 },
    { from: 1, ei: 120 },
  ],
})
test('the lowest place below a line is found where the rod meets its slope twice', () => {
  const tips = [-0.5, 2.5].map((at) => ({ at, force: 8 }))
  const bent = under(arched, { ...even(0, 2, 10), points: tips })
  const { at, value } = sagBetween(bent, 1, 2)
  expect(looked(bent, 1, 2)).toBeGreaterThan(0)
  expect(value).toBeCloseTo(looked(bent, 1, 2), 6)
  expect(at).toBeGreaterThan(1)
})
test('and where nothing hangs on that part of it', () => {
  const beam = rod({ to: 2.5 })
  const bent = under(beam, {
    spread: [],
    points: [
      { at: 0.2, force: 40 },
      { at: 2.5, force: 12 },
    ],
  })
  const { value } = sagBetween(bent, 0, 2)
  expect(looked(bent, 0, 2)).toBeGreaterThan(0)
  expect(value).toBeCloseTo(looked(bent, 0, 2), 6)
})
test('a rod that rises everywhere hangs nowhere below its line', () => {
  const bent = under(rod({ to: 3 }), { spread: [], points: [{ at: 3, force: 10 }] })
  expect(sagBetween(bent, 0, 2)).toEqual({ at: 0, value: 0 })
})

test('a point right over a support is held by it alone, at the ends too, and bends nothing', () => {
  const beam = rod({ from: -0.3, to: 2.4, supports: [{ at: 0 }, { at: 0.9 }, { at: 2 }], stiffness: [{ from: -0.3, ei: 100 }] })
  const [bare, more] = [
    even(-0.3, 2.4, 10),
    { ...even(-0.3, 2.4, 10), points: [0, 0.9, 2].map((at, i) => ({ at, force: 5 + i })) },
  ]
  const [without, withThem] = [under(beam, bare), under(beam, more)]
  for (const [i, reaction] of withThem.reactions.entries())
    expect(reaction - (without.reactions[i] ?? Number.NaN)).toBeCloseTo(5 + i, 9)
  for (const x of many(-0.3, 2.4)) expect(downAt(withThem, x)).toBeCloseTo(downAt(without, x), 12)
})
test('it does not matter where a rod is measured from', () => {
  const loads = even(0.3, 1.7, 10)
  const expected = under(rod({ supports: [{ at: 0 }, { at: 0.8 }, { at: 2 }] }), loads).reactions
  for (const by of [-1, -2, 5]) {
    const supports = [0, 0.8, 2].map((at) => ({ at: at + by }))
    const beam = rod({ from: by, to: 2 + by, stiffness: [{ from: by, ei: 100 }], supports })
    const { reactions } = under(beam, even(0.3 + by, 1.7 + by, 10))
    for (const [i, each] of reactions.entries()) expect(each).toBeCloseTo(expected[i] ?? Number.NaN, 9)
  }
})
