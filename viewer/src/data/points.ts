import { below, type Place, type Readings, type Window } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import { factsOf, type PunchPoint } from './facts.ts'
import { formAt } from './form.ts'
import type { Entered } from './site.ts'
import type { SitePhoto } from './site-photos.ts'

/** What is left to mend at a window, in the order of its plan. */
export const pointsIn = (plan: WindowPlan): readonly PunchPoint[] =>
  factsOf(plan, 'punch-list/points@1').flatMap(({ value }) => value)
export const isSettled = ({ state }: PunchPoint): boolean => state !== 'open'

const pointsAt = (window: Place): Place => below(window, 'with', 'punch-list', 'points')
/** A point by its id; one that says nothing yet is there as soon as something is put. */
export const pointBy = (id: string, points: readonly PunchPoint[], window: Place): PunchPoint =>
  points.find((each) => each.id === id) ?? {
    ...{ id, number: points.length + 1, place: below(pointsAt(window), id) },
    ...{ isUnsafe: false, before: [], after: [], state: 'open' },
  }
/** An id for a new point, behind all others; no other tablet gives the same. */
export function newPointId(points: readonly PunchPoint[]): string {
  const chance = [...crypto.getRandomValues(new Uint8Array(4))].map((byte) => (byte % 26) + 10).map((n) => n.toString(36))
  const most = Math.max(0, ...points.map(({ id }) => Number(/^p(\d+)/.exec(id)?.[1] ?? 0)))
  return `p${most + 1}-${chance.join('')}`
}

/** Puts a value of a point, or takes it back. */
export const putOf = ({ place }: Pick<PunchPoint, 'place'>, member: string, value: unknown): Entered => ({
  place: below(place, ...member.split('/')),
  ...(value === undefined ? {} : { value, read: value }),
})
/** The photo that shows a point, and where on it: at the mark that was put last. */
export function putShown(point: Pick<PunchPoint, 'place'>, { hash, marks }: SitePhoto): readonly Entered[] {
  const spot = marks.at(-1)
  const at = spot ? [putOf(point, 'spot/x', spot.x), putOf(point, 'spot/y', spot.y)] : []
  return [putOf(point, 'photo', hash), putOf(point, `before/${hash}`, true), ...at]
}
/** Takes back all that was put of a point. */
export const leaveOut = ({ place }: Pick<PunchPoint, 'place'>, readings: Readings): readonly Entered[] =>
  Object.keys(readings)
    .filter((each) => each.startsWith(`${place}/`))
    .map((each) => ({ place: each }))

/** What may be chosen for a member of a point, by the format. */
export function choicesOf({ place }: Pick<PunchPoint, 'place'>, member: string): readonly string[] {
  const form = formAt(below(place, member))
  return form?.is === 'choice' ? form.choices : []
}

/** What on the drawing a point may be about, and what its name begins below: an only layer and an only wall need not be named. */
export function drawnThings(window: Window, place: Place): readonly { readonly at: Place; readonly within: Place }[] {
  const { treatments, walls } = window
  const hung = treatments.flatMap(({ id, panels }) => {
    const at = below(place, 'treatments', id)
    const things = [
      ...panels.map((panel) => below(at, 'panels', panel.id)),
      ...['left', 'right'].map((side) => below(at, 'found', 'brackets', side)),
    ]
    return things.map((thing) => ({ at: thing, within: treatments.length === 1 ? at : place }))
  })
  const openings = walls.flatMap(({ id, openings = [] }) => {
    const at = below(place, 'walls', id)
    return openings.map((opening) => ({
      at: below(at, 'openings', opening.id),
      within: walls.length === 1 ? at : place,
    }))
  })
  return [...hung, ...openings]
}
