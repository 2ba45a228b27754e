import { below, type Place } from './places.ts'
import type { Job, Room, Window } from './types.generated.ts'

/** A window and where it stands. */
export interface PlacedWindow {
  readonly place: Place
  readonly room: Room
  readonly window: Window
}
/** What looking for a window came to. `among`: every window, or those that the name could mean. */
export type WindowSearch =
  | { readonly is: 'one'; readonly found: PlacedWindow }
  | { readonly is: 'none' | 'several'; readonly among: readonly PlacedWindow[] }

/** Every window of a job, in walking order. */
export const windowsOf = (job: Job): readonly PlacedWindow[] =>
  job.rooms.flatMap((room) =>
    room.windows.map((window) => ({ place: below('', 'rooms', room.id, 'windows', window.id), room, window })),
  )

/** The shortest name of a window that is one in the whole house: `garden-room/w1`. */
export const nameOf = ({ room, window }: PlacedWindow): string => `${room.id}/${window.id}`

/** Looks for a window by its id (`w1`), by room and id (`garden-room/w1`), or by its place or one below it. */
export function findWindow(job: Job, name: string): WindowSearch {
  const all = windowsOf(job)
  const means = (one: PlacedWindow) => [one.window.id, nameOf(one), one.place].includes(name) || name.startsWith(`${one.place}/`)
  const [found, ...more] = all.filter(means)
  if (!found) return { is: 'none', among: all }
  return more.length === 0 ? { is: 'one', found } : { is: 'several', among: [found, ...more] }
}
