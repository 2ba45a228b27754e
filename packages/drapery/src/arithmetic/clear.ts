import { formula, type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'

/** What something takes up: along the wall, up, and out from the wall. Nanometres. */
export interface Block {
  readonly left: Length
  readonly right: Length
  readonly bottom: Length
  readonly top: Length
  readonly near: Length
  readonly far: Length
}

/**
 * How far two blocks are apart: the largest of their distances sideways, up or down, and out from the wall. Negative: they are in one another, by so
 * much at least. Touching blocks are 0 apart.
 */
export const blocksApart = (a: Block, b: Block): Length =>
  Math.max(a.left - b.right, b.left - a.right, a.bottom - b.top, b.bottom - a.top, a.near - b.far, b.near - a.far) as Length

/** The same as a reckoning: every edge of the thing that must stay clear is a term. */
export function clearOf(
  name: string,
  thing: Block,
  other: Block,
  edges: {
    readonly left: Known<Length>
    readonly bottom: Known<Length>
    readonly width: Known<Length>
    readonly height: Known<Length>
  },
): LengthReckoning {
  return formula(
    name,
    'drapery/apart',
    blocksApart(thing, other),
    'drapery/apart-most',
    plus('drapery/obstacle-left', edges.left),
    plus('drapery/obstacle-width', edges.width),
    plus('drapery/obstacle-bottom', edges.bottom),
    plus('drapery/obstacle-height', edges.height),
  )
}

/** Whether a plate lies partly on a casing: neither wholly on it nor wholly off it by `gap`. Only plates beside or over the casing's boards count. */
export function isHalfOn(
  plate: { readonly left: number; readonly right: number },
  casing: { readonly left: number; readonly right: number },
  gap: number,
): boolean {
  const isOff = plate.right <= casing.left - gap || plate.left >= casing.right + gap
  const isOn = plate.left >= casing.left + gap && plate.right <= casing.right - gap
  return !isOff && !isOn
}

/** What is free over the highest point of the hardware: from it up to the ceiling, or to the bottom of a crown. Negative: it does not fit. */
export const headRoom = (name: string, overhead: LengthReckoning | Known<Length>, highest: LengthReckoning): LengthReckoning =>
  sum(name, 'drapery/free-overhead', plus('drapery/overhead', overhead), minus('drapery/highest-point', highest))

/** How far in front of the stool the hooks bear: the projection less the stool's depth. */
export const stoolRoom = (name: string, projection: Known<Length>, depth: Known<Length>): LengthReckoning =>
  sum(name, 'drapery/stool-room', plus('drapery/projection', projection), minus('drapery/sill-depth', depth))

/** By how much a panel grows longer once it hangs: `percent` of its finished length. */
export const settles = (name: string, finishedLength: Known<Length>, percent: Known<number>): LengthReckoning =>
  formula(
    name,
    'drapery/settles',
    (finishedLength.value * percent.value) / 100,
    'drapery/settles-share',
    plus('drapery/finished-length', finishedLength),
    plus('drapery/settling-percent', percent),
  )
