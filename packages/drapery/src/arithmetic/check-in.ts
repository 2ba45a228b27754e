import type { Length } from '@evenhem/length'

/** What a difference leads to. Never a guess: the amount is stated, and past what the site can mend it is the workroom's. */
export type Lead = 'go on' | 'reset pins' | 'swap panels' | 'call the workroom'
/** A measured value against the order. `difference` is measured less ordered. */
export interface Comparison {
  readonly ordered: Length
  readonly measured: Length
  readonly difference: Length
  readonly allowedShort: Length
  readonly allowedOver: Length
  readonly within: boolean
  readonly leads: Lead
  readonly by?: Length
}

const magnitude = (value: number): Length => Math.abs(value) as Length
function compare(
  ordered: Length,
  measured: Length,
  allowedShort: Length,
  allowedOver: Length,
  otherwise: (difference: Length) => { readonly leads: Lead; readonly by?: Length },
): Comparison {
  const difference = (measured - ordered) as Length
  const within = difference >= -allowedShort && difference <= allowedOver
  return {
    ordered,
    measured,
    difference,
    allowedShort,
    allowedOver,
    within,
    ...(within ? { leads: 'go on' } : otherwise(difference)),
  }
}

/**
 * A finished length. Within the tolerance (1/4 in up to 108 in, 1/2 in over it: tolerance-01, US Department of Defense guide specification, read; the second
 * common practice) go on. Past it, while the pins can still move that far, they take it up: a deeper pin lifts a long panel.
 * `by` is how much deeper the pins must be (negative: shallower) for the hem to hang where it was ordered.
 */
export const compareFinishedLength = (
  ordered: Length,
  measured: Length,
  allowed: Length,
  pinRange: { readonly deeper: Length; readonly shallower: Length },
): Comparison =>
  compare(ordered, measured, allowed, allowed, (difference) =>
    difference <= pinRange.deeper && -difference <= pinRange.shallower
      ? { leads: 'reset pins', by: difference }
      : { leads: 'call the workroom', by: difference },
  )

/** The two finished lengths of a pair against each other: as ordered alike within `allowed` (1/8 in, common practice); else the pins of one take it up. */
export const comparePair = (left: Length, right: Length, allowed: Length): Comparison =>
  compare(left, right, allowed, allowed, (difference) => ({ leads: 'reset pins', by: difference }))

/** First to last: ± `allowed` up to 72 in (1/2 in), then 1 % of it (common practice). */
export const compareFirstToLast = (ordered: Length, measured: Length, allowed: Length, past: Length): Comparison => {
  const tolerance = (ordered > past ? Math.round(ordered / 100) : allowed) as Length
  return compare(ordered, measured, tolerance, tolerance, () => ({ leads: 'call the workroom' }))
}

/** A return: 1/8 in short and 1/2 in over are good (common practice). */
export const compareReturn = (ordered: Length, measured: Length, short: Length, over: Length): Comparison =>
  compare(ordered, measured, short, over, () => ({ leads: 'call the workroom' }))

/** Pins against their setting: 1/16 in within a panel (common practice); else reset them, by how much. */
export const comparePin = (ordered: Length, measured: Length, allowed: Length): Comparison =>
  compare(ordered, measured, allowed, allowed, (difference) => ({ leads: 'reset pins', by: magnitude(difference) }))

/** A count of what came: missing stops, surplus is information. */
export interface CountComparison {
  readonly needed: number
  readonly came: number
  readonly missing: number
  readonly spare: number
  readonly enough: boolean
}
export const compareCount = (needed: number, came: number): CountComparison => ({
  needed,
  came,
  missing: Math.max(0, needed - came),
  spare: Math.max(0, came - needed),
  enough: came >= needed,
})

/** Two panels came in each other's bags: each measures within tolerance of the other's order and not of its own. */
export const areSwapped = (ordered: readonly [Length, Length], measured: readonly [Length, Length], allowed: Length): boolean => {
  const near = (a: Length, b: Length): boolean => Math.abs(a - b) <= allowed
  return (
    !near(ordered[0], measured[0]) &&
    !near(ordered[1], measured[1]) &&
    near(ordered[0], measured[1]) &&
    near(ordered[1], measured[0])
  )
}

/** A panel as it came: how far its hooks were meant to bear above the hem, its length as measured, and its shallowest and deepest pin. */
export interface PanelAsCame {
  readonly panel: string
  readonly ordered: Length
  readonly length: Length
  readonly least: Length
  readonly most: Length
}
/** Pins by panel, and how much higher than ordered the brackets then are; negative: lower. */
export interface PinsReset {
  readonly pins: readonly { readonly panel: string; readonly pin: Length }[]
  readonly lift: Length
}
/**
 * The pins with which all hems hang as they were ordered. Hooks bear at hem + finished length − pin setting: while the brackets stay, a pin takes up what
 * its panel is longer or shorter. Where that leads out of its range and the brackets may move, they move as little as brings every pin inside.
 * Undefined: no pins do it.
 */
export function resetPins(panels: readonly PanelAsCame[], mayMove: boolean): PinsReset | undefined {
  const meant = Math.max(...panels.map(({ ordered }) => ordered))
  const lowest = Math.max(...panels.map(({ length, most }) => length - most))
  const highest = Math.min(...panels.map(({ length, least }) => length - least))
  const line = Math.min(Math.max(meant, lowest), highest)
  if (lowest > highest || (line !== meant && !mayMove)) return undefined
  return {
    pins: panels.map(({ panel, length }) => ({ panel, pin: (length - line) as Length })),
    lift: (line - meant) as Length,
  }
}

/** How much higher than ordered the brackets are when they follow the lengths that came, pins as they are; undefined where the hems would not hang alike. */
export function followLengths(
  panels: readonly { readonly ordered: Length; readonly bears: Length }[],
  near: Length,
): Length | undefined {
  const bears = panels.map((panel) => panel.bears)
  const highest = Math.max(...bears)
  if (highest - Math.min(...bears) > near) return undefined
  return (highest - Math.max(...panels.map(({ ordered }) => ordered))) as Length
}
