import type { Check, Entry, Layer, Part, Place, Reckoning, Stage, Step, Verdict } from '@evenhem/plugin'

/** Who gave it: `plugin/rule`, and the place of the item that the rule ran on. */
export interface Giver {
  readonly by: string
  readonly on: Place
}

export interface PlannedCheck extends Check, Giver {
  /**
   * Why nobody could check: places are not filled, a rule has a fault, or nobody here gives a fact that it needs. `host/waits`,
   * `host/faulted` and `host/not-given` are the sentences for it; the check itself says `<code>.unknown` where a plugin has words for that.
   */
  readonly because?: 'waits' | 'faulted' | 'not-given'
  /** The places that it waits for, in walking order. */
  readonly waits?: readonly Place[]
  /** The reason given at `overridePlace(check)`, or for its code; such a check closes nothing, and is shown all the same. */
  readonly override?: string
}
export interface PlannedStep extends Step {
  readonly plugin: string
  readonly rule: string
  readonly on: Place
  /** Codes of the failing checks that close it; empty while it is open. */
  readonly closed: readonly string[]
  readonly done: boolean
  /** Put a value here and it is done. */
  readonly doneAt: Place
}
/** A place that is not filled yet, and how many rules wait for it. */
export interface Asked {
  readonly at: Place
  readonly holds: number
}
/** Something in the job that no plugin here reads: it is kept, and nothing is worked out from it. */
export interface Unread {
  readonly at: Place
  readonly what: 'kind' | 'hardware' | 'with' | 'version'
  readonly name: string
}
/** What one rule got wrong at one place. It gave nothing there; the rest stands. */
export interface Fault {
  readonly plugin: string
  readonly rule: string
  readonly at: Place
  readonly what: 'threw' | 'undeclared' | 'malformed' | 'refused' | 'order'
  readonly message: string
}
export interface GivenFact {
  readonly id: string
  readonly at: Place
  readonly value: unknown
}

/** All that rules gave. Lists stand in the order of the items in the job, then plugin, then rule. */
export interface Results {
  readonly checks: readonly PlannedCheck[]
  /** By stage, then `after`, then plugin and id. */
  readonly steps: readonly PlannedStep[]
  readonly parts: readonly (Part & Giver)[]
  readonly reckonings: readonly (Reckoning & Giver)[]
  readonly layers: readonly (Layer & Giver)[]
  readonly entries: readonly (Entry & Giver)[]
  /** What to measure next, in walking order. */
  readonly asks: readonly Asked[]
  readonly unread: readonly Unread[]
  readonly faults: readonly Fault[]
  /** Facts between rules, by id. A fact of `many` holds its list. */
  readonly facts: readonly GivenFact[]
}
/** One window's plan: plain JSON, the same bytes on every machine. */
export interface WindowPlan extends Results {
  readonly window: Place
}

/** What is kept of every window. */
export interface WindowSummary {
  readonly window: Place
  /** How many checks found what; those gone on with for a reason are not counted. */
  readonly verdicts: Readonly<Record<Verdict, number>>
  readonly parts: readonly (Part & Giver)[]
  readonly asks: readonly Asked[]
  readonly unread: readonly Unread[]
  readonly faults: readonly Fault[]
  /** The facts that room and job rules gather. */
  readonly facts: readonly GivenFact[]
}
/** The job's plan: every window in short, and what room and job rules gave. `asks`, `unread` and `faults` are of the whole job. */
export interface JobPlan extends Results {
  readonly windows: readonly WindowSummary[]
}

/** The one text form of a plan: what the command line prints and what the tablet is compared with. */
export const planText = (plan: WindowPlan | JobPlan): string => `${JSON.stringify(plan, null, 2)}\n`

/** Order of texts by code unit, the same in every engine and language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
export type { Stage }
