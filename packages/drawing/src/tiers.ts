/** A way to set a label on a dimension's line: how much of the line it takes, and how far it reaches to either side of it. */
export interface Way {
  readonly along: number
  readonly near: number
  readonly far: number
  readonly captioned: boolean
}
/** A dimension on a row: its stretch along the row, and ways to set its label, the fullest first and the barest last. */
export interface Stretch {
  readonly low: number
  readonly high: number
  readonly ways: readonly [Way, ...Way[]]
}
/** Where a stretch went: tier 0 is nearest to the drawing; `mid` is the label's middle along the row. */
export interface Seat {
  readonly tier: number
  readonly mid: number
  readonly way: Way
  readonly outside: boolean
}

/** The ends between which labels may stand, the half width of a tick, and what is kept free around a label. */
export interface RowLimits {
  readonly low: number
  readonly high: number
  readonly tick: number
  readonly clear: number
}
type Taken = readonly [low: number, high: number]

const touching = 0.01
const isFree = (taken: readonly Taken[], [low, high]: Taken): boolean =>
  taken.every(([from, to]) => high <= from + touching || low >= to - touching)

/** The fullest way that the stretch has room for; undefined when its label must go outside. */
const insideWay = ({ low, high, ways }: Stretch, { tick, clear }: RowLimits): Way | undefined =>
  ways.find((way) => way.along <= high - low - 2 * (tick + clear))

/** Outside the last tick, to the high side first. */
function outsideSeats(
  { low, high, ways }: Stretch,
  { tick, clear }: RowLimits,
): readonly { readonly taken: Taken; readonly mid: number; readonly way: Way }[] {
  const way = ways.at(-1) as Way
  const reach = tick + clear + way.along
  return [
    { taken: [low, high + reach + clear], mid: high + reach - way.along / 2, way },
    { taken: [low - reach - clear, high], mid: low - reach + way.along / 2, way },
  ]
}

/** True when `a` reaches over all of `b` and farther. */
const spans = (a: Stretch, b: Stretch): boolean =>
  a.low <= b.low + touching && a.high >= b.high - touching && a.high - a.low > b.high - b.low + touching

/** The stretches, each after all that it spans; then those that hold their labels, then short before long. */
function inTurn(stretches: readonly Stretch[], limits: RowLimits): readonly Stretch[] {
  const level = new Map<Stretch, number>()
  const byLength = [...stretches].sort((a, b) => a.high - a.low - (b.high - b.low))
  for (const stretch of byLength)
    level.set(
      stretch,
      Math.max(-1, ...byLength.filter((other) => spans(stretch, other)).map((other) => level.get(other) ?? 0)) + 1,
    )
  const isOutside = (stretch: Stretch): number => Number(insideWay(stretch, limits) === undefined)
  return byLength.sort((a, b) => (level.get(a) as number) - (level.get(b) as number) || isOutside(a) - isOutside(b))
}

/**
 * Seats every stretch of a row in tiers, so that no two share any of their row and what is long stands farther out than the short that it spans.
 * Those that hold their labels go first, then those whose label goes outside the last tick. A seat is always found, in the worst case on a
 * tier of its own; the answer is in the order given.
 */
export function seats(stretches: readonly Stretch[], limits: RowLimits): readonly Seat[] {
  const tiers: Taken[][] = []
  const take = (taken: Taken, least: number): number => {
    let tier = least
    while (!isFree(tiers[tier] ?? [], taken)) tier++
    for (let empty = tiers.length; empty <= tier; empty++) tiers.push([])
    tiers[tier]?.push(taken)
    return tier
  }
  const found = new Map<Stretch, Seat>()
  const seatOf = (stretch: Stretch): Seat => {
    const least = Math.max(0, ...[...found].filter(([other]) => spans(stretch, other)).map(([, seat]) => seat.tier + 1))
    const way = insideWay(stretch, limits)
    if (way) return { tier: take([stretch.low, stretch.high], least), mid: (stretch.low + stretch.high) / 2, way, outside: false }
    const choices = outsideSeats(stretch, limits)
    const within = choices.filter(({ taken }) => taken[0] >= limits.low && taken[1] <= limits.high)
    const chosen =
      within.find(({ taken }) => isFree(tiers[least] ?? [], taken)) ?? within[0] ?? (choices[0] as (typeof choices)[0])
    return { tier: take(chosen.taken, least), mid: chosen.mid, way: chosen.way, outside: true }
  }
  for (const stretch of inTurn(stretches, limits)) found.set(stretch, seatOf(stretch))
  return stretches.map((stretch) => found.get(stretch) as Seat)
}
