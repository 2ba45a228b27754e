import { rectOf } from '../element.ts'
import type { Mark } from '../marks.ts'
import type { Placed } from '../scene.ts'
import type { ComposeOptions } from '../setting.ts'
import type { Bounds } from '../space.ts'
import { caption } from './caption.ts'
import { circle } from './circle.ts'
import { cross } from './cross.ts'
import { detail } from './detail.ts'
import { dimension } from './dimension.ts'
import { finding } from './finding.ts'
import { hatch } from './hatch.ts'
import { height } from './height.ts'
import { line } from './line.ts'
import { path } from './path.ts'
import { rect } from './rect.ts'
import type { Ink } from './table.ts'
import { tapeSvg } from './tape.ts'

/** Every mark but the group, which is only its marks. */
export const tables = { line, path, rect, circle, hatch, caption, cross, dimension, height, finding, detail } as const

type Kind = keyof typeof tables
interface Told {
  readonly bounds: (mark: unknown) => Bounds | undefined
  readonly words: (mark: unknown, options: ComposeOptions) => readonly string[]
}
const tableOf = (kind: Kind): Told => tables[kind] as unknown as Told

export const markBounds = (mark: Mark): Bounds | undefined =>
  mark.kind === 'group' ? undefined : tableOf(mark.kind).bounds(mark)
export const markWords = (mark: Mark, options: ComposeOptions): readonly string[] =>
  mark.kind === 'group' ? [] : tableOf(mark.kind).words(mark, options)

/** An item of a scene as SVG. */
export function placedSvg(item: Placed, ink: Ink): string {
  switch (item.kind) {
    case 'tape':
      return tapeSvg(item)
    case 'edge':
      return rectOf(item.box, { class: 'detail-edge', rx: item.radius })
    default:
      return (tables[item.kind] as unknown as { readonly svg: (item: Placed, ink: Ink) => string }).svg(item, ink)
  }
}
