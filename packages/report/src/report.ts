import { type Job, lay, type Place, type PlacedWindow, type Readings, windowsOf } from '@evenhem/job'
import type { Tape } from '@evenhem/length'
import type { Planner, WindowPlan } from '@evenhem/planner'
import type { Sentences } from '@evenhem/planner/say'
import { type Pictures, pageOf, type ReportPage } from './html.ts'
import { type Outline, outlineOf, type PlannedWindow } from './outline.ts'
import type { Paper } from './paper.ts'
import type { Photos } from './photos.ts'
import { pointsOfJob } from './punch-points.ts'
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
  /** Copies of photos, by their hash. Left out: none is here. */
  readonly photos?: Photos
  /** Where the page may take pictures from: out of itself, or also from where it came from itself. Left out: out of itself. */
  readonly pictures?: Pictures
  /** Hears how far the report is. */
  readonly told?: (stage: Stage) => void
}

/** How far a report is: so many of its windows are planned or, for a PDF, drawn; or its type is being set. */
export type Stage =
  | { readonly is: 'planned' | 'drawn'; readonly done: number; readonly total: number }
  | { readonly is: 'setting' }

/** What the report of a job says: every window planned from the order and what was read. */
export function outlineFor({ ordered, readings, planner, words, language, tape, paper, photos, told }: ReportOrder): Outline {
  const found = lay(ordered, readings).job
  const windows = planned(windowsOf(found), (place) => planner.window(found, ordered, place), told)
  const points = pointsOfJob(planner.job(found, ordered))
  return outlineOf({
    ordered,
    found,
    readings,
    windows,
    language,
    paper,
    photos,
    points,
    voice: createVoice(words, language, tape),
  })
}

/** The customer's report of a job as one page. */
export const reportOf = (order: ReportOrder): ReportPage => pageOf(outlineFor(order), order.pictures)

/** One plan after the other, when it is asked for. */
function* planned(
  windows: readonly PlacedWindow[],
  plan: (place: Place) => WindowPlan,
  told: ReportOrder['told'],
): Generator<PlannedWindow> {
  for (const [n, window] of windows.entries()) {
    yield { ...window, plan: plan(window.place) }
    told?.({ is: 'planned', done: n + 1, total: windows.length })
  }
}
