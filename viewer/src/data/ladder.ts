import type { Length } from '@evenhem/length'
import { words } from '../words.ts'
import type { Hole } from './facts.ts'
import { holeName, holesOf } from './holes.ts'
import type { Sheet } from './sheet.ts'

/** A number to read from the ladder. */
export interface LadderNumber {
  /** Which hole of which side. */
  readonly what: string
  /** From where it is measured. */
  readonly from: string
  /** Both in a word, for the number before and after. */
  readonly short: string
  readonly value: Length
}

/** Every number that is pencilled at a window: left side, supports, right side; the highest hole first, how far along the wall before how high. */
export function ladderNumbers(sheet: Sheet): readonly LadderNumber[] {
  const all = holesOf(sheet)
  return (['left', 'middle', 'right'] as const).flatMap((side) =>
    all
      .filter((hole) => hole.side === side)
      .toSorted((a, b) => (side === 'middle' ? a.x.value - b.x.value : 0) || b.fromFloor.value - a.fromFloor.value)
      .flatMap((hole) => [along(sheet, hole), up(sheet, hole)]),
  )
}

/** Holes inside the casing have a distance below zero: they are told from its edge the other way. */
function along(sheet: Sheet, hole: Hole): LadderNumber {
  if (hole.fromCorner) {
    const isLeft = hole.fromCorner.what === 'drapery/from-left-corner'
    return {
      what: holeName(sheet, hole),
      from: isLeft ? words.fromLeftCorner : words.fromRightCorner,
      short: words.fromCorner,
      value: hole.fromCorner.value,
    }
  }
  const { value } = hole.fromCasing
  const from = value < 0 ? words.insideCasing[hole.side] : words.besideCasing[hole.side]
  return {
    what: holeName(sheet, hole),
    from,
    short: hole.side === 'middle' ? words.fromFirstEdge : words.fromCasing,
    value: Math.abs(value) as Length,
  }
}
const up = (sheet: Sheet, hole: Hole): LadderNumber => ({
  what: holeName(sheet, hole),
  from: hole.fromWall ? words.outFromWall : words.upFromFloor,
  short: hole.fromWall ? words.fromWall : words.fromFloor,
  value: (hole.fromWall ?? hole.fromFloor).value,
})
