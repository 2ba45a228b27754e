import {
  formula,
  given,
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

/** The corner whose turn a place is: exactly at the corner, or nearer to an inside corner than the rod is set back there. */
const turnHolding = (corners: Turns, x: number): Turns[number] | undefined =>
  corners.find((corner) => x === corner.x.value || Math.abs(x - corner.x.value) < corner.back.value)

/**
 * From a place along the walls to how far along the rod it is from `left`. A place exactly at a corner is where the rod turns, inside and outside
 * corners alike; so are all places in the shadow of an inside corner, where the rod has turned before them.
 */
export function alongRod(left: number, corners: Turns, x: number): number {
  const turn = turnHolding(corners, x)
  const passed = corners.filter((corner) => corner.x.value < (turn?.x.value ?? x))
  return (turn ? turnAt(turn) : x) - passed.reduce((all, { back }) => all + 2 * back.value, 0) - left
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

/**
 * Set-backs between two places along the walls, as terms that shorten a way along the walls to one along the rod: twice for each corner between
 * them, once for one at which either of them lies, since that place is where the rod turns.
 */
export const turnsBetween = (corners: Turns, a: number, b: number): readonly Term[] => {
  const [from, to] = [Math.min(a, b), Math.max(a, b)]
  return corners
    .filter(({ x }) => from !== to && x.value >= from && x.value <= to)
    .flatMap(({ x, back }) =>
      (x.value === from || x.value === to ? [back] : [back, back]).map((each) => minus('drapery/set-back', each)),
    )
}

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

/**
 * A place so far along the rod from another, as a place along the walls. `way`: 1 to the right, -1 to the left. Where the rod is longer than the
 * wall, around an outside corner, no wall is behind it: the place is the corner itself.
 */
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
  const place = sum(name, what, plus(from.what, from.x), (way === 1 ? plus : minus)(by.what, by.length), ...added)
  const corner = corners.find(({ x }) => x.value === to && x.value !== place.value)
  return corner ? given(name, what, plus('drapery/corner', corner.x)) : place
}
