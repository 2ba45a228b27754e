/** The best of `rounds` runs, in milliseconds, after one that warms up. The best is what the work takes; the rest is what the machine did beside it. */
export function best(rounds: number, run: () => unknown): number {
  run()
  let least = Number.POSITIVE_INFINITY
  for (let round = 0; round < rounds; round++) {
    const from = performance.now()
    run()
    least = Math.min(least, performance.now() - from)
  }
  return least
}

export interface Row {
  readonly what: string
  readonly is: number
  readonly unit: string
  readonly limit: number
  readonly way?: 'most' | 'least'
  readonly note?: string
}
/** One line a measurement: what, how much, and whether it is inside the design's limit. */
export const line = ({ what, is, unit, limit, way = 'most', note = '' }: Row): string => {
  const good = way === 'most' ? is <= limit : is >= limit
  return `${good ? 'in ' : 'OUT'}  ${what.padEnd(58)} ${is.toPrecision(3).padStart(8)} ${unit.padEnd(12)} ${way === 'most' ? '≤' : '≥'} ${limit} ${note}`
}
