import { element, strokeData } from '../element.ts'
import type { Line } from '../marks.ts'
import type { PlacedLine } from '../scene.ts'
import { boundsOf, toScene } from '../space.ts'
import { clipOf } from './clip.ts'
import { type MarkTable, silent } from './table.ts'

const bounds = (mark: Line) => boundsOf([mark.from, mark.to])

export const line: MarkTable<Line, PlacedLine> = {
  bounds,
  place: (mark, { frame, within }) => ({
    kind: 'line',
    role: mark.role,
    from: toScene(frame, mark.from),
    to: toScene(frame, mark.to),
    ...clipOf(bounds(mark), frame, within),
  }),
  svg: ({ role, from, to }) => element('path', { class: `stroke ${role}`, d: strokeData([[from, to]]) }),
  words: silent,
}
