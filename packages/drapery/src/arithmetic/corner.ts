import {
  formula,
  type Known,
  type Length,
  type LengthReckoning,
  minus,
  plus,
  type Reckoning,
  sum,
  type Term,
} from '@evenhem/length'

/** A corner inside what is covered: between this wall and the next one, at a place along the walls. */
export interface Corner {
  /** The wall before it and the wall after it. */
  readonly wall: string
  readonly next: string
  readonly x: Known<Length>
  /** Seen from the room: 90 in an inside corner, 270 around an outside one. */
  readonly degrees: number
  /** How far from the corner, on each wall, the rod turns: before an inside corner, negative beyond an outside one. */
  readonly back: LengthReckoning
}

/**
 * Where a rod that stands off the walls by `out` turns: on the line that halves the corner, so along each wall it is out / tan(angle / 2) from it
 * (plane geometry: a point at the same distance from both sides lies on that line). Negative around an outside corner, where the rod is longer than the
 * wall. Rounded to the nanometre, since engines differ in the last bit of `tan`.
 */
export const setBack = (name: string, out: Known<Length>, angle: Reckoning): LengthReckoning =>
  formula(
    name,
    'drapery/set-back',
    angle.value === 180 ? 0 : out.value / Math.tan((angle.value * Math.PI) / 360),
    'drapery/set-back-rule',
    plus('drapery/projection', out),
    plus('drapery/corner-angle', angle),
  )

/** A corner's angle, in degrees, as it was measured. */
export const cornerAngle = (name: string, degrees: Known<number>): Reckoning => ({
  name,
  what: 'drapery/corner-angle',
  value: degrees.value,
  unit: 'ratio',
  how: 'sum',
  terms: [plus('drapery/corner-angle', degrees)],
})

type Turns = readonly Pick<Corner, 'x' | 'back'>[]
const turnAt = ({ x, back }: Turns[number]): number => x.value - back.value

/** From a place along the walls to how far along the rod it is from `left`. In the shadow of an inside corner all places are the turn itself. */
export function alongRod(left: number, corners: Turns, x: number): number {
  const passed = corners.filter((corner) => x > corner.x.value)
  const before = passed.slice(0, -1).reduce((all, { back }) => all + 2 * back.value, 0)
  const last = passed.at(-1)
  const next = corners[passed.length]
  const skipped = before + (last ? 2 * last.back.value : 0)
  const turned = last ? turnAt(last) - before : Number.NEGATIVE_INFINITY
  const turns = next ? turnAt(next) - skipped : Number.POSITIVE_INFINITY
  return Math.min(Math.max(x - skipped, turned), Math.max(turns, turned)) - left
}

/** From so far along the rod, counted from `left`, to the place along the walls before it. Around an outside corner both sides of the turn are the corner itself. */
export function alongWalls(left: number, corners: Turns, along: number): number {
  let x = left + along
  for (const corner of corners) {
    if (x <= turnAt(corner)) return Math.min(x, corner.x.value)
    x = Math.max(x + 2 * corner.back.value, corner.x.value)
  }
  return x
}

/** Set-backs between two places along the walls, twice each, as terms that shorten a way along the walls to one along the rod. */
export const turnsBetween = (corners: Turns, a: number, b: number): readonly Term[] =>
  corners
    .filter(({ x }) => x.value > Math.min(a, b) && x.value < Math.max(a, b))
    .flatMap(({ back }) => [minus('drapery/set-back', back), minus('drapery/set-back', back)])

/** The length along the rod between two places along the walls. */
export const rodBetween = (
  name: string,
  what: string,
  corners: Turns,
  from: LengthReckoning,
  to: LengthReckoning,
): LengthReckoning =>
  sum(
    name,
    what,
    plus('drapery/along-the-wall', to),
    minus('drapery/along-the-wall', from),
    ...turnsBetween(corners, from.value, to.value),
  )

/** A place so far along the rod from another, as a place along the walls. `way`: 1 to the right, -1 to the left. */
export function placeAlong(
  name: string,
  what: string,
  corners: Turns,
  from: { readonly what: string; readonly x: LengthReckoning },
  by: { readonly what: string; readonly length: Known<Length> | LengthReckoning },
  way: 1 | -1,
): LengthReckoning {
  const start = corners[0]?.x.value ?? 0
  const to = alongWalls(start, corners, alongRod(start, corners, from.x.value) + way * by.length.value)
  const turns = turnsBetween(corners, from.x.value, to)
  const added = way === 1 ? turns.map((term) => ({ ...term, sign: 1 as const })) : turns
  return sum(name, what, plus(from.what, from.x), (way === 1 ? plus : minus)(by.what, by.length), ...added)
}
