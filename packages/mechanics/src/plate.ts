import { aboveZero, notBelowZero } from './found.ts'

/** A bracket's plate on a wall. */
export interface Plate {
  /** What hangs on the bracket, N, downward. */
  readonly load: number
  /** How far from the wall it hangs, m. */
  readonly projection: number
  /** How high each screw stands above the plate's lower edge, m; one of each screw, in any order. */
  readonly holes: readonly number[]
}
/** What comes to one screw of a plate, N. */
export interface ScrewLoad {
  /** By a couple of the uppermost and the lowest screws; undefined where all stand at one height. */
  readonly couple: number | undefined
  /** By tilting about the plate's lower edge. */
  readonly tilting: number
  /** The larger of the two: what the most loaded screw is pulled with. */
  readonly pull: number
  readonly shear: number
}

/**
 * What the most loaded screw of a plate on a wall is pulled with, and each sheared with.
 * Couple: the load times its projection, over the distance of the uppermost screws from the lowest, shared by the uppermost (statics; read with its derivation).
 * Tilting about the lower edge: P e l / Σ l² for a screw at l (Bhandari, Design of Machine Elements, chapter 7; read). Shear is shared alike.
 * Neither holds for a plate that bends, for wallboard that gives way under it, or for a rod pulled by hand. A load or projection below 0, no holes, or one not above the edge throws.
 */
export function pullOf({ load, projection, holes }: Plate): ScrewLoad {
  notBelowZero({ load, projection })
  if (holes.length === 0) throw new RangeError('Unexpected plate without holes, expected at least one; give their heights.')
  aboveZero({ 'height of a hole': Math.min(...holes) })
  const moment = load * projection
  const [couple, tilting] = [coupled(moment, holes), tilted(moment, holes)]
  return { couple, tilting, pull: Math.max(couple ?? 0, tilting), shear: load / holes.length }
}

function coupled(moment: number, holes: readonly number[]): number | undefined {
  const [top, lowest] = [Math.max(...holes), Math.min(...holes)]
  const share = holes.filter((each) => each === top).length
  return top === lowest ? undefined : moment / (top - lowest) / share
}

const tilted = (moment: number, holes: readonly number[]): number =>
  (moment * Math.max(...holes)) / holes.reduce((sum, each) => sum + each ** 2, 0)

/** What each screw of a plate on a ceiling is pulled with, N: its part of the load, which hangs straight below. A load below 0 or less than one screw throws. */
export function ceilingPull(load: number, screws: number): number {
  notBelowZero({ load })
  if (!Number.isInteger(screws) || screws < 1)
    throw new RangeError(`Unexpected ${screws} screws, expected one or more; count them.`)
  return load / screws
}
