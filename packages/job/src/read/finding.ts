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

/** The beginning of a text, as much as a sentence takes; a mark says that it was cut. */
export const short = (text: string, most = 40): string => (text.length > most ? `${text.slice(0, most - 1)}…` : text)

// A name in a file may be megabytes; no sentence needs them.
const inShort = (values: Values): Values =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, typeof value === 'string' ? short(value, 400) : value]))

const finding =
  (severity: Severity) =>
  (code: string, spot: Spot, values: Values = {}, other?: Spot): Finding => ({
    code,
    severity,
    spot,
    values: inShort(values),
    other,
  })

/** The order can't be used before this is put right. */
export const error = finding('error')
/** Probably not what was meant. */
export const warning = finding('warning')
/** Good to know. */
export const info = finding('info')
