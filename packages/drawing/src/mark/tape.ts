import { element, rectOf, strokeData } from '../element.ts'
import type { PlacedTape } from '../scene.ts'
import { wordsSvg } from './words.ts'

/** A tape along the wall. */
export const tapeSvg = ({ box, ticks, numbers }: PlacedTape): string =>
  element(
    'g',
    { class: 'tape' },
    rectOf(box, { class: 'blade' }),
    element('path', { class: 'ticks', d: strokeData(ticks) }),
    numbers.map((words) => wordsSvg(words, 'number')).join(''),
  )
