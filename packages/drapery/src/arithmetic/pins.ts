import { type Length, wholeNanometres } from '@evenhem/length'

/**
 * One hook of a chain of hooks. `lift`: how far the hem below it still has to rise, down negative; a deeper pin lifts the hem by as much as it is
 * deeper. `apart`: the most that its pin may differ from the pin of the hook before it in the chain.
 */
export interface ChainHook {
  readonly pin: Length
  readonly lift: Length
  readonly apart: Length
}
/** Pins between the shallowest and the deepest, on a tape's fractions. */
export interface PinRange {
  readonly least: Length
  readonly most: Length
  readonly step: Length
}
/** Pins of a chain, in its order. `remains`: the largest distance that a hem then still has to go, up or down. */
export interface PinsSet {
  readonly pins: readonly Length[]
  readonly changed: number
  readonly remains: Length
}
/** Two panels whose leading edges meet, or one. Hooks from the leading edge outward; `back`: the last one hangs at a return. */
export interface ChainPanel {
  readonly hooks: readonly Pick<ChainHook, 'pin' | 'lift'>[]
  readonly back: boolean
}

/**
 * The hooks of a pair as one chain, left outer edge to leading edges to right outer edge; of one panel from its leading edge outward. Neighbours differ
 * by at most `near`, the two leading edges by at most `edges`; the hook at a return takes the pin of the last pleat.
 */
export function chainOf(panels: readonly ChainPanel[], near: Length, edges: Length): readonly ChainHook[] {
  const one = ({ hooks, back }: ChainPanel, first: Length): readonly ChainHook[] =>
    hooks.map((hook, i) => ({
      ...hook,
      apart: i === 0 ? first : back && i === hooks.length - 1 ? (0 as Length) : near,
    }))
  const [left, right] = panels
  if (!left) return []
  if (!right) return one(left, near)
  // Turned around, each hook keeps its distance from the one that now comes after it.
  const outward = one(left, near)
  const inward = outward.map((hook, i) => ({ ...hook, apart: outward[i + 1]?.apart ?? near })).reverse()
  return [...inward, ...one(right, edges)]
}

/** The pins that may be set: all on the step inside the range, and every pin as it is now, which may stay. */
export function pinsIn({ least, most, step }: PinRange, now: readonly Length[]): readonly Length[] {
  const first = Math.ceil(least / step)
  const steps = Array.from({ length: Math.max(0, Math.floor(most / step) - first + 1) }, (_, i) => ((first + i) * step) as Length)
  return [...new Set([...steps, ...now])].sort((a, b) => a - b)
}

/** How far the hem below a hook still has to go when its pin is set so. */
const stillToGo = ({ pin, lift }: ChainHook, set: Length): number => Math.abs(lift - (set - pin))

/** The cheapest pins up to a hook, each with the one before it. */
interface Best {
  readonly cost: number
  readonly set: Length
  readonly before?: Best | undefined
}
const cheaper = (a: Best, b: Best): Best => (b.cost < a.cost ? b : a)
const none: Best = { cost: Number.POSITIVE_INFINITY, set: 0 as Length }
/** The cheapest pins of a chain, whose costs `join` into one; exact, since a hook is bound to the one before it only. The shallowest of equals. */
function cheapest(
  chain: readonly ChainHook[],
  values: readonly Length[],
  costOf: (hook: ChainHook, set: Length) => number,
  join: (a: number, b: number) => number,
): Best {
  let best: readonly Best[] = []
  for (const [i, hook] of chain.entries()) {
    const before = best
    const nearest = (set: Length): Best =>
      before.reduce((a, b) => (Math.abs(b.set - set) <= hook.apart ? cheaper(a, b) : a), none)
    best = values.map((set) => {
      const cost = costOf(hook, set)
      if (i === 0) return { cost, set }
      const from = nearest(set)
      return { cost: join(from.cost, cost), set, before: from }
    })
  }
  return best.reduce(cheaper, none)
}
/** The pins of a chain, from its first hook to its last. */
const pinsOf = (last: Best | undefined): readonly Length[] => {
  const pins: Length[] = []
  for (let one = last; one; one = one.before) pins.push(one.set)
  return pins.reverse()
}

/** More than the errors of any chain add up to, in nanometres. */
const onePin = 1e12

/**
 * The pins that leave the hem nearest to where it was ordered, at the hook where it is furthest off; of those the ones that change the fewest pins,
 * and of those the ones that leave the least in all. Exact on the step that is asked for.
 */
export function setPins(chain: readonly ChainHook[], range: PinRange): PinsSet {
  const values = pinsIn(
    range,
    chain.map(({ pin }) => pin),
  )
  const { cost: remains } = cheapest(chain, values, stillToGo, Math.max)
  const work = (hook: ChainHook, set: Length): number => {
    const still = stillToGo(hook, set)
    return still > remains ? Number.POSITIVE_INFINITY : still + (set === hook.pin ? 0 : onePin)
  }
  const pins = pinsOf(cheapest(chain, values, work, (a, b) => a + b))
  return { pins, changed: pins.filter((pin, i) => pin !== chain[i]?.pin).length, remains: remains as Length }
}

/** On the step, and on half of it when only that brings the hem inside the tolerance, or nearer to it (1/8 in, with patience 1/16; from memory). */
export function trueUp(chain: readonly ChainHook[], range: PinRange, tolerance: Length): PinsSet {
  const whole = setPins(chain, range)
  if (whole.remains <= tolerance) return whole
  const half = setPins(chain, { ...range, step: wholeNanometres(range.step / 2) })
  return half.remains < whole.remains ? half : whole
}

/** What is left to go at the hook that is furthest off, when pins are set so. */
export const remainsOf = (chain: readonly ChainHook[], pins: readonly Length[]): Length =>
  Math.max(0, ...chain.map((hook, i) => stillToGo(hook, pins[i] ?? hook.pin))) as Length

/** By how much a whole panel is long (its hem must rise) or short (negative), so that as little as can be remains at any hook; and what does. */
export function panelLong(lifts: readonly Length[]): { readonly long: Length; readonly remains: Length } {
  const [low, high] = [Math.min(...lifts), Math.max(...lifts)]
  return { long: wholeNanometres((low + high) / 2), remains: wholeNanometres((high - low) / 2) }
}
