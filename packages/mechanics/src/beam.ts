import {
  type Bay,
  type Beam,
  baysOf,
  cutOf,
  endSlopes,
  type Flexibility,
  flexibility,
  leftSides,
  splicesOf,
  stiffnessAt,
  stretchOf,
} from './bays.ts'
import { type Solver, solverOf } from './equations.ts'
import {
  carried,
  downIn,
  fall,
  filled,
  hangingMoment,
  type Loads,
  momentIn,
  type Piece,
  type Stretch,
  slopeIn,
} from './pieces.ts'

export type { Beam, Support } from './bays.ts'
export type { Loads, Piece, Point, Spread } from './pieces.ts'

/** What becomes of a rod under loads. */
export interface Bent {
  /** What each support carries, N; negative where it would have to hold the rod down. */
  readonly reactions: readonly number[]
  /** The moment over each support, N·m; negative where the rod arches over it. */
  readonly moments: readonly number[]
  /** The rod from left to right. */
  readonly pieces: readonly Piece[]
}
/** What does not change from one load case to the next. */
interface Ready {
  readonly beam: Beam
  readonly bays: readonly Bay[]
  readonly flexible: readonly Flexibility[]
  readonly splices: ReturnType<typeof splicesOf>
  /** The rod beyond the outer supports. */
  readonly beyond: { readonly left: Stretch; readonly right: Stretch }
  readonly scale: number
  readonly solve: Solver
}

/**
 * Makes a beam ready for any number of load cases; undefined when it would fold up or fall: with fewer than two supports, or with splices that leave it loose.
 * The theorem of three moments (Clapeyron; in Kassimali, Structural Analysis, Eq. D.10 with its terms for supports that give way), with a stiffness that
 * may change and splices that turn. Exact for loads that are even piece by piece; what shear adds to the bending of a slender rod is left out.
 */
export function beamOf(beam: Beam): ((loads: Loads) => Bent) | undefined {
  const { supports, splices = [] } = beam
  const [first, last] = [supports[0]?.at ?? 0, supports.at(-1)?.at ?? 0]
  if (supports.length < 2 || splices.some((x) => x <= first || x >= last)) return undefined
  const bays = baysOf(beam)
  const scale = stiffnessAt(beam, (first + last) / 2) / (last - first)
  const [flexible, joints] = [bays.map((bay) => flexibility(beam, bay)), splicesOf(bays)]
  const solve = solverOf(leftSides(flexible, joints, scale))
  const beyond = { left: stretchOf(beam, beam.from, first), right: stretchOf(beam, last, beam.to) }
  return solve && ((loads) => bent({ beam, bays, flexible, splices: joints, beyond, scale, solve }, loads))
}

function bent(ready: Ready, loads: Loads): Bent {
  const { beam, bays, beyond } = ready
  const ends = { left: leftEnd(beam, beyond.left, loads), right: rightEnd(beam, beyond.right, loads) }
  const free = bays.map((bay) => freeBay(beam, bay, loads))
  const { moments, turns } = unknowns(ready, free, ends.left.moment, ends.right.moment)
  const inside = bays.map((bay, i) => baySet(beam, bay, free[i] as Free, [moments[i] ?? 0, moments[i + 1] ?? 0], turns, i))
  const left = hungLeft(ends.left.pieces, inside[0]?.[0])
  const right = hungRight(ends.right.pieces, inside.at(-1)?.at(-1))
  const all = [left, ...inside, right]
  const reactions = beam.supports.map(({ at }, i) => {
    const onIt = loads.points.reduce((sum, point) => (point.at === at ? sum + point.force : sum), 0)
    return shearAfter(all[i + 1]) - shearBefore(all[i]) + onIt
  })
  return { reactions, moments, pieces: left.concat(...inside, right) }
}
const shearAfter = (own: readonly Piece[] | undefined): number => own?.[0]?.shear ?? 0
const shearBefore = (own: readonly Piece[] | undefined): number => {
  const last = own?.at(-1)
  return last ? last.shear - last.load * last.long : 0
}

interface End {
  readonly pieces: readonly Piece[]
  /** Over the outer support. */
  readonly moment: number
}
/** The rod beyond the left support, from its tip. */
function leftEnd(beam: Beam, stretch: Stretch, loads: Loads): End {
  if (stretch.to <= stretch.from) return { pieces: [], moment: 0 }
  const own = cutOf(beam, stretch, loads)
  const pieces = filled(own, 0, -(own[0]?.point ?? 0))
  return { pieces, moment: endMoment(pieces) }
}
/** The rod beyond the right support, whose tip is free. */
function rightEnd(beam: Beam, stretch: Stretch, loads: Loads): End {
  if (stretch.from >= stretch.to) return { pieces: [], moment: 0 }
  const own = cutOf(beam, stretch, loads)
  const tip = loads.points.reduce((sum, { at, force }) => (at === beam.to ? sum + force : sum), 0)
  const shear = own.reduce((sum, { load, long, point }, i) => sum + load * long + (i > 0 ? point : 0), tip)
  const moment = -endMoment(filled(own, 0, shear))
  return { pieces: filled(own, moment, shear), moment }
}
const endMoment = (own: readonly Piece[]): number => {
  const last = own.at(-1)
  return last ? momentIn(last, last.long) : 0
}

/** A bay on its own, its ends free to turn. */
interface Free {
  readonly cut: ReturnType<typeof cutOf>
  readonly shear: number
  readonly pieces: readonly Piece[]
  readonly slopes: readonly [left: number, right: number]
}
function freeBay(beam: Beam, bay: Bay, loads: Loads): Free {
  const cut = cutOf(beam, bay, loads)
  const shear = -hangingMoment(cut) / (bay.to - bay.from)
  const pieces = filled(cut, 0, shear)
  return { cut, shear, pieces, slopes: endSlopes(pieces, bay) }
}
/** The moments over all supports, and the slope that each splice adds. */
function unknowns({ beam, bays, flexible, splices, scale, solve }: Ready, free: readonly Free[], left: number, right: number) {
  const known = bays.map(({ from, to }, i): readonly [number, number] => {
    const settled = ((beam.supports[i + 1]?.down ?? 0) - (beam.supports[i]?.down ?? 0)) / (to - from)
    const own = free[i]?.slopes ?? [0, 0]
    // A moment at one end of the rod turns the other end of its bay; the rod's own end is in no equation.
    const both = flexible[i]?.both ?? 0
    const [fromRight, fromLeft] = [i === bays.length - 1 ? both * right : 0, i === 0 ? both * left : 0]
    return [own[0] + fromRight + settled, own[1] + fromLeft - settled]
  })
  const slopes = bays.slice(1).map((_, i) => -scale * ((known[i]?.[1] ?? 0) + (known[i + 1]?.[0] ?? 0)))
  const moments = splices.map(({ at, bay, share }) => {
    const outer = (bay === 0 ? (1 - share) * left : 0) + (bay === bays.length - 1 ? share * right : 0)
    return -momentAt(free[bay]?.pieces ?? [], at) - outer
  })
  const found = solve([...slopes, ...moments])
  const inner = bays.length - 1
  const turns = new Map(splices.map(({ at }, i) => [at, (found[inner + i] ?? 0) / scale]))
  return { moments: [left, ...found.slice(0, inner), right], turns }
}
const momentAt = (own: readonly Piece[], x: number): number => {
  const piece = own.findLast(({ at }) => at < x)
  return piece ? momentIn(piece, x - piece.at) : 0
}

/** A bay as it hangs: moments at its ends, slopes and places. */
function baySet(
  beam: Beam,
  { from, to }: Bay,
  { cut, shear }: Free,
  [left, right]: readonly [number, number],
  turns: ReadonlyMap<number, number>,
  i: number,
): readonly Piece[] {
  const own = filled(cut, left, shear + (right - left) / (to - from))
  const [start, end] = [beam.supports[i]?.down ?? 0, beam.supports[i + 1]?.down ?? 0]
  return carried(own, (end - start - fall(own, turns)) / (to - from), start, turns)
}
const none: ReadonlyMap<number, number> = new Map()
/** The left overhang goes on as the first bay begins. */
function hungLeft(own: readonly Piece[], next: Piece | undefined): readonly Piece[] {
  const level = carried(own, 0, 0, none).at(-1)
  if (!level || !next) return []
  const slope = next.slope - slopeAtEnd(level)
  const long = level.at + level.long - (own[0]?.at ?? 0)
  return carried(own, slope, next.down - downIn(level, level.long) - slope * long, none)
}
const hungRight = (own: readonly Piece[], before: Piece | undefined): readonly Piece[] =>
  before ? carried(own, slopeAtEnd(before), downIn(before, before.long), none) : []
const slopeAtEnd = (piece: Piece): number => slopeIn(piece, piece.long)
