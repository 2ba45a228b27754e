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
export interface RingPanel {
  readonly panel: string
  readonly outer: Side
  readonly hooks: readonly Hook[]
  readonly leadingFlat: Length
  /** Last pleat to the outer edge of a panel without a return; undefined: it has a return. */
  readonly outerFlat?: Length | undefined
  /** The outer edge is held at the wall: its hook needs no ring. */
  readonly atWall: boolean
  /** Stays as it hangs. */
  readonly isStationary: boolean
}
/** Where one hook goes: a numbered ring, counted from the leading edge, or the wall. x from the left edge of the casing. */
export interface RingPlace {
  readonly panel: string
  readonly hook: Hook
  readonly ring?: number
  readonly parksOutside: boolean
  readonly drawn: Length
  readonly stacked: Length
}

/** How near to its bracket a ring inside it can come: the middle of such a ring, and how wide a ring is. */
export interface Inside {
  readonly nearest: Length
  readonly ringWidth: Length
}

/**
 * Hook by hook along one panel: one ring for every hook but the return's (common practice, no source; reference cases hooks-02, hooks-03).
 * Drawn, the leading edge is at `leading`; a panel with a return has its last pleat at `coverEnd`, one without its outer edge, whatever the tape
 * says of it. Stacked, the leading edge has come back to `stack` from the cover end. The rings at the cover end park outside the bracket; the others
 * stay inside it, one beside the other.
 */
export function ringPlaces(
  panel: RingPanel,
  leading: Length,
  coverEnd: Length,
  stack: Length,
  inside?: Inside,
): readonly RingPlace[] {
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
    const isEdge = hook.on === 'outer-edge'
    const atEnd = isEdge || (panel.outerFlat === undefined && pleat === pleats)
    const open = leading + outward * (pleat === 0 ? 0 : panel.leadingFlat + (drawn[pleat - 1] ?? 0))
    const aside = coverEnd - outward * (flat + (stacked[pleats] ?? 0) - (stacked[pleat] ?? 0))
    const ring = isEdge && panel.atWall ? {} : { ring: hook.n }
    return {
      panel: panel.panel,
      hook,
      ...ring,
      parksOutside: atEnd && 'ring' in ring,
      drawn: (atEnd ? coverEnd : kept(open, hook.n)) as Length,
      stacked: (atEnd ? coverEnd : kept(panel.isStationary ? open : aside, hook.n)) as Length,
    }
  })
}

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
 * How wide a panel stacks: an estimate, a third of its share, which for a pair is a sixth of the rod (Drapery Education, Drapery Stacking Space
 * Requirements, trade article; read; case stack-03), but never less than its rings side by side. Published rules reach from 10 to 50 % of the
 * window, so it may only warn; a measured stack wins.
 */
export function stackOfShare(
  at: string,
  share: LengthReckoning,
  rings: number,
  ringWidth: Known<Length>,
): readonly LengthReckoning[] {
  const rule = divided(`${at}#stack-rule`, 'drapery/stack-rule', plus('drapery/share', share), plus('drapery/three', number(3)))
  return [
    rule,
    formula(
      `${at}#stack`,
      'drapery/stack',
      Math.max(rule.value, rings * ringWidth.value),
      'drapery/stack-estimate',
      plus('drapery/stack-rule', rule),
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
