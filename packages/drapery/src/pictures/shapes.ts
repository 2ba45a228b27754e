import type { Mark, Path, Point, Role, Segment } from '@evenhem/drawing'

/** Millimetres of a length (whole nanometres). */
export const mm = (length: number): number => length / 1_000_000

/** A closed outline through points. */
export const outline = (role: Role, points: readonly Point[]): Path => ({
  kind: 'path',
  role,
  d: [...points.map(([x, y], i): Segment => [i === 0 ? 'M' : 'L', x, y]), ['Z']],
})
/** An open line through points. */
export const through = (role: Role, points: readonly Point[]): Path => ({
  kind: 'path',
  role,
  d: points.map(([x, y], i): Segment => [i === 0 ? 'M' : 'L', x, y]),
})

/** How far a control point of a quarter ellipse lies out, as a share of the radius: the usual four-arc ellipse, right to 0.03 %. */
const quarter = 0.5522847498
/** An ellipse about a middle. */
export function ellipse(role: Role, [x, y]: Point, rx: number, ry: number): Path {
  const [kx, ky] = [rx * quarter, ry * quarter]
  return {
    kind: 'path',
    role,
    d: [
      ['M', x - rx, y],
      ['C', x - rx, y + ky, x - kx, y + ry, x, y + ry],
      ['C', x + kx, y + ry, x + rx, y + ky, x + rx, y],
      ['C', x + rx, y - ky, x + kx, y - ry, x, y - ry],
      ['C', x - kx, y - ry, x - rx, y - ky, x - rx, y],
      ['Z'],
    ],
  }
}
/** A rectangle between two opposite corners. */
export const box = (role: Role, [x1, y1]: Point, [x2, y2]: Point): Mark => ({
  kind: 'rect',
  role,
  at: [Math.min(x1, x2), Math.min(y1, y2)],
  width: Math.abs(x2 - x1),
  height: Math.abs(y2 - y1),
})

/** How far from the wall the hooks bear at a place along it: between the ends of unlike projections a straight line. Places and distances in mm. */
export function bearingLine(ends: readonly number[], [left, right]: readonly [number, number]): (x: number) => number {
  const [from, to] = [Math.min(...ends), Math.max(...ends)]
  return (x) => (left === right || !(to > from) ? left : left + ((right - left) * (x - from)) / (to - from))
}
