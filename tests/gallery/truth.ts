import type { Box, PlacedDimension, PlacedHeight, Scene } from '@evenhem/drawing'

const slack = 1e-6
const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - slack && b.x < a.x + a.width - slack && a.y < b.y + b.height - slack && b.y < a.y + a.height - slack

/** Pairs of labels that stand on one another, by what they say. */
export const overlapping = ({ labels }: Scene): readonly string[] =>
  labels.flatMap((a, n) =>
    labels
      .slice(n + 1)
      .filter((b) => overlap(a.box, b.box))
      .map((b) => `"${a.text}" on "${b.text}"`),
  )
/** Labels that leave the sheet. */
export const offTheSheet = ({ labels, width, height }: Scene): readonly string[] =>
  labels
    .filter(
      ({ box }) => box.x < -slack || box.y < -slack || box.x + box.width > width + slack || box.y + box.height > height + slack,
    )
    .map(({ text }) => text)

/** The factor of the enlargement that each item stands in: what is enlarged lies between its detail and that one's edge. */
function factorsOf({ items }: Scene): readonly number[] {
  let factor = 1
  return items.map((item) => {
    if (item.kind === 'detail') factor = item.factor
    if (item.kind === 'edge') factor = 1
    return factor
  })
}
/** How many mm of the wall are drawn between the ends of a dimension, or below a height; heights may be drawn so many times as steep. */
const drawnLength = (item: PlacedDimension | PlacedHeight, scale: number, stretch = 1): number =>
  (item.kind === 'height'
    ? item.foot[1] - item.reading[1]
    : Math.hypot(item.to[0] - item.from[0], (item.to[1] - item.from[1]) / stretch)) / scale

/** The numbers of a scene that are more than a tenth of a millimetre from what is drawn. */
export function untrue(scene: Scene): readonly string[] {
  const factors = factorsOf(scene)
  return scene.items.flatMap((item, n) => {
    if ((item.kind !== 'dimension' && item.kind !== 'height') || (item.kind === 'dimension' && item.broken)) return []
    const { value } = item.label.figure
    const drawn = drawnLength(item, scene.scale * (factors[n] ?? 1), scene.stretch)
    // A height has its sign, below the level line as above it; a distance has none.
    const said = item.kind === 'height' ? value : value && Math.abs(value)
    return said === undefined || Math.abs(drawn - said / 1e6) <= 0.1
      ? []
      : [`${item.label.words}: drawn ${drawn.toFixed(2)} mm, said ${said / 1e6} mm`]
  })
}
/** Everything that is wrong with a scene. */
export const faults = (scene: Scene): readonly string[] => [...overlapping(scene), ...offTheSheet(scene), ...untrue(scene)]
