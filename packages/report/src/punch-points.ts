import type { Job, Place, PlacedWindow } from '@evenhem/job'
import { placeInWords } from '@evenhem/job'
import type { GivenFact, JobPlan, WindowPlan } from '@evenhem/planner'
import type { Voice } from './voice.ts'

/** A point of the punch list, as the plugin of that name gives it among its facts. */
export interface PunchPoint {
  readonly id: string
  /** From 1, at its window or of the job. */
  readonly number: number
  readonly place: Place
  readonly what?: string
  readonly at?: Place
  readonly photo?: string
  readonly spot?: { readonly x?: number; readonly y?: number }
  readonly cause?: string
  readonly owner?: string
  readonly trade?: string
  readonly who?: string
  readonly by?: string
  readonly isUnsafe: boolean
  readonly before: readonly string[]
  readonly after: readonly string[]
  readonly state: string
  readonly note?: string
}
/** A point with the window that it is at; without one it is of the whole job. */
export interface ListedPoint extends PunchPoint {
  readonly window?: PlacedWindow
  /** Code of the number that it is about, where `at` names one that was worked out. */
  readonly numberOf?: string
}

const pointsIn = (facts: readonly GivenFact[], id: string): readonly PunchPoint[] =>
  facts.flatMap((fact) => (fact.id === id ? (fact.value as readonly PunchPoint[]) : []))

/** The points of a window, in the order of their numbers. */
export const pointsOfWindow = (window: PlacedWindow, { facts, reckonings }: WindowPlan): readonly ListedPoint[] =>
  pointsIn(facts, 'punch-list/points@1').map((point) => {
    const about = reckonings.find(({ name }) => name === point.at)
    return { ...point, window, ...(about ? { numberOf: about.what } : {}) }
  })
/** The points that are at no window. */
export const pointsOfJob = ({ facts }: JobPlan): readonly ListedPoint[] => pointsIn(facts, 'punch-list/job-points@1')

/** Nothing is left to do about it: it was looked at again, or accepted where nobody can be hurt by it. */
export const isSettled = ({ state, isUnsafe }: PunchPoint): boolean =>
  state === 'looked at' || (state === 'accepted as it is' && !isUnsafe)
/** Somebody has to mend it. */
export const isToMend = (point: PunchPoint): boolean => !isSettled(point) && point.state !== 'mended'

/** What on the drawing a point is about, in words from its window on; empty for the window as a whole. */
export function aboutOf(
  { at, window, numberOf }: ListedPoint,
  job: Job,
  { text, language }: Pick<Voice, 'text' | 'language'>,
): string {
  if (at === undefined) return ''
  const thing = placeInWords(job, at.split('#', 1)[0] ?? '', window?.place ?? '', language)
  return numberOf === undefined ? thing : `${thing}, ${text(numberOf)}`
}

const ranks = ['workroom', 'installer', 'other trade', 'customer', undefined] as const
const rank = ({ owner }: PunchPoint): number => ranks.indexOf(owner as (typeof ranks)[number])
const byText = (a = '', b = ''): number => (a < b ? -1 : a > b ? 1 : 0)
/** By owner, then by trade, then by day; what has no day comes last. */
export const inOrder = (a: PunchPoint, b: PunchPoint): number =>
  rank(a) - rank(b) || byText(a.trade, b.trade) || byText(a.by ?? '~', b.by ?? '~') || a.number - b.number
/** Whoever has to see to points: each owner, and each trade by itself. */
export const ownerKey = ({ owner = '', trade = '' }: PunchPoint): string =>
  owner === 'other trade' ? `${owner}/${trade}` : owner
/** An owner in words; another trade by its name. */
export const ownerOf = ({ owner = 'none', trade }: PunchPoint, text: Voice['text']): string =>
  owner === 'other trade' && trade !== undefined ? trade : text(`punch-list/owner-${owner.replaceAll(' ', '-')}`)

/** Points by who has to see to them, in order. */
export function byOwner(points: readonly ListedPoint[]): readonly (readonly ListedPoint[])[] {
  const groups = new Map<string, ListedPoint[]>()
  for (const point of points.toSorted(inOrder)) {
    const own = groups.get(ownerKey(point)) ?? []
    own.push(point)
    groups.set(ownerKey(point), own)
  }
  return [...groups.values()]
}

/** The hashes of all photos of a point, each once; what is no hash is none. */
export const photosOf = ({ photo, before, after }: PunchPoint): readonly string[] =>
  [
    ...new Set([photo, ...before, ...after].filter((hash) => hash !== undefined && /^[0-9a-f]{64}$/.test(hash))),
  ] as readonly string[]
