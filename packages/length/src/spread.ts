import { type Length, wholeNanometres } from './length.ts'

/** A million spaces is more than any drapery has, and keeps the arithmetic below exact. */
const mostSpaces = 1_000_000

const checked = (n: number): number => {
  if (Number.isInteger(n) && n >= 1 && n <= mostSpaces) return n
  throw new RangeError(
    `Unexpected ${n} spaces, expected a whole number from 1 to ${mostSpaces}; check the count before spreading`,
  )
}

/**
 * Where n equal spaces begin and end: n + 1 positions from 0 to the total, each rounded to the nanometre by itself.
 * Rounding the positions and not the space is what makes the spaces add up to the total; they differ by at most 1 nm.
 * A negative total runs to the left: the same positions, negated. Throws a RangeError when n is not a whole number from 1 to a million.
 */
export function spread(total: Length, n: number): readonly Length[] {
  const spaces = checked(n)
  // total × i would pass what a number holds exactly; the whole part and the rest, each times i, do not.
  const rest = total % spaces
  const whole = (total - rest) / spaces
  return Array.from({ length: spaces + 1 }, (_, i) => (whole * i + wholeNanometres((rest * i) / spaces)) as Length)
}

/** The spaces between positions, in their order. Fewer than two positions have none. */
export const spacesOf = (positions: readonly Length[]): readonly Length[] =>
  positions.slice(1).map((position, i) => (position - (positions[i] as Length)) as Length)
