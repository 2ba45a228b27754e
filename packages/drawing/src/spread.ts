import { clamp } from './space.ts'

/** A thing that wants to stand at `at` and needs `slot` along the column. */
export interface Wish {
  readonly at: number
  readonly slot: number
}

/**
 * Places in the order given, neighbours at least half of both their slots apart, as near to their wishes as can be (least squares),
 * between `from` and `to` when they fit there. Wishes are brought to one measure by taking off what stands before each; then equal places
 * are pooled from wherever the order would be broken (isotonic regression by pooling of adjacent violators; Barlow et al., 1972).
 */
export function spread(wishes: readonly Wish[], from: number, to: number): readonly number[] {
  const before: number[] = []
  wishes.forEach(({ slot }, n) => {
    before.push(n === 0 ? 0 : (before[n - 1] as number) + ((wishes[n - 1] as Wish).slot + slot) / 2)
  })
  const pools: { sum: number; count: number }[] = []
  wishes.forEach(({ at }, n) => {
    pools.push({ sum: at - (before[n] as number), count: 1 })
    for (
      let last = pools.at(-1), prior = pools.at(-2);
      last && prior && prior.sum / prior.count > last.sum / last.count;
      last = pools.at(-1), prior = pools.at(-2)
    ) {
      pools.splice(-2, 2, { sum: prior.sum + last.sum, count: prior.count + last.count })
    }
  })
  const least = from + (wishes[0]?.slot ?? 0) / 2
  const most = to - (wishes.at(-1)?.slot ?? 0) / 2 - (before.at(-1) ?? 0)
  const free = pools.flatMap(({ sum, count }) =>
    Array.from({ length: count }, () => clamp(sum / count, least, Math.max(least, most))),
  )
  return free.map((place, n) => place + (before[n] as number))
}
