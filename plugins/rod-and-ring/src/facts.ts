import type { LengthReckoning } from '@evenhem/length'
import type { Fact } from '@evenhem/plugin'

/** Where the hardware stands along the wall; x from the left edge of the first casing. */
export interface Along {
  readonly left: { readonly bracket: LengthReckoning; readonly rodEnd: LengthReckoning }
  readonly right: { readonly bracket: LengthReckoning; readonly rodEnd: LengthReckoning }
  /** From left to right. */
  readonly supports: readonly { readonly id: string; readonly x: LengthReckoning }[]
}
const reckoning = { type: 'object', required: ['name', 'value'] }
const end = { type: 'object', required: ['bracket', 'rodEnd'], properties: { bracket: reckoning, rodEnd: reckoning } }
export const along = {
  id: 'rod-and-ring/along@1',
  of: 'treatment',
  many: false,
  schema: {
    type: 'object',
    required: ['left', 'right', 'supports'],
    properties: { left: end, right: end, supports: { type: 'array' } },
  },
} as const as Fact<Along, 'treatment'> & { readonly many: false }

/** The top of a support's plate above the level line. */
export const supportPlate = {
  id: 'rod-and-ring/support-plate@1',
  of: 'treatment',
  many: false,
  schema: reckoning,
} as const as Fact<LengthReckoning, 'treatment'> & { readonly many: false }

/** The top of the bracket's plate above the level line. */
export const plate = { id: 'rod-and-ring/plate@1', of: 'treatment', many: false, schema: reckoning } as const as Fact<
  LengthReckoning,
  'treatment'
> & { readonly many: false }
