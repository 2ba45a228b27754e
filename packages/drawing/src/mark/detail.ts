import { element, escaped, rectOf, strokeData } from '../element.ts'
import type { Detail } from '../marks.ts'
import type { PlacedDetail } from '../scene.ts'
import { type Box, boundsOf, middleOf } from '../space.ts'
import type { MarkTable } from './table.ts'
import { wordsSvg } from './words.ts'

const letterIn = (letter: string, box: Box): string => {
  const [x, y] = middleOf(box)
  const size = 0.68 * box.height
  return (
    rectOf(box, { class: 'sign-box' }) +
    element(
      'text',
      { class: 'letter', x, y: y + 0.34 * size, 'font-size': size, 'font-weight': 700, 'text-anchor': 'middle' },
      escaped(letter),
    )
  )
}

export const detail: MarkTable<Detail, PlacedDetail, PlacedDetail> = {
  bounds: (mark) => boundsOf([mark.from, mark.to]),
  place: (_, { spot }) => spot,
  svg: ({ letter, source, sign, leader, panel, head, title, radius }) =>
    element(
      'g',
      { class: 'detail' },
      element('path', { class: 'leader', d: strokeData(leader) }),
      rectOf(source, { class: 'source', rx: radius }),
      letterIn(letter, sign),
      rectOf(panel, { class: 'panel', rx: radius }),
      letterIn(letter, head),
      title ? wordsSvg(title, 'caption') : '',
    ),
  words: (mark, options) => [options.say(mark.code)].filter((text) => text !== ''),
}
