declare const length: unique symbol
/** A whole number of nanometres, plain JSON. 1 in = 25,400,000; exact to 9,000 km. */
export type Length = number & { readonly [length]: true }

/** Nanometres in one of each; exact by definition (NIST SP 811, Appendix B.8). */
export const inch = 25_400_000 as Length
export const foot = 304_800_000 as Length
export const millimetre = 1_000_000 as Length
export const centimetre = 10_000_000 as Length
export const metre = 1_000_000_000 as Length

/** Inches to a length, rounded to the nanometre. */
export const inches = (value: number): Length => Math.round(value * inch) as Length
/** Millimetres to a length, rounded to the nanometre. */
export const millimetres = (value: number): Length => Math.round(value * millimetre) as Length
