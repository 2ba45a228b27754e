import type { Length } from './length.ts'

/** Units a reader may choose. */
export type ReadingUnit = 'in' | 'ft-in' | 'mm' | 'cm'

/** How lengths are shown: the unit and the tape's smallest step in it (`1/16` in, `1` mm). */
export interface Tape {
  readonly unit: ReadingUnit
  readonly step: Length
}

/** A length as it is shown to a person. The parts let a drawing build the fraction; `text` is the same in a line. */
export interface Written {
  /** `−5/8`, `86 1/2`, `7 ft 2 1/2 in`, `2197 mm`. Inches carry no unit in `text`; the others do. */
  readonly text: string
  readonly negative: boolean
  readonly feet?: number
  /** Digits before the fraction; with decimals (cm) they are included: `219.7`. Empty when there is only a fraction. */
  readonly whole: string
  readonly numerator?: number
  readonly denominator?: number
  readonly unit: ReadingUnit
  /** What rounding added: shown less exact. 0: shown exactly. */
  readonly off: Length
}
