import type { Side } from '@evenhem/drapery/facts'
import type { Reckoning } from '@evenhem/length'
import type { Fact } from '@evenhem/plugin'

/** How many carriers each panel needs, and on which side it stacks. */
export type Carriers = readonly { readonly outer: Side; readonly needed: Reckoning }[]
export const carriers = {
  id: 'traverse/carriers@1',
  of: 'treatment',
  many: false,
  schema: { type: 'array', items: { type: 'object', required: ['outer', 'needed'] } },
} as const as Fact<Carriers, 'treatment'> & { readonly many: false }
