import type { Length, Unit, Written } from '@evenhem/length'

/** A number as it is shown: a length as written by the tape, or a bare count. */
export type Amount = Omit<Written, 'unit' | 'off'> & {
  readonly unit: Written['unit'] | 'none'
  /** What rounding to the tape added; absent or 0: it is exactly so much. */
  readonly off?: Length
}

/** A number without a unit: whole, a half, or with decimals. */
export function bare(value: number): Amount {
  const size = Math.abs(value)
  const half = size % 1 === 0.5 ? { numerator: 1, denominator: 2 } : {}
  const whole = size % 1 === 0.5 ? Math.floor(size) : Math.round(size * 1000) / 1000
  return {
    text: String(value),
    negative: value < 0,
    whole: whole === 0 && size !== 0 ? '' : String(whole),
    ...half,
    unit: 'none',
  }
}

/** Writes a number of any unit; lengths by the reader's tape. */
export const amountOf = (value: number, unit: Unit, write: (length: number) => Written): Amount =>
  unit === 'length' ? write(value) : bare(value)
