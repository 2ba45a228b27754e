import type { Place, Treatment, Wall, Window } from '@evenhem/job'
import { inch, type Known, type Length, metre } from '@evenhem/length'
import { speciesGroups, unknownGravity } from '@evenhem/mechanics'
import { coveredBy, perhaps, wallUnder } from '../given.ts'
import { standsOut } from '../hardware/index.ts'
import type { Layers } from './screw.ts'

export type Behind = 'wood' | 'metal' | 'hollow' | 'masonry' | 'concrete' | 'unknown'
/** What a bracket is screwed to. */
export interface Ground {
  readonly behind: Behind
  readonly board?: Length | undefined
  readonly wood: number
  readonly gravity: number
}
/** Half of a stud, which is 1 1/2 in wide, less 1/4 in that a screw keeps from its edge: from memory. */
const stud = inch / 2
const isOnStud = ({ studs = [] }: Wall, x: Length): boolean => studs.some((each) => Math.abs(each.x - x) <= stud)

/** What is behind a bracket: as the drill met it, else the casing or the crown itself, a stud that is known there, or what the order says of the wall. */
export function groundUnder(it: Treatment, window: Window, windowAt: Place, bracket: string, x: Length): Ground {
  const { wall } = wallUnder(window, windowAt, x)
  const { behind = 'unknown', board, wood } = wall.buildUp ?? {}
  const gravity = wood === undefined ? unknownGravity : speciesGroups[wood]
  const met = it.found?.brackets?.[bracket]?.behind
  const out = standsOut(it, window, windowAt)
  const own = out && coveredBy(it, window, windowAt).length > 0 ? perhaps(out.by) : undefined
  if (out) return { behind: own ? 'wood' : 'unknown', wood: (own?.value ?? 0) / metre, gravity: unknownGravity }
  const found = met ?? (isOnStud(wall, x) ? 'wood' : behind)
  return { behind: found, board, wood: Number.POSITIVE_INFINITY, gravity }
}

/** A plate that nobody measured: 1/8 in (from memory, no source). */
const plateUnsaid = inch / 8
/** How thick a plate is, m. */
export const plateOf = (thickness: Known<Length> | undefined): number =>
  (thickness && thickness.value > 0 ? thickness.value : plateUnsaid) / metre
/** What a screw goes through on its way. A board that nobody measured: not known, and so undefined. */
export function layersOf({ board, wood, gravity }: Ground, thickness: Known<Length> | undefined): Layers | undefined {
  // On a casing or a crown no board lies between.
  if (board === undefined && !Number.isFinite(wood)) return undefined
  return { plate: plateOf(thickness), board: (board ?? 0) / metre, wood, gravity }
}
