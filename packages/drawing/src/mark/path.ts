import { element, point } from '../element.ts'
import type { Path, Point, Segment } from '../marks.ts'
import type { PlacedPath } from '../scene.ts'
import { boundsOf, toScene } from '../space.ts'
import { clipOf } from './clip.ts'
import { type MarkTable, silent } from './table.ts'

const pointsOf = (segment: Segment): readonly Point[] => {
  switch (segment[0]) {
    case 'Z':
      return []
    case 'C':
      return [
        [segment[1], segment[2]],
        [segment[3], segment[4]],
        [segment[5], segment[6]],
      ]
    default:
      return [[segment[1], segment[2]]]
  }
}
/** Around the control points, which hold the curve. */
const bounds = (mark: Path) => boundsOf(mark.d.flatMap(pointsOf))

const moved = (segment: Segment, to: (at: Point) => Point): Segment =>
  [segment[0], ...pointsOf(segment).flatMap(to)] as unknown as Segment
const written = (segment: Segment): string => segment[0] + pointsOf(segment).map(point).join(' ')

export const path: MarkTable<Path, PlacedPath> = {
  bounds,
  place: (mark, { frame, within }) => ({
    kind: 'path',
    role: mark.role,
    d: mark.d.map((segment) => moved(segment, (at) => toScene(frame, at))),
    ...clipOf(bounds(mark), frame, within),
  }),
  svg: ({ role, d, isEdge }) =>
    element('path', {
      class: `${!isEdge && d.some(([letter]) => letter === 'Z') ? 'area' : 'stroke'} ${role}`,
      d: d.map(written).join(''),
    }),
  words: silent,
}
