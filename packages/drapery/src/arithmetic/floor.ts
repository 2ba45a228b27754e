import { formula, given, type Known, type Length, type LengthReckoning, least, most, number, plus } from '@evenhem/length'

/** A point of the floor: x from the left edge of the casing, y above the level line. */
export interface FloorPoint {
  readonly x: Known<Length>
  readonly y: Known<Length>
}

const level = number(0) as Known<Length>

/** y of the straight line through (x1, y1) and (x2, y2) at x. Nanometres, not rounded. */
export const straight = (x: number, x1: number, y1: number, x2: number, y2: number): number =>
  y1 + ((y2 - y1) * (x - x1)) / (x2 - x1)

/**
 * The floor right below a place on the wall, above the level line. Points must run from left to right.
 * Between two points the floor is straight, beyond the outer ones it is level, and without points it is the level line.
 */
export function floorAt(name: string, points: readonly FloorPoint[], x: Known<Length>): LengthReckoning {
  const here = points.find((point) => point.x.value === x.value)
  const a = points.findLast((point) => point.x.value < x.value)
  const b = points.find((point) => point.x.value > x.value)
  if (here || !a || !b) return given(name, 'drapery/floor', plus('drapery/floor-point', (here ?? a ?? b)?.y ?? level))
  return onLine(
    name,
    { what: 'drapery/floor', how: 'drapery/straight-between', at: 'drapery/floor-point-x', point: 'drapery/floor-point' },
    x,
    a,
    b,
  )
}

/** What a height on a straight line is called: itself, how it is had, and the two points that it lies between. */
interface LineWords {
  readonly what: string
  readonly how: string
  readonly at: string
  readonly point: string
}
/** The height at a place on the straight line through two points. */
export const onLine = (
  name: string,
  { what, how, at, point }: LineWords,
  x: Known<Length>,
  a: FloorPoint,
  b: FloorPoint,
): LengthReckoning =>
  formula(
    name,
    what,
    straight(x.value, a.x.value, a.y.value, b.x.value, b.y.value),
    how,
    plus('drapery/along-the-wall', x),
    plus(at, a.x),
    plus(point, a.y),
    plus(at, b.x),
    plus(point, b.y),
  )

/**
 * The highest floor under a drapery that covers `left` to `right`, above the level line: the hem is hung from it
 * (common practice; reference case mount-07). Returns it last, after the reckonings of both ends.
 */
export function highestFloor(
  at: string,
  points: readonly FloorPoint[],
  left: Known<Length>,
  right: Known<Length>,
): readonly [LengthReckoning, LengthReckoning, LengthReckoning] {
  const ends = [floorAt(`${at}#floor-left-end`, points, left), floorAt(`${at}#floor-right-end`, points, right)] as const
  const between = points.filter((point) => point.x.value > left.value && point.x.value < right.value)
  const terms = [
    plus('drapery/floor-left-end', ends[0]),
    ...between.map((point) => plus('drapery/floor-point', point.y)),
    plus('drapery/floor-right-end', ends[1]),
  ]
  return [...ends, most(`${at}#highest-floor`, 'drapery/highest-floor', ...terms)]
}

/** The lowest ceiling over what runs from `left` to `right`, above the level line; straight between its points, level beyond them. Last, after both ends. */
export function lowestCeiling(
  at: string,
  points: readonly FloorPoint[],
  left: Known<Length>,
  right: Known<Length>,
): readonly [LengthReckoning, LengthReckoning, LengthReckoning] {
  const ends = [ceilingAt(`${at}#ceiling-left-end`, points, left), ceilingAt(`${at}#ceiling-right-end`, points, right)] as const
  const between = points.filter((point) => point.x.value > left.value && point.x.value < right.value)
  const terms = [
    plus('drapery/ceiling-left-end', ends[0]),
    ...between.map((point) => plus('drapery/ceiling-point', point.y)),
    plus('drapery/ceiling-right-end', ends[1]),
  ]
  return [...ends, least(`${at}#lowest-ceiling`, 'drapery/lowest-ceiling', ...terms)]
}

/** The ceiling over a place on the wall; there is at least one point. */
export function ceilingAt(name: string, points: readonly FloorPoint[], x: Known<Length>): LengthReckoning {
  const floor = floorAt(name, points, x)
  const named: Readonly<Record<string, string>> = {
    'drapery/floor-point': 'drapery/ceiling-point',
    'drapery/floor-point-x': 'drapery/ceiling-point-x',
  }
  return {
    ...floor,
    what: 'drapery/ceiling',
    terms: floor.terms.map((term) => ({ ...term, what: named[term.what] ?? term.what })),
  }
}
