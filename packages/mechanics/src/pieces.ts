/** A load spread evenly over a part of the rod, N/m, down. */
export interface Spread {
  readonly from: number
  readonly to: number
  readonly each: number
}
/** A load at one place of the rod, N, down. */
export interface Point {
  readonly at: number
  readonly force: number
}
export interface Loads {
  readonly spread: readonly Spread[]
  readonly points: readonly Point[]
}
/** A part of the rod with one stiffness and one even load: moment and shear at its left end, slope and place there once they are known. */
export interface Piece {
  readonly at: number
  readonly long: number
  /** E·I, N·m². */
  readonly stiffness: number
  /** N/m, down. */
  readonly load: number
  /** Sagging is positive, N·m. */
  readonly moment: number
  /** What goes up on its left side, N. */
  readonly shear: number
  /** Down for each metre to the right. */
  readonly slope: number
  /** How far it has come down, m. */
  readonly down: number
}
type Cut = Pick<Piece, 'at' | 'long' | 'stiffness' | 'load'> & { readonly point: number }

/** A part of the rod, and where inside it the stiffness changes or a splice is. */
export interface Stretch {
  readonly from: number
  readonly to: number
  readonly changes: readonly number[]
}

/** Cuts a part of the rod wherever stiffness or load changes or something else stands. */
export function cuts(stretch: Stretch, stiffnessAt: (x: number) => number, loads: Loads): readonly Cut[] {
  const own: Cut[] = []
  let at = stretch.from
  for (const next of endsOf(stretch, loads)) {
    // Of ends that are the same one counts.
    if (next !== at) own.push(cutOver(at, next, stiffnessAt, loads))
    at = next
  }
  return own
}
/** The right ends of its cuts. */
function endsOf(stretch: Stretch, { spread, points }: Loads): readonly number[] {
  const ends = [...stretch.changes]
  for (const { from, to } of spread) {
    if (isInside(stretch, from)) ends.push(from)
    if (isInside(stretch, to)) ends.push(to)
  }
  for (const { at } of points) if (isInside(stretch, at)) ends.push(at)
  ends.sort((a, b) => a - b)
  ends.push(stretch.to)
  return ends
}
const isInside = ({ from, to }: Stretch, x: number): boolean => x > from && x < to
function cutOver(at: number, to: number, stiffnessAt: (x: number) => number, { spread, points }: Loads): Cut {
  const middle = (at + to) / 2
  let [load, point] = [0, 0]
  for (const each of spread) if (each.from < middle && middle < each.to) load += each.each
  for (const each of points) if (each.at === at) point += each.force
  return { at, long: to - at, stiffness: stiffnessAt(middle), load, point }
}

/** Moments and shears from left to right, from those right at the left end. A point that stands at a support is on the support: it bends nothing here. */
export function filled(own: readonly Cut[], moment: number, shear: number): readonly Piece[] {
  let [m, v] = [moment, shear]
  return own.map(({ at, long, stiffness, load, point }, i) => {
    if (i > 0) v -= point
    const piece = { at, long, stiffness, load, moment: m, shear: v, slope: 0, down: 0 }
    m = momentIn(piece, long)
    v -= load * long
    return piece
  })
}
export const momentIn = ({ moment, shear, load }: Piece, s: number): number => moment + s * (shear - (load * s) / 2)
export const slopeIn = ({ stiffness, slope, moment, shear, load }: Piece, s: number): number =>
  slope - (s * (moment + s * (shear / 2 - (load * s) / 6))) / stiffness
export const downIn = ({ stiffness, slope, down, moment, shear, load }: Piece, s: number): number =>
  down + s * (slope - (s * (moment / 2 + s * (shear / 6 - (load * s) / 24))) / stiffness)

/** The moment at the right end of what has neither moment nor shear at its left end. */
export function hangingMoment(own: readonly Cut[]): number {
  let [m, v] = [0, 0]
  own.forEach(({ long, load, point }, i) => {
    if (i > 0) v -= point
    m += long * (v - (load * long) / 2)
    v -= load * long
  })
  return m
}
/** How far down the right end of some pieces comes, when their left end is level and at 0. */
export function fall(own: readonly Piece[], turns: ReadonlyMap<number, number>): number {
  let [turn, place] = [0, 0]
  own.forEach((piece, i) => {
    if (i > 0) turn += turns.get(piece.at) ?? 0
    place += turn * piece.long + downIn(piece, piece.long)
    turn += slopeIn(piece, piece.long)
  })
  return place
}

/** The same pieces with slope and place carried on from the left end; `turns` adds a slope where a splice lets the rod turn. */
export function carried(
  own: readonly Piece[],
  slope: number,
  down: number,
  turns: ReadonlyMap<number, number>,
): readonly Piece[] {
  let [turn, place] = [slope, down]
  return own.map((piece, i) => {
    const here = { ...piece, slope: turn + (i > 0 ? (turns.get(piece.at) ?? 0) : 0), down: place }
    ;[turn, place] = [slopeIn(here, piece.long), downIn(here, piece.long)]
    return here
  })
}

/** ∫ M/EI and ∫ x·M/EI over a piece, x from `zero`. */
export function turned({ at, long: h, stiffness, moment, shear, load }: Piece, zero: number): readonly [number, number] {
  const whole = h * (moment + h * (shear / 2 - (load * h) / 6))
  const own = h * h * (moment / 2 + h * (shear / 3 - (load * h) / 8))
  return [whole / stiffness, ((at - zero) * whole + own) / stiffness]
}
