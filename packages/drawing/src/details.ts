import type { Crowd } from './crowds.ts'
import { inner, type Plan } from './enlargement.ts'
import type { Gathered } from './gather.ts'
import { noiseOf } from './panels.ts'
import type { Arranged } from './placing.ts'
import type { LeftOut, Placed, PlacedDetail } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { find, type Grounds, pairFor, rowFor } from './sites.ts'
import { type At, type Box, boxAt, clamp, type Frame, middleOf } from './space.ts'
import { cut } from './text.ts'
import { wordsAt } from './words.ts'

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** From the source's nearest corner to the nearest place on the panel's edge. */
function leader(source: Box, panel: Box): readonly [At, At] {
  const [x, y] = middleOf(panel)
  const start: At = [
    x > source.x + source.width / 2 ? source.x + source.width : source.x,
    y > source.y + source.height / 2 ? source.y + source.height : source.y,
  ]
  return [start, [clamp(start[0], panel.x, panel.x + panel.width), clamp(start[1], panel.y, panel.y + panel.height)]]
}

/** Small boxes along a leader, so that no label stands on it. */
function along([[x, y], [toX, toY]]: readonly [At, At], size: number): readonly Box[] {
  const count = Math.ceil(Math.hypot(toX - x, toY - y) / size)
  return Array.from({ length: count + 1 }, (_, n) =>
    boxAt([x + ((toX - x) * n) / Math.max(1, count), y + ((toY - y) * n) / Math.max(1, count)], size / 2, size / 2),
  )
}

function placedDetail(letter: string, plan: Plan, panel: Box, sign: Box, options: ComposeOptions): PlacedDetail {
  const { caption: type } = options.sizes
  const head: Box = { x: panel.x, y: panel.y, width: plan.head, height: plan.head }
  const title = cut(plan.title, type, panel.width - plan.head - 0.8 * type.size)
  const words = title ? { title: wordsAt(title, [panel.x + plan.head + 0.6 * type.size, panel.y + plan.head * 0.68], type) } : {}
  return {
    kind: 'detail',
    letter,
    factor: plan.factor,
    source: plan.source,
    sign,
    leader: [leader(plan.source, panel)],
    panel,
    head,
    radius: 0.3 * type.size,
    ...words,
  }
}

const numbersOf = ({ marks }: Crowd): readonly LeftOut[] =>
  marks.flatMap((mark) => ('figure' in mark ? [{ what: mark.figure.what, of: mark.figure.of, why: 'crowded' as const }] : []))

/** Opens a detail wherever marks crowd and there is free ground for it; two stand side by side when they can. What it covers is taken from the ground. */
export function details(
  { marks }: Gathered,
  crowds: readonly Crowd[],
  frame: Frame,
  grounds: Grounds,
  options: ComposeOptions,
): Arranged {
  const { sizes } = options
  const noise = noiseOf(marks, frame, sizes)
  const together = grounds.row
    ? rowFor(crowds, frame, grounds.row, grounds.signs, options)
    : pairFor(crowds, frame, grounds, noise, options)
  // Each beneath the ones before it: the line to a later enlargement goes behind the earlier ones, not through their crosses.
  const opened: (readonly Placed[])[] = []
  const leftOut: LeftOut[] = []
  for (const [n, crowd] of crowds.entries()) {
    const found = together?.[n] ?? find(crowd, frame, grounds, noise, options)
    const letter = letters[opened.length]
    if (!found || letter === undefined) {
      leftOut.push(...numbersOf(crowd))
      continue
    }
    const placed = placedDetail(letter, found.plan, found.panel, found.sign, options)
    const within = inner(crowd, found.plan, found.panel, marks, frame, options)
    for (const free of new Set([grounds.panels, grounds.signs]))
      free.take(placed.panel, placed.sign, ...along(leader(placed.source, placed.panel), 0.6 * sizes.caption.size))
    opened.unshift([placed, ...within.shapes, ...within.figures, { kind: 'edge', box: placed.panel, radius: placed.radius }])
    leftOut.push(...within.leftOut)
  }
  return { items: opened.flat(), leftOut }
}
