import type { Bent } from './beam.ts'
import { downIn, momentIn, type Piece, slopeIn } from './pieces.ts'

/** How far down places of the rod have come, m, given from left to right; beyond its ends as at the nearer one. */
export function downsAt({ pieces }: Bent, places: readonly number[]): readonly number[] {
  const downs: number[] = []
  let i = 0
  for (const x of places) {
    while ((pieces[i + 1]?.at ?? Number.POSITIVE_INFINITY) <= x) i += 1
    const piece = pieces[i]
    downs.push(piece ? downIn(piece, within(piece, x)) : 0)
  }
  return downs
}
export const downAt = (bent: Bent, x: number): number => downsAt(bent, [x])[0] ?? 0
/** The moment at a place of the rod, N·m; sagging is positive. */
export const momentAt = ({ pieces }: Bent, x: number): number => {
  const piece = pieces.findLast(({ at }) => at <= x) ?? pieces[0]
  return piece ? momentIn(piece, within(piece, x)) : 0
}
const within = ({ at, long }: Piece, x: number): number => Math.min(Math.max(x - at, 0), long)

/** A place of the rod and what is there: m down, or N·m. */
export interface Extreme {
  readonly at: number
  readonly value: number
}
const larger = (one: Extreme, other: Extreme): Extreme => (other.value > one.value ? other : one)

/** Where a rod hangs lowest below the straight line between two places, and by how much; never less than 0. Beyond the outer supports give the support and the tip, and it is told against the line itself. */
export function sagBetween(bent: Bent, from: number, to: number): Extreme {
  const [start, end] = [downAt(bent, from), downAt(bent, to)]
  const slope = (end - start) / (to - from)
  const inside = bent.pieces.filter(({ at, long }) => at >= from - tiny && at + long <= to + tiny)
  const places = inside.flatMap((piece) => [piece.at, ...levelIn(piece, slope).map((s) => piece.at + s)])
  return places
    .map((at) => ({ at, value: downAt(bent, at) - start - slope * (at - from) }))
    .reduce(larger, { at: from, value: 0 })
}
const tiny = 1e-9

/** Where a piece runs at a slope, from its left end. The slope is a cubic, so between the ends of what rises or falls it is met once at most. */
function levelIn(piece: Piece, slope: number): readonly number[] {
  const { load, shear, moment, long } = piece
  const turns = roots(-load / 2, shear, moment).filter((s) => s > 0 && s < long)
  const stops = [0, ...turns.sort((a, b) => a - b), long]
  const off = (s: number) => slopeIn(piece, s) - slope
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i] as number
    return off(from) * off(to) < 0 ? [between(off, from, to)] : []
  })
}
/** Where a·s² + b·s + c is nothing. */
function roots(a: number, b: number, c: number): readonly number[] {
  if (a === 0) return b === 0 ? [] : [-c / b]
  const inside = b * b - 4 * a * c
  if (inside < 0) return []
  const larger = -(b + Math.sign(b || 1) * Math.sqrt(inside)) / 2
  return [larger / a, ...(larger === 0 ? [] : [c / larger])]
}
/** Where a function that changes its sign once is nothing, by halving. */
function between(off: (s: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  const sign = Math.sign(off(from))
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (Math.sign(off(middle)) === sign) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Where the moment can be largest: at the ends of what is loaded evenly, and where the shear is nothing. Sagging is positive. */
export const momentPeaks = ({ pieces }: Bent): readonly Extreme[] =>
  pieces.flatMap((piece) => {
    const s = piece.load === 0 ? 0 : piece.shear / piece.load
    const places = s > 0 && s < piece.long ? [0, s, piece.long] : [0, piece.long]
    return places.map((each) => ({ at: piece.at + each, value: momentIn(piece, each) }))
  })
/** The largest moment of either sign, by its size, and where it is. */
export const largestMoment = (bent: Bent): Extreme =>
  momentPeaks(bent)
    .map(({ at, value }) => ({ at, value: Math.abs(value) }))
    .reduce(larger, { at: 0, value: 0 })
