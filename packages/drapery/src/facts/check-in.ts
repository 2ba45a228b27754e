import type { Place } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import { array, known, list, object, one, text } from './shapes.ts'

/** A part of the pull list to be counted when it comes. Everybody who gives `parts` gives these beside them, since a rule may not read those. */
export interface Packed {
  /** Its code, as on the pull list. */
  readonly what: string
  readonly needed: Known<number>
  readonly hardware?: Place | undefined
  /** Where its own plugin takes the count and judges it; others leave it to that. */
  readonly counted?: readonly { readonly at: Place; readonly needed: number }[] | undefined
}
export const packed = list<Packed, 'treatment'>(
  'drapery/packed@1',
  'treatment',
  object({ what: text, needed: known, hardware: text, counted: array({ type: 'object', required: ['at', 'needed'] }) }, [
    'what',
    'needed',
  ]),
)

/** What was counted at a window beyond what a treatment needs: another layer may take it. */
export interface Surplus {
  readonly treatment: Place
  readonly what: string
  readonly hardware?: Place | undefined
  readonly came: number
  readonly spare: number
}
export const surplus = one<readonly Surplus[], 'window'>(
  'drapery/surplus@1',
  'window',
  array(
    object({ treatment: text, what: text, hardware: text, came: { type: 'integer' }, spare: { type: 'integer', minimum: 1 } }, [
      'treatment',
      'what',
      'came',
      'spare',
    ]),
  ),
)

/** How shallow and how deep pins work on this hardware; what is left out, it does not limit. Given by hardware. */
export interface PinReach {
  readonly least?: Known<Length> | undefined
  readonly most?: Known<Length> | undefined
}
export const pinReach = one<PinReach, 'treatment'>('drapery/pin-reach@1', 'treatment', object({ least: known, most: known }, []))

/** How much is free between the highest of the hardware, as it is lifted in, and what is above it; negative: it does not go in. */
export const headRoomLeft = one<Known<Length>, 'treatment'>('drapery/head-room-left@1', 'treatment', known)

/** Two panels that came in each other's bags: their sizes as read lie at the wrong places. Given only where that is so. */
export const swapped = one<{ readonly panels: readonly string[] }, 'treatment'>(
  'drapery/swapped@1',
  'treatment',
  object({ panels: array(text) }),
)
