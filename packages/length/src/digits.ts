/**
 * A number to twelve significant digits: what every number but a length is rounded to when it leaves a computation,
 * because engines differ in the last bits of `sin`, `pow`, `exp`, `log` and `hypot`. −0 becomes 0; what is not finite stays.
 */
export const twelveDigits = (n: number): number => (n === 0 ? 0 : Number(n.toPrecision(12)))
