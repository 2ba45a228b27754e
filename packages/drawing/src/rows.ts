import type { Margins } from './fit.ts'
import type { Dimension } from './marks.ts'
import { captionOf } from './owners.ts'
import type { Tag, Words } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, type Frame, toScene } from './space.ts'
import { tagOf } from './tag.ts'
import { textWidth, wrap } from './text.ts'
import { type RowLimits, type Seat, type Stretch, seats, type Way } from './tiers.ts'
import { wordsAt } from './words.ts'

/** Where a dimension's line and label stand. `line`: the line's y (of one along x) or x (of one along y). */
export interface Spot {
  readonly axis: 'x' | 'y'
  readonly line: number
  readonly at: At
  readonly tag: Tag
  readonly captions: readonly Words[]
  readonly outside: boolean
}
export type Side = Exclude<Dimension['side'], 'inside'>
export interface Rows {
  readonly spots: ReadonlyMap<Dimension, Spot>
  readonly margins: Margins
}

const axisOf = (side: Side): 'x' | 'y' => (side === 'above' || side === 'below' ? 'x' : 'y')
/** The caption's baseline is this many captions under the middle of the number; over it, in a row above. */
const captionUnder = 2
const captionOver = 1.26

interface Item {
  readonly mark: Dimension
  readonly tag: Tag
  readonly lines: readonly string[]
  readonly stretch: Stretch
}

/** Along x: the caption stands on the far side of the line. */
function waysAlongX(
  tag: Tag,
  caption: string,
  above: boolean,
  { caption: type }: ComposeOptions['sizes'],
): readonly [Way, ...Way[]] {
  const [up, down] = [-tag.box.y, tag.box.y + tag.box.height]
  const bare: Way = { along: tag.box.width, near: above ? down : up, far: above ? up : down, captioned: false }
  if (!caption) return [bare]
  const far = above ? (captionOver + 0.74) * type.size : (captionUnder + 0.22) * type.size
  return [
    { along: Math.max(bare.along, textWidth(caption, type)), near: bare.near, far: Math.max(bare.far, far), captioned: true },
    bare,
  ]
}

/** Along y: the label stands across the line, its caption under it. */
function waysAlongY(
  tag: Tag,
  lines: readonly string[],
  isRight: boolean,
  { caption: type, line }: ComposeOptions['sizes'],
): readonly [Way, ...Way[]] {
  const [left, right] = [-tag.box.x, tag.box.x + tag.box.width]
  const bare: Way = { along: tag.box.height, near: isRight ? left : right, far: isRight ? right : left, captioned: false }
  if (lines.length === 0) return [bare]
  const half = Math.max(...lines.map((words) => textWidth(words, type) / 2))
  const down = (captionUnder + 0.22) * type.size + (lines.length - 1) * line
  return [
    {
      along: 2 * Math.max(down, tag.box.height / 2),
      near: Math.max(bare.near, half),
      far: Math.max(bare.far, half),
      captioned: true,
    },
    bare,
  ]
}

/** Widest caption beside a line along y, in captions' size. */
const captionColumn = 5

function itemOf(mark: Dimension, side: Side, frame: Frame, options: ComposeOptions): Item {
  const along = axisOf(side) === 'x' ? 0 : 1
  const ends = [toScene(frame, mark.from)[along], toScene(frame, mark.to)[along]]
  const { sizes } = options
  const tag = tagOf(mark.figure, sizes.row, options)
  const caption = captionOf(mark.figure, options.say)
  const lines = along === 0 ? [caption] : wrap(caption, sizes.caption, captionColumn * sizes.caption.size, 2)
  const ways = along === 0 ? waysAlongX(tag, caption, side === 'above', sizes) : waysAlongY(tag, lines, side === 'right', sizes)
  return { mark, tag, lines, stretch: { low: Math.min(...ends), high: Math.max(...ends), ways } }
}

/** How far each tier's line stands from the drawing, and how far the last one reaches. */
function offsets(
  found: readonly Seat[],
  gap: number,
  clear: number,
): { readonly lines: readonly number[]; readonly reach: number } {
  const lines: number[] = []
  let reach = 0
  for (let tier = 0; found.some((seat) => seat.tier === tier); tier++) {
    const ways = found.filter((seat) => seat.tier === tier).map((seat) => seat.way)
    lines.push(Math.max(tier === 0 ? gap : 0, reach + clear + Math.max(...ways.map((way) => way.near))))
    reach = (lines[tier] as number) + Math.max(...ways.map((way) => way.far))
  }
  return { lines, reach }
}

function spotOf(
  item: Item,
  side: Side,
  seat: Seat,
  line: number,
  { caption: type, line: height }: ComposeOptions['sizes'],
): Spot {
  const axis = axisOf(side)
  const [left, right] = [item.tag.box.x, item.tag.box.x + item.tag.box.width]
  // Outside a tick the whole tag is centred, with what stands beside it; on the line its block is.
  const shift = seat.outside && axis === 'x' ? (left + right) / 2 : 0
  const at: At = axis === 'x' ? [seat.mid - shift, line] : [line, seat.mid]
  const first = side === 'above' ? at[1] - captionOver * type.size : at[1] + captionUnder * type.size
  const captions = seat.way.captioned
    ? item.lines.map((text, n) => wordsAt(text, [at[0], first + n * height], type, 'middle'))
    : []
  return { axis, line, at, tag: item.tag, captions, outside: seat.outside }
}

/** Lays the dimensions of one side out in tiers outward from the drawing's box. */
export function row(
  marks: readonly Dimension[],
  side: Side,
  content: Box,
  frame: Frame,
  limits: readonly [number, number],
  options: ComposeOptions,
): { readonly spots: readonly (readonly [Dimension, Spot])[]; readonly reach: number } {
  const { sizes } = options
  const clear = 0.3 * sizes.row.size
  const bounds: RowLimits = { low: limits[0], high: limits[1], tick: sizes.tick, clear }
  const items = marks.map((mark) => itemOf(mark, side, frame, options))
  const found = seats(
    items.map((item) => item.stretch),
    bounds,
  )
  const { lines, reach } = offsets(found, sizes.gap, clear)
  const lineAt = (offset: number): number =>
    ({
      above: content.y - offset,
      below: content.y + content.height + offset,
      left: content.x - offset,
      right: content.x + content.width + offset,
    })[side]
  const spots = items.map((item, n) => {
    const seat = found[n] as Seat
    return [item.mark, spotOf(item, side, seat, lineAt(lines[seat.tier] as number), sizes)] as const
  })
  return { spots, reach: items.length > 0 ? reach : 0 }
}
