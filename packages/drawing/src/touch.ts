import type { Placed } from './scene.ts'
import { type Box, middleOf, shared } from './space.ts'

/** Two touch boxes, cut apart half way between their labels: the nearest wins. */
function parted(touch: Box, own: Box, other: Box): Box {
  const [gapX, gapY] = [
    Math.max(own.x, other.x) - Math.min(own.x + own.width, other.x + other.width),
    Math.max(own.y, other.y) - Math.min(own.y + own.height, other.y + other.height),
  ]
  const axis = gapX >= gapY ? 0 : 1
  const isBefore = middleOf(own)[axis] < middleOf(other)[axis]
  if (axis === 0) {
    const border = isBefore ? (own.x + own.width + other.x) / 2 : (other.x + other.width + own.x) / 2
    return isBefore
      ? { ...touch, width: Math.min(touch.width, border - touch.x) }
      : { ...touch, x: Math.max(touch.x, border), width: touch.x + touch.width - Math.max(touch.x, border) }
  }
  const border = isBefore ? (own.y + own.height + other.y) / 2 : (other.y + other.height + own.y) / 2
  return isBefore
    ? { ...touch, height: Math.min(touch.height, border - touch.y) }
    : { ...touch, y: Math.max(touch.y, border), height: touch.y + touch.height - Math.max(touch.y, border) }
}

/** The items, no two of whose figures answer to the same touch. */
export function touchesApart(items: readonly Placed[]): readonly Placed[] {
  const labels = items.flatMap((item) => (item.kind === 'dimension' || item.kind === 'height' ? [item.label] : []))
  const touchOf = (own: (typeof labels)[number]): Box =>
    labels
      .filter((other) => other !== own && shared(other.touch, own.touch) > 0)
      .reduce((touch, other) => parted(touch, own.box, other.box), own.touch)
  return items.map((item) =>
    item.kind === 'dimension' || item.kind === 'height'
      ? { ...item, label: { ...item.label, touch: touchOf(item.label) } }
      : item,
  )
}
