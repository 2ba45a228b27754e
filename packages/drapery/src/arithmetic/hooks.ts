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
  /** The outer edge is held at the wall: its hook needs no ring. */
  readonly atWall: boolean
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

/**
 * Hook by hook along one panel: one ring for every hook but the return's (common practice, no source; reference cases hooks-02, hooks-03).
 * Drawn, the leading edge is at `meets` and the last pleat at `coverEnd`, whatever the tape says of the panel; stacked, the leading edge
 * has come back to `stack` from the cover end. The rings of the last pleat, and of an outer edge that is not held at the wall, park outside the bracket.
 */
export function ringPlaces(panel: RingPanel, meets: Length, coverEnd: Length, stack: Length): readonly RingPlace[] {
  const outward = panel.outer === 'left' ? -1 : 1
  const pleats = panel.hooks.filter((hook) => hook.on === 'pleat')
  const drawn = spread(((coverEnd - meets) * outward - panel.leadingFlat) as Length, Math.max(1, pleats.length - 1))
  const stacked = spread(stack, pleats.length)
  return panel.hooks.map((hook) => {
    const pleat = hook.pleat ?? 0
    const last = hook.on === 'outer-edge' || pleat === pleats.length
    const at = {
      drawn: meets + outward * (pleat === 0 ? 0 : panel.leadingFlat + (drawn[pleat - 1] ?? 0)),
      stacked: coverEnd - outward * (stack - (stacked[pleat] ?? stack)),
    }
    const where = last ? { drawn: coverEnd, stacked: coverEnd } : at
    const ring = hook.on === 'outer-edge' && panel.atWall ? {} : { ring: hook.n }
    return {
      panel: panel.panel,
      hook,
      ...ring,
      parksOutside: last && 'ring' in ring,
      drawn: where.drawn as Length,
      stacked: where.stacked as Length,
    }
  })
}

/** How many rings a pair needs: a hook each, less those that go to the wall. */
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
 * How wide a panel of a pair stacks: an estimate, a sixth of the rod (Drapery Education, Drapery Stacking Space Requirements, trade article; read; case stack-03),
 * but never less than its rings side by side. Published rules reach from 10 to 50 % of the window, so it may only warn; a measured stack wins.
 */
export function stackOfPair(
  at: string,
  rodWidth: Known<Length>,
  rings: number,
  ringWidth: Known<Length>,
): readonly LengthReckoning[] {
  const rule = divided(
    `${at}#stack-rule`,
    'drapery/stack-rule',
    plus('drapery/rod-width', rodWidth),
    plus('drapery/six', number(6)),
  )
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
