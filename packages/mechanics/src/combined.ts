import { aboveZero, notBelowZero } from './found.ts'

/** Out of the wood and along it, N. */
export interface Forces {
  readonly pull: number
  readonly shear: number
}
/** How a screw stands that is pulled and sheared at once. */
export interface Combined {
  /** Of the load to the wood's surface, rad: 0 is all shear, a right angle all pull. */
  readonly angle: number
  /** What it may be loaded with at this angle, N. */
  readonly capacity: number
  /** Which part of that is used: 1 is all. */
  readonly share: number
}

/** What a screw may be loaded with at an angle to the wood's surface, rad, from what it holds in pull and in shear, N (NDS 2018, Eq. 12.4-1; read). */
export function capacityAt(angle: number, { pull, shear }: Forces): number {
  aboveZero({ pull, shear })
  return (pull * shear) / (pull * Math.cos(angle) ** 2 + shear * Math.sin(angle) ** 2)
}

/** A screw's load against what it holds, by the same equation. Without a load nothing is used. A load below 0 or a capacity that is not above 0 throws. */
export function combined(load: Forces, capacity: Forces): Combined {
  notBelowZero({ pull: load.pull, shear: load.shear })
  const angle = Math.atan2(load.pull, load.shear)
  const most = capacityAt(angle, capacity)
  return { angle, capacity: most, share: Math.hypot(load.pull, load.shear) / most }
}
