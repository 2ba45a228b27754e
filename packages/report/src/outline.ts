import { below, type Job, type PlacedWindow, type Readings, windowsOf } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import type { Entry, Verdict } from '@evenhem/plugin'
import { ceilingMarksOf } from './ceiling-marks.ts'
import { type Closing, closingOf } from './closing.ts'
import { aboutOf } from './contacts.ts'
import { correctionsOf } from './corrections.ts'
import { daysIn, daysOf, daysOfHouse } from './days.ts'
import { type DaysRead, type Drawing, daysReadIn, drawingOf } from './drawing.ts'
import { byLayer, entriesOf } from './entries.ts'
import { smallWallOf } from './frieze.ts'
import { type House, type HouseWindow, houseOf } from './house.ts'
import { openPoints, type Point, passedPoints } from './open.ts'
import type { Paper } from './paper.ts'
import { noPhotos, type Photos, photosOfWindow, type ShownPhoto } from './photos.ts'
import { type ListedPoint, pointsOfWindow } from './punch-points.ts'
import { shownAt } from './shown.ts'
import { signedOf } from './signatures.ts'
import { type Stands, standsOf } from './standing.ts'
import { technicalAt } from './technical.ts'
import type { Said, Voice } from './voice.ts'
import { type WallMarks, wallMarksOf } from './wall-marks.ts'

/** One fact of a list: its name, when it has one, and what is so. */
export interface Line {
  readonly name?: Said
  readonly says: readonly Said[]
}
export interface Section<T> {
  readonly title: string
  readonly of: readonly T[]
}

/** Points under a title; `before` them is said what holds for all, or that there are none. */
export interface Points extends Section<Point> {
  readonly before?: readonly string[]
}

/** What the report says about one window. */
export interface WindowPage {
  /** By which the report's links find it. */
  readonly id: string
  readonly title: string
  readonly stands: Stands
  readonly lead: readonly Said[]
  /** Composed whenever it is read and then let go: a scene holds more than the plan that it is made from. Undefined: there is nothing to draw. */
  readonly drawing: Drawing | undefined
  /** Said where there is no drawing. */
  readonly notDrawn: string
  /** Facts, each with its name. */
  readonly facts: readonly Section<Line>[]
  /** Photos before the work, closed, open and of details; absent when none was taken. */
  readonly photos?: Section<ShownPhoto>
  /** What was done otherwise than ordered; absent when nothing was. */
  readonly corrections?: Section<Line>
  /** When it was hung, and when somebody comes back; absent where no day is known. */
  readonly days?: Section<Line>
  readonly marks?: WallMarks
  /** What is pencilled on the ceiling. */
  readonly ceiling?: WallMarks
  /** Sentences about care and safe use. On paper they stand at the end, once for all windows. */
  readonly notes: readonly Section<Said>[]
  readonly open: Points
  readonly checked: Points
}

/** A report as plain data, said in the reader's language and unit: every paper is made from it and adds nothing of its own. */
export interface Outline {
  readonly language: string
  readonly paper: Paper
  readonly title: string
  readonly head: { readonly job: string; readonly kind: string; readonly state: string }
  readonly foot: {
    readonly job: string
    /** Around the page's number and the number of pages. */
    readonly page: readonly [before: string, between: string, after: string]
  }
  readonly windows: readonly WindowPage[]
  /** Absent when there is one window, which is a report by itself. */
  readonly house?: House
  readonly closing: Closing
  /** What each verdict's sign means. */
  readonly verdicts: Readonly<Record<Verdict, string>>
  /** For whom, by whom and when. */
  readonly about: readonly Line[]
}

/** A window with its plan. */
export interface PlannedWindow extends PlacedWindow {
  readonly plan: WindowPlan
}

export interface OutlineOrder {
  /** The order, and the order with the readings laid over it. */
  readonly ordered: Job
  readonly found: Job
  readonly readings: Readings
  /** In walking order; each is planned when its turn comes. */
  readonly windows: Iterable<PlannedWindow>
  readonly language: string
  readonly paper: Paper
  readonly voice: Voice
  /** Copies of photos, by their hash. Left out: none is here. */
  readonly photos?: Photos
  /** Points to mend that are at no window. Left out: none. */
  readonly points?: readonly ListedPoint[]
}

/** Makes the outline of a report. It knows no trade and no hardware: all that it says of a window stands in its plan. */
export function outlineOf(order: OutlineOrder): Outline {
  const { ordered, found, readings, windows, language, paper, voice, photos = noPhotos, points = [] } = order
  const { job } = ordered
  const signed = signedOf(found, readings, voice)
  const whole = { isSigned: signed.isSigned, read: daysReadIn(readings) }
  const all: HouseWindow[] = []
  for (const window of windows) all.push(windowOf(window, order, whole, all.length + 1))
  const pages = all.map(({ page }) => page)
  const [only, ...others] = pages
  const open = [...all.flatMap((window) => window.points), ...points]
  const closing = closingOf({ ordered, found, windows: all, points: open, photos, signed }, voice)
  return {
    language,
    paper,
    title: only && others.length === 0 ? voice.text('report/title', { window: only.title, job: job.name }) : job.name,
    head: {
      job: job.name,
      kind: voice.text('report/kind'),
      state: signed.isSigned ? voice.text('report/is-signed') : voice.text('report/draft'),
    },
    foot: { job: voice.text('report/job', { number: job.number }), page: aroundNumbers(voice) },
    windows: pages,
    closing,
    ...(only && others.length === 0 ? {} : { house: houseOf(all, closing, paper, voice) }),
    verdicts: {
      pass: voice.text('report/pass'),
      warn: voice.text('report/warn'),
      fail: voice.text('report/fail'),
      unknown: voice.text('report/unknown'),
    },
    about: [
      ...aboutOf(ordered, voice),
      ...daysOfHouse(
        all.map(({ placed }) => daysIn(placed)),
        voice,
      ),
    ],
  }
}

/** The words around the two numbers of a page, whichever stands first is the page's own. */
function aroundNumbers(voice: Voice): Outline['foot']['page'] {
  const [before = '', between = '', after = ''] = voice.text('report/page', { page: '\n', pages: '\n' }).split('\n')
  return [before, between, after]
}

/** What every window's page takes from the whole job. */
interface Whole {
  readonly isSigned: boolean
  readonly read: DaysRead
}

/** A window's page, and what the house's own pages take from its plan. */
function windowOf(window: PlannedWindow, order: OutlineOrder, whole: Whole, n: number): HouseWindow {
  const { plan, room } = window
  const { voice } = order
  return {
    placed: { place: window.place, room, window: window.window },
    page: pageOf(window, order, whole, n),
    wall: smallWallOf(plan),
    care: careOf(window, voice),
    safe: entriesOf(plan, 'safe-use', voice),
    shown: shownAt(plan, voice),
    technical: technicalAt({ place: window.place, room, window: window.window }, plan, order.found, voice),
    points: pointsOfWindow({ place: window.place, room, window: window.window }, plan),
  }
}

/** Each with the fabric of the treatment that it is said of. */
const careOf = ({ plan, place, window }: PlannedWindow, voice: Voice): HouseWindow['care'] =>
  plan.entries
    .filter(({ section }) => section === 'care')
    .map(({ code, values, on }) => {
      const fabric = window.treatments.find(({ id }) => on === below(place, 'treatments', id))?.fabric
      return { says: voice.said(code, values), ...(fabric ? { fabric } : {}) }
    })

function pageOf(
  placed: PlannedWindow,
  { found, readings, paper, voice, photos = noPhotos }: OutlineOrder,
  { isSigned, read }: Whole,
  n: number,
): WindowPage {
  const { plan, room, window } = placed
  const title = voice.text('report/window', { room: room.name, window: window.name })
  const open = openPoints(plan, found, voice)
  const stands = standsOf(plan, voice)
  const marks = wallMarksOf(plan, stands.standing, voice)
  const ceiling = ceilingMarksOf(plan, stands.standing, voice)
  const passed = passedPoints(plan, voice)
  const corrections = correctionsOf(placed, plan, found, voice)
  const days = daysOf(placed, plan, voice)
  const taken = photosOfWindow(placed, readings, photos, voice)
  const section = <T>(code: Entry['section'], made: (sentence: Said) => T): Section<T> => ({
    title: voice.text(`report/${code}`),
    of: entriesOf(plan, code, voice).map(made),
  })
  return {
    id: `window-${n}`,
    title,
    stands,
    lead: entriesOf(plan, 'lead', voice),
    get drawing() {
      return drawingOf(plan, { readings, days: read }, title, paper, voice)
    },
    notDrawn: voice.text('report/not-drawn'),
    facts: (['what-hangs-here', 'set-on-the-day'] as const)
      .flatMap((code) => byLayer(plan, code, voice))
      .filter(({ of }) => of.length > 0),
    ...(taken ? { photos: taken } : {}),
    ...(corrections ? { corrections } : {}),
    ...(days ? { days } : {}),
    ...(marks ? { marks } : {}),
    ...(ceiling ? { ceiling } : {}),
    notes: (['care', 'safe-use'] as const).map((code) => section(code, (sentence) => sentence)).filter(({ of }) => of.length > 0),
    open: {
      title: voice.text('report/still-open'),
      before: [
        ...(windowsOf(found).length === 1 && !isSigned ? [voice.text('report/unsigned')] : []),
        ...(open.length === 0 ? [voice.text('report/nothing-open')] : []),
      ],
      of: open,
    },
    checked: { title: voice.text('report/checked', { count: { count: passed.length } }), of: passed },
  }
}
