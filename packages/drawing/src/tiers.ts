/** A way to set a label on a dimension's line: how much of the line it takes, and how far it reaches to either side of it. */
export interface Way { readonly along: number; readonly near: number; readonly far: number; readonly captioned: boolean }
/** A dimension on a row: its stretch along the row, and ways to set its label, the fullest first and the barest last. */
export interface Stretch { readonly low: number; readonly high: number; readonly ways: readonly [Way, ...Way[]] }
/** Where a stretch went: tier 0 is nearest to the drawing; `mid` is the label's middle along the row. */
export interface Seat { readonly tier: number; readonly mid: number; readonly way: Way; readonly outside: boolean }

/** The ends between which labels may stand, the half width of a tick, and what is kept free around a label. */
export interface RowLimits { readonly low: number; readonly high: number; readonly tick: number; readonly clear: number }
type Taken = readonly [low: number, high: number]

const touching = 0.01
const isFree = (taken: readonly Taken[], [low, high]: Taken): boolean => taken.every(([from, to]) => high <= from + touching || low >= to - touching)

/** The fullest way that the stretch has room for; undefined when its label must go outside. */
const insideWay = ({ low, high, ways }: Stretch, { tick, clear }: RowLimits): Way | undefined => ways.find((way) => way.along <= high - low - 2 * (tick + clear))

/** Outside the last tick, to the high side first. */
function outsideSeats({ low, high, ways }: Stretch, { tick, clear }: RowLimits): readonly { readonly taken: Taken; readonly mid: number; readonly way: Way }[] {
  const way = ways.at(-1) as Way
  const reach = tick + clear + way.along
  return [
    { taken: [low, high + reach + clear], mid: high + reach - way.along / 2, way },
    { taken: [low - reach - clear, high], mid: low - reach + way.along / 2, way },
  ]
}

/**
 * Seats every stretch of a row in tiers, so that no two share any of their row: those that hold their labels first, short before long,
 * then those whose label goes outside the last tick. In the order given; a seat is always found, in the worst case on a tier of its own.
 */
export function seats(stretches: readonly Stretch[], limits: RowLimits): readonly Seat[] {
  const tiers: Taken[][] = []
  const take = (taken: Taken): number => {
    const found = tiers.findIndex((tier) => isFree(tier, taken))
    const tier = found === -1 ? tiers.length : found
    tiers[tier] = [...(tiers[tier] ?? []), taken]
    return tier
  }
  const seatOf = (stretch: Stretch): Seat => {
    const way = insideWay(stretch, limits)
    if (way) return { tier: take([stretch.low, stretch.high]), mid: (stretch.low + stretch.high) / 2, way, outside: false }
    const choices = outsideSeats(stretch, limits)
    const within = choices.filter(({ taken }) => taken[0] >= limits.low && taken[1] <= limits.high)
    const chosen = within.find(({ taken }) => tiers[0] === undefined || isFree(tiers[0], taken)) ?? within[0] ?? (choices[0] as (typeof choices)[0])
    return { tier: take(chosen.taken), mid: chosen.mid, way: chosen.way, outside: true }
  }
  const order = stretches.map((stretch, place) => ({ stretch, place, outside: insideWay(stretch, limits) === undefined }))
  order.sort((a, b) => Number(a.outside) - Number(b.outside) || a.stretch.high - a.stretch.low - (b.stretch.high - b.stretch.low) || a.place - b.place)
  const found = new Map(order.map(({ stretch, place }) => [place, seatOf(stretch)]))
  return stretches.map((_, place) => found.get(place) as Seat)
}
