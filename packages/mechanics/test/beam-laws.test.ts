import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Beam, beamOf, downAt, hung, type Loads, momentAt, sagBetween } from '../src/index.ts'
import { bentByElements } from './elements.ts'
import { loaded, loadsOn, number, rods, under } from './rods.ts'

const level = (beam: Beam): Beam => ({ ...beam, supports: beam.supports.map(({ at }) => ({ at })) })
const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0)
const near = (found: number, expected: number, size: number, why: string) =>
  expect(Math.abs(found - expected), `${why}: ${found} for ${expected}`).toBeLessThanOrEqual(1e-7 * (size + Math.abs(expected)))

test('what the supports carry is what hangs on the rod, around any place', () => {
  fc.assert(
    fc.property(loaded, ([beam, loads]) => {
      const { reactions } = under(beam, loads)
      const weights = [
        ...loads.spread.map(({ from, to, each }) => ({ at: (from + to) / 2, force: each * (to - from) })),
        ...loads.points,
      ]
      const size = 1 + sum(reactions.map(Math.abs))
      near(sum(reactions), sum(weights.map(({ force }) => force)), size, 'forces')
      const turning = sum(reactions.map((each, i) => each * (beam.supports[i]?.at ?? 0)))
      near(turning, sum(weights.map(({ at, force }) => at * force)), 10 * size, 'moments')
    }),
    { numRuns: 300, seed: 1 },
  )
})

test('finite elements, worked out in another way, come to the same', () => {
  fc.assert(
    fc.property(loaded, ([beam, loads]) => {
      const bent = under(beam, loads)
      const other = bentByElements(beam, loads)
      const [forces, places] = [
        1 + Math.max(...bent.reactions.map(Math.abs)),
        1e-4 + Math.max(...other.places.map(({ down }) => Math.abs(down))),
      ]
      for (const [i, reaction] of other.reactions.entries())
        expect(Math.abs((bent.reactions[i] ?? Number.NaN) - reaction)).toBeLessThan(1e-5 * forces)
      for (const { at, down } of other.places) expect(Math.abs(downAt(bent, at) - down)).toBeLessThan(1e-5 * places)
    }),
    { numRuns: 200, seed: 2 },
  )
})

test('a rod turned about bends as its mirror image', () => {
  fc.assert(
    fc.property(loaded, ([beam, loads]) => {
      const mirrored = under(mirrorOf(beam), {
        spread: loads.spread.map(({ from, to, each }) => ({ from: -to, to: -from, each })),
        points: loads.points.map(({ at, force }) => ({ at: -at, force })),
      })
      const bent = under(beam, loads)
      const size = 1 + sum(bent.reactions.map(Math.abs))
      for (const [i, each] of mirrored.reactions.toReversed().entries())
        near(bent.reactions[i] ?? Number.NaN, each, size, 'reaction')
      for (const share of [0.1, 0.37, 0.8]) {
        const x = beam.from + share * (beam.to - beam.from)
        near(downAt(bent, x), downAt(mirrored, -x), 1, 'down')
      }
    }),
    { numRuns: 200, seed: 3 },
  )
})
const mirrorOf = ({ from, to, stiffness, supports, splices = [] }: Beam): Beam => ({
  from: -to,
  to: -from,
  stiffness: stiffness.map(({ ei }, i) => ({ from: -(stiffness[i + 1]?.from ?? to), ei })).reverse(),
  supports: supports.map(({ at, down = 0 }) => ({ at: -at, down })).reverse(),
  splices: splices.map((x) => -x).reverse(),
})

test('loads add up, and supports out of line add theirs', () => {
  fc.assert(
    fc.property(
      rods.chain((beam) => fc.tuple(fc.constant(beam), loadsOn(beam), loadsOn(beam))),
      ([beam, one, other]) => {
        const none: Loads = { spread: [], points: [] }
        const both = under(beam, { spread: [...one.spread, ...other.spread], points: [...one.points, ...other.points] })
        const parts = [under(level(beam), one), under(level(beam), other), under(beam, none)]
        const size = 1 + sum(parts.flatMap(({ reactions }) => reactions.map(Math.abs)))
        for (const [i, each] of both.reactions.entries())
          near(each, sum(parts.map(({ reactions }) => reactions[i] ?? 0)), size, 'reaction')
        const x = beam.from + 0.43 * (beam.to - beam.from)
        near(downAt(both, x), sum(parts.map((part) => downAt(part, x))), 1, 'down')
      },
    ),
    { numRuns: 200, seed: 4 },
  )
})

test('a load here lowers a place there as much as the same load there lowers this one (Maxwell)', () => {
  fc.assert(
    fc.property(rods, number(0, 1), number(0, 1), (beam, a, b) => {
      // What is beyond the end by its last bit does not hang on the rod.
      const [x, y] = [a, b].map((share) => Math.min(beam.from + share * (beam.to - beam.from), beam.to)) as [number, number]
      const at = (place: number) => under(level(beam), { spread: [], points: [{ at: place, force: 10 }] })
      near(downAt(at(x), y), downAt(at(y), x), 1, 'down')
    }),
    { numRuns: 300, seed: 5 },
  )
})

test('a splice carries no moment, and a rod that hangs on it stands as two', () => {
  // A Gerber beam: the middle bay is hung in at 0.5 and rests as a beam of its own, 1 long, on an arm of 0.5.
  const beam: Beam = {
    from: 0,
    to: 4.5,
    stiffness: [{ from: 0, ei: 100 }],
    supports: [{ at: 0 }, { at: 2 }, { at: 3.5 }, { at: 4.5 }],
    splices: [2.5],
  }
  const bent = under(beam, { spread: [{ from: 0, to: 4.5, each: 10 }], points: [] })
  expect(momentAt(bent, 2.5)).toBeCloseTo(0, 10)
  const splices = under({ ...beam, splices: [2.5, 3.2] }, { spread: [{ from: 2.5, to: 3.2, each: 10 }], points: [] })
  expect(splices.reactions[1]).toBeCloseTo(3.5 + (3.5 * 0.5) / 2, 10)
})

test.each<readonly [string, Partial<Beam>]>([
  ['on one support', { supports: [{ at: 1 }] }],
  ['with a splice between two supports and nothing else', { supports: [{ at: 0 }, { at: 3 }], splices: [1] }],
  ['with two splices in an outer bay', { supports: [{ at: 0 }, { at: 1.5 }, { at: 3 }], splices: [0.5, 1] }],
  ['with a splice over its first support', { supports: [{ at: 0.5 }, { at: 1.5 }, { at: 3 }], splices: [0.5] }],
  ['with a splice over its last support', { supports: [{ at: 0 }, { at: 1.5 }, { at: 2.5 }], splices: [2.5] }],
  ['with a splice beyond its supports', { supports: [{ at: 0.5 }, { at: 3 }], splices: [0.2] }],
])('a rod %s would fold up', (_, part) => {
  const beam: Beam = { from: 0, to: 3, stiffness: [{ from: 0, ei: 50 }], supports: [], ...part }
  expect(beamOf(beam)).toBeUndefined()
  expect(hung(beam, { spread: [], points: [] }, [])).toBeUndefined()
})

test('nothing that panels do is worse than what is said to be the worst', () => {
  fc.assert(
    fc.property(rods, fc.array(number(0, 1), { minLength: 2, maxLength: 2 }), number(10, 80), (beam, drawn, weight) => {
      const [from, to, middle] = [beam.from, beam.to, (beam.from + beam.to) / 2]
      const panels = [
        { outer: from, drawn: middle, stacked: from + 0.15 * (to - from), weight },
        { outer: to, drawn: middle, stacked: to - 0.15 * (to - from), weight },
      ]
      const found = hung(beam, { spread: [{ from, to, each: 12 }], points: [] }, panels)
      if (!found) throw new Error('Unexpected beam that folds, expected one that stands')
      // Between the steps a little more is possible: a share of the whole load.
      const tried = found.bent(drawn)
      for (const [i, { most, least }] of found.carried.entries()) {
        const reaction = tried.reactions[i] ?? Number.NaN
        expect(reaction).toBeLessThanOrEqual(most + 0.03 * weight)
        expect(reaction).toBeGreaterThanOrEqual(least - 0.03 * weight)
        expect(found.bent(found.carried[i]?.mostWhen ?? []).reactions[i]).toBeCloseTo(most, 6)
      }
      for (const { from: left, to: right, value } of found.sags)
        expect(sagBetween(tried, left, right).value).toBeLessThanOrEqual(1.05 * value + 1e-5)
    }),
    { numRuns: 100, seed: 6 },
  )
})
