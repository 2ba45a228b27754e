import type { Pointer } from './pointers.ts'

export type Severity = 'error' | 'warning' | 'info'
export type Values = Readonly<Record<string, string | number>>

/** Where a finding stands: at a value or at the name of a member, by its pointer; or between two offsets of the text. */
export type Spot =
  | {
      readonly value: Pointer /** Only a part of the text inside its quotes, in UTF-16 code units. */
      readonly part?: readonly [number, number]
    }
  | { readonly name: Pointer }
  | { readonly from: number; readonly to: number }

/** Something to be said about a job file. Lines and columns are looked up later, and only when there is something to say. */
export interface Finding {
  readonly code: string
  readonly severity: Severity
  readonly spot: Spot
  readonly values: Values
  /** Another place that it is about; the sentence gets its `otherLine` and `otherColumn`. */
  readonly other?: Spot
}

const finding =
  (severity: Severity) =>
  (code: string, spot: Spot, values: Values = {}, other?: Spot): Finding => ({ code, severity, spot, values, other })

/** The order can't be used before this is put right. */
export const error = finding('error')
/** Probably not what was meant. */
export const warning = finding('warning')
/** Good to know. */
export const info = finding('info')
