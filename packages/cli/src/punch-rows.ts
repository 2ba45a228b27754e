import type { Job, PlacedWindow } from '@evenhem/job'
import { aboutOfPoint, isSettled, type ListedPoint, ownerOf, photosOf, pointsInOrder } from '@evenhem/report'
import type { Speech } from './speech.ts'
import { plain, table } from './table.ts'

const windowName = (window: PlacedWindow | undefined, { voice }: Speech): string =>
  window ? `${window.room.name}, ${window.window.name}` : voice('whole-job')
/** `Garden room, Window 1, point 2`. */
export const pointName = ({ window, number }: ListedPoint, speech: Speech): string =>
  speech.voice('punch.point', { window: windowName(window, speech), n: number })
const stateOf = ({ state }: ListedPoint, { say }: Speech): string => say(`punch-list/state-${state.replaceAll(' ', '-')}`)
const aboutOf = (point: ListedPoint, job: Job, { say, language }: Speech): string =>
  aboutOfPoint(point, job, { text: say, language })

function lineOf(point: ListedPoint, speech: Speech): readonly string[] {
  const { voice, say } = speech
  const { number, by, who, what, isUnsafe } = point
  return [
    String(number).padStart(2),
    ownerOf(point, say) + (who === undefined ? '' : ` (${who})`),
    by ?? voice('punch.no-day'),
    stateOf(point, speech),
    voice('punch.is', { what: what ?? voice('punch.not-said'), unsafe: isUnsafe && !isSettled(point) ? 'yes' : 'no' }),
  ].map((cell) => cell.replaceAll(/\s+/g, ' '))
}

/** Points for people: by window, then by owner and day. */
export function punchText(job: Job, points: readonly ListedPoint[], speech: Speech): string {
  const windows = [...new Set(points.map(({ window }) => window?.place))]
  const groups = windows.map((place) => points.filter(({ window }) => window?.place === place).toSorted(pointsInOrder))
  const each = groups.map((own) => `${windowName(own[0]?.window, speech)}\n${table(own.map((point) => lineOf(point, speech)))}`)
  return plain(`${job.job.name}\n\n${each.join('\n')}`)
}

const heads = [
  'room',
  'window',
  'point',
  'what',
  'where',
  'unsafe',
  'cause',
  'owner',
  'trade',
  'who',
  'by',
  'state',
  'note',
  'photos',
] as const
/** Points as rows of a sheet, the first with the names of its columns. A point of the whole job has neither room nor window. */
export function punchRows(job: Job, points: readonly ListedPoint[], speech: Speech): readonly (readonly string[])[] {
  const { voice, say } = speech
  const rows = points.map((point) => {
    const { window, number, what = '', isUnsafe, cause, owner, trade = '', who = '', by = '', note = '' } = point
    return [
      window?.room.name ?? '',
      window?.window.name ?? '',
      String(number),
      what,
      aboutOf(point, job, speech),
      isUnsafe ? voice('punch.yes') : '',
      cause === undefined ? '' : say(`punch-list/cause-${cause.replaceAll(' ', '-')}`),
      owner === undefined ? '' : ownerOf({ ...point, trade: undefined }, say),
      trade,
      who,
      by,
      stateOf(point, speech),
      note,
      photosOf(point).join(' '),
    ]
  })
  return [heads.map((name) => voice(`csv.${name}`)), ...rows]
}

/** The same for programs, with the place of each window. */
export const punchJson = (points: readonly ListedPoint[]): object => ({
  points: points.map(({ window, ...point }) => ({
    ...(window ? { window: window.place, room: window.room.name, name: window.window.name } : {}),
    ...point,
  })),
})
