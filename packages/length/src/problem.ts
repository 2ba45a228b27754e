import type { LengthCode } from './words.ts'

/**
 * Why text is no length or quantity, and where. Columns count UTF-16 code units from 1; `end` is the column after the last one,
 * so that `text.slice(column - 1, end - 1)` is what is wrong. For a number they count in `String(number)`.
 */
export interface LengthProblem {
  readonly code: LengthCode
  readonly column: number
  readonly end: number
  /** What the sentence of `lengthWords` is filled with. */
  readonly values: Readonly<Record<string, string>>
}

/** The answer for text that is refused. */
export interface Refused {
  readonly ok: false
  readonly problem: LengthProblem
}

/** A problem from offset `from` up to offset `to`. */
export const problem = (
  code: LengthCode,
  from: number,
  to: number,
  values: Readonly<Record<string, string>> = {},
): LengthProblem => ({
  code,
  column: from + 1,
  end: to + 1,
  values,
})

/** Whether a step of reading ended in a problem. */
export const isProblem = (found: object): found is LengthProblem => 'code' in found
