import { element, strokeData } from '../element.ts'
import { type HeightSpot, sideOf } from '../heights.ts'
import { labelAt } from '../label.ts'
import type { Height } from '../marks.ts'
import type { PlacedHeight } from '../scene.ts'
import { type Box, boundsOf, toScene } from '../space.ts'
import { figureWords } from '../speech.ts'
import { figureSvg } from './label.ts'
import type { MarkTable } from './table.ts'

/** How high a height is over what it is measured from, in mm of the wall. */
export const riseOf = (mark: Height): number => mark.at[1] - (mark.base ?? 0)

export interface HeightPlace extends HeightSpot {
  readonly blade: Box
  readonly foot: number
}

export const height: MarkTable<Height, PlacedHeight, HeightPlace> = {
  bounds: (mark) => boundsOf([mark.at]),
  place: (mark, { frame, options, spot }) => {
    const { blade, foot, middle } = spot
    const at = toScene(frame, mark.at)
    const y = foot - riseOf(mark) * frame.scale
    const { fan } = options.sizes
    const isLeft = sideOf(mark) === 'left'
    const [outer, inner] = isLeft ? [blade.x, blade.x + blade.width] : [blade.x + blade.width, blade.x]
    const outward = isLeft ? -1 : 1
    const [first, last] = [middle[0] - outward * 0.15 * fan, outer + outward * 0.12 * fan]
    return {
      kind: 'height',
      role: mark.role,
      at,
      foot: [outer, foot],
      reading: [outer, y],
      leader: [middle, [first, middle[1]], [last, y], [outer, y]],
      ...(mark.role === 'mark' ? { dotted: [[inner, y], at] } : {}),
      label: labelAt(mark.figure, mark.role, spot, options),
    }
  },
  svg: ({ leader, dotted, label }, ink) =>
    figureSvg(
      label,
      element('path', { class: 'leader', d: strokeData([leader]) }) +
        (dotted ? element('path', { class: 'dotted', d: strokeData([dotted]) }) : ''),
      ink,
    ),
  words: (mark, options) => [figureWords(mark.figure, options)],
}
