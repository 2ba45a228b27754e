import { type Beam, type Bent, beamOf } from './beam.ts'
import { downsAt, type Extreme, sagBetween } from './bent.ts'
import type { Loads } from './pieces.ts'

/** A panel on a rod: where its outer edge hangs, where its leading edge is when it is drawn and when it is stacked, m, and what it weighs with what it hangs on, N. A panel that stays is stacked where it is drawn. */
export interface Hanging {
  readonly outer: number
  readonly drawn: number
  readonly stacked: number
  readonly weight: number
}
/** How each panel is drawn: from 0, stacked, to 1, drawn. */
export type Drawn = readonly number[]
/** The largest and the smallest that one support carries, N, wherever the panels are drawn. */
export interface Carried {
  readonly most: number
  readonly least: number
  readonly mostWhen: Drawn
}
/** The lowest place between two supports, or beyond one, of all ways to draw. */
export interface Sag extends Extreme {
  readonly from: number
  readonly to: number
  readonly when: Drawn
}
/** A rod with its panels, however they are drawn. */
export interface Hung {
  readonly carried: readonly Carried[]
  /** Of each bay from left to right. */
  readonly sags: readonly Sag[]
  /** How it hangs for one way to draw. */
  readonly bent: (drawn: Drawn) => Bent
}

/** A panel's weight, spread evenly over what it covers; at one place where it covers nothing. */
const weightOf = ({ outer, drawn, stacked, weight }: Hanging, share: number): Loads => {
  const leading = stacked + share * (drawn - stacked)
  const [from, to] = outer < leading ? [outer, leading] : [leading, outer]
  if (to - from < 1e-6) return { spread: [], points: [{ at: outer, force: weight }] }
  return { spread: [{ from, to, each: weight / (to - from) }], points: [] }
}
const together = (all: readonly Loads[]): Loads => ({
  spread: all.flatMap(({ spread }) => spread),
  points: all.flatMap(({ points }) => points),
})
const sharesOf = ({ drawn, stacked }: Hanging, steps: number): readonly number[] =>
  drawn === stacked ? [1] : Array.from({ length: steps + 1 }, (_, i) => i / steps)

/**
 * A rod under its own loads and its panels, each anywhere between stacked and drawn. Panels move by themselves and loads add, so the worst of a support is the
 * sum of each panel's worst. Tried are `steps` even steps of each panel. Undefined when the rod would fold up.
 */
export function hung(beam: Beam, own: Loads, panels: readonly Hanging[], steps = 16): Hung | undefined {
  const under = beamOf(beam)
  if (!under) return undefined
  const looked = bays(beam).map(placesIn)
  const lookAt = (bent: Bent, share = 1): Tried => ({ share, bent, downs: looked.map((places) => downsAt(bent, places)) })
  const base = lookAt(under(own))
  const level = levelOf(beam, under)
  const each = panels.map((panel) => sharesOf(panel, steps).map((share) => lookAt(level(weightOf(panel, share)), share)))
  const bent = remembered((drawn) => under(together([own, ...panels.map((panel, i) => weightOf(panel, drawn[i] ?? 1))])))
  const carried = beam.supports.map((_, i) => carriedBy(i, base, each))
  const sags = bays(beam).map((bay, i) => worstSag(bay, i, base, each, bent))
  return { carried, sags, bent }
}
/** The same rod over supports in line: what those out of line do to it is in its own part only. */
const levelOf = <T>(beam: Beam, under: T) =>
  beam.supports.some(({ down }) => down) ? (beamOf({ ...beam, supports: beam.supports.map(({ at }) => ({ at })) }) as T) : under
/** Each way to draw is worked out once: the worst of many places is often the same one. */
function remembered(bent: (drawn: Drawn) => Bent): (drawn: Drawn) => Bent {
  const known = new Map<string, Bent>()
  return (drawn) => {
    const name = drawn.join()
    const found = known.get(name) ?? bent(drawn)
    known.set(name, found)
    return found
  }
}
/** The rod with one panel at one place: how it hangs, and how far down it is at the places that are looked at in each bay. */
interface Tried {
  readonly share: number
  readonly bent: Bent
  readonly downs: readonly (readonly number[])[]
}
type Each = readonly (readonly Tried[])[]

function carriedBy(i: number, base: Tried, each: Each): Carried {
  const of = ({ bent }: Tried) => bent.reactions[i] ?? 0
  const best = each.map((tried) => largest(tried, of))
  const least = each.map((tried) => Math.min(...tried.map(of)))
  const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, of(base))
  return { most: sum(best.map(({ value }) => value)), least: sum(least), mostWhen: best.map(({ of }) => of.share) }
}
type Ends = readonly [from: number, to: number]
const bays = ({ supports }: Beam): readonly Ends[] => supports.slice(1).map(({ at }, i) => [supports[i]?.at as number, at])
const placesIn = ([from, to]: Ends): readonly number[] =>
  Array.from({ length: 11 }, (_, i) => from + ((i + 1) * (to - from)) / 12)

/** Looks at places of a bay, takes for each the worst of every panel, and works the worst of these out exactly. */
function worstSag([from, to]: Ends, bay: number, base: Tried, each: Each, bent: (drawn: Drawn) => Bent): Sag {
  const tried = base.downs[bay]?.map((own, n) => {
    const best = each.map((all) => largest(all, ({ downs }) => downs[bay]?.[n] ?? 0))
    return { value: best.reduce((sum, one) => sum + one.value, own), when: best.map(({ of }) => of.share) }
  })
  const { when } = largest(tried ?? [], ({ value }) => value).of
  return { ...sagBetween(bent(when), from, to), from, to, when }
}
/** The first of those whose value is largest. */
function largest<T>(all: readonly T[], value: (one: T) => number): { readonly of: T; readonly value: number } {
  let [best, most] = [all[0] as T, Number.NEGATIVE_INFINITY]
  for (const each of all) {
    const is = value(each)
    if (is > most) [best, most] = [each, is]
  }
  return { of: best, value: most }
}
