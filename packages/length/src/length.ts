declare const length: unique symbol
/** A whole number of nanometres, plain JSON. 1 in = 25,400,000; 1/64 in = 396,875; sums are exact to `furthest`. */
export type Length = number & { readonly [length]: true }

/** Nanometres in one of each; exact by definition (NIST SP 811, Appendix B.8). */
export const inch = 25_400_000 as Length
export const foot = 304_800_000 as Length
export const yard = 914_400_000 as Length
export const millimetre = 1_000_000 as Length
export const centimetre = 10_000_000 as Length
export const metre = 1_000_000_000 as Length

/** 9,000 km: up to here every whole nanometre is held exactly by a JavaScript number (2^53 nm is 9,007 km). */
export const furthest = 9_000_000_000_000_000 as Length

/**
 * The nearest whole number; half-way cases go away from zero, so that a length and its negative round alike, and −0 is never given.
 * Use it wherever a length is worked out by more than sums: `wholeNanometres(width / 3)`.
 */
export const wholeNanometres = (nanometres: number): Length => {
  const size = Math.round(Math.abs(nanometres))
  return (nanometres < 0 && size > 0 ? -size : size) as Length
}

/** Inches to a length, rounded to the nanometre. */
export const inches = (value: number): Length => wholeNanometres(value * inch)
/** Millimetres to a length, rounded to the nanometre. */
export const millimetres = (value: number): Length => wholeNanometres(value * millimetre)
