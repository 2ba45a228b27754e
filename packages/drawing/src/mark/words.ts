import { element, escaped } from '../element.ts'
import type { Words } from '../scene.ts'

/** Words as SVG. */
export const wordsSvg = ({ text, at, anchor, size, weight }: Words, role: string): string =>
  element(
    'text',
    {
      class: role,
      x: at[0],
      y: at[1],
      'font-size': size,
      'font-weight': weight,
      'text-anchor': anchor === 'start' ? undefined : anchor,
    },
    escaped(text),
  )
