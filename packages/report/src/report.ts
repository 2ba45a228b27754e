import { type Job, lay, type Place, type PlacedWindow, type Readings, windowsOf } from '@evenhem/job'
import type { Tape } from '@evenhem/length'
import type { Planner, WindowPlan } from '@evenhem/planner'
import type { Sentences } from '@evenhem/planner/say'
import { pageOf, type ReportPage } from './html.ts'
import { outlineOf, type PlannedWindow } from './outline.ts'
import type { Paper } from './paper.ts'
import { createVoice } from './voice.ts'

export interface ReportOrder {
  readonly ordered: Job
  readonly readings: Readings
  readonly planner: Planner
  /** What the plan's codes say: `wordsOf(plugins)`. */
  readonly words: readonly Sentences[]
  /** BCP 47, the customer's. */
  readonly language: string
  readonly tape: Tape
  readonly paper: Paper
}

/** The customer's report of a job: every window planned from the order and what was read, as one page. */
export function reportOf({ ordered, readings, planner, words, language, tape, paper }: ReportOrder): ReportPage {
  const found = lay(ordered, readings).job
  const windows = planned(windowsOf(found), (place) => planner.window(found, ordered, place))
  return pageOf(outlineOf({ ordered, found, readings, windows, language, paper, voice: createVoice(words, language, tape) }))
}

/** One plan after the other, when it is asked for. */
function* planned(windows: readonly PlacedWindow[], plan: (place: Place) => WindowPlan): Generator<PlannedWindow> {
  for (const window of windows) yield { ...window, plan: plan(window.place) }
}
