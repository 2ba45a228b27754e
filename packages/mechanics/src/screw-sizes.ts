import { aboveZero } from './found.ts'
import { inch } from './inch-pounds.ts'

/**
 * The diameter of a wood screw by its number, m, over the thread: 0.060 + 0.013 N inches (ASME B18.6.1, from memory; it gives every diameter printed in
 * FPL-GTR-282, Table 8-9, and NDS Table L3 from No. 4 to No. 24). Other than a whole number from 0 to 24 throws a RangeError.
 */
export function screwDiameter(number: number): number {
  if (!Number.isInteger(number) || number < 0 || number > 24)
    throw new RangeError(`Unexpected screw number ${number}, expected a whole number from 0 to 24; read it off the package.`)
  return (0.06 + 0.013 * number) * inch
}

/** Root diameters of rolled threads by number, inches, as printed. */
const printedRoots: Readonly<Record<number, number>> = {
  6: 0.113,
  7: 0.122,
  8: 0.131,
  9: 0.142,
  10: 0.152,
  12: 0.171,
  14: 0.196,
}

/** The diameter at the root of a rolled thread, m (NDS 2018, Table L3; read); undefined for a number that is not printed there. */
export const rootDiameter = (number: number): number | undefined => {
  const printed = printedRoots[number]
  return printed === undefined ? undefined : printed * inch
}

/** The length of a cut thread on a screw of a length, m: about two thirds of it (NDS 2018, Table L3, footnotes; read). */
export function cutThread(length: number): number {
  aboveZero({ length })
  return (2 / 3) * length
}

/** The least length of a rolled thread, m: two thirds of the screw or four diameters, whichever is more, and all of a short screw (NDS 2018, Table L3, footnotes; read). */
export function rolledThread(length: number, diameter: number): number {
  aboveZero({ length, diameter })
  return Math.min(length, Math.max(4 * diameter, (2 / 3) * length))
}
