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

const treatment = `${window}/treatments/over`
const seal = { job: 'a'.repeat(64), devices: { 'tablet-1': { n: 3, hash: 'b'.repeat(64) } }, photos: 'c'.repeat(64) }
const signature = {
  name: 'The household',
  strokes: [
    [0, 0, 0.5, 1, 1, 0.25],
    [0.1, 0.1],
  ],
  seal,
}
/** What was decided, by what it is about: one of each sort, and words that are nobody's. */
const decided = {
  hems: 'go on: 12.7 mm for 19.05 mm',
  panels: 'call the workroom: 1 mm, 2 mm',
  'left.finishedLength': 'move the brackets: 2251.075 mm for 2260.6 mm',
  'right.pin': 'reset pins: 19.05 mm for 12.7 mm',
  'rod-and-ring/part-finial': 'call the workroom: 1 of 2',
  'hem-left': 'pins; read 1: 12.7 mm; meant 1: 12.7 mm',
  'hem-right': 'goes back; read 1: 12.7 mm; meant 1: 12.7 mm',
  'hem-other': 'brackets; read 1: 12.7 mm; meant 1: 12.7 mm',
  'hem-third': 'brackets and pins; read 1: 12.7 mm; meant 1: 12.7 mm',
  'hem-last': 'read again',
  'bracket-left': 'up 9.525 mm, to 2295.525 mm',
  'the ladder': 'left <b>outside</b>',
}
const pointer = (name: string): string => name.replaceAll('~', '~0').replaceAll('/', '~1')
/** The window after it was handed over: pins set anew, decisions, days, a point to mend, and signatures. */
export const handedOver = (more: Partial<ReportOrder> = {}, accepts = 'with open points'): ReportOrder => {
  const at = (place: string, value: unknown, when?: string) => [place, { value, ...(when ? { when } : {}) }] as const
  const found = Object.fromEntries([
    at(`${treatment}/found/pins/left/3`, '3/8'),
    at(`${treatment}/found/pins/left/4`, '3/8'),
    at(`${treatment}/found/pins/left/7`, '5/8'),
    ...Object.entries(decided).map(([key, text]) => at(`${treatment}/found/decided/${pointer(key)}`, text)),
    at(`${treatment}/found/hungOn`, '2026-12-08'),
    at(`${treatment}/found/lookAgain`, '2026-12-22'),
    at(`${treatment}/found/done/drapery/hand-over`, true),
    at(`${window}/with/punch-list/points/p001/what`, 'Paint chipped'),
    at(`${window}/with/punch-list/points/p001/owner`, 'customer'),
    at('/job/found/signatures/s2', { role: 'customer', accepts, left: 'two rings', ...signature }, '2026-12-08T17:00:00Z'),
    at('/job/found/signatures/s9', { ...signature, role: 'installer', typed: true, strokes: [] }, '2026-12-08T16:00:00Z'),
  ])
  return orderOf(JSON.stringify({ ...JSON.parse(textOf('tern-hollow')), uses: undefined, found }), more)
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
