import { kilogramForce, type Length, type Unit, type Written } from '@evenhem/length'

/** A number as it is shown: a length as written by the tape, what something weighs, or a bare count. */
export type Amount = Omit<Written, 'unit' | 'off'> & {
  readonly unit: Written['unit'] | 'none'
  /** What stands behind a number that is no length: lb, kg. */
  readonly suffix?: string
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

/** How a reader's numbers are written. */
export interface Writing {
  readonly write: (length: Length) => Written
  readonly weigh: (kilograms: number) => string
}

/** What something weighs, with its unit behind it. */
export function weighed(kilograms: number, { weigh }: Pick<Writing, 'weigh'>): Amount {
  const text = weigh(kilograms)
  const [whole = '', suffix = ''] = text.split(/\s+(?=\S+$)/)
  return { text, negative: false, whole, suffix, unit: 'none' }
}
/** A load is told as what weighs as much. */
export const loadOf = (newtons: number, writing: Pick<Writing, 'weigh'>): Amount => weighed(newtons / kilogramForce, writing)

/** Writes a number of any unit; lengths by the reader's tape. */
export function amountOf(value: number, unit: Unit, writing: Writing): Amount {
  if (unit === 'mass') return weighed(value, writing)
  if (unit === 'force') return loadOf(value, writing)
  return unit === 'length' ? writing.write(value as Length) : bare(value)
}
