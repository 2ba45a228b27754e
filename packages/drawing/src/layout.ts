import { fitted, larger, type Margins } from './fit.ts'
import { type Gathered, only } from './gather.ts'
import { columnWidth, type HeightLabel } from './heights.ts'
import { markBounds } from './mark/index.ts'
import type { Dimension, Role } from './marks.ts'
import { row, type Side, type Spot } from './rows.ts'
import type { PlacedTape } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type Bounds, type Box, boxOf, type Frame, grown, unionOf } from './space.ts'
import { tape } from './tape.ts'

const sides: readonly Side[] = ['above', 'below', 'left', 'right']
/** What the room is made of: the blade reaches to its top. */
export const walls: ReadonlySet<Role> = new Set(['wall', 'wall-face'])
/** How far hatch reaches beyond the wall, in captions' size. */
const hatchDepth = 0.85

/** What stays the same while the scale is sought. */
export interface Work {
  readonly gathered: Gathered
  readonly content: Bounds
  readonly heights: readonly HeightLabel[]
  readonly hasTape: boolean
  readonly options: ComposeOptions
}

/** Left of the drawing: the column of heights, the fan, the blade. */
const leftOf = ({ heights, hasTape, options: { sizes } }: Work): number =>
  (heights.length > 0 ? columnWidth(heights, sizes) + sizes.fan : 0) + (hasTape ? sizes.blade : 0)

export interface Laid {
  readonly frame: Frame
  readonly content: Box
  readonly rows: ReadonlyMap<Dimension, Spot>
  readonly blade: number
}

/** All rows at one scale, and the margins that they would need. */
function rowsAt(work: Work, frame: Frame): { readonly laid: Laid; readonly margins: Margins } {
  const { options, gathered } = work
  const {
    edge,
    caption: { size },
  } = options.sizes
  const content = grown(boxOf(frame, work.content), hatchDepth * size)
  const dimensions = only(gathered.marks, 'dimension')
  const found = new Map(
    sides.map((side) => {
      const limits =
        side === 'above' || side === 'below'
          ? ([content.x - (work.hasTape ? options.sizes.blade : 0), options.width - edge] as const)
          : ([edge, options.height - edge] as const)
      return [
        side,
        row(
          dimensions.filter((mark) => mark.side === side),
          side,
          content,
          frame,
          limits,
          options,
        ),
      ] as const
    }),
  )
  const reach = (side: Side): number => found.get(side)?.reach ?? 0
  const around = hatchDepth * size + edge
  const margins = {
    left: reach('left') + leftOf(work) + around,
    top: reach('above') + around,
    right: reach('right') + around,
    bottom: reach('below') + around,
  }
  const rows = new Map([...found.values()].flatMap(({ spots }) => spots))
  return { laid: { frame, content, rows, blade: content.x - reach('left') }, margins }
}

/** What one tier on each side that has dimensions would need: where the search begins. */
function oneTier(work: Work): Margins {
  const {
    edge,
    gap,
    row: { size },
    caption,
  } = work.options.sizes
  const has = (side: Side): number => (only(work.gathered.marks, 'dimension').some((mark) => mark.side === side) ? gap : 0)
  const around = hatchDepth * caption.size + edge
  return {
    left: leftOf(work) + around + has('left'),
    top: has('above') + around,
    right: has('right') + around + (has('right') && size),
    bottom: has('below') + around,
  }
}

/** Rows change with the scale and the scale with their rows: margins only grow, so this ends. */
export function lay(work: Work): Laid {
  const { options } = work
  const settle = (margins: Margins, turn: number): Laid => {
    const next = rowsAt(work, fitted(work.content, options, margins, options.sizes.step))
    const wanted = larger(margins, next.margins)
    const isSettled = (Object.keys(wanted) as (keyof Margins)[]).every((side) => wanted[side] <= margins[side] + 0.01)
    return isSettled || turn > 6 ? next.laid : settle(wanted, turn + 1)
  }
  return settle(oneTier(work), 0)
}

/** The blade stands on what the leftmost height is measured from, or on the level line, and reaches the top of the wall. */
export function bladeOf(work: Work, { frame, content, blade }: Laid): PlacedTape | undefined {
  if (!work.hasTape) return undefined
  const first = [...only(work.gathered.marks, 'height')].sort((a, b) => a.at[0] - b.at[0])[0]
  const room =
    unionOf(work.gathered.marks.filter((mark) => 'role' in mark && walls.has(mark.role)).map(markBounds)) ?? work.content
  const top = Math.min(room.top, work.options.bounds?.top ?? room.top)
  const foot = frame.y - (first?.base ?? 0) * frame.scale
  return tape(
    blade,
    foot,
    Math.max(content.y, frame.y - top * frame.scale),
    frame.scale,
    work.options.write(0 as never).unit,
    work.options.sizes,
  )
}
