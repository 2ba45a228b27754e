import type { Crowd } from './crowds.ts'
import { inner, type Plan } from './enlargement.ts'
import type { Gathered } from './gather.ts'
import type { Ground } from './ground.ts'
import { markBounds } from './mark/index.ts'
import type { Role } from './marks.ts'
import type { Arranged } from './placing.ts'
import type { LeftOut, Placed, PlacedDetail } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, boxAt, boxOf, clamp, type Frame, grown, middleOf, overlap, shared } from './space.ts'
import { cut, textWidth } from './text.ts'
import { wordsAt } from './words.ts'

/** How loud what lies under an enlargement would be, for a choice of the quietest ground. */
const loud: Partial<Record<Role, number>> = { rod: 4, ring: 4, bracket: 4, finial: 4, pleat: 2, fabric: 0.25, baseboard: 0.5 }

/** The most of the drawing that one enlargement may cover, in both directions. */
const most = 0.5
const least = 1.5
const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'
const factorText = (factor: number): string => `${Math.floor(factor)}${factor % 1 ? '½' : ''} ×`

/** Factors from the one that sets marks apart down to the least that is worth a detail. */
function factors({ nearest }: Crowd, scale: number, crowd: number): readonly number[] {
  const wanted = clamp(Math.ceil((2 * crowd) / (nearest * scale)) / 2, 2, 8)
  return Array.from({ length: Math.round((wanted - least) * 2) + 1 }, (_, n) => wanted - n / 2)
}

/** The wall that is shown, made wide enough for the title, and the panel's size. */
function planOf(crowd: Crowd, factor: number, frame: Frame, options: ComposeOptions): Plan {
  const { caption: type } = options.sizes
  const head = 1.9 * type.size
  const title = [options.say(crowd.code), factorText(factor)].filter((words) => words !== '').join(', ')
  const wanted = (head + textWidth(title, type) + 1.2 * type.size) / (frame.scale * factor)
  const more = Math.max(0, wanted - (crowd.bounds.right - crowd.bounds.left)) / 2
  const bounds = { ...crowd.bounds, left: crowd.bounds.left - more, right: crowd.bounds.right + more }
  const source = boxOf(frame, bounds)
  return { factor, bounds, source, width: source.width * factor, height: head + source.height * factor, head, title }
}

interface Noise {
  readonly box: Box
  readonly loud: number
}

/** Where an enlargement can stand, and the least loud of those places. */
function quietest(plan: Plan, free: Ground, noise: readonly Noise[], step: number): Box | undefined {
  const { within } = free
  const [columns, rows] = [Math.floor((within.width - plan.width) / step), Math.floor((within.height - plan.height) / step)]
  if (columns < 0 || rows < 0) return undefined
  const places = Array.from(
    { length: (columns + 1) * (rows + 1) },
    (_, n): Box => ({
      x: within.x + (n % (columns + 1)) * step,
      y: within.y + Math.floor(n / (columns + 1)) * step,
      width: plan.width,
      height: plan.height,
    }),
  )
  const from = middleOf(plan.source)
  const farOf = (box: Box): number => 0.6 * Math.hypot(middleOf(box)[0] - from[0], middleOf(box)[1] - from[1])
  const costOf = (box: Box): number =>
    farOf(box) + noise.reduce((sum, other) => sum + other.loud * shared(box, other.box), 0) / step
  const isFree = (box: Box): boolean => free.isFree(grown(box, 0.25 * step)) && !overlap(grown(plan.source, 0.5 * step), box)
  let best: { readonly box: Box; readonly cost: number } | undefined
  for (const box of places) {
    if ((best && farOf(box) >= best.cost) || !isFree(box)) continue
    const cost = costOf(box)
    if (!best || cost < best.cost) best = { box, cost }
  }
  return best?.box
}

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

/** A free corner of the source for its letter, clear of the enlargement too. */
function signBox(source: Box, size: number, panel: Box, free: Ground): Box | undefined {
  const [left, right] = [source.x, source.x + source.width]
  const [top, bottom] = [source.y, source.y + source.height - size]
  const corners: readonly At[] = [
    [left - size, top],
    [right, top],
    [left - size, bottom],
    [right, bottom],
    [left, top - size],
    [right - size, top - size],
    [left, bottom + size],
    [right - size, bottom + size],
  ]
  return corners
    .map(([x, y]): Box => ({ x, y, width: size, height: size }))
    .find((box) => free.isFree(box) && !overlap(box, panel))
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
    leader: leader(plan.source, panel),
    panel,
    head,
    radius: 0.3 * type.size,
    ...words,
  }
}

interface Found {
  readonly plan: Plan
  readonly panel: Box
  readonly sign: Box
}

/** The largest enlargement that free ground is found for; undefined when there is none. */
function find(crowd: Crowd, frame: Frame, free: Ground, noise: readonly Noise[], options: ComposeOptions): Found | undefined {
  const {
    caption: { size },
    crowd: reach,
  } = options.sizes
  for (const factor of factors(crowd, frame.scale, reach)) {
    const plan = planOf(crowd, factor, frame, options)
    if (plan.width > most * free.within.width || plan.height > most * free.within.height) continue
    const panel = quietest(plan, free, noise, 1.4 * size)
    const sign = panel && signBox(plan.source, 1.2 * size, panel, free)
    if (panel && sign) return { plan, panel, sign }
  }
  return undefined
}

const numbersOf = ({ marks }: Crowd): readonly LeftOut[] =>
  marks.flatMap((mark) => ('figure' in mark ? [{ what: mark.figure.what, of: mark.figure.of, why: 'crowded' as const }] : []))

/** Opens a detail wherever marks crowd and there is free ground for it. What it covers is taken from the ground. */
export function details(
  { marks }: Gathered,
  crowds: readonly Crowd[],
  frame: Frame,
  free: Ground,
  options: ComposeOptions,
): Arranged {
  const { sizes } = options
  const noise = marks.flatMap((mark) =>
    'role' in mark && loud[mark.role]
      ? [
          {
            box: grown(boxOf(frame, markBounds(mark) ?? { left: 0, right: 0, top: 0, bottom: 0 }), 0.8 * sizes.caption.size),
            loud: loud[mark.role] as number,
          },
        ]
      : [],
  )
  const items: Placed[] = []
  const leftOut: LeftOut[] = []
  for (const crowd of crowds) {
    const found = find(crowd, frame, free, noise, options)
    const letter = letters[items.filter((item) => item.kind === 'detail').length]
    if (!found || letter === undefined) {
      leftOut.push(...numbersOf(crowd))
      continue
    }
    const placed = placedDetail(letter, found.plan, found.panel, found.sign, options)
    const within = inner(crowd, found.plan, found.panel, marks, frame, options)
    free.take(placed.panel, placed.sign, ...along(leader(placed.source, placed.panel), 0.6 * sizes.caption.size))
    items.push(placed, ...within.shapes, ...within.figures, { kind: 'edge', box: placed.panel, radius: placed.radius })
    leftOut.push(...within.leftOut)
  }
  return { items, leftOut }
}
