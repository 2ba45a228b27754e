import { element, strokeData } from '../element.ts'
import type { HeightSpot } from '../heights.ts'
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
    const [first, last] = [middle[0] + 0.15 * options.sizes.fan, blade.x - 0.12 * options.sizes.fan]
    return {
      kind: 'height',
      role: mark.role,
      at,
      foot: [blade.x, foot],
      reading: [blade.x, y],
      leader: [middle, [first, middle[1]], [last, y], [blade.x, y]],
      ...(mark.role === 'mark' ? { dotted: [[blade.x + blade.width, y], at] } : {}),
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
