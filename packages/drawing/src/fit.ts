import type { Bounds, Box, Frame } from './space.ts'

/** Room that labels need around the drawing, in scene units. */
export interface Margins {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}
export interface Page {
  readonly width: number
  readonly height: number
}

export const larger = (a: Margins, b: Margins): Margins => ({
  left: Math.max(a.left, b.left),
  top: Math.max(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
})

/** Labels never squeeze the wall below this part of the page. */
const leastShare = 0.12
/** A drawing without extent (one point) still has a scale. */
const leastExtent = 1

/** The scale that fits, a whole multiple of `step` when there is one that fits. */
function scaleFor(across: number, along: number, step: number | undefined): number {
  const scale = Math.min(across, along)
  return step !== undefined && scale >= step ? Math.floor(scale / step + 1e-9) * step : scale
}

/** One scale for the whole drawing, the largest that leaves the margins; what is left over goes to both sides alike, or all of it below. */
export function fitted(content: Bounds, page: Page, margins: Margins, step?: number, atTop = false): Frame {
  const [width, height] = [
    Math.max(leastExtent, content.right - content.left),
    Math.max(leastExtent, content.top - content.bottom),
  ]
  const free = {
    width: Math.max(leastShare * page.width, page.width - margins.left - margins.right),
    height: Math.max(leastShare * page.height, page.height - margins.top - margins.bottom),
  }
  const scale = scaleFor(free.width / width, free.height / height, step)
  const [left, top] = [
    margins.left + (free.width - width * scale) / 2,
    margins.top + (atTop ? 0 : (free.height - height * scale) / 2),
  ]
  return { scale, x: left - content.left * scale, y: top + content.top * scale }
}

export const pageBox = (page: Page): Box => ({ x: 0, y: 0, width: page.width, height: page.height })
