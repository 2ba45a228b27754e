/** Why there is no value. Nothing is guessed in its place. */
export type Reason = 'end-grain' | 'gravity' | 'size' | 'penetration' | 'margin' | 'not-listed'

/** No value, and why. */
export interface Refusal {
  readonly ok: false
  readonly why: Reason
}
/** A value in SI units, or why there is none. */
export type Found = { readonly ok: true; readonly value: number } | Refusal

export const found = (value: number): Found => ({ ok: true, value })
export const refused = (why: Reason): Refusal => ({ ok: false, why })

/** Throws a RangeError for the first of the numbers, by their names, that is not above 0. */
export function aboveZero(numbers: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(numbers))
    if (!(value > 0 && Number.isFinite(value)))
      throw new RangeError(`Unexpected ${name} ${value}, expected a number above 0; give it in SI units.`)
}
/** Throws a RangeError for the first of the numbers, by their names, that is below 0. */
export function notBelowZero(numbers: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(numbers))
    if (!(value >= 0 && Number.isFinite(value)))
      throw new RangeError(`Unexpected ${name} ${value}, expected 0 or more; give it in SI units.`)
}
