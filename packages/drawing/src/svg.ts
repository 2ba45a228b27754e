import { element, escaped, short } from './element.ts'
import { placedSvg } from './mark/index.ts'
import type { Ink } from './mark/table.ts'
import type { Placed, Scene } from './scene.ts'

/** `title` names the drawing; `desc` describes it for who cannot see it (`scene.words` by default); `interactive`: figures answer to touch and keys. */
export interface SvgOptions {
  readonly title: string
  readonly desc?: string
  readonly interactive?: boolean
}

/** An inner `svg` clips by itself and needs no id, so that any number of drawings can stand on one page. */
function clipped(item: Placed, ink: Ink): string {
  const svg = placedSvg(item, ink)
  if (!item.clip || svg === '') return svg
  const { x, y, width, height } = item.clip
  return element('svg', { x, y, width, height, viewBox: [x, y, width, height].map(short).join(' ') }, svg)
}

/** Neighbours with the same clip share one inner `svg`. */
function written(items: readonly Placed[], ink: Ink): string {
  return items.map((item) => clipped(item, ink)).join('')
}

const isFigure = (item: Placed): boolean => item.kind === 'dimension' || item.kind === 'height' || item.kind === 'finding'

/** What only looks is hidden from a screen reader when figures can be reached one by one. */
function layered(items: readonly Placed[], ink: Ink): string {
  const runs: Placed[][] = []
  for (const item of items) {
    const last = runs.at(-1)
    if (last?.[0] && isFigure(last[0]) === isFigure(item)) last.push(item)
    else runs.push([item])
  }
  return runs
    .map((run) => (run[0] && isFigure(run[0]) ? written(run, ink) : element('g', { 'aria-hidden': 'true' }, written(run, ink))))
    .join('')
}

/**
 * A scene as SVG text: a class for each role and no colour, no style attribute, no script, no id. All text is escaped.
 * Not interactive it is one picture with a name; interactive it is a group of buttons.
 */
export function toSvg(scene: Scene, { title, desc, interactive = false }: SvgOptions): string {
  const { width, height, unit } = scene
  const size = unit === 'mm' ? { width: `${short(width)}mm`, height: `${short(height)}mm` } : { width, height }
  const told = desc ?? scene.words.join('. ')
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: unit === 'mm' ? 'drawing on-paper' : 'drawing',
      ...size,
      viewBox: `0 0 ${short(width)} ${short(height)}`,
      role: interactive ? 'group' : 'img',
      'aria-label': title,
    },
    told ? element('desc', {}, escaped(told)) : '',
    interactive ? layered(scene.items, { interactive }) : written(scene.items, { interactive }),
  )
}
