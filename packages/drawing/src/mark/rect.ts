import { rectOf } from '../element.ts'
import type { Rect } from '../marks.ts'
import type { PlacedRect } from '../scene.ts'
import { boundsOf, boxOf } from '../space.ts'
import { clipOf } from './clip.ts'
import { type MarkTable, silent } from './table.ts'

/** Of a rect with negative sizes too. */
const bounds = ({ at: [x, y], width, height }: Rect) =>
  boundsOf([
    [x, y],
    [x + width, y + height],
  ])

export const rect: MarkTable<Rect, PlacedRect> = {
  bounds,
  place: (mark, { frame, within }) => ({
    kind: 'rect',
    role: mark.role,
    box: boxOf(frame, bounds(mark) as NonNullable<ReturnType<typeof bounds>>),
    radius: (mark.radius ?? 0) * frame.scale,
    ...clipOf(bounds(mark), frame, within),
  }),
  svg: ({ role, box, radius }) => rectOf(box, { rx: radius || undefined, class: `area ${role}` }),
  words: silent,
}
