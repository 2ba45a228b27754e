import { type Beam, type Bent, beamOf } from './beam.ts'
import { downAt, type Extreme, largestMoment, sagBetween } from './bent.ts'
import type { Loads, Spread } from './pieces.ts'

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
  /** The largest moment of the ways to draw that were tried. */
  readonly moment: number
  /** How it hangs for one way to draw. */
  readonly bent: (drawn: Drawn) => Bent
}

/** A panel's weight, spread evenly over what it covers. */
const spreadOf = ({ outer, drawn, stacked, weight }: Hanging, share: number): Spread => {
  const leading = stacked + share * (drawn - stacked)
  const [from, to] = outer < leading ? [outer, leading] : [leading, outer]
  return { from, to, each: weight / (to - from) }
}
const sharesOf = ({ drawn, stacked }: Hanging, steps: number): readonly number[] =>
  drawn === stacked ? [1] : Array.from({ length: steps + 1 }, (_, i) => i / steps)

/**
 * A rod under its own loads and its panels, each anywhere between stacked and drawn. Panels move by themselves and loads add, so the worst of a support is the
 * sum of each panel's worst. Tried are `steps` even steps of each panel. Undefined when the rod would fold up.
 */
export function hung(beam: Beam, own: Loads, panels: readonly Hanging[], steps = 16): Hung | undefined {
  const under = beamOf(beam)
  if (!under) return undefined
  // What supports out of line do to the rod is in its own part only.
  const level = beamOf({ ...beam, supports: beam.supports.map(({ at }) => ({ at })) }) as typeof under
  const base = under(own)
  const each = panels.map((panel) =>
    sharesOf(panel, steps).map((share) => ({ share, bent: level({ spread: [spreadOf(panel, share)], points: [] }) })),
  )
  const bent = (drawn: Drawn) =>
    under({ spread: [...own.spread, ...panels.map((panel, i) => spreadOf(panel, drawn[i] ?? 1))], points: own.points })
  const carried = beam.supports.map((_, i) => carriedBy(i, base, each))
  const sags = bays(beam).map(([from, to]) => worstSag(from, to, base, each, bent))
  const moment = Math.max(
    ...sags.map(({ when }) => largestMoment(bent(when)).value),
    ...carried.map(({ mostWhen }) => largestMoment(bent(mostWhen)).value),
  )
  return { carried, sags, moment, bent }
}
type Tried = readonly (readonly { readonly share: number; readonly bent: Bent }[])[]

function carriedBy(i: number, base: Bent, each: Tried): Carried {
  const of = (bent: Bent) => bent.reactions[i] ?? 0
  const best = each.map((tried) => tried.reduce((one, other) => (of(other.bent) > of(one.bent) ? other : one)))
  const least = each.map((tried) => Math.min(...tried.map(({ bent }) => of(bent))))
  const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, of(base))
  return { most: sum(best.map(({ bent }) => of(bent))), least: sum(least), mostWhen: best.map(({ share }) => share) }
}
const bays = ({ supports }: Beam): readonly (readonly [number, number])[] =>
  supports.slice(1).map(({ at }, i) => [supports[i]?.at as number, at] as const)

/** Looks at places of a bay, takes for each the worst of every panel, and works the worst of these out exactly. */
function worstSag(from: number, to: number, base: Bent, each: Tried, bent: (drawn: Drawn) => Bent): Sag {
  const places = Array.from({ length: 11 }, (_, i) => from + ((i + 1) * (to - from)) / 12)
  const tried = places.map((x) => {
    const best = each.map((own) => own.reduce((one, other) => (downAt(other.bent, x) > downAt(one.bent, x) ? other : one)))
    const value = best.reduce((sum, own) => sum + downAt(own.bent, x), downAt(base, x))
    return { value, when: best.map(({ share }) => share) }
  })
  const { when } = tried.reduce((one, other) => (other.value > one.value ? other : one))
  return { ...sagBetween(bent(when), from, to), from, to, when }
}
