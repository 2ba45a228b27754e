import type { LengthReckoning } from '@evenhem/length'
import type { Follows } from '../arithmetic/transfer.ts'
import { array, object, one, reckoning, text } from './shapes.ts'

/** The top hole of each bracket and support where a level rod has it, with its plate. Given by hardware that is screwed to the wall. */
export interface PlannedMark {
  /** `left`, `right` or the id of a support. */
  readonly bracket: string
  readonly x: LengthReckoning
  /** The top of its plate, and its highest hole, above the level line. */
  readonly plate: LengthReckoning
  readonly hole: LengthReckoning
}
export interface PlannedMarks {
  /** From left to right. */
  readonly marks: readonly PlannedMark[]
}
export const plannedMarks = one<PlannedMarks, 'treatment'>(
  'drapery/planned-marks@1',
  'treatment',
  object({ marks: array(object({ bracket: text, x: reckoning, plate: reckoning, hole: reckoning })) }),
)

/** A bracket as the rod hangs on it: where the hooks bear there, above the level line. */
export interface HungBracket {
  readonly bracket: string
  readonly x: LengthReckoning
  readonly height: LengthReckoning
  /** What put its holes elsewhere than a level rod has them. Undefined: they are where those are. */
  readonly by?: 'fixed' | 'read' | 'first' | 'in-line' | Follows | undefined
  /** How much higher its holes are than those of a level rod; its plate's top; the top of the rod there. With `by`. */
  readonly moved?: LengthReckoning | undefined
  /** Its mark from the floor right below it, where it was read or chosen. */
  readonly mark?: LengthReckoning | undefined
  readonly plate?: LengthReckoning | undefined
  readonly rod?: LengthReckoning | undefined
  /** The floor right below it above the level line, as its own readings tell it. */
  readonly floor?: LengthReckoning | undefined
}

/** The line through the brackets along which the hooks bear: straight from one to the next. From the moment a bracket is fixed it follows that bracket. */
export interface HungLine {
  /** From left to right, two or more. */
  readonly points: readonly HungBracket[]
  /** The bracket that the others are taken from. */
  readonly first: string
}
export const hungLine = one<HungLine, 'treatment'>(
  'drapery/hung-line@1',
  'treatment',
  object({
    points: array(
      object(
        {
          bracket: text,
          x: reckoning,
          height: reckoning,
          by: { enum: ['fixed', 'read', 'first', 'in-line', 'ceiling', 'head', 'level', 'floor', 'between'] },
          moved: reckoning,
          mark: reckoning,
          plate: reckoning,
          rod: reckoning,
          floor: reckoning,
        },
        ['bracket', 'x', 'height'],
      ),
    ),
    first: text,
  }),
)
