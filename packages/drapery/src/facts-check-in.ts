import type { Place } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import type { Fact } from '@evenhem/plugin'

const known = { type: 'object', required: ['value'], properties: { value: { type: 'integer' } } }
const text = { type: 'string' }

/** A part of the pull list to be counted when it comes. Everybody who gives `parts` gives these beside them, since a rule may not read those. */
export interface Packed {
  /** Its code, as on the pull list. */
  readonly what: string
  readonly needed: Known<number>
  readonly hardware?: Place | undefined
  /** Where its own plugin takes the count and judges it; others leave it to that. */
  readonly counted?: readonly { readonly at: Place; readonly needed: number }[] | undefined
}
export const packed = {
  id: 'drapery/packed@1',
  of: 'treatment',
  many: true,
  schema: {
    type: 'object',
    required: ['what', 'needed'],
    properties: {
      what: text,
      needed: known,
      hardware: text,
      counted: { type: 'array', items: { type: 'object', required: ['at', 'needed'] } },
    },
    additionalProperties: false,
  },
} as const as Fact<Packed, 'treatment'> & { readonly many: true }

/** What was counted at a window beyond what a treatment needs: another layer may take it. */
export interface Surplus {
  readonly treatment: Place
  readonly what: string
  readonly hardware?: Place | undefined
  readonly came: number
  readonly spare: number
}
export const surplus = {
  id: 'drapery/surplus@1',
  of: 'window',
  many: false,
  schema: {
    type: 'array',
    items: {
      type: 'object',
      required: ['treatment', 'what', 'came', 'spare'],
      properties: {
        treatment: text,
        what: text,
        hardware: text,
        came: { type: 'integer' },
        spare: { type: 'integer', minimum: 1 },
      },
      additionalProperties: false,
    },
  },
} as const as Fact<readonly Surplus[], 'window'> & { readonly many: false }

/** How shallow and how deep pins work on this hardware; what is left out, it does not limit. Given by hardware. */
export interface PinReach {
  readonly least?: Known<Length> | undefined
  readonly most?: Known<Length> | undefined
}
export const pinReach = {
  id: 'drapery/pin-reach@1',
  of: 'treatment',
  many: false,
  schema: { type: 'object', properties: { least: known, most: known }, additionalProperties: false },
} as const as Fact<PinReach, 'treatment'> & { readonly many: false }

/** How much is free between the highest of the hardware, as it is lifted in, and what is above it; negative: it does not go in. */
export const headRoomLeft = {
  id: 'drapery/head-room-left@1',
  of: 'treatment',
  many: false,
  schema: known,
} as const as Fact<Known<Length>, 'treatment'> & { readonly many: false }

/** Two panels that came in each other's bags: their sizes as read lie at the wrong places. Given only where that is so. */
export const swapped = {
  id: 'drapery/swapped@1',
  of: 'treatment',
  many: false,
  schema: { type: 'object', required: ['panels'] },
} as const as Fact<{ readonly panels: readonly string[] }, 'treatment'> & { readonly many: false }
