import { below, type Place, type Readings, tokens, type Window } from '@evenhem/job'
import { formAt } from './form.ts'
import type { Entered } from './site.ts'

/** Something that is left to mend at a window, as it was ordered and found. */
export interface SitePoint {
  readonly id: string
  readonly at: Place
  /** Its number: points count in the order of their names. */
  readonly n: number
  readonly what?: string
  readonly cause?: string
  readonly owner?: string
  readonly trade?: string
  readonly who?: string
  readonly by?: string
  readonly unsafe?: boolean
  readonly state?: string
  readonly note?: string
  /** What on the drawing it is about. */
  readonly about?: Place
  readonly photo?: string
  /** Photos that show it before and after, by their hashes. */
  readonly before: readonly string[]
  readonly after: readonly string[]
}

const pointsAt = (window: Place): Place => below(window, 'with', 'punch-list', 'points')

interface Written {
  readonly [member: string]: unknown
}
const ordered = (window: Window): Readonly<Record<string, Written>> =>
  ((window.with?.['punch-list'] as { readonly points?: unknown } | undefined)?.points ?? {}) as Readonly<Record<string, Written>>

/** The points of a window, by their names. */
export function pointsIn(readings: Readings, window: Window, place: Place): readonly SitePoint[] {
  const at = pointsAt(place)
  const found = new Map<string, Written>(Object.entries(ordered(window)))
  for (const [each, { value }] of Object.entries(readings)) {
    if (!each.startsWith(`${at}/`)) continue
    const [id = '', member = '', inside] = tokens(each.slice(at.length))
    const before = found.get(id) ?? {}
    const now = inside === undefined ? value : { ...(before[member] as object | undefined), [inside]: value }
    found.set(id, { ...before, [member]: now })
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, { before, after, at: about, ...rest }], i) => ({
      ...(rest as Omit<SitePoint, 'id' | 'at' | 'n' | 'before' | 'after'>),
      ...(typeof about === 'string' ? { about } : {}),
      ...{ id, at: below(at, id), n: i + 1, before: held(before), after: held(after) },
    }))
}
const held = (photos: unknown): readonly string[] =>
  Object.entries((photos ?? {}) as Readonly<Record<string, unknown>>).flatMap(([hash, isHeld]) => (isHeld === true ? [hash] : []))

/** What on the drawing a point may be about: panels, brackets and openings of a window. */
export function drawnThings(window: Window, place: Place): readonly Place[] {
  const hung = window.treatments.flatMap(({ id, panels }) => {
    const at = below(place, 'treatments', id)
    return [
      ...panels.map((panel) => below(at, 'panels', panel.id)),
      ...['left', 'right'].map((side) => below(at, 'found', 'brackets', side)),
    ]
  })
  const openings = window.walls.flatMap((wall) =>
    (wall.openings ?? []).map((opening) => below(place, 'walls', wall.id, 'openings', opening.id)),
  )
  return [...hung, ...openings]
}

/** What may be chosen for a member of a point, by the format. */
export function choicesOf(place: Place, member: string): readonly string[] {
  const form = formAt(below(place, member))
  return form?.is === 'choice' ? form.choices : []
}
export const isSettled = ({ state }: SitePoint): boolean => state !== undefined && state !== 'open'

/** Puts a value of a point, or takes it back. */
export const putOf = (point: Pick<SitePoint, 'at'>, member: string, value: unknown): Entered => ({
  place: below(point.at, ...member.split('/')),
  ...(value === undefined ? {} : { value, read: value }),
})
/** A name for a new point, after all others; no other tablet gives the same. */
export function newPoint(window: Place, points: readonly SitePoint[]): Pick<SitePoint, 'id' | 'at'> {
  const chance = [...crypto.getRandomValues(new Uint8Array(4))].map((byte) => (byte % 36).toString(36)).join('')
  const id = `p${String(points.length + 1).padStart(3, '0')}-${chance}`
  return { id, at: below(pointsAt(window), id) }
}
