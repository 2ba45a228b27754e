import type { Place } from '@evenhem/job'
import type { Length, LengthReckoning, Reckoning } from '@evenhem/length'
import { array, length, object, one, reckoning, text } from './shapes.ts'

/** How the loads of a window are drawn: its rods one below the other, all to one scale. */
export interface LoadsDrawn {
  /** The treatments whose rods are drawn, from top to bottom. */
  readonly treatments: readonly Place[]
  /** The longest rod with its finials. */
  readonly wide: Length
  /** How many times as steep as widths the rods hang. */
  readonly steep: number
}
export const loadsDrawn = one<LoadsDrawn, 'window'>(
  'drapery/loads-drawn@1',
  'window',
  object({ treatments: array(text), wide: length, steep: { type: 'number' } }),
)

/** A bracket as people are told of it. */
export interface BracketTold {
  readonly bracket: string
  /** Code of its name. */
  readonly name: string
  readonly x: LengthReckoning
  /** All that hangs on it, N. */
  readonly load: Reckoning
  /** Code of what it is fixed in. */
  readonly behind?: string | undefined
  readonly fastener?: string | undefined
  /** Which part of what its fasteners hold is used, by all and by one of them alone, and of what its maker allows. */
  readonly used?: Reckoning | undefined
  readonly byOne?: Reckoning | undefined
  readonly ofRated?: Reckoning | undefined
  /** Code of what is missing. */
  readonly lacks?: string | undefined
  /** Whether it holds; `warn`: the rod would lift out of it. */
  readonly verdict: 'pass' | 'fail' | 'warn' | 'unknown'
}
/** Loads as people are told of them. */
export interface LoadsTold {
  /** From left to right. */
  readonly brackets: readonly BracketTold[]
  /** The lowest place of the rod, and how far it may hang there; left out while its stiffness is not known. */
  readonly sag?: { readonly sag: LengthReckoning; readonly most: LengthReckoning; readonly when: string } | undefined
  /** Codes of what was taken for granted. */
  readonly assumes: readonly string[]
}
export const loadsTold = one<LoadsTold, 'treatment'>(
  'drapery/loads-told@1',
  'treatment',
  object(
    {
      brackets: array(
        object(
          {
            ...{ bracket: text, name: text, x: reckoning, load: reckoning, behind: text, fastener: text },
            ...{ used: reckoning, byOne: reckoning, ofRated: reckoning, lacks: text },
            verdict: { enum: ['pass', 'fail', 'warn', 'unknown'] },
          },
          ['bracket', 'name', 'x', 'load', 'verdict'],
        ),
      ),
      sag: object({ sag: reckoning, most: reckoning, when: text }),
      assumes: array(text),
    },
    ['brackets', 'assumes'],
  ),
)
