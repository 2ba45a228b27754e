import { below, type Job, type Place, type Room, tokens, type Window } from '@evenhem/job'
import type { RoomHead } from './heads.ts'
import { byId } from './item.ts'

/** A window with all that its plan depends on. */
export interface Site {
  readonly place: Place
  readonly head: RoomHead
  readonly job: Job
  readonly window: Window
  readonly ordered: Window | undefined
}

/** The objects that a window's plan reads: while they are the same ones, so is the plan. */
export const readAt = ({ head, job, window, ordered }: Site): readonly unknown[] => [
  head,
  window,
  ordered,
  ...window.treatments.flatMap(({ hardware, fabric }) => [byId(job.hardware, hardware), fabric && byId(job.fabrics, fabric)]),
]

/** Finds the window at a place. Throws a RangeError when there is none. */
export function siteAt(
  found: Job,
  ordered: Job,
  place: Place,
  headOf: (room: Room, ordered: Room | undefined) => RoomHead,
): Site {
  const [rooms, roomId = '', windows, windowId = '', ...more] = tokens(place)
  const room = rooms === 'rooms' && windows === 'windows' && more.length === 0 ? byId(found.rooms, roomId) : undefined
  const window = byId(room?.windows, windowId)
  if (!room || !window) throw noWindow(found, place)
  const orderedRoom = byId(ordered.rooms, roomId)
  return { place, head: headOf(room, orderedRoom), job: found, window, ordered: byId(orderedRoom?.windows, windowId) }
}

function noWindow(job: Job, place: Place): RangeError {
  const room = job.rooms.find(({ windows }) => windows.length > 0)
  const one = room
    ? JSON.stringify(below('/rooms', room.id, 'windows', room.windows[0]?.id ?? ''))
    : 'none: this job has no windows'
  return new RangeError(`Unexpected place ${JSON.stringify(place)}, expected a window of this job, such as ${one}`)
}
