import type { Place } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { array, length, object, one, text } from './shapes.ts'

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
