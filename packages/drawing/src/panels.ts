import type { Crowd } from './crowds.ts'
import type { Plan } from './enlargement.ts'
import type { Ground } from './ground.ts'
import { markBounds } from './mark/index.ts'
import type { Mark, Role } from './marks.ts'
import type { ComposeOptions } from './setting.ts'
import type { Sizes } from './sizes.ts'
import { type Box, boxOf, clamp, type Frame, grown, middleOf, overlap, shared } from './space.ts'
import { textWidth } from './text.ts'

/** How loud what lies under an enlargement would be, for a choice of the quietest ground. */
const loud: Partial<Record<Role, number>> = { rod: 4, ring: 4, bracket: 4, finial: 4, pleat: 2, fabric: 0.25, baseboard: 0.5 }

/** The most of the drawing that one enlargement may cover, in both directions. */
const most = 0.5
const least = 1.5
const factorText = (factor: number): string => `${Math.floor(factor)}${factor % 1 ? '½' : ''} ×`

/** Factors from the one that sets marks apart down to the least that is worth a detail. */
export function factors({ nearest }: Crowd, scale: number, crowd: number): readonly number[] {
  const wanted = clamp(Math.ceil((2 * crowd) / (nearest * scale)) / 2, 2, 8)
  return Array.from({ length: Math.round((wanted - least) * 2) + 1 }, (_, n) => wanted - n / 2)
}

/** The wall that is shown, made wide enough for the title, and the panel's size. */
export function planOf(crowd: Crowd, factor: number, frame: Frame, options: ComposeOptions): Plan {
  const { caption: type } = options.sizes
  const head = 1.9 * type.size
  const title = [options.say(crowd.code), ...(crowd.layer ? [options.say(crowd.layer)] : []), factorText(factor)]
    .filter((words) => words !== '')
    .join(', ')
  const wanted = (head + textWidth(title, type) + 1.2 * type.size) / (frame.scale * factor)
  const more = Math.max(0, wanted - (crowd.bounds.right - crowd.bounds.left)) / 2
  const bounds = { ...crowd.bounds, left: crowd.bounds.left - more, right: crowd.bounds.right + more }
  const source = boxOf(frame, bounds)
  return { factor, bounds, source, width: source.width * factor, height: head + source.height * factor, head, title }
}

/** What lies where an enlargement could stand. */
export interface Noise {
  readonly box: Box
  readonly loud: number
}
const isInside = (mark: Mark): boolean => mark.kind === 'dimension' && mark.side === 'inside'
export const noiseOf = (marks: readonly Mark[], frame: Frame, { caption: { size } }: Sizes): readonly Noise[] =>
  marks.flatMap((mark) => {
    const bounds = markBounds(mark)
    // A dimension's line is only loud where it is covered: its ends must be seen.
    if (bounds && isInside(mark)) return [{ box: grown(boxOf(frame, bounds), 0.1 * size), loud: 12 }]
    const level = 'role' in mark ? loud[mark.role] : undefined
    return bounds && level ? [{ box: grown(boxOf(frame, bounds), 0.8 * size), loud: level }] : []
  })

/** Between places that are tried. */
export const stepOf = ({ caption: { size } }: Sizes): number => 1.4 * size
/** Whether an enlargement is small enough to leave the drawing one. */
export const isSmall = (plan: Plan, { within }: Ground): boolean =>
  plan.width <= most * within.width && plan.height <= most * within.height

/** Every place for a panel, row by row. */
export function placesFor(plan: Plan, { within }: Ground, step: number): readonly Box[] {
  const [columns, rows] = [Math.floor((within.width - plan.width) / step), Math.floor((within.height - plan.height) / step)]
  if (columns < 0 || rows < 0) return []
  return Array.from(
    { length: (columns + 1) * (rows + 1) },
    (_, n): Box => ({
      x: within.x + (n % (columns + 1)) * step,
      y: within.y + Math.floor(n / (columns + 1)) * step,
      width: plan.width,
      height: plan.height,
    }),
  )
}
/** How far a panel stands from what it enlarges. */
export function distanceTo({ source }: Plan, panel: Box): number {
  const [from, to] = [middleOf(source), middleOf(panel)]
  return 0.6 * Math.hypot(to[0] - from[0], to[1] - from[1])
}
/** How loud the ground is that a panel would cover. */
export const noiseUnder = (panel: Box, noise: readonly Noise[], step: number): number =>
  noise.reduce((sum, other) => sum + other.loud * shared(panel, other.box), 0) / step
export const isClear = ({ source }: Plan, panel: Box, free: Ground, step: number): boolean =>
  free.isFree(grown(panel, 0.25 * step)) && !overlap(grown(source, 0.5 * step), panel)

/** Where an enlargement can stand, and the least loud of those places. */
export function quietest(plan: Plan, free: Ground, noise: readonly Noise[], step: number): Box | undefined {
  let best: { readonly box: Box; readonly cost: number } | undefined
  for (const box of placesFor(plan, free, step)) {
    const far = distanceTo(plan, box)
    if ((best && far >= best.cost) || !isClear(plan, box, free, step)) continue
    const cost = far + noiseUnder(box, noise, step)
    if (!best || cost < best.cost) best = { box, cost }
  }
  return best?.box
}
