import type { Place } from '@evenhem/job'
import type { JobPlan, WindowPlan } from '@evenhem/planner'
import { type SmallPicture, smallPicture } from './small-picture.ts'

type Check = WindowPlan['checks'][number]
export type Verdict = Check['verdict']
/** A finding that is open: its sentence is made on the page. */
export type OpenCheck = Pick<Check, 'verdict' | 'code' | 'says' | 'values' | 'on' | 'isFirm'>

/** How a window stands: what decides it comes first. */
export type Standing = 'fail' | 'measure' | 'warn' | 'unknown' | 'pass'
export interface StandingWindow {
  readonly place: Place
  readonly standing: Standing
  /** Findings that are neither well nor waiting for a reading; and readings that are missing. */
  readonly open: number
  readonly missing: number
}
/** What the page of a house needs of its plan; small also for thousands of windows. */
export interface House {
  readonly windows: readonly StandingWindow[]
  /** Open findings of rooms and of the whole job. */
  readonly checks: readonly OpenCheck[]
  readonly asks: JobPlan['asks']
  readonly faults: number
}
/** A window as a house's page draws it. */
export interface ShortWindow {
  readonly place: Place
  readonly picture?: SmallPicture
  /** The gravest first. */
  readonly open: readonly OpenCheck[]
  /** How many steps it has, and how many of them are done. */
  readonly steps: number
  readonly done: number
}

const gravity: readonly Verdict[] = ['fail', 'warn', 'unknown']

const openOf = (checks: readonly Check[]): readonly OpenCheck[] =>
  gravity.flatMap((verdict) =>
    checks
      .filter((check) => check.verdict === verdict && check.override === undefined)
      .map(({ code, says, values, on, isFirm }) => ({
        verdict,
        code,
        on,
        ...(says ? { says } : {}),
        ...(isFirm ? { isFirm } : {}),
        values,
      })),
  )

/** A missing reading explains what is not known, so it is told first; a stop always wins. */
export function standingOf(verdicts: Readonly<Record<Verdict, number>>, missing: number): Standing {
  if (verdicts.fail > 0) return 'fail'
  if (missing > 0) return 'measure'
  return verdicts.warn > 0 ? 'warn' : verdicts.unknown > 0 ? 'unknown' : 'pass'
}

/** What the page of a house shows of its plan. */
export const houseOf = ({ windows, checks, asks, faults }: JobPlan): House => ({
  windows: windows.map(({ window, verdicts, asks }) => ({
    place: window,
    standing: standingOf(verdicts, asks.length),
    open: verdicts.fail + verdicts.warn + (asks.length > 0 ? 0 : verdicts.unknown),
    missing: asks.length,
  })),
  checks: openOf(checks),
  asks,
  faults: faults.length,
})

/** What the page of a house shows of one window. */
export function shortOf(plan: WindowPlan): ShortWindow {
  const picture = smallPicture(plan.layers)
  return {
    place: plan.window,
    ...(picture ? { picture } : {}),
    open: openOf(plan.checks),
    steps: plan.steps.length,
    done: plan.steps.filter(({ done }) => done).length,
  }
}

/** A step of a window, told from all others. */
export const stepId = ({ on, plugin, id }: WindowPlan['steps'][number]): string => `${on}/${plugin}/${id}`
