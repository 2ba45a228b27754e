import fc from 'fast-check'
import { type Beam, type Bent, beamOf, type Loads } from '../src/index.ts'

// Rods and loads at random, for laws that hold for all of them.

/** Numbers spread evenly: of doubles as such, half are next to nothing where 0 is among them, and a load that is next to nothing tries nothing. */
export const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 10_000 }).map((i) => min + (i / 10_000) * (max - min))
/** Places on whole centimetres, so that no element of the other way is too short for its arithmetic. */
const cm = (x: number): number => Math.round(100 * x) / 100
const ends = (spans: readonly number[]): readonly number[] =>
  [0, ...spans].map((_, i) => cm(spans.slice(0, i).reduce((all, span) => all + span, 0)))
/** Splices with which a rod stands: one in a bay at most, and at least one bay without, which the others hang on; or one right over an inner support and no more. */
function standing(at: readonly number[], spliced: readonly (readonly [bay: number, share: number])[]): readonly number[] {
  const bays = [...new Map(spliced.filter(([bay]) => bay < at.length - 1)).entries()].slice(0, at.length - 2)
  const places = bays.map(([bay, share]) => (at[bay] as number) + share * ((at[bay + 1] as number) - (at[bay] as number)))
  const over = bays.find(([bay, share]) => share === 1 && bay < at.length - 2)
  if (over) return [at[over[0] + 1] as number]
  return places
    .map(cm)
    .filter((x) => !at.includes(x))
    .sort((a, b) => a - b)
}
export const rods: fc.Arbitrary<Beam> = fc
  .record({
    spans: fc.array(number(0.3, 2.5), { minLength: 1, maxLength: 6 }),
    beyond: fc.tuple(number(0, 0.4), number(0, 0.4)),
    stiffness: fc.array(number(20, 2000), { minLength: 1, maxLength: 3 }),
    downs: fc.array(number(-0.004, 0.004), { minLength: 7, maxLength: 7 }),
    spliced: fc.array(fc.tuple(fc.nat(5), fc.oneof(fc.constant(1), number(0.05, 0.95))), { maxLength: 4 }),
  })
  .map(({ spans, beyond, stiffness, downs, spliced }) => {
    const at = ends(spans)
    const [from, to] = [cm(-beyond[0]), cm((at.at(-1) ?? 0) + beyond[1])]
    return {
      from,
      to,
      stiffness: stiffness.map((ei, i) => ({ from: cm(from + (i * (to - from)) / stiffness.length), ei })),
      supports: at.map((x, i) => ({ at: x, down: downs[i] ?? 0 })),
      splices: standing(at, spliced),
    }
  })
export const loadsOn = ({ from, to }: Beam): fc.Arbitrary<Loads> =>
  fc.record({
    spread: fc.array(
      fc.tuple(number(0, 1), number(0, 1), number(0, 90)).map(([a, b, each]) => ({
        from: cm(from + Math.min(a, b) * (to - from)),
        to: cm(from + Math.max(a, b) * (to - from)),
        each,
      })),
      { maxLength: 3 },
    ),
    points: fc.array(fc.record({ at: number(0, 1).map((share) => cm(from + share * (to - from))), force: number(0, 40) }), {
      maxLength: 3,
    }),
  })
export const loaded = rods.chain((beam) => fc.tuple(fc.constant(beam), loadsOn(beam)))
export const under = (beam: Beam, loads: Loads): Bent => {
  const bent = beamOf(beam)?.(loads)
  if (!bent) throw new Error('Unexpected beam that folds, expected one that stands')
  return bent
}
