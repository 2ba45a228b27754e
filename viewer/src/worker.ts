import { type Job, lay, type Place, type Readings } from '@evenhem/job'
import { createPlanner, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { type House, houseOf, type ShortWindow, shortOf } from './data/house.ts'

/** What the page asks of the plan's worker. The job is given once, as it was read. */
export type PlanOrder =
  | { readonly ask: 'take'; readonly ordered: Job; readonly readings: Readings }
  | { readonly ask: 'window'; readonly window: Place }
  | { readonly ask: 'house' }
  | { readonly ask: 'short'; readonly windows: readonly Place[] }

/** The words of the plugins: so the page needs none of their rules. */
export type PluginWords = readonly Plugin['words'][]
/** A window's plan, and the words of those who made it. */
export interface Planned {
  readonly plan: WindowPlan
  readonly words: PluginWords
}
/** What each question is answered with. */
export interface PlanAnswers {
  readonly take: PluginWords
  readonly window: WindowPlan
  readonly house: House
  readonly short: readonly ShortWindow[]
}
export type PlanAnswer = { readonly is: PlanAnswers[keyof PlanAnswers] } | { readonly failed: string }

type Plugin = (typeof plugins)[number]

const planner = createPlanner(plugins)
let job: { readonly found: Job; readonly ordered: Job } | undefined

function answer(order: PlanOrder): PlanAnswers[keyof PlanAnswers] {
  if (order.ask === 'take') {
    job = { found: lay(order.ordered, order.readings).job, ordered: order.ordered }
    return plugins.map((plugin) => plugin.words)
  }
  if (!job) throw new Error(`Unexpected question “${order.ask}”, expected a job first; give it with “take”`)
  const { found, ordered } = job
  if (order.ask === 'house') return houseOf(planner.job(found, ordered))
  if (order.ask === 'window') return planner.window(found, ordered, order.window)
  return order.windows.map((window) => shortOf(planner.window(found, ordered, window)))
}

function answered(order: PlanOrder): PlanAnswer {
  try {
    return { is: answer(order) }
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) }
  }
}

addEventListener('message', ({ data }: MessageEvent<PlanOrder>) => postMessage(answered(data)))
