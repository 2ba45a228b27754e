import type { Ground } from './ground.ts'
import { type LabelSpot, labelBox } from './label.ts'
import type { Dimension } from './marks.ts'
import { captionOf } from './owners.ts'
import type { Spot } from './rows.ts'
import type { Tag } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, type Frame, toScene } from './space.ts'
import { tagOf } from './tag.ts'
import { wrap } from './text.ts'
import { wordsAt } from './words.ts'

/** Where along its line a label is tried, as shares from the low end: the middle first. */
const shares = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9]
/** Widest caption under a number, in captions' size. */
const widest = 8

/** A dimension inside the drawing as it lies in the scene: its axis, its line and its ends on it. */
export interface Lie {
  readonly axis: 'x' | 'y'
  readonly line: number
  readonly low: number
  readonly high: number
}
export function lieOf(mark: Dimension, frame: Frame): Lie {
  const [from, to] = [toScene(frame, mark.from), toScene(frame, mark.to)]
  const axis = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]) ? 'x' : 'y'
  const ends = axis === 'x' ? [from[0], to[0]] : [from[1], to[1]]
  return { axis, line: axis === 'x' ? from[1] : from[0], low: Math.min(...ends), high: Math.max(...ends) }
}

/** What the line itself takes of the ground. */
export const lineBox = ({ axis, line, low, high }: Lie, half: number): Box =>
  axis === 'x'
    ? { x: low, y: line - half, width: high - low, height: 2 * half }
    : { x: line - half, y: low, width: 2 * half, height: high - low }

interface Candidate {
  readonly at: At
  readonly outside: boolean
}

/** On the line where the label has room between the ticks; else beyond its ends, then beside it. */
function candidates({ axis, line, low, high }: Lie, box: Box, clear: number, isOver: boolean): readonly Candidate[] {
  const length = axis === 'x' ? box.width : box.height
  const on = (along: number): At => (axis === 'x' ? [along, line] : [line, along])
  const fits = shares
    .map((share) => low + share * (high - low))
    .filter((along) => along - length / 2 >= low + clear && along + length / 2 <= high - clear)
  const reach = clear + length / 2
  const middle = (low + high) / 2
  const beside = axis === 'x' ? box.height / 2 + clear : box.width / 2 + clear
  const off = (by: number): At => (axis === 'x' ? [middle, line + by] : [line + by, middle])
  return [
    ...fits.map((along) => ({ at: on(along), outside: false })),
    ...(isOver ? [low - reach, high + reach] : [high + reach, low - reach]).map((along) => ({ at: on(along), outside: true })),
    ...[-beside, beside].map((by) => ({ at: off(by), outside: true })),
  ]
}

function spotAt(
  lie: Lie,
  tag: Tag,
  lines: readonly string[],
  { at, outside }: Candidate,
  { caption: type, line: height }: ComposeOptions['sizes'],
): Spot {
  const first = at[1] + tag.box.y + tag.box.height + 0.95 * type.size
  return {
    axis: lie.axis,
    line: lie.line,
    at,
    tag,
    outside,
    captions: lines.map((text, n) => wordsAt(text, [at[0], first + n * height], type, 'middle')),
  }
}

/** Label and caption around the middle of the tag's block, for a search of free ground. */
const reach = (spot: LabelSpot): Box => {
  const box = labelBox(spot)
  return { ...box, x: box.x - spot.at[0], y: box.y - spot.at[1] }
}

/**
 * A free place for the label of a dimension that stays where it is drawn: with its caption before without, and clear of other lines
 * before over them. Undefined when there is none.
 */
export function insideSpot(
  mark: Dimension,
  frame: Frame,
  ground: Ground,
  lines: readonly Box[],
  options: ComposeOptions,
): Spot | undefined {
  const { sizes } = options
  const lie = lieOf(mark, frame)
  const tag = tagOf(mark.figure, sizes.inside, options)
  const caption = wrap(captionOf(mark.figure, options.say), sizes.caption, widest * sizes.caption.size, 2)
  const clear = sizes.tick + 0.2 * sizes.inside.size
  const isClear = (box: Box): boolean =>
    lines.every(
      (line) =>
        line.x >= box.x + box.width ||
        line.x + line.width <= box.x ||
        line.y >= box.y + box.height ||
        line.y + line.height <= box.y,
    )
  const spots = [caption, []].flatMap((words) => {
    const whole = reach({ at: [0, 0], tag, captions: spotAt(lie, tag, words, { at: [0, 0], outside: false }, sizes).captions })
    return candidates(
      lie,
      { ...whole, width: 2 * Math.max(-whole.x, whole.x + whole.width), height: 2 * Math.max(-whole.y, whole.y + whole.height) },
      clear,
      mark.isOver ?? false,
    ).map((candidate) => spotAt(lie, tag, words, candidate, sizes))
  })
  const free = spots.filter((spot) => ground.isFree(labelBox(spot)))
  return free.find((spot) => isClear(labelBox(spot))) ?? free[0]
}
