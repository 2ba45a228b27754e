import type { Ground } from './ground.ts'
import { column } from './heights.ts'
import { insideSpot, lieOf, lineBox } from './inside.ts'
import { heightsOn, type Laid, type Work } from './layout.ts'
import { caption } from './mark/caption.ts'
import { dimension } from './mark/dimension.ts'
import { finding } from './mark/finding.ts'
import { height, riseOf } from './mark/height.ts'
import type { Caption, Dimension, Finding, Height, Mark } from './marks.ts'
import { captionSpot, findingBox, findingSpot } from './notes.ts'
import type { Spot } from './rows.ts'
import type { LeftOut, Placed, PlacedTape } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import type { Box } from './space.ts'

/** What found its place, and what did not. */
export interface Arranged {
  readonly items: readonly Placed[]
  readonly leftOut: readonly LeftOut[]
}

/** The labels of one side's heights, fanned out beyond the blade. */
function placeColumn(work: Work, { frame, content }: Laid, { side, box, foot }: PlacedTape): Arranged {
  const { options } = work
  const { edge, fan } = options.sizes
  const fanned = column(
    heightsOn(work, side),
    (mark) => foot - riseOf(mark) * frame.scale,
    side === 'left' ? box.x - fan : box.x + box.width + fan,
    [edge, options.height - edge],
    options,
  )
  const items = [...fanned.spots].map(([mark, spot]) =>
    height.place(mark, { frame, within: content, options, spot: { ...spot, blade: box, foot } }),
  )
  return { items, leftOut: fanned.leftOut }
}
/** The labels of all heights, each beyond the blade of its side. */
export function placeHeights(work: Work, laid: Laid, blades: readonly PlacedTape[]): Arranged {
  const columns = blades.map((blade) => placeColumn(work, laid, blade))
  return { items: columns.flatMap(({ items }) => items), leftOut: columns.flatMap(({ leftOut }) => leftOut) }
}

const crowded = (mark: Dimension | Height): LeftOut => ({ what: mark.figure.what, of: mark.figure.of, why: 'crowded' })

/** Places marks one by one on free ground; those that find none are left out. */
function onGround<M extends Mark>(
  marks: readonly M[],
  place: (mark: M) => { readonly item: Placed; readonly box: Box } | undefined,
  left: (mark: M) => LeftOut,
  free: Ground,
): Arranged {
  const items: Placed[] = []
  const leftOut: LeftOut[] = []
  for (const mark of marks) {
    const found = place(mark)
    if (found) {
      items.push(found.item)
      free.take(found.box)
    } else leftOut.push(left(mark))
  }
  return { items, leftOut }
}

export function placeFindings(marks: readonly Finding[], { frame, content }: Laid, free: Ground, options: ComposeOptions) {
  return onGround(
    marks,
    (mark) => {
      const spot = findingSpot(mark, frame, free, options)
      return (
        spot && {
          item: finding.place(mark, { frame, within: content, options, spot }),
          box: findingBox(spot, options.sizes.finding),
        }
      )
    },
    (mark) => ({ what: mark.code, why: 'crowded' }),
    free,
  )
}

export function placeInside(marks: readonly Dimension[], { frame, content }: Laid, free: Ground, options: ComposeOptions) {
  const lines = new Map(marks.map((mark) => [mark, lineBox(lieOf(mark, frame), 1)]))
  return onGround(
    marks,
    (mark) => {
      const spot = insideSpot(
        mark,
        frame,
        free,
        [...lines].filter(([other]) => other !== mark).map(([, box]) => box),
        options,
      )
      const item = spot && dimension.place(mark, { frame, within: content, options, spot })
      return item && { item, box: item.label.box }
    },
    crowded,
    free,
  )
}

export function placeCaptions(marks: readonly Caption[], { frame, content }: Laid, free: Ground, options: ComposeOptions) {
  const said = marks.filter((mark) => caption.words(mark, options).length > 0)
  return onGround(
    said,
    (mark) => {
      const spot = captionSpot(mark, frame, free, options)
      return spot && { item: caption.place(mark, { frame, within: content, options, spot }), box: spot.box }
    },
    (mark) => ({ what: mark.code ?? mark.text ?? '', why: 'crowded' }),
    free,
  )
}

/** Rows' dimensions whose label lies on the page. */
export function placeRows({ rows, frame, content }: Laid, free: Ground, options: ComposeOptions) {
  return onGround(
    [...rows.keys()],
    (mark) => {
      const item = dimension.place(mark, { frame, within: content, options, spot: rows.get(mark) as Spot })
      return free.isFree(item.label.box) ? { item, box: item.label.box } : undefined
    },
    crowded,
    free,
  )
}
