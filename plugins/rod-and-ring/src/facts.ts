import type { LengthReckoning } from '@evenhem/length'
import type { Fact } from '@evenhem/plugin'

/** Where the hardware of a pair stands along the wall; x from the left edge of the casing. */
export interface Along {
  readonly left: { readonly bracket: LengthReckoning; readonly rodEnd: LengthReckoning }
  readonly right: { readonly bracket: LengthReckoning; readonly rodEnd: LengthReckoning }
}
const reckoning = { type: 'object', required: ['name', 'value'] }
const end = { type: 'object', required: ['bracket', 'rodEnd'], properties: { bracket: reckoning, rodEnd: reckoning } }
export const along = {
  id: 'rod-and-ring/along@1',
  of: 'treatment',
  many: false,
  schema: { type: 'object', required: ['left', 'right'], properties: { left: end, right: end } },
} as const as Fact<Along, 'treatment'> & { readonly many: false }

/** The top of the bracket's plate above the level line. */
export const plate = { id: 'rod-and-ring/plate@1', of: 'treatment', many: false, schema: reckoning } as const as Fact<
  LengthReckoning,
  'treatment'
> & { readonly many: false }
