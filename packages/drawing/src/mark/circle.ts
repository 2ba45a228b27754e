import { element } from '../element.ts'
import type { Circle } from '../marks.ts'
import type { PlacedCircle } from '../scene.ts'
import { boundsOf, toScene } from '../space.ts'
import { clipOf } from './clip.ts'
import { type MarkTable, silent } from './table.ts'

const bounds = ({ at: [x, y], radius }: Circle) =>
  boundsOf([
    [x - radius, y - radius],
    [x + radius, y + radius],
  ])

export const circle: MarkTable<Circle, PlacedCircle> = {
  bounds,
  place: (mark, { frame, within }) => ({
    kind: 'circle',
    role: mark.role,
    at: toScene(frame, mark.at),
    radius: Math.abs(mark.radius) * frame.scale,
    ...clipOf(bounds(mark), frame, within),
  }),
  svg: ({ role, at: [cx, cy], radius }) => element('circle', { class: `area ${role}`, cx, cy, r: radius }),
  words: silent,
}
