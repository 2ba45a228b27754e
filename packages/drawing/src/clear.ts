import type { Label, Placed, PlacedDetail, PlacedDimension, Stroke } from './scene.ts'
import { type At, type Box, grown } from './space.ts'

/** What is left of a straight stroke along x or y outside of a box. */
function outside(stroke: Stroke, box: Box): readonly Stroke[] {
  const [from, to] = stroke as readonly [At, At]
  const axis = from[1] === to[1] ? 0 : 1
  const across = from[1 - axis] as number
  const [low, high] = axis === 0 ? [box.x, box.x + box.width] : [box.y, box.y + box.height]
  const [near, far] = axis === 0 ? [box.y, box.y + box.height] : [box.x, box.x + box.width]
  const [start, end] = [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])]
  if (across <= near || across >= far || end <= low || start >= high) return [stroke]
  const on = (along: number): At => (axis === 0 ? [along, across] : [across, along])
  return [...(start < low ? [[on(start), on(low)]] : []), ...(end > high ? [[on(high), on(end)]] : [])]
}

const cleared = (strokes: readonly Stroke[], boxes: readonly Box[]): readonly Stroke[] =>
  boxes.reduce((left, box) => left.flatMap((stroke) => outside(stroke, box)), strokes)

const around = (label: Label): Box => grown(label.box, 0.06 * label.tag.block.height)
const isUpright = ([from, to]: Stroke): boolean => from?.[0] === to?.[0]

/**
 * The items, with lines of dimensions broken where another figure's label stands: of two tiers, the outer one's extensions pass the inner one's
 * numbers. The line down to an enlargement passes the numbers of the rows in the same way.
 */
export function linesClear(items: readonly Placed[]): readonly Placed[] {
  const labels = items.flatMap((item) => (item.kind === 'dimension' || item.kind === 'height' ? [item.label] : []))
  const clear = (item: PlacedDimension): PlacedDimension => {
    const boxes = labels.filter((label) => label !== item.label).map(around)
    return { ...item, line: cleared(item.line, boxes), extensions: cleared(item.extensions, boxes) }
  }
  const clearDetail = (item: PlacedDetail): PlacedDetail =>
    item.leader.every(isUpright) ? { ...item, leader: cleared(item.leader, labels.map(around)) } : item
  return items.map((item) => (item.kind === 'dimension' ? clear(item) : item.kind === 'detail' ? clearDetail(item) : item))
}
