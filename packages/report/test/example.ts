import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Job, lay, type Readings, windowsOf } from '@evenhem/job'
import { extensionsOf, readJob } from '@evenhem/job/read'
import { tapes } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { wordsOf } from '@evenhem/planner/say'
import { plugins } from '@evenhem/plugins'
import { createVoice, type Outline, outlineOf, type ReportOrder } from '../src/index.ts'

const examples = fileURLToPath(new URL('../../../schema/examples/', import.meta.url))
const extensions = extensionsOf(plugins)
const planner = createPlanner(plugins)
export const window = '/rooms/garden-room/windows/w1'

export const textOf = (name: string): string => readFileSync(`${examples}${name}/job.json`, 'utf8')

/** What a report is made from: a job file, read by our plugins, for an English reader with a tape of sixteenths and A4. */
export function orderOf(text: string, more: Partial<ReportOrder> = {}): ReportOrder {
  const { job, readings, diagnostics } = readJob(text, extensions)
  if (!job) throw new Error(JSON.stringify(diagnostics))
  return {
    ordered: job,
    readings,
    planner,
    words: wordsOf(plugins),
    language: 'en',
    tape: tapes.sixteenths,
    paper: 'a4',
    ...more,
  }
}
export const example = (name: string, more: Partial<ReportOrder> = {}): ReportOrder => orderOf(textOf(name), more)

type Written = { rooms: { windows: object[] }[] }

/** The garden windows of several examples as one house, two to a room, in the order of `names`. */
export function house(names: readonly string[], more: Partial<ReportOrder> = {}): ReportOrder {
  const jobs = names.map((name) => JSON.parse(textOf(name)) as Written)
  const windows = jobs.map((job, n) => ({ ...job.rooms[0]?.windows[0], id: `w${n + 1}`, name: `Window ${n + 1}` }))
  const rooms = ['Garden room', 'Study', 'Landing'].flatMap((name, n) => {
    const own = windows.slice(2 * n, 2 * n + 2)
    return own.length > 0 ? [{ ...jobs[0]?.rooms[0], id: `room-${n + 1}`, name, windows: own }] : []
  })
  return orderOf(JSON.stringify({ ...jobs[0], rooms }), more)
}

/** The outline of a whole order. */
export function outlined(order: ReportOrder): Outline {
  const { ordered, readings, planner: own, words, language, tape, paper } = order
  const found = lay(ordered, readings).job
  const windows = windowsOf(found).map((each) => ({ ...each, plan: own.window(found, ordered, each.place) }))
  return outlineOf({ ordered, found, readings, windows, language, paper, voice: createVoice(words, language, tape) })
}

/** The plan and the outline of an order's garden window. `changed` is done to the job as found. */
export function planned(order: ReportOrder, changed: (found: Job) => Job = (found) => found) {
  const { ordered, readings, paper, language } = order
  const found = changed(lay(ordered, readings).job)
  const plan = order.planner.window(found, ordered, window)
  const room = found.rooms[0] as Job['rooms'][0]
  const windows = [{ place: window, room, window: room.windows[0] as (typeof room.windows)[0], plan }]
  const outline: Outline = outlineOf({
    ordered,
    found,
    readings,
    windows,
    language,
    paper,
    voice: createVoice(order.words, language, order.tape),
  })
  const page = outline.windows[0] as Outline['windows'][0]
  return { plan, outline, page }
}
export type { Readings }
