import { element, strokeData } from '../element.ts'
import type { Cross } from '../marks.ts'
import type { PlacedCross } from '../scene.ts'
import { boundsOf, toScene } from '../space.ts'
import { type MarkTable, silent } from './table.ts'

export const cross: MarkTable<Cross, PlacedCross> = {
  bounds: (mark) => boundsOf([mark.at]),
  place: (mark, { frame, options }) => ({
    kind: 'cross',
    role: 'mark',
    at: toScene(frame, mark.at),
    arm: options.sizes.cross,
    of: mark.of,
  }),
  svg: ({ at: [x, y], arm }) =>
    element('path', {
      class: 'cross',
      d: strokeData([
        [
          [x - arm, y],
          [x + arm, y],
        ],
        [
          [x, y - arm],
          [x, y + arm],
        ],
      ]),
    }),
  words: silent,
}
