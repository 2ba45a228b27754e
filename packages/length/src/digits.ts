/**
 * A number to twelve significant digits: what every number but a length is rounded to when it leaves a computation,
 * because engines differ in the last bits of `sin`, `pow`, `exp`, `log` and `hypot`. −0 becomes 0; what is not finite stays.
 */
export const twelveDigits = (n: number): number => (n === 0 ? 0 : Number(n.toPrecision(12)))

/** A share in whole per cents, never fewer than it is; what the last bits of arithmetic add does not count. */
export const percentUp = (share: number): number => Math.ceil(100 * share - 1e-9)
