import type { Fastener } from '@evenhem/job'
import { inch, type Length, metre, millimetre, readLength } from '@evenhem/length'
import {
  allowedBy,
  combined,
  type Forces,
  lagPull,
  type Reason,
  rootDiameter,
  screwDiameter,
  screwShear,
  shareOf,
  steelBearing,
  woodBearing,
  woodScrewPull,
} from '@evenhem/mechanics'
import { forceOf } from '../given.ts'

/** A screw of wood, in metres. */
export interface WoodScrew {
  readonly as: 'wood screw' | 'lag screw'
  readonly name: string
  readonly diameter: number
  readonly root: number
  readonly length: number
  readonly thread: number
}
/** What a screw goes through and into, in metres. */
export interface Layers {
  readonly plate: number
  /** Wallboard, plaster, tile: they hold nothing. */
  readonly board: number
  /** How thick the wood is; infinite for a stud. */
  readonly wood: number
  readonly gravity: number
}
/** Which part of what a fastener holds a load uses, or why that is not known. */
export type Used =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: Reason | 'no-fastener' | 'wall' | 'board' }

/** The root of a screw that is printed nowhere: six tenths of its diameter, from memory. */
const rootShare = 0.6
/** Roots of lag screws, inches (NDS 2018, Table L2, from memory). */
const lagRoots: Readonly<Record<string, number>> = { '0.25': 0.173, '0.3125': 0.227 }
const thread = (length: number): number => (2 / 3) * length

/** A screw as its maker writes it: `No. 8 × 1 1/4`, or in millimetres `4 × 40`; undefined when it is written otherwise. */
export function screwNamed(name: string): WoodScrew | undefined {
  const found = /^(No\.? ?)?(\d+(?:\.\d+)?) ?[×x] ?(.+)$/.exec(name.trim())
  const read = found?.[3] === undefined ? undefined : readLength(found[3], found[1] ? 'in' : 'mm')
  const size = Number(found?.[2])
  if (!found || !read?.ok || read.value <= 0) return undefined
  const length = read.value / metre
  if (!found[1]) return sized('wood screw', name, (size * millimetre) / metre, length)
  return Number.isInteger(size) && size >= 4 && size <= 24 ? numbered(name, size, length) : undefined
}
const sized = (as: WoodScrew['as'], name: string, diameter: number, length: number): WoodScrew => {
  const inches = String((diameter * metre) / inch)
  if (as === 'wood screw') return { as, name, diameter, root: rootShare * diameter, length, thread: thread(length) }
  // Half of it and half an inch are threaded, the tip takes five eighths of the diameter (NDS 2018, Table L2, from memory).
  const threaded = length / 2 + inch / metre / 2 - (5 / 8) * diameter
  return { as, name, diameter, root: ((lagRoots[inches] ?? Number.NaN) * inch) / metre, length, thread: threaded }
}
const numbered = (name: string, number: number, length: number): WoodScrew => {
  const diameter = screwDiameter(number)
  return { as: 'wood screw', name, diameter, root: rootDiameter(number) ?? rootShare * diameter, length, thread: thread(length) }
}
/** A screw of the list of fasteners; undefined when its sizes are not said. */
export function screwListed({ as, name, number, diameter, length, thread: threaded }: Fastener): WoodScrew | undefined {
  if (as === 'listed' || length === undefined) return undefined
  const long = length / metre
  const own =
    number !== undefined && as === 'wood screw'
      ? numbered(name, number, long)
      : diameter === undefined
        ? undefined
        : sized(as, name, diameter / metre, long)
  return own && threaded !== undefined ? { ...own, thread: threaded / metre } : own
}

/** What a screw may be loaded with in wood, out of it and along it, N: by the published equations, for a load that stays. */
export function woodHolds(screw: WoodScrew, { plate, board, wood, gravity }: Layers) {
  const penetration = Math.min(screw.length - plate - board, wood)
  const own = { gravity, diameter: screw.diameter, thread: Math.min(screw.thread, penetration), duration: 'permanent' as const }
  if (screw.as === 'lag screw' && Number.isNaN(screw.root)) return { ok: false as const, why: 'size' as const }
  const pull = (screw.as === 'lag screw' ? lagPull : woodScrewPull)(own)
  if (!pull.ok) return pull
  const shear = screwShear({
    ...{ diameter: screw.diameter, root: screw.root, penetration, duration: 'permanent', gap: board },
    ...{ side: { strength: steelBearing, length: plate }, strength: woodBearing(gravity) },
    ...(screw.as === 'lag screw' ? { bending: lagBending } : {}),
  })
  if (!shear.ok) return shear
  return { ok: true as const, pull: pull.value, shear: shear.value / (screw.as === 'lag screw' ? acrossGrain : 1) }
}
/** A load across the grain counts so much more with screws from 1/4 in on (Kθ, NDS 2018, Table 12.3.1B, from memory). */
const acrossGrain = 1.25
/** Bending yield strength of lag screws of 1/4 and 5/16 in: 60,000 psi, the lower of the two (NDS 2018, footnote of Table 12J, from memory). */
const lagBending = 60_000 * 6894.757_293

/** Which part of what a wood screw holds a load uses. */
export function usedInWood(load: Forces, screw: WoodScrew, layers: Layers): Used {
  const holds = woodHolds(screw, layers)
  return holds.ok ? { ok: true, value: combined(load, holds).share } : holds
}
/** The same by a fastener's own listing: in a board only in one as thick as it is listed for, in wood only where it gets there. */
export function usedByListing(load: Forces, { listing, into, length }: Fastener, board: Length | undefined, plate: number): Used {
  if (!listing) return { ok: false, why: 'not-listed' }
  if (into === 'hollow' && (board === undefined || listing.board !== board)) return { ok: false, why: 'board' }
  if (into === 'wood' && length !== undefined && length / metre <= plate + (board ?? 0) / metre)
    return { ok: false, why: 'penetration' }
  const [pull, shear] = [forceOf(listing.pull), forceOf(listing.shear)]
  const own = {
    ...{ is: listing.is, ...(listing.margin === undefined ? {} : { margin: listing.margin }) },
    ...(pull === undefined ? {} : { pull }),
    ...(shear === undefined ? {} : { shear }),
  }
  return allowedBy(own).ok ? shareOf(load, own) : { ok: false, why: 'margin' }
}

/** Wood screws as boxes have them, the shorter and thinner ones first: numbers and inches, or millimetres. */
const customary = [2, 2.5, 3, 3.5].flatMap((long) =>
  [8, 10, 12, 14].map((size) => `No. ${size} × ${long === 2.5 ? '2 1/2' : long === 3.5 ? '3 1/2' : long}`),
)
const metric = [50, 60, 70, 80, 90].flatMap((long) => [4, 5, 6].map((size) => `${size} × ${long}`))
/** Usual screws, written as one is. */
export const usualAs = (like: string): readonly string[] => (like.startsWith('No') ? customary : metric)
/** Whether a screw of this name holds a load. */
export function isEnough(name: string, load: Forces, layers: Layers): boolean {
  const screw = screwNamed(name)
  const used = screw && usedInWood(load, screw, layers)
  return used?.ok === true && used.value <= 1
}
