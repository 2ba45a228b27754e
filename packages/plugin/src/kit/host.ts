import { type Job, type Place, windowsOf } from '@evenhem/job'
import type { Check, Entry, Fact, Layer, Part, Plugin, Reckoning, Step } from '../contract.ts'

type By = { readonly by: string; readonly on: Place }
/** What the kit looks at in a plan. */
export interface Plan {
  readonly checks: readonly (Check & By & { readonly because?: string })[]
  readonly steps: readonly (Step & { readonly plugin: string; readonly rule: string })[]
  readonly parts: readonly (Part & By)[]
  readonly reckonings: readonly (Reckoning & By)[]
  readonly layers: readonly (Layer & By)[]
  readonly entries: readonly (Entry & By)[]
  readonly faults: readonly {
    readonly plugin: string
    readonly rule: string
    readonly at: Place
    readonly what: string
    readonly message: string
  }[]
}
/** What the kit asks of a planner; `createPlanner` of `@evenhem/planner` gives it. */
export interface Planner {
  readonly window: (found: Job, ordered: Job, place: Place) => Plan
  readonly job: (found: Job, ordered: Job) => Plan
  readonly unmet: readonly { readonly plugin: string; readonly rule: string; readonly fact: string }[]
}
export type CheckFact = (fact: Fact, value: unknown) => string | undefined
export type CreatePlanner = (plugins: readonly Plugin[], options?: { readonly checkFact?: CheckFact }) => Planner

/** A job that is tried: as ordered and, when something was measured, as found. */
export interface Example {
  readonly name: string
  readonly ordered: Job
  readonly found: Job
}

/** The plans of every window of an example, then of the job. */
export const plansOf = (planner: Planner, { found, ordered }: Example): readonly Plan[] => [
  ...windowsOf(found).map(({ place }) => planner.window(found, ordered, place)),
  planner.job(found, ordered),
]
