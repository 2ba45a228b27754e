import type { Words } from './scene.ts'
import type { At, Box } from './space.ts'
import { type Type, textWidth } from './text.ts'

/** Letters reach from 0.74 of their size over the baseline to 0.22 below it. */
const over = 0.74
const under = 0.22

/** Words at a place on their baseline, with the box that they take. */
export function wordsAt(text: string, at: At, type: Type, anchor: Words['anchor'] = 'start'): Words {
  const width = textWidth(text, type)
  const left = { start: 0, middle: width / 2, end: width }[anchor]
  const box: Box = { x: at[0] - left, y: at[1] - over * type.size, width, height: (over + under) * type.size }
  return { text, at, anchor, size: type.size, weight: type.weight, box }
}
