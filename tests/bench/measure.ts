/** Windows of the jobs that are measured. */
export const sizes = [1, 12, 300, 3000] as const

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

/** The middle one of some numbers; NaN of none. */
export const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN

export interface Row {
  readonly what: string
  readonly is: number
  readonly unit: string
  /** What the design allows. Left out: it says nothing of this, the number is only told. */
  readonly limit?: number
  readonly way?: 'most' | 'least'
  readonly note?: string
}

/** Prints one line a measurement: what, how much, and whether it is inside the design's limit. */
export function tell({ what, is, unit, limit, way = 'most', note = '' }: Row): void {
  const good = limit === undefined ? '   ' : (way === 'most' ? is <= limit : is >= limit) ? 'in ' : 'OUT'
  const against = limit === undefined ? '' : `${way === 'most' ? '≤' : '≥'} ${limit}`
  console.log(`${good}  ${what.padEnd(58)} ${shown(is).padStart(8)} ${unit.padEnd(12)} ${against} ${note}`.trimEnd())
}

const shown = (is: number): string => (Math.abs(is) >= 100 ? is.toFixed(0) : is.toPrecision(3))
