import { type Job, lay, type Place, type Readings } from '@evenhem/job'
import { createPlanner, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { type House, houseOf, type ShortWindow, shortOf } from './data/house.ts'

/** What the page asks of the plan's worker. The job is given once, as it was read. */
export type PlanOrder =
  | { readonly ask: 'take'; readonly ordered: Job; readonly readings: Readings }
  /** Other readings are laid over the order from now on. */
  | { readonly ask: 'found'; readonly readings: Readings }
  | { readonly ask: 'window'; readonly window: Place }
  /** The plan of a window as it would be with a value put, or none, at these places. Nothing is kept of it. */
  | { readonly ask: 'try'; readonly window: Place; readonly readings: Readings }
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
  readonly found: null
  readonly window: WindowPlan
  readonly try: WindowPlan
  readonly house: House
  readonly short: readonly ShortWindow[]
}
export type PlanAnswer = { readonly is: PlanAnswers[keyof PlanAnswers] } | { readonly failed: string }

type Plugin = (typeof plugins)[number]

const planner = createPlanner(plugins)
interface Taken {
  readonly ordered: Job
  readonly readings: Readings
  readonly found: Job
}
let job: Taken | undefined

/**
 * Lays readings over the order. What stands on the same readings stays the same object, so that its plan is still kept: only what is new or
 * other is laid over the job as it was found; when something went away, all is laid again.
 */
function laid({ ordered, readings: before, found }: Taken, readings: Readings): Taken {
  const isSame = (place: Place): boolean => JSON.stringify(before[place]?.value) === JSON.stringify(readings[place]?.value)
  const isGone = Object.keys(before).some((place) => readings[place] === undefined)
  const more = Object.fromEntries(Object.entries(readings).filter(([place]) => !isSame(place)))
  return { ordered, readings, found: isGone ? lay(ordered, readings).job : lay(found, more).job }
}

function answer(order: PlanOrder): PlanAnswers[keyof PlanAnswers] {
  if (order.ask === 'take') {
    job = { ordered: order.ordered, readings: order.readings, found: lay(order.ordered, order.readings).job }
    return plugins.map((plugin) => plugin.words)
  }
  if (!job) throw new Error(`Unexpected question “${order.ask}”, expected a job first; give it with “take”`)
  if (order.ask === 'found') {
    job = laid(job, order.readings)
    return null
  }
  const { found, ordered } = job
  if (order.ask === 'house') return houseOf(planner.job(found, ordered))
  if (order.ask === 'window') return planner.window(found, ordered, order.window)
  if (order.ask === 'try') return planner.window(laid(job, order.readings).found, ordered, order.window)
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
