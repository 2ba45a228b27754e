import type { Point } from './marks.ts'

/** A place in a scene, in its units (px on a screen, mm on paper), y down. */
export type At = readonly [x: number, y: number]
/** A box in a scene: its top left corner and size. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}
/** A box on the wall, in mm, y up. */
export interface Bounds {
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}
/** How the wall lies in a scene: scene units for a mm, and where the window's origin falls. */
export interface Frame {
  readonly scale: number
  readonly x: number
  readonly y: number
}

export const toScene = (frame: Frame, [x, y]: Point): At => [frame.x + x * frame.scale, frame.y - y * frame.scale]

export function boundsOf(points: readonly Point[]): Bounds | undefined {
  if (points.length === 0) return undefined
  const xs = points.map(([x]) => x)
  const ys = points.map(([, y]) => y)
  return { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) }
}

export function unionOf(all: readonly (Bounds | undefined)[]): Bounds | undefined {
  const some = all.filter((bounds) => bounds !== undefined)
  return boundsOf(
    some.flatMap(
      ({ left, bottom, right, top }) =>
        [
          [left, bottom],
          [right, top],
        ] as const,
    ),
  )
}

export function boxOf(frame: Frame, bounds: Bounds): Box {
  const [x, y] = toScene(frame, [bounds.left, bounds.top])
  return { x, y, width: (bounds.right - bounds.left) * frame.scale, height: (bounds.top - bounds.bottom) * frame.scale }
}

/** The box around points of a scene. */
export function boxAround(points: readonly At[]): Box {
  const xs = points.map(([x]) => x)
  const ys = points.map(([, y]) => y)
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

const cornersOf = (box: Box): readonly At[] => [
  [box.x, box.y],
  [box.x + box.width, box.y + box.height],
]
export const joined = (...boxes: readonly Box[]): Box => boxAround(boxes.flatMap(cornersOf))
export const moved = (box: Box, [dx, dy]: At): Box => ({ ...box, x: box.x + dx, y: box.y + dy })
export const grown = (box: Box, by: number, byHeight = by): Box => ({
  x: box.x - by,
  y: box.y - byHeight,
  width: box.width + 2 * by,
  height: box.height + 2 * byHeight,
})
export const boxAt = ([x, y]: At, width: number, height: number): Box => ({ x: x - width / 2, y: y - height / 2, width, height })
export const middleOf = (box: Box): At => [box.x + box.width / 2, box.y + box.height / 2]

/** True when they share some area; touching edges do not count. */
export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - slack && b.x < a.x + a.width - slack && a.y < b.y + b.height - slack && b.y < a.y + a.height - slack
const slack = 1e-6

/** What lies in both; without size where they do not meet. */
export function common(a: Box, b: Box): Box {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)]
  return {
    x,
    y,
    width: Math.max(0, Math.min(a.x + a.width, b.x + b.width) - x),
    height: Math.max(0, Math.min(a.y + a.height, b.y + b.height) - y),
  }
}

/** The area that two boxes share. */
export function shared(a: Box, b: Box): number {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return width > 0 && height > 0 ? width * height : 0
}

export const holds = (outer: Box, inner: Box): boolean =>
  inner.x >= outer.x - slack &&
  inner.y >= outer.y - slack &&
  inner.x + inner.width <= outer.x + outer.width + slack &&
  inner.y + inner.height <= outer.y + outer.height + slack

export const clamp = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value))
