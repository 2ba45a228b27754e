import type { Known, Length, LengthReckoning } from '@evenhem/length'
import { array, known, object, one, reckoning, text } from './shapes.ts'

/** Heights above the level line that follow from the panels alone. `hangLine`: where the hooks bear. */
export interface HangLine {
  /** What the hem is measured from. */
  readonly hemAt: 'floor' | 'sill' | 'apron'
  readonly highestFloor: LengthReckoning
  readonly hem: LengthReckoning
  readonly top: LengthReckoning
  readonly hangLine: LengthReckoning
  /** The panel that needs the highest hang line and so sets it. */
  readonly sets: string
  /** The hem of each panel above the level line, and how far it clears what it is measured from. */
  readonly panels: readonly { readonly panel: string; readonly hem: LengthReckoning; readonly clears: LengthReckoning }[]
  /** Fixed to a ceiling: how far the hems clear at the left, in the middle and at the right of what is covered. */
  readonly underCeiling?:
    | { readonly left: LengthReckoning; readonly middle: LengthReckoning; readonly right: LengthReckoning }
    | undefined
}
export const hangLine = one<HangLine, 'treatment'>(
  'drapery/hang-line@1',
  'treatment',
  object(
    {
      hemAt: { enum: ['floor', 'sill', 'apron'] },
      highestFloor: reckoning,
      hem: reckoning,
      top: reckoning,
      hangLine: reckoning,
      sets: text,
      panels: array(object({ panel: text, hem: reckoning, clears: reckoning })),
      underCeiling: object({ left: reckoning, middle: reckoning, right: reckoning }),
    },
    ['hemAt', 'highestFloor', 'hem', 'top', 'hangLine', 'sets', 'panels'],
  ),
)

/** From the wall to where the hooks bear. Given by hardware. */
export const projection = one<Known<Length>, 'treatment'>('drapery/projection@1', 'treatment', known)

/** From the top of the rod down to where the hooks bear. Given by hardware. */
export const bearingDrop = one<Known<Length>, 'treatment'>('drapery/bearing-drop@1', 'treatment', known)

/** The top of the rod above the level line. Given by hardware. */
export const topOfRod = one<LengthReckoning, 'treatment'>('drapery/top-of-rod@1', 'treatment', reckoning)

/** From a ceiling down to where the hooks bear, of what is fixed to one. Given by hardware that can be. */
export const ceilingDrop = one<LengthReckoning, 'treatment'>('drapery/ceiling-drop@1', 'treatment', reckoning)
