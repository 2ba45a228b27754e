import { type Job, type PlacedWindow, windowsOf } from '@evenhem/job'
import { createPlanner, type JobPlan, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import type { Session } from './command.ts'
import { eachInView } from './progress.ts'

/** A window with its plan. */
export interface Sheet {
  readonly window: PlacedWindow
  readonly plan: WindowPlan
}

/** What a command takes of each window's plan, in walking order, and the plan of the whole job. A plan is let go when `take` has what it wants of it. */
export function planned<T>(
  { found, ordered }: { readonly found: Job; readonly ordered: Job },
  session: Session,
  take: (sheet: Sheet) => T,
  windows = windowsOf(found),
): { readonly sheets: readonly T[]; readonly whole: () => JobPlan } {
  const planner = createPlanner(plugins)
  const sheets = eachInView(windows, (window) => take({ window, plan: planner.window(found, ordered, window.place) }), session)
  // After the windows, whose summaries it has then at hand.
  return { sheets, whole: () => planner.job(found, ordered) }
}
