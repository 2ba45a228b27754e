import { type Job, lay, type Place, type Readings } from '@evenhem/job'
import { createPlanner, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'

/** What the page asks of the plan's worker: the job as read, and a window. */
export interface PlanOrder {
  readonly ordered: Job
  readonly readings: Readings
  readonly window: Place
}
export type PlanAnswer = { readonly plan: WindowPlan } | { readonly failed: string }

const planner = createPlanner(plugins)

function answer({ ordered, readings, window }: PlanOrder): PlanAnswer {
  try {
    return { plan: planner.window(lay(ordered, readings).job, ordered, window) }
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) }
  }
}

addEventListener('message', ({ data }: MessageEvent<PlanOrder>) => postMessage(answer(data)))
