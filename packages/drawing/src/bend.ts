import type { Bend, Mark, Path, Point, Segment } from './marks.ts'

/**
 * Seen from above, walls that are drawn unfolded (x along them, y from their face outward below it) are folded at their corners again. A bend turns all
 * that is to the right of it about the corner; what stands off the walls meets on the line that halves the angle, so that a line at one distance from the
 * walls stays at that distance. The wall in the middle keeps its place.
 */
interface Fold {
  /** Where the walls of each fold begin and end, and the corner at its right. */
  readonly from: number
  readonly to: number
  readonly place: (point: Point) => Point
}
/** Sine and cosine of the turn from one wall to the next: clockwise at an inside corner. */
const turnOf = (degrees: number): readonly [sin: number, cos: number] => {
  const by = ((degrees - 180) * Math.PI) / 180
  return [Math.sin(by), Math.cos(by)]
}
const about = ([x, y]: Point, corner: number, [sin, cos]: readonly [number, number]): Point => [
  corner + (x - corner) * cos - y * sin,
  (x - corner) * sin + y * cos,
]

/** The folds from left to right, the middle one where it was. */
export function foldsOf(bends: readonly Bend[]): readonly Fold[] {
  const middle = Math.floor(bends.length / 2)
  const right = bends.slice(middle)
  const left = bends.slice(0, middle)
  /** Turned about each corner between a fold and the middle, the farthest first. */
  const placed =
    (turned: readonly Bend[], way: 1 | -1) =>
    (point: Point): Point =>
      turned.reduce((at, { x, degrees }) => {
        const [sin, cos] = turnOf(degrees)
        return about(at, x, [way * sin, cos])
      }, point)
  return Array.from({ length: bends.length + 1 }, (_, n) => ({
    from: bends[n - 1]?.x ?? Number.NEGATIVE_INFINITY,
    to: bends[n]?.x ?? Number.POSITIVE_INFINITY,
    place: n >= middle ? placed(right.slice(0, n - middle).toReversed(), 1) : placed(left.slice(n), -1),
  }))
}

/** How far before its corner a line that lies `y` from the walls turns; below it is negative, as what is outside. */
const backOf = ({ degrees }: Bend, y: number): number => (degrees === 180 ? 0 : -y / Math.tan((degrees * Math.PI) / 360))

/** Folds marks of a plan at the corners of the walls. */
export class Folding {
  private readonly bends: readonly Bend[]
  private readonly folds: readonly Fold[]
  constructor(bends: readonly Bend[]) {
    this.bends = bends.toSorted((a, b) => a.x - b.x)
    this.folds = foldsOf(this.bends)
  }

  /** The number of the fold that a place along the walls lies on. */
  private nth(x: number): number {
    return this.bends.filter((bend) => x > bend.x).length
  }
  /** Kept from the other side of the turns at both ends of a fold. */
  private kept(n: number, [x, y]: Point): Point {
    const [before, after] = [this.bends[n - 1], this.bends[n]]
    const low = before ? before.x + Math.max(0, backOf(before, y)) : Number.NEGATIVE_INFINITY
    const high = after ? after.x - Math.max(0, backOf(after, y)) : Number.POSITIVE_INFINITY
    return [Math.min(Math.max(x, low), Math.max(low, high)), y]
  }
  private on(n: number, point: Point): Point {
    return this.folds[n]?.place(this.kept(n, point)) ?? point
  }
  point(point: Point): Point {
    return this.on(this.nth(point[0]), point)
  }

  /** From one place to another, with a vertex at each turn between. */
  private way(from: Point, to: Point): readonly Point[] {
    const [first, last] = [this.nth(from[0]), this.nth(to[0])]
    const step = first <= last ? 1 : -1
    const turns = Array.from({ length: Math.abs(last - first) }, (_, i): Point => {
      const n = step > 0 ? first + i : first - 1 - i
      const bend = this.bends[n] as Bend
      const share = to[0] === from[0] ? 0 : (bend.x - from[0]) / (to[0] - from[0])
      const y = from[1] + share * (to[1] - from[1])
      return this.folds[n]?.place([bend.x - backOf(bend, y), y]) ?? to
    })
    return [...turns, this.point(to)]
  }
  private line(points: readonly Point[]): readonly Point[] {
    const [first, ...others] = points
    if (!first) return []
    return [this.point(first), ...others.flatMap((to, i) => this.way(points[i] as Point, to))]
  }
  private outline(points: readonly Point[]): readonly Point[] {
    return this.line([...points, points[0] as Point]).slice(0, -1)
  }

  private path(d: readonly Segment[]): readonly Segment[] {
    let at: Point = [0, 0]
    let start: Point = [0, 0]
    return d.flatMap((segment): readonly Segment[] => {
      if (segment[0] === 'Z') {
        const back = this.way(at, start).slice(0, -1)
        return [...back.map(([x, y]): Segment => ['L', x, y]), segment]
      }
      const to: Point = [segment.at(-2) as number, segment.at(-1) as number]
      const before = at
      at = to
      if (segment[0] === 'C') {
        const [a, b, c] = [this.point([segment[1], segment[2]]), this.point([segment[3], segment[4]]), this.point(to)]
        return [['C', ...a, ...b, ...c]]
      }
      if (segment[0] === 'M') {
        start = to
        return [['M', ...this.point(to)]]
      }
      return this.way(before, to).map(([x, y]): Segment => ['L', x, y])
    })
  }

  /** A mark as it is seen folded; undefined: a distance that cannot be drawn at this angle, or an enlargement of such a place. */
  mark(mark: Mark): Mark | undefined {
    switch (mark.kind) {
      case 'line': {
        const points = this.line([mark.from, mark.to])
        return { kind: 'path', role: mark.role, d: points.map(([x, y], i): Segment => [i === 0 ? 'M' : 'L', x, y]) }
      }
      case 'path':
        return { ...mark, d: this.path(mark.d) }
      case 'rect':
        return this.rect(mark)
      case 'hatch':
        return { ...mark, of: this.outline(mark.of) }
      case 'group':
        return { ...mark, marks: mark.marks.flatMap((each) => this.mark(each) ?? []) }
      case 'dimension':
        return this.isStill(mark.from) && this.isStill(mark.to) ? mark : undefined
      case 'detail':
        return this.isStill(mark.from) && this.isStill(mark.to) ? mark : undefined
      default:
        return { ...mark, at: this.point(mark.at) }
    }
  }

  /** A box that is small against the walls is turned with the wall that its middle is on; a long one is bent. */
  private rect({ role, at: [x, y], width, height }: Extract<Mark, { kind: 'rect' }>): Path {
    const corners: readonly Point[] = [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ]
    const n = this.nth(x + width / 2)
    const isWhole = n === this.nth(x) && n === this.nth(x + width)
    const points = isWhole ? this.rigid(n, corners, [x + width / 2, y + height / 2]) : this.outline(corners)
    const d = points.map(([px, py], i): Segment => [i === 0 ? 'M' : 'L', px, py])
    return { kind: 'path', role, d: [...d, ['Z']] }
  }
  /** Corners turned as one, moved along the wall as far as their middle has to be. */
  private rigid(n: number, corners: readonly Point[], middle: Point): readonly Point[] {
    const shift = this.kept(n, middle)[0] - middle[0]
    return corners.map(([x, y]) => this.folds[n]?.place([x + shift, y]) ?? [x, y])
  }

  /** On the wall that keeps its place, clear of its turns. */
  private isStill(point: Point): boolean {
    const middle = Math.floor(this.bends.length / 2)
    return this.nth(point[0]) === middle && this.kept(middle, point)[0] === point[0]
  }
}
