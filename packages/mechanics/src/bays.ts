import { cuts, filled, type Loads, type Piece, type Stretch, turned } from './pieces.ts'

/** A support that a rod lies on, `down` m lower than the line that the others are on. */
export interface Support {
  readonly at: number
  readonly down?: number
}
/**
 * A rod over its supports, all places in m to the right of any one place, each list from left to right. It may run on beyond the outer supports. A stiffness
 * (E·I, N·m²) holds from its place to the next one's; in a splice of `splices` the rod is free to turn and carries no moment.
 */
export interface Beam {
  readonly from: number
  readonly to: number
  readonly stiffness: readonly { readonly from: number; readonly ei: number }[]
  readonly supports: readonly Support[]
  readonly splices?: readonly number[]
}
/** The rod between two neighbouring supports. */
export interface Bay extends Stretch {
  readonly splices: readonly number[]
}
/** The slopes at the ends of a bay for a moment of 1 at its left end, at the other end, and at its right end. */
export interface Flexibility {
  readonly left: number
  readonly both: number
  readonly right: number
}
export const stiffnessAt = ({ stiffness }: Beam, x: number): number =>
  (stiffness.findLast(({ from }) => from <= x) ?? stiffness[0])?.ei ?? 0
export function stretchOf({ stiffness, splices = [] }: Beam, from: number, to: number): Stretch {
  const changes = [...stiffness.map((each) => each.from), ...splices]
  return { from, to, changes: changes.filter((x) => x > from && x < to) }
}
export const cutOf = (beam: Beam, stretch: Stretch, loads: Loads) => cuts(stretch, (x) => stiffnessAt(beam, x), loads)
export const baysOf = (beam: Beam): readonly Bay[] =>
  beam.supports.slice(1).map(({ at: to }, i) => {
    const from = beam.supports[i]?.at as number
    // A splice right over a support is in the bay on its left.
    return { ...stretchOf(beam, from, to), splices: (beam.splices ?? []).filter((x) => x > from && x <= to) }
  })
/** The splices with their bay and how much of it lies before them, in the order of the unknowns. */
export const splicesOf = (bays: readonly Bay[]) =>
  bays.flatMap(({ from, to, splices }, bay) => splices.map((at) => ({ at, bay, share: (at - from) / (to - from) })))

/** The slopes at the ends of pieces that lie between two supports, as their moments alone turn them: at the left down, at the right up. */
export function endSlopes(own: readonly Piece[], { from, to }: Bay): readonly [left: number, right: number] {
  let [whole, first] = [0, 0]
  for (const piece of own) {
    const [turn, shift] = turned(piece, from)
    whole += turn
    first += shift
  }
  return [whole - first / (to - from), first / (to - from)]
}
export function flexibility(beam: Beam, bay: Bay): Flexibility {
  const own = cutOf(beam, bay, { spread: [], points: [] })
  const each = 1 / (bay.to - bay.from)
  const [left] = endSlopes(filled(own, 1, -each), bay)
  const [both, right] = endSlopes(filled(own, 0, each), bay)
  return { left, both, right }
}

/**
 * The left sides of the equations, each of size 1. Unknown are the moments over the inner supports and the turns in the splices times `scale`, an E·I over a
 * length. A row for each inner support, where the slopes agree, then one for each splice, where the moment vanishes.
 */
export function leftSides(
  flexible: readonly Flexibility[],
  splices: ReturnType<typeof splicesOf>,
  scale: number,
): readonly (readonly number[])[] {
  const inner = flexible.slice(1)
  const over = (i: number, j: number): number => {
    const [left, right] = [flexible[i], flexible[i + 1]]
    if (!left || !right) return 0
    return j === i ? left.right + right.left : j === i - 1 ? left.both : j === i + 1 ? right.both : 0
  }
  const slopes = inner.map((_, i) => [
    ...inner.map((_, j) => scale * over(i, j)),
    ...splices.map(({ bay, share }) => (bay === i ? -share : bay === i + 1 ? share - 1 : 0)),
  ])
  const moments = splices.map(({ bay, share }) => [
    ...inner.map((_, j) => (j === bay - 1 ? 1 - share : j === bay ? share : 0)),
    ...splices.map(() => 0),
  ])
  return [...slopes, ...moments]
}
