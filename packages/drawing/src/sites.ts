import type { Crowd } from './crowds.ts'
import type { Plan } from './enlargement.ts'
import type { Ground } from './ground.ts'
import { distanceTo, factors, isClear, isSmall, type Noise, noiseUnder, placesFor, planOf, quietest, stepOf } from './panels.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, type Frame, middleOf, overlap } from './space.ts'
import { spread } from './spread.ts'

/** A free corner of the source for its letter, clear of the enlargement too. */
function signBox(source: Box, size: number, panels: readonly Box[], free: Ground): Box | undefined {
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
    .find((box) => free.isFree(box) && panels.every((panel) => !overlap(box, panel)))
}

/** An enlargement and where it, its panel and the sign at its source stand. */
export interface Found {
  readonly plan: Plan
  readonly panel: Box
  readonly sign: Box
}

/** Where enlargements may stand, and where their letters may stand beside what they enlarge. */
export interface Grounds {
  readonly panels: Ground
  /** Where they stand in a row, if they are to. */
  readonly row?: Ground | undefined
  readonly signs: Ground
}

/** The largest enlargement that free ground is found for; undefined when there is none. */
export function find(
  crowd: Crowd,
  frame: Frame,
  { panels: free, signs }: Grounds,
  noise: readonly Noise[],
  options: ComposeOptions,
): Found | undefined {
  const { sizes } = options
  for (const factor of factors(crowd, frame.scale, sizes.crowd)) {
    const plan = planOf(crowd, factor, frame, options)
    const panel = isSmall(plan, free) ? quietest(plan, free, noise, stepOf(sizes)) : undefined
    const sign = panel && signBox(plan.source, 1.2 * sizes.caption.size, [panel], signs)
    if (panel && sign) return { plan, panel, sign }
  }
  return undefined
}

type Two<T> = readonly [T, T]

/** The other panel of a pair: as far from the middle between both sources, at the same top. */
function mirrored(panel: Box, [first, second]: Two<Plan>): Box {
  const middle = (middleOf(first.source)[0] + middleOf(second.source)[0]) / 2
  return { x: 2 * middle - panel.x - second.width, y: panel.y, width: second.width, height: second.height }
}

/** Where two enlargements can stand side by side, the left source's on the left, and the least loud of those places. */
function quietestPair(plans: Two<Plan>, free: Ground, noise: readonly Noise[], step: number): Two<Box> | undefined {
  const [first, second] = plans
  let best: { readonly panels: Two<Box>; readonly cost: number } | undefined
  for (const left of placesFor(first, free, step)) {
    const right = mirrored(left, plans)
    const far = distanceTo(first, left) + distanceTo(second, right)
    if ((best && far >= best.cost) || left.x + left.width + 0.5 * step > right.x) continue
    const isFree = plans.every((plan) => [left, right].every((panel) => isClear(plan, panel, free, step)))
    const cost = far + noiseUnder(left, noise, step) + noiseUnder(right, noise, step)
    if (isFree && (!best || cost < best.cost)) best = { panels: [left, right], cost }
  }
  return best?.panels
}

/** Two places that are enlarged alike, side by side, as largely as both can be; undefined for more or fewer, and when there is no room for that. */
export function pairFor(
  crowds: readonly Crowd[],
  frame: Frame,
  { panels: free, signs }: Grounds,
  noise: readonly Noise[],
  options: ComposeOptions,
): Two<Found> | undefined {
  const [first, second] = crowds
  if (!first || !second || crowds.length > 2) return undefined
  const { sizes } = options
  const nearer = first.nearest < second.nearest ? first : second
  for (const factor of factors(nearer, frame.scale, sizes.crowd)) {
    const plans = [planOf(first, factor, frame, options), planOf(second, factor, frame, options)] as const
    const panels = plans.every((plan) => isSmall(plan, free)) ? quietestPair(plans, free, noise, stepOf(sizes)) : undefined
    const pair = panels && signed(plans, panels, 1.2 * sizes.caption.size, signs)
    if (pair) return pair
  }
  return undefined
}

/** With the letters at their sources, clear of both panels; undefined when one finds no corner. */
function signed(plans: Two<Plan>, panels: Two<Box>, size: number, free: Ground): Two<Found> | undefined {
  const [one, other] = [signBox(plans[0].source, size, panels, free), signBox(plans[1].source, size, panels, free)]
  if (!one || !other || overlap(one, other)) return undefined
  return [
    { plan: plans[0], panel: panels[0], sign: one },
    { plan: plans[1], panel: panels[1], sign: other },
  ]
}

/** From the largest to the least by which what stands in a row is enlarged. */
const rowFactors = Array.from({ length: 22 }, (_, n) => 12 - n / 2)

/** Enlargements in one row at the top of their ground, all by one factor, as large as they fit, each as near as can be to what it enlarges. */
export function rowFor(
  crowds: readonly Crowd[],
  frame: Frame,
  { within }: Ground,
  signs: Ground,
  options: ComposeOptions,
): readonly Found[] | undefined {
  const apart = stepOf(options.sizes)
  for (const factor of rowFactors) {
    const plans = crowds.map((crowd) => planOf(crowd, factor, frame, options))
    const wide = plans.reduce((sum, { width }) => sum + width + apart, -apart)
    if (wide > within.width || plans.some(({ height }) => height > within.height)) continue
    const wishes = plans.map(({ source, width }) => ({ at: middleOf(source)[0], slot: width + apart }))
    const middles = spread(wishes, within.x - apart / 2, within.x + within.width + apart / 2)
    const found = lettered(
      plans.map((plan, n) => {
        const { width, height } = plan
        return { plan, panel: { x: (middles[n] as number) - width / 2, y: within.y, width, height } }
      }),
      1.2 * options.sizes.caption.size,
      signs,
    )
    if (found) return found
  }
  return undefined
}

/** Each with its letter beside its source, none on another; undefined when one finds no corner. */
function lettered(all: readonly Omit<Found, 'sign'>[], size: number, signs: Ground): readonly Found[] | undefined {
  const found: Found[] = []
  for (const { plan, panel } of all) {
    const sign = signBox(plan.source, size, [...all.map((each) => each.panel), ...found.map((each) => each.sign)], signs)
    if (!sign) return undefined
    found.push({ plan, panel, sign })
  }
  return found
}
