import type { Fastener, Place, Treatment, Window } from '@evenhem/job'
import { kilogramForce, type Length, metre } from '@evenhem/length'
import { ceilingPull, type Forces, pullOf, unknownGravity } from '@evenhem/mechanics'
import type { Fixing } from '../facts/index.ts'
import { windowOf } from '../given.ts'
import { type Ground, groundUnder, layersOf, plateOf } from './behind.ts'
import { isEnough, screwListed, screwNamed, type Used, usedByListing, usedInWood } from './screw.ts'

/** What hangs on a bracket, N, so far out from what that is screwed to, m. */
export interface Hangs {
  readonly force: number
  readonly projection: number
}
const metres = (length: number): number => length / metre

/** What the most loaded screw is pulled and sheared with, by the holes of its plate; undefined while they are not known, or how far out the rod is. */
export function forcesOf(parts: readonly Hangs[], { on, projection, height, holes }: Fixing): Forces | undefined {
  const load = parts.reduce((sum, { force }) => sum + force, 0)
  if (holes.length === 0) return undefined
  if (on === 'ceiling') return { pull: ceilingPull(load, holes.length), shear: 0 }
  if (!projection || projection.value <= 0 || !height || holes.some(({ value }) => value >= height.value)) return undefined
  const above = holes.map(({ value }) => metres(height.value - value))
  const each = parts.map(({ force, projection: out }) => pullOf({ load: force, projection: out, holes: above }))
  return { pull: each.reduce((sum, { pull }) => sum + pull, 0), shear: load / holes.length }
}
/** The same while the uppermost screw is alone: it takes all of the shear, and is pulled no less than beside the others. */
export function alone(parts: readonly Hangs[], fixing: Fixing): Forces | undefined {
  const top = [...fixing.holes].sort((a, b) => a.value - b.value).slice(0, 1)
  const [one, all] = [forcesOf(parts, { ...fixing, holes: top }), forcesOf(parts, fixing)]
  return one && all && { pull: Math.max(one.pull, all.pull), shear: one.shear }
}

/** What a bracket is fixed with. */
export interface Fixed {
  readonly name: string
  readonly use: (forces: Forces) => Used
  /** In wood: whether a screw of another name would hold as much. */
  readonly would?: (name: string, forces: Forces) => boolean
}
/** The screw that was driven, else the first of the treatment's fasteners that fits what is behind, else in wood the screw that the maker asks for. */
function fixedWith(it: Treatment, ground: Ground, fixing: Fixing, all: readonly Fastener[], bracket: string): Fixed | Used {
  if (ground.behind === 'unknown') return { ok: false, why: 'wall' }
  const driven = it.found?.brackets?.[bracket]?.screw
  if (driven !== undefined && ground.behind === 'wood') return inWood(ground, { ...fixing, screw: driven }, undefined)
  const mine = all.filter(({ id }) => it.fasteners?.includes(id) ?? true)
  const own = mine.find(({ into }) => into === ground.behind)
  if (own && (own.as === 'listed' || ground.behind !== 'wood'))
    return { name: own.name, use: (forces) => usedByListing(forces, own, ground.board, plateOf(fixing.thickness)) }
  return ground.behind === 'wood' ? inWood(ground, fixing, own) : { ok: false, why: 'no-fastener' }
}
function inWood(ground: Ground, fixing: Fixing, own: Fastener | undefined): Fixed | Used {
  const makers = fixing.screw === undefined ? undefined : screwNamed(fixing.screw)
  const screw = own ? screwListed(own) : makers
  if (!screw) return { ok: false, why: own || fixing.screw !== undefined ? 'size' : 'no-fastener' }
  const layers = layersOf(ground, fixing.thickness)
  if (!layers) return { ok: false, why: 'board' }
  const { name } = screw
  return { name, use: (forces) => usedInWood(forces, screw, layers), would: (other, forces) => isEnough(other, forces, layers) }
}

export interface Around {
  readonly it: Treatment
  readonly at: Place
  readonly window: Window
  readonly all: readonly Fastener[]
}
/** What is above a ceiling, as the order says. How thick its board is nobody says. */
const aboveOf = ({ aboveCeiling = 'unknown' }: Window): Ground => ({
  behind: aboveCeiling,
  wood: Number.POSITIVE_INFINITY,
  gravity: unknownGravity,
})

/** What is under a bracket, and what it is fixed with there. */
export function fixedAt({ it, at, window, all }: Around, fixing: Fixing, bracket: string, x: Length) {
  const ground = it.mount === 'ceiling' ? aboveOf(window) : groundUnder(it, window, windowOf(at), bracket, x)
  return { ground, fixed: fixedWith(it, ground, fixing, all, bracket) }
}

/** Which part of what a bracket holds is used by a load, N: by its fasteners and by its maker's rating, whichever is more; undefined while neither is known, endless for a screw that is too short. */
export function shareHeld(around: Around, fixing: Fixing, bracket: string, x: Length, load: number): number | undefined {
  const force = Math.max(0, load)
  const { fixed } = fixedAt(around, fixing, bracket, x)
  const forces = forcesOf([{ force, projection: metres(fixing.projection?.value ?? 0) }], fixing)
  const used = forces && 'use' in fixed ? fixed.use(forces) : undefined
  if (used && !used.ok && used.why === 'penetration') return Number.POSITIVE_INFINITY
  const all = [used?.ok ? used.value : undefined, fixing.rated && force / (kilogramForce * fixing.rated.value)]
  const known = all.filter((each) => each !== undefined)
  return known.length === 0 ? undefined : Math.max(...known)
}
