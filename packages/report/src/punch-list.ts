import type { Job } from '@evenhem/job'
import { type Tape, tapes } from '@evenhem/length'
import type { Sentences } from '@evenhem/planner/say'
import type { Frame, ReportPage } from './html.ts'
import type { Line } from './outline.ts'
import type { Paper } from './paper.ts'
import { sizeOfJpeg } from './photo-size.ts'
import { type Photos, type ShownPhoto, shownPhoto } from './photos.ts'
import { punchHtml } from './punch-html.ts'
import { aboutOf, byOwner, isToMend, type ListedPoint, ownerOf } from './punch-points.ts'
import { createVoice, type Voice } from './voice.ts'

export interface PrintedPoint {
  readonly title: string
  /** Said first of all where somebody can be hurt. */
  readonly unsafe?: string
  readonly what: string
  readonly facts: readonly Line[]
  readonly photos: readonly ShownPhoto[]
}
/** What one owner has to mend; each begins a page. */
export interface PrintedOwner {
  readonly title: string
  readonly lead: string
  readonly points: readonly PrintedPoint[]
}
/** The punch list as plain data, said in the reader's language. */
export interface PunchOutline extends Frame {
  readonly owners: readonly PrintedOwner[]
  /** Said when nothing is left to mend. */
  readonly instead?: string
}

export interface PunchOrder {
  /** The job as found. */
  readonly found: Job
  readonly points: readonly ListedPoint[]
  /** Small copies of photos, JPEG, by their hash. One that is not among them is said to be missing. */
  readonly photos: ReadonlyMap<string, Uint8Array>
  /** `wordsOf(plugins)`. */
  readonly words: readonly Sentences[]
  readonly language: string
  readonly paper: Paper
  readonly tape?: Tape
}

/** The printed punch list: what is still to be mended, a page for each owner and each other trade, as one HTML page that needs nothing else. */
export function punchListOf({ words, language, tape = tapes.sixteenths, ...order }: PunchOrder): ReportPage {
  return punchHtml(punchOutlineOf({ ...order, voice: createVoice(words, language, tape) }))
}

type Sayable = Omit<PunchOrder, 'words' | 'language' | 'tape'> & { readonly voice: Voice }

/** The outline of a printed punch list. */
export function punchOutlineOf({ found, points, photos, paper, voice }: Sayable): PunchOutline {
  const left = points.filter(isToMend)
  const copies = held(photos)
  const count = { count: { count: left.length } }
  const { name, number } = found.job
  const [before = '', between = '', after = ''] = voice.text('report/page', { page: '\n', pages: '\n' }).split('\n')
  return {
    language: voice.language,
    paper,
    title: voice.text('report/punch-title', { job: name }),
    head: { job: name, kind: voice.text('report/punch-list'), state: voice.text('report/punch-count', count) },
    foot: { job: voice.text('report/job', { number }), page: [before, between, after] },
    owners: byOwner(left).map((own) => ownerPage(own, found, copies, voice)),
    ...(left.length === 0 ? { instead: voice.text('report/punch-nothing') } : {}),
  }
}

function ownerPage(own: readonly ListedPoint[], job: Job, photos: Photos, voice: Voice): PrintedOwner {
  const [first] = own as readonly [ListedPoint]
  const days = own.flatMap(({ by }) => by ?? [])
  return {
    title: voice.text(first.owner === undefined ? 'report/punch-of-nobody' : 'report/punch-for', {
      owner: ownerOf(first, voice.text),
    }),
    lead: voice.text('report/punch-lead', {
      count: { count: own.length },
      dated: days.length > 0 ? 'yes' : 'no',
      by: days.length > 0 ? voice.day(days.toSorted()[0] as string) : '',
    }),
    points: own.map((point) => printedPoint(point, job, photos, voice)),
  }
}

/** Copies that are here, as part of the page. */
const held =
  (photos: PunchOrder['photos']): Photos =>
  (hash) => {
    const bytes = photos.get(hash)
    return bytes && { src: `data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}`, ...sizeOfJpeg(bytes) }
  }

/** A point as it is printed. `first`: facts that stand before its own. */
export function printedPoint(
  point: ListedPoint,
  job: Job,
  photos: Photos,
  voice: Voice,
  first: readonly Line[] = [],
): PrintedPoint {
  const { window, number, what, isUnsafe } = point
  const at = window
    ? voice.text('report/window', { room: window.room.name, window: window.window.name })
    : voice.text('report/punch-no-window')
  return {
    title: voice.text('report/punch-point', { at, n: { count: number } }),
    ...(isUnsafe ? { unsafe: voice.text('report/punch-unsafe') } : {}),
    what: what ?? voice.text('report/punch-not-said'),
    facts: [...first, ...factsOf(point, job, voice)],
    photos: photosOn(point, photos, voice),
  }
}

/** What is known of a point beside what is wrong. The day is always said, agreed or not. */
function factsOf(point: ListedPoint, job: Job, voice: Voice): readonly Line[] {
  const { by, who, cause, note } = point
  const fact = (code: string, text: string | undefined): readonly Line[] =>
    text ? [{ name: [voice.text(code)], says: [[text]] }] : []
  return [
    ...fact('report/punch-by', by === undefined ? voice.text('report/punch-no-day') : voice.day(by)),
    ...fact('report/punch-who', who),
    ...fact('report/punch-where', aboutOf(point, job, voice)),
    ...fact('report/punch-cause', cause && voice.text(`punch-list/cause-${cause.replaceAll(' ', '-')}`)),
    ...fact('report/punch-note', note),
  ]
}

/** The photo of a point with its spot, then those before and after, each with what was marked on it at its window. One that is several of these stands once. */
function photosOn(
  { window, photo, spot, before, after, what = '' }: ListedPoint,
  photos: Photos,
  voice: Voice,
): readonly ShownPhoto[] {
  const marked = (hash: string) => Object.values(window?.window.found?.photoMarks?.[hash] ?? {})
  const shown = (hash: string, code: string, marks: ShownPhoto['marks'] = []) =>
    shownPhoto(hash, { name: voice.text(code), says: '', marks: [...marked(hash), ...marks] }, what, photos, voice)
  const { x, y } = spot ?? {}
  const marks = x !== undefined && y !== undefined ? [{ kind: 'point', x, y } as const] : []
  const rest = (hashes: readonly string[]) => hashes.filter((hash) => hash !== photo)
  return [
    ...(photo === undefined ? [] : [shown(photo, 'report/photo-of-it', marks)]),
    ...rest(before).map((hash) => shown(hash, 'report/photo-before')),
    ...rest(after).map((hash) => shown(hash, 'report/photo-after')),
  ]
}
