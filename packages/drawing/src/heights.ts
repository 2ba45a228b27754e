import type { Height } from './marks.ts'
import { captionOf } from './owners.ts'
import type { LeftOut, Tag, Words } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, boxAt, joined, moved } from './space.ts'
import { spread } from './spread.ts'
import { tagOf } from './tag.ts'
import { type Type, wrap } from './text.ts'
import { wordsAt } from './words.ts'

export type HeightSide = NonNullable<Height['side']>
export const sideOf = ({ side = 'left' }: Height): HeightSide => side

/** A height's label before it has a place: everything from the right end of the column and the label's middle. */
export interface HeightLabel {
  readonly mark: Height
  /** The caption as it is spoken. */
  readonly what: string
  readonly tag: Tag
  readonly tagAt: At
  readonly captions: readonly Words[]
  readonly box: Box
  readonly framed: boolean
  readonly slot: number
  readonly width: number
}

/** The caption of a height; of two with the same caption, which of them: in full to be heard, `short` on a label, whose end must not be cut off. */
function heightCaption(mark: Height, all: readonly Height[], { say }: ComposeOptions, length: 'full' | 'short'): string {
  const caption = captionOf(mark.figure, say)
  if (mark.owner) return `${caption}, ${say(mark.owner)}`
  const twins = all.filter(
    (other) => other.figure.what === mark.figure.what && other.figure.layer === mark.figure.layer && !other.owner,
  )
  const other = twins.find((twin) => twin !== mark)
  if (!other || twins.length > 2 || other.at[0] === mark.at[0]) return caption
  const side = mark.at[0] < other.at[0] ? 'left' : 'right'
  return `${caption}, ${say(length === 'full' ? `drawing/${side}` : `drawing/${side}-short`)}`
}

const inset = 0.6
/** Kept free between two boxes, in the mark's size. */
const betweenFrames = 0.16

interface Look {
  readonly framed: boolean
  readonly number: Type
  readonly caption: Type
  readonly pad: number
}
const lookOf = (mark: Height, { sizes }: ComposeOptions): Look => {
  const framed = mark.role === 'mark'
  return {
    framed,
    number: framed ? sizes.mark : sizes.height,
    caption: { ...sizes.caption, weight: framed ? 600 : sizes.caption.weight },
    pad: inset * sizes.caption.size,
  }
}

/** Kept free between two rows of a caption, from one baseline to the next, in the caption's size. */
const rowHigh = 1.02

/**
 * Caption over number, both ending at the column's right end; what is to be pencilled has a cross before it and a box around it. A caption that is too
 * wide takes two rows: its end says which bracket a hole is of, and must not be cut off.
 */
function labelOf(mark: Height, what: string, shown: string, options: ComposeOptions): HeightLabel {
  const { framed, number, caption: type, pad } = lookOf(mark, options)
  const { sizes } = options
  const tag = tagOf(mark.figure, number, options)
  const isPlain = tag.state === 'ordered' || tag.state === 'computed'
  // A plain number has room of its own at both ends; its caption ends where its digits do.
  const end = isPlain ? 0.25 * number.size : 0
  const rows = wrap(shown, type, Math.max(sizes.column[1] - 2 * pad, tag.box.width - 2 * end), 2)
  const last = Math.max(0, rows.length - 1) * rowHigh * type.size
  const top = rows.length > 0 ? last + (framed ? 1.05 : 0.9) * type.size : 0
  const tall = top + tag.box.height + (framed && !isPlain ? 0.2 * number.size : 0)
  const tagAt: At = [-pad - tag.box.x - tag.box.width + end, -tall / 2 + top - tag.box.y]
  const first = -tall / 2 + (framed ? 0.92 : 0.74) * type.size
  const captions = rows.map((text, n) => wordsAt(text, [-pad, first + n * rowHigh * type.size], type, 'end'))
  const inner = joined(moved(tag.box, tagAt), ...captions.map(({ box }) => box))
  const width = Math.max(tag.box.width - 2 * end + (framed ? 2.4 * sizes.cross : 0), inner.width - end) + 2 * pad
  const slot = Math.max(sizes.apart, tall + (framed ? betweenFrames : 0.2) * number.size)
  return { mark, what, tag, tagAt, captions, box: framed ? boxAt([0, 0], 0, tall) : inner, framed, slot, width }
}

/** A height's label in its place; `middle` is where its leader starts. */
export interface HeightSpot {
  readonly what: string
  readonly at: At
  readonly tag: Tag
  readonly captions: readonly Words[]
  readonly box: Box
  readonly frame?: Box
  readonly middle: At
}
export interface Column {
  readonly spots: ReadonlyMap<Height, HeightSpot>
  readonly leftOut: readonly LeftOut[]
}

/** The labels of all heights. Each says which of two it is, shown only where both stand in one column. */
export const heightLabels = (marks: readonly Height[], options: ComposeOptions): readonly HeightLabel[] =>
  marks.map((mark) => {
    const column = marks.filter((other) => sideOf(other) === sideOf(mark))
    return labelOf(mark, heightCaption(mark, marks, options, 'full'), heightCaption(mark, column, options, 'short'), options)
  })
/** As wide as the widest number needs, and never narrower than a column looks like one. */
export const columnWidth = (labels: readonly HeightLabel[], { column: [least] }: ComposeOptions['sizes']): number =>
  Math.max(least, ...labels.map((label) => label.width))

/** What the column has room for: what is to be pencilled first, then in the order given. */
function chosen(labels: readonly HeightLabel[], room: number): ReadonlySet<HeightLabel> {
  const kept = new Set<HeightLabel>()
  let free = room
  for (const label of [...labels].sort((a, b) => Number(b.framed) - Number(a.framed))) {
    if (label.slot > free) continue
    free -= label.slot
    kept.add(label)
  }
  return kept
}

/** `end`: x of the column's end at the blade. Left of the blade labels end there, right of it they begin there. */
const placed = (label: HeightLabel, end: number, y: number, width: number): HeightSpot => {
  const right = sideOf(label.mark) === 'left' ? end : end + (label.framed ? width : -label.box.x)
  const by: At = [right, y]
  const frame = label.framed ? { x: right - width, y: y - label.box.height / 2, width, height: label.box.height } : undefined
  const captions = label.captions.map((row) => ({
    ...row,
    at: [row.at[0] + right, row.at[1] + y] as At,
    box: moved(row.box, by),
  }))
  return {
    what: label.what,
    at: [label.tagAt[0] + right, label.tagAt[1] + y],
    tag: label.tag,
    captions,
    box: frame ?? moved(label.box, by),
    ...(frame ? { frame } : {}),
    middle: [end, y],
  }
}

/** Fans the labels out in a column whose end at the blade is `end`, in order of height, between `top` and `bottom`. `readingOf`: where a height is read on the tape. */
export function column(
  labels: readonly HeightLabel[],
  readingOf: (mark: Height) => number,
  end: number,
  [top, bottom]: readonly [number, number],
  options: ComposeOptions,
): Column {
  const width = columnWidth(labels, options.sizes)
  const kept = chosen(labels, bottom - top)
  const order = labels.filter((label) => kept.has(label)).sort((a, b) => readingOf(a.mark) - readingOf(b.mark))
  const places = spread(
    order.map((label) => ({ at: readingOf(label.mark), slot: label.slot })),
    top,
    bottom,
  )
  const leftOut = labels
    .filter((label) => !kept.has(label))
    .map(({ mark }): LeftOut => ({ what: mark.figure.what, of: mark.figure.of, why: 'crowded' }))
  return { spots: new Map(order.map((label, n) => [label.mark, placed(label, end, places[n] as number, width)])), leftOut }
}
