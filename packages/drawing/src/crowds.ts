import type { Gathered } from './gather.ts'
import type { Cross, Detail, Dimension, Height, Point } from './marks.ts'
import { type Bounds, boundsOf, unionOf } from './space.ts'

/** A place to enlarge: what is shown, its title's code, the nearest that two marks come there (mm), marks of its own. */
export interface Crowd {
  readonly bounds: Bounds
  readonly code: string
  readonly layer?: string
  readonly nearest: number
  readonly marks: Detail['marks']
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])
/** The least distance of two different places; infinite when there are no two. */
function leastDistance(points: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY
  points.forEach((a, n) => {
    for (const b of points.slice(n + 1)) if (distance(a, b) > 0.5) least = Math.min(least, distance(a, b))
  })
  return least
}

/** The shortest dimension that a detail offers: its line must hold a number. */
const shortest = ({ marks }: Detail): number =>
  Math.min(
    ...marks
      .filter((mark): mark is Dimension => mark.kind === 'dimension')
      .map(({ from, to }) => distance(from, to))
      .filter((length) => length > 0.5),
  )

const isIn = ({ left, right, bottom, top }: Bounds, [x, y]: Point): boolean => x >= left && x <= right && y >= bottom && y <= top

/** Crosses that stand nearer than `reach` to one another, directly or through others. */
function clusters(points: readonly Point[], reach: number): readonly (readonly Point[])[] {
  const found: Point[][] = []
  for (const point of points) {
    const near = found.filter((cluster) => cluster.some((other) => distance(other, point) < reach))
    for (const cluster of near) found.splice(found.indexOf(cluster), 1)
    found.push([...near.flat(), point])
  }
  return found
}

/** Wall shown around crosses that no detail was offered for, mm. */
const around = 90

/** Places to enlarge, left to right, and the marks of details that nothing crowds in: they can stand on the drawing itself. */
export interface Crowded {
  readonly crowds: readonly Crowd[]
  readonly calm: Detail['marks']
}

/** Where marks crowd: in the details that layers offer, and around crosses that stand nearer than `reach` (mm) with no detail offered. */
export function crowdsOf({ marks, details }: Gathered, reach: number): Crowded {
  const crosses = marks.filter((mark): mark is Cross => mark.kind === 'cross').map((mark) => mark.at)
  const heights = marks.filter((mark): mark is Height => mark.kind === 'height').map((mark) => mark.at)
  const offered = details.map((detail): Crowd => {
    const bounds = unionOf([boundsOf([detail.from, detail.to])]) as Bounds
    const nearest = Math.min(shortest(detail), leastDistance([...crosses, ...heights].filter((point) => isIn(bounds, point))))
    return { bounds, code: detail.code, ...(detail.layer ? { layer: detail.layer } : {}), nearest, marks: detail.marks }
  })
  const alone = crosses.filter((point) => !details.some((detail) => isIn(boundsOf([detail.from, detail.to]) as Bounds, point)))
  const own = clusters(alone, reach)
    .map((cluster) => ({ cluster, nearest: leastDistance(cluster) }))
    .filter(({ nearest }) => nearest < reach)
  const made = own.map(
    ({ cluster, nearest }): Crowd => ({
      bounds: widened(boundsOf(cluster) as Bounds),
      code: 'drawing/detail',
      nearest,
      marks: [],
    }),
  )
  const crowds = [...offered.filter(({ nearest }) => nearest < reach), ...made].sort((a, b) => a.bounds.left - b.bounds.left)
  return { crowds, calm: offered.filter(({ nearest }) => nearest >= reach).flatMap((crowd) => crowd.marks) }
}

const widened = ({ left, bottom, right, top }: Bounds): Bounds => ({
  left: left - around,
  bottom: bottom - around,
  right: right + around,
  top: top + around,
})
