import type { Known, Length } from '@evenhem/length'
import { array, known, object, one } from './shapes.ts'

export type Side = 'left' | 'right'

/** The floor under a window as points from left to right, heights from the level line. Between points straight, beyond the ends level. */
export interface Floor {
  readonly points: readonly { readonly x: Known<Length>; readonly y: Known<Length> }[]
}
export const floor = one<Floor, 'window'>('drapery/floor@1', 'window', object({ points: array(object({ x: known, y: known })) }))

/** The ceiling over a window, as points from left to right; at least one. Between points straight, beyond the ends level. */
export const ceiling = one<Floor, 'window'>(
  'drapery/ceiling@1',
  'window',
  object({ points: array(object({ x: known, y: known })) }),
)

/** The casings that a drapery covers: x from the left edge of the first casing of the window. */
export interface Frame {
  /** Undefined: right there. */
  readonly left?: Known<Length> | undefined
  readonly right: Known<Length>
  readonly width: Known<Length>
  /** The highest top of these casings above the level line; undefined while one is not known. */
  readonly top?: Known<Length> | undefined
}
export const frame = one<Frame, 'treatment'>(
  'drapery/frame@1',
  'treatment',
  object({ left: known, right: known, width: known, top: known }, ['right', 'width']),
)
