import type { Job, PlacedWindow, Room } from '@evenhem/job'

const millimetre = 1_000_000
/** What a wall is taken for while nobody has measured it. */
const usual = { width: 2400, height: 2600 }

type Wall = PlacedWindow['window']['walls'][number]

function wallWidth({ width, space, openings }: Wall): number | undefined {
  if (width !== undefined) return width / millimetre
  const right = Math.max(...(openings ?? []).map(({ x, casing }) => (x ?? 0) + (casing?.width ?? Number.NaN)))
  const all = (space?.left ?? Number.NaN) + right + (space?.right ?? Number.NaN)
  return Number.isFinite(all) ? all / millimetre : undefined
}

/** How wide a window's walls are in millimetres, as far as the order says; else what is usual. */
export const widthOf = ({ window }: PlacedWindow): number =>
  window.walls.reduce((sum, wall) => sum + (wallWidth(wall) ?? usual.width), 0)
/** How tall a room's walls are in millimetres. */
export const heightOf = ({ ceiling }: Room): number => (ceiling === undefined ? usual.height : ceiling / millimetre)

/** A room with its windows and their numbers in walking order. */
export interface WalkedRoom {
  readonly room: Room
  readonly windows: readonly { readonly found: PlacedWindow; readonly n: number }[]
}
/** The rooms that have a window, as they are walked. */
export function walkedRooms(job: Job, windows: readonly PlacedWindow[]): readonly WalkedRoom[] {
  const numbered = windows.map((found, n) => ({ found, n: n + 1 }))
  const rest = [...numbered]
  return job.rooms
    .map((room) => ({ room, windows: rest.splice(0, room.windows.length) }))
    .filter(({ windows }) => windows.length > 0)
}

/** Pixels a millimetre, the same for the whole house: its tallest wall is so tall, and its widest fits. */
export function scaleOf(windows: readonly PlacedWindow[], most: { readonly width: number; readonly height: number }): number {
  const tallest = windows.reduce((most, { room }) => Math.max(most, heightOf(room)), 1)
  const widest = windows.reduce((most, window) => Math.max(most, widthOf(window)), 1)
  return Math.min(most.height / tallest, most.width / widest)
}
