import { fitted, larger, type Margins } from './fit.ts'
import { type Gathered, only } from './gather.ts'
import { columnWidth, type HeightLabel, type HeightSide, sideOf } from './heights.ts'
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
  /** Sides of the wall on which a tape stands. */
  readonly tapes: readonly HeightSide[]
  readonly options: ComposeOptions
}

/** The heights that stand on one side of the wall. */
export const heightsOn = ({ heights }: Work, side: HeightSide): readonly HeightLabel[] =>
  heights.filter(({ mark }) => sideOf(mark) === side)
const bladeOn = ({ tapes, options: { sizes } }: Work, side: HeightSide): number => (tapes.includes(side) ? sizes.blade : 0)
/** Beside the wall: the blade, the fan, the column of heights. */
function beside(work: Work, side: HeightSide): number {
  const { sizes } = work.options
  const labels = heightsOn(work, side)
  return (labels.length > 0 ? columnWidth(labels, sizes) + sizes.fan : 0) + bladeOn(work, side)
}

export interface Laid {
  readonly frame: Frame
  readonly content: Box
  readonly rows: ReadonlyMap<Dimension, Spot>
  /** x of each blade's edge at the wall. */
  readonly edges: Readonly<Record<HeightSide, number>>
  /** What rows and columns beside the wall leave to it of the page's width. */
  readonly room: number
}

/** Height of a row of enlargements, in captions' size, and the most of a page that it may take. */
const rowHeight = 12.5
const mostOfPage = 0.26
/** What a marks sheet keeps free under the wall, whose own ground is for numbers; on a page too low for that, enlargements stand on the wall. */
function underMarks({ gathered, options: { view, height, sizes } }: Work): number {
  const wanted = rowHeight * sizes.caption.size
  return view === 'marks' && gathered.details.length > 0 && wanted <= mostOfPage * height ? wanted : 0
}
/** What is enlarged stands beneath a section, and beneath the wall of a marks sheet. */
export const isAtTop = (work: Work): boolean => work.options.view === 'plan' || underMarks(work) > 0

/** All rows at one scale, and the margins that they would need. */
function rowsAt(work: Work, frame: Frame): { readonly laid: Laid; readonly margins: Margins } {
  const { options, gathered } = work
  const {
    edge,
    caption: { size },
  } = options.sizes
  const content = grown(boxOf(frame, work.content), hatchDepth * size)
  const end = content.x + content.width
  // A row on the right stands outside of the column there; on the left, where the tape always stands, inside.
  const within = (side: Side): Box => (side === 'right' ? { ...content, width: content.width + beside(work, 'right') } : content)
  const dimensions = only(gathered.marks, 'dimension')
  const found = new Map(
    sides.map((side) => {
      const limits =
        side === 'above' || side === 'below'
          ? ([
              content.x - bladeOn(work, 'left'),
              work.tapes.includes('right') ? end + bladeOn(work, 'right') : options.width - edge,
            ] as const)
          : ([edge, options.height - edge] as const)
      return [
        side,
        row(
          dimensions.filter((mark) => mark.side === side),
          side,
          within(side),
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
    left: reach('left') + beside(work, 'left') + around,
    top: reach('above') + around,
    right: reach('right') + beside(work, 'right') + around,
    bottom: reach('below') + around + underMarks(work),
  }
  const rows = new Map([...found.values()].flatMap(({ spots }) => spots))
  const edges = { left: content.x - reach('left'), right: end }
  return { laid: { frame, content, rows, edges, room: options.width - margins.left - margins.right }, margins }
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
    left: beside(work, 'left') + around + has('left'),
    top: has('above') + around,
    right: beside(work, 'right') + around + has('right') + (has('right') && size),
    bottom: has('below') + around + underMarks(work),
  }
}

/** Rows change with the scale and the scale with their rows: margins only grow, so this ends. */
export function lay(work: Work): Laid {
  const { options } = work
  const settle = (margins: Margins, turn: number): Laid => {
    const next = rowsAt(work, fitted(work.content, options, margins, options.sizes.step, isAtTop(work)))
    const wanted = larger(margins, next.margins)
    const isSettled = (Object.keys(wanted) as (keyof Margins)[]).every((side) => wanted[side] <= margins[side] + 0.01)
    return isSettled || turn > 6 ? next.laid : settle(wanted, turn + 1)
  }
  return settle(oneTier(work), 0)
}

/** A blade stands on what its column's outermost height is measured from, or on the level line, and reaches the top of the wall. */
function bladeOf(work: Work, { frame, content, edges }: Laid, side: HeightSide): PlacedTape {
  const { gathered, options } = work
  const own = only(gathered.marks, 'height').filter((mark) => sideOf(mark) === side)
  const outermost = own.sort((a, b) => a.at[0] - b.at[0]).at(side === 'left' ? 0 : -1)
  const room = unionOf(gathered.marks.filter((mark) => 'role' in mark && walls.has(mark.role)).map(markBounds)) ?? work.content
  const top = Math.max(content.y, frame.y - Math.min(room.top, options.bounds?.top ?? room.top) * frame.scale)
  const foot = frame.y - (outermost?.base ?? 0) * frame.scale
  return tape({ side, edge: edges[side], foot, top }, frame.scale, options.write(0 as never).unit, options.sizes)
}
export const bladesOf = (work: Work, laid: Laid): readonly PlacedTape[] => work.tapes.map((side) => bladeOf(work, laid, side))
