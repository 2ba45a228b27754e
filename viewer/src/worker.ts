import { type Job, lay, type Place, type Readings } from '@evenhem/job'
import { createPlanner, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'

/** What the page asks of the plan's worker: the job as read, and a window. */
export interface PlanOrder {
  readonly ordered: Job
  readonly readings: Readings
  readonly window: Place
}
/** A window's plan, and the words of the plugins that made it: so the page needs none of their rules. */
export interface Planned {
  readonly plan: WindowPlan
  readonly words: readonly Plugin['words'][]
}
export type PlanAnswer = Planned | { readonly failed: string }

type Plugin = (typeof plugins)[number]

const planner = createPlanner(plugins)
const words = plugins.map((plugin) => plugin.words)

function answer({ ordered, readings, window }: PlanOrder): PlanAnswer {
  try {
    return { plan: planner.window(lay(ordered, readings).job, ordered, window), words }
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) }
  }
}

addEventListener('message', ({ data }: MessageEvent<PlanOrder>) => postMessage(answer(data)))
