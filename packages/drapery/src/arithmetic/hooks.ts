import {
  count,
  divided,
  formula,
  type Known,
  type Length,
  type LengthReckoning,
  minus,
  number,
  plus,
  type Reckoning,
  spread,
} from '@evenhem/length'
import type { Hook } from './panel.ts'

type Side = 'left' | 'right'
/** A panel as its hooks hang along the rod. */
export interface HookedPanel {
  readonly panel: string
  readonly outer: Side
  readonly hooks: readonly Hook[]
  readonly leadingFlat: Length
  /** Last pleat to the outer edge of a panel without a return; undefined: it has a return. */
  readonly outerFlat?: Length | undefined
  /** The outer edge is held at the wall: its hook needs no ring and no carrier. */
  readonly atWall: boolean
  /** Stays as it hangs. */
  readonly isStationary: boolean
}
/** Where one hook is along the wall. x from the left edge of the casing. `atEnd`: at the end of what the panel covers. */
export interface HookAlong {
  readonly panel: string
  readonly hook: Hook
  readonly atEnd: boolean
  readonly drawn: Length
  readonly stacked: Length
}

/** How near to its bracket a ring inside it can come: the middle of such a ring, and how wide a ring is. */
export interface Inside {
  readonly nearest: Length
  readonly ringWidth: Length
}

/**
 * Hook by hook along one panel. Drawn, the leading edge is at `leading`; a panel with a return has its last pleat at `coverEnd`, one without its
 * outer edge, whatever the tape says of it. Stacked, the leading edge has come back to `stack` from the cover end. Hooks that are not at the end stay
 * inside the bracket, one beside the other.
 */
export function hooksAlong(
  panel: HookedPanel,
  leading: Length,
  coverEnd: Length,
  stack: Length,
  inside?: Inside,
): readonly HookAlong[] {
  const outward = panel.outer === 'left' ? -1 : 1
  const pleats = panel.hooks.filter((hook) => hook.on === 'pleat').length
  const flat = panel.outerFlat ?? 0
  const drawn = spread(((coverEnd - leading) * outward - flat - panel.leadingFlat) as Length, Math.max(1, pleats - 1))
  const stacked = spread(Math.max(0, stack - flat) as Length, pleats)
  const within = panel.hooks.length - (panel.outerFlat === undefined ? 2 : 1)
  /** The nth ring from the leading edge, no nearer to the bracket than the rings between them leave it. */
  const kept = (x: number, n: number): number => {
    if (!inside) return x
    const nearest = inside.nearest - outward * (within - n) * inside.ringWidth
    return panel.outer === 'right' ? Math.min(x, nearest) : Math.max(x, nearest)
  }
  return panel.hooks.map((hook) => {
    const pleat = hook.pleat ?? 0
    const atEnd = hook.on === 'outer-edge' || (panel.outerFlat === undefined && pleat === pleats)
    const open = leading + outward * (pleat === 0 ? 0 : panel.leadingFlat + (drawn[pleat - 1] ?? 0))
    const aside = coverEnd - outward * (flat + (stacked[pleats] ?? 0) - (stacked[pleat] ?? 0))
    return {
      panel: panel.panel,
      hook,
      atEnd,
      drawn: (atEnd ? coverEnd : kept(open, hook.n)) as Length,
      stacked: (atEnd ? coverEnd : kept(panel.isStationary ? open : aside, hook.n)) as Length,
    }
  })
}

/** Where one hook goes: a numbered ring, counted from the leading edge, or the wall. */
export interface RingPlace extends Omit<HookAlong, 'atEnd'> {
  readonly ring?: number
  readonly parksOutside: boolean
}
/** One ring for every hook but the return's (common practice, no source; reference cases hooks-02, hooks-03). The rings at the cover end park outside the bracket. */
export const ringPlaces = (
  panel: HookedPanel,
  leading: Length,
  coverEnd: Length,
  stack: Length,
  inside?: Inside,
): readonly RingPlace[] =>
  hooksAlong(panel, leading, coverEnd, stack, inside).map(({ atEnd, hook, ...place }) => {
    const ring = hook.on === 'outer-edge' && panel.atWall ? {} : { ring: hook.n }
    return { ...place, hook, ...ring, parksOutside: atEnd && 'ring' in ring }
  })

/** Where a hook goes on a traverse rod: a hole of the master carrier, a carrier, both counted from the leading edge; a hole of the end bracket; the wall. */
export type CarrierPlace =
  | { readonly to: 'master'; readonly number: number }
  | { readonly to: 'carrier'; readonly number: number }
  | { readonly to: 'end' | 'back' | 'only' | 'wall' }
/** What takes hooks on a traverse rod beside its carriers: holes of the master carrier (0: it has none), hook holes of the end bracket. */
export interface Takers {
  readonly masterHoles: number
  readonly endHoles: 0 | 1 | 2
}

/**
 * Hook by hook on a traverse rod: the leading edge goes to the first hole of the master carrier and the first pleat to its third (to its last, where it
 * has fewer), then every carrier without a gap; the last pleat goes to the hole at the end of the end bracket and the outer edge to its back hole (common
 * practice, no source; that two pins are in the master and two at the return: installer's article How To Install A Draw Curtain Rod; read; case hooks-01).
 * A hook held at the wall needs none of these.
 */
export function carrierPlaces(
  { hooks, atWall }: Pick<HookedPanel, 'hooks' | 'atWall'>,
  { masterHoles, endHoles }: Takers,
): readonly CarrierPlace[] {
  const inMaster = Math.min(masterHoles, 2)
  const outer: readonly CarrierPlace[] = atWall
    ? [...(endHoles > 0 ? [{ to: 'end' } as const] : []), { to: 'wall' }]
    : endHoles === 1
      ? [{ to: 'only' }]
      : ([{ to: 'end' }, { to: 'back' }] as const).slice(2 - endHoles)
  const carriers = hooks.length - inMaster - outer.length
  return [
    ...[1, Math.min(3, masterHoles)].slice(0, inMaster).map((number) => ({ to: 'master', number }) as const),
    ...Array.from({ length: carriers }, (_, i) => ({ to: 'carrier', number: i + 1 }) as const),
    ...outer,
  ]
}

/** How many carriers a panel needs: a hook each, less those that the master carrier, the end bracket and the wall take. */
export const carriersNeeded = (
  place: string,
  pleats: Known<number>,
  elsewhere: { readonly master: Known<number>; readonly end: Known<number>; readonly wall: Known<number> },
): Reckoning =>
  count(
    `${place}#carriers`,
    'drapery/carriers-needed',
    plus('drapery/pleats', pleats),
    plus('drapery/edge-hooks', number(2)),
    minus('drapery/hooks-in-master', elsewhere.master),
    minus('drapery/hooks-in-end', elsewhere.end),
    ...(elsewhere.wall.value > 0 ? [minus('drapery/hooks-at-wall', elsewhere.wall)] : []),
  )

/** How many rings the panels need: a hook each, less those that go to the wall. */
export function ringsNeeded(
  at: string,
  panels: readonly { readonly panel: string; readonly pleats: Known<number>; readonly atWall: boolean }[],
): readonly [...Reckoning[], Reckoning] {
  const each = panels.map(({ panel, pleats, atWall }) =>
    count(
      `${at}#rings-${panel}`,
      'drapery/rings-panel',
      plus('drapery/pleats', pleats),
      plus('drapery/edge-hooks', number(2)),
      ...(atWall ? [minus('drapery/hooks-at-wall', number(1))] : []),
    ),
  )
  return [...each, count(`${at}#rings`, 'drapery/rings-needed', ...each.map((rings) => plus('drapery/rings-panel', rings)))]
}

/** Rings ordered less rings needed: negative stops the work, positive is spare. */
export const ringsOver = (at: string, ordered: Known<number>, needed: Reckoning): Reckoning =>
  count(
    `${at}#rings-to-spare`,
    'drapery/rings-over',
    plus('drapery/rings-ordered', ordered),
    minus('drapery/rings-needed', needed),
  )

/**
 * How wide a panel stacks: an estimate by the rule that the workroom chose, else a third of its share, which for a pair is a sixth of the rod (Drapery
 * Education, Drapery Stacking Space Requirements, trade article; read; case stack-03), but never less than its rings side by side. Published rules
 * reach from 10 to 50 % of the window, so it may only warn; a measured stack wins.
 */
export function stackOfShare(
  at: string,
  share: LengthReckoning,
  rings: number,
  ringWidth: Known<Length>,
  chosen?: LengthReckoning,
): readonly LengthReckoning[] {
  const rule =
    chosen ?? divided(`${at}#stack-rule`, 'drapery/stack-rule', plus('drapery/share', share), plus('drapery/three', number(3)))
  return [
    ...(chosen ? [] : [rule]),
    formula(
      `${at}#stack`,
      'drapery/stack',
      Math.max(rule.value, rings * ringWidth.value),
      'drapery/stack-estimate',
      plus(rule.what, rule),
      plus('drapery/rings-panel', number(rings)),
      plus('drapery/ring-width', ringWidth),
    ),
  ]
}

/** How many rings hang in each bay between supports, from left to right. A ring at a support's own place hangs on the side of its panel's outer edge. */
export function ringsByBay(
  rings: readonly { readonly x: Length; readonly outer: Side }[],
  supports: readonly Length[],
): readonly number[] {
  const bayOf = ({ x, outer }: { readonly x: Length; readonly outer: Side }): number =>
    supports.filter((edge) => (outer === 'left' ? x > edge : x >= edge)).length
  return [...supports, undefined].map((_, bay) => rings.filter((ring) => bayOf(ring) === bay).length)
}
