import type { Place } from '@evenhem/job'
import type { Known, Length, LengthReckoning, Reckoning } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'

// Facts that this sheet reads, declared again as whoever reads a stranger's fact does; where nothing else is said their owner is drapery.

export type Side = 'left' | 'right'
export interface Hook {
  readonly n: number
  readonly on: 'leading-edge' | 'pleat' | 'outer-edge'
  readonly pleat?: number
  readonly across: Length
}
export interface HookPlace {
  readonly panel: string
  readonly hook: Hook
  readonly to: string
  readonly number?: number
  readonly note?: string
  readonly drawn: Length
  readonly stacked: Length
}
export interface HookMap {
  readonly places: readonly HookPlace[]
  readonly bearers: Reckoning
  readonly threading: readonly { readonly what: string; readonly count: number }[]
  readonly drawnAs?: 'rings' | 'carriers'
}
export interface PanelMakeUp {
  readonly panel: string
  readonly outer: Side
  readonly hooks: readonly Hook[]
  readonly space: LengthReckoning
  readonly return: Known<Length>
  readonly pin: Known<Length>
}
export interface MakeUp {
  readonly panels: readonly PanelMakeUp[]
}
export interface Hole {
  readonly id: string
  readonly on: 'bracket' | 'return'
  readonly what: string
  readonly side: Side | 'middle'
  /** Of a support: its id. */
  readonly support?: string
  readonly fromFloor: LengthReckoning
  readonly fromCasing: LengthReckoning
  /** Of a window with several walls. */
  readonly fromCorner?: LengthReckoning
  /** Of a hole in the ceiling. */
  readonly fromWall?: LengthReckoning
  readonly x: { readonly value: number }
}
/** The hem as it hangs, hook by hook from the leading edge, and the pin that each should have. */
export interface TrueUp {
  readonly panels: readonly {
    readonly outer: Side
    readonly hooks: readonly { readonly n: number; readonly pin: Known<Length>; readonly set: LengthReckoning }[]
  }[]
}
/** What is left to mend at a window, a point after the other; their owner is the plugin punch-list. */
export interface PunchPoint {
  readonly id: string
  /** From 1, in the order of the ids. */
  readonly number: number
  readonly place: Place
  readonly what?: string
  /** What on the drawing it is about. */
  readonly at?: Place
  readonly cause?: string
  readonly owner?: string
  readonly trade?: string
  readonly who?: string
  readonly by?: string
  readonly isUnsafe: boolean
  readonly before: readonly string[]
  readonly after: readonly string[]
  readonly state: string
  readonly note?: string
}
/** Loads as they are told: bracket by bracket, and what was taken for granted. */
export interface LoadsTold {
  readonly brackets: readonly {
    readonly bracket: string
    readonly name: string
    readonly load: Reckoning
    readonly behind?: string
    readonly fastener?: string
    readonly used?: Reckoning
    readonly byOne?: Reckoning
    readonly ofRated?: Reckoning
    readonly lacks?: string
    readonly verdict: 'pass' | 'fail' | 'warn' | 'unknown'
  }[]
  readonly assumes: readonly string[]
}
interface Shapes {
  readonly 'drapery/hook-map@1': HookMap
  readonly 'drapery/make-up@1': MakeUp
  readonly 'drapery/holes@1': readonly Hole[]
  readonly 'drapery/true-up@1': TrueUp
  readonly 'drapery/loads-told@1': LoadsTold
  readonly 'punch-list/points@1': readonly PunchPoint[]
}

/** A fact of every treatment or window that has it, in the order of the plan. */
export const factsOf = <K extends keyof Shapes>(
  plan: WindowPlan,
  id: K,
): readonly { readonly at: Place; readonly value: Shapes[K] }[] =>
  plan.facts.filter((fact) => fact.id === id) as readonly { readonly at: Place; readonly value: Shapes[K] }[]
