import type { Known, Length, LengthReckoning } from '@evenhem/length'
import type { Corner } from '../arithmetic/corner.ts'
import type { Side } from './ground.ts'
import { array, known, object, one, reckoning, side, text } from './shapes.ts'

/** How a treatment opens, in what the arithmetic needs: where each panel has its ends when it is drawn. x from the left edge of the first casing. */
export interface Share {
  readonly panel: string
  readonly outer: Side
  /** Where its outer end is: at the end of the rod, or where a stationary panel hangs. */
  readonly end: LengthReckoning
  /** Where its leading edge is meant to be when it is drawn. */
  readonly leading: LengthReckoning
  readonly width: LengthReckoning
}

/** Where the closed drapery begins, ends and meets. */
export interface Coverage {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly width: Known<Length>
  /** Where the two panels of a pair meet; undefined for other draws. */
  readonly meets?: LengthReckoning | undefined
  /** The side at which a one-way draw ends when it is drawn; undefined for other draws. */
  readonly leadingEnd?: Side | undefined
  /** What each panel covers, from left to right. */
  readonly shares: readonly Share[]
  /** The corners inside what is covered, from left to right; undefined: it stays on one wall. */
  readonly corners?: readonly Corner[] | undefined
}
export const coverage = one<Coverage, 'treatment'>(
  'drapery/coverage@1',
  'treatment',
  object(
    {
      left: reckoning,
      right: reckoning,
      width: known,
      meets: reckoning,
      leadingEnd: side,
      shares: array(object({ panel: text, outer: side, end: reckoning, leading: reckoning, width: reckoning })),
      corners: array(object({ wall: text, next: text, x: known, degrees: { type: 'number' }, back: reckoning })),
    },
    ['left', 'right', 'width', 'shares'],
  ),
)

/** Where the closed cloth really ends, when hardware keeps it from the ends that are meant. Given by hardware. */
export interface DrawnEnds {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
}
export const drawnEnds = one<DrawnEnds, 'treatment'>(
  'drapery/drawn-ends@1',
  'treatment',
  object({ left: reckoning, right: reckoning }),
)
