import { aboveZero } from './found.ts'

/** A cross section, bent about its level axis. */
export interface Section {
  /** m² */
  readonly area: number
  /** Second moment of area, m⁴. */
  readonly inertia: number
  /** Section modulus, m³: the inertia over the distance to the outermost fibre. */
  readonly modulus: number
}

/** Half the size outside is how far the outermost fibre lies from the axis. */
const section = (area: number, inertia: number, height: number): Section => ({ area, inertia, modulus: (2 * inertia) / height })
const less = (outside: Section, inside: Section, height: number): Section =>
  section(outside.area - inside.area, outside.inertia - inside.inertia, height)

function holds(outer: number, inner: number): void {
  if (inner >= outer)
    throw new RangeError(`Unexpected inner size ${inner} m, expected less than ${outer} m; give a tube its wall.`)
}

/** A solid round of a diameter, m: area π d²/4, inertia π d⁴/64. A size that is not above 0 throws. Hicks, Civil Engineering Formulas, figure 2.1; read. */
export function solidRound(diameter: number): Section {
  aboveZero({ diameter })
  return section((Math.PI * diameter ** 2) / 4, (Math.PI * diameter ** 4) / 64, diameter)
}

/** A round tube of its diameters outside and inside, m. An inner one that is not smaller throws. Checked against Mott, Table A16-6; read. */
export function roundTube(outer: number, inner: number): Section {
  holds(outer, inner)
  return less(solidRound(outer), solidRound(inner), outer)
}

/** A solid square of a side, m: inertia b⁴/12. */
export const solidSquare = (side: number): Section => rectangle(side, side)

/** A square tube of its sides outside and inside, m, with sharp corners; rounded ones have a little less. */
export function squareTube(outer: number, inner: number): Section {
  holds(outer, inner)
  return less(solidSquare(outer), solidSquare(inner), outer)
}

/** A solid rectangle, m, that bends over its height: inertia b h³/12. */
export function rectangle(width: number, height: number): Section {
  aboveZero({ width, height })
  return section(width * height, (width * height ** 3) / 12, height)
}

/** A rectangular tube, m, of its sizes outside and an even wall, with sharp corners. A wall of half a side or more throws. */
export function rectangleTube(width: number, height: number, wall: number): Section {
  aboveZero({ width, height, wall })
  const side = Math.min(width, height)
  if (2 * wall >= side)
    throw new RangeError(`Unexpected wall ${wall} m, expected less than half of ${side} m; give a solid as a rectangle.`)
  return less(rectangle(width, height), rectangle(width - 2 * wall, height - 2 * wall), height)
}
