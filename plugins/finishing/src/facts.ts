import type { LengthReckoning } from '@evenhem/length'
import type { Fact } from '@evenhem/plugin'
import { gentleness } from './fibres.ts'
import type { Cloth, Steaming } from './steaming.ts'

const text = { type: 'string' }
const object = (properties: Readonly<Record<string, object>>, required = Object.keys(properties)) => ({
  type: 'object',
  properties,
  required,
  additionalProperties: false,
})

/** A fabric of the job as steaming sees it. */
export type Known = Omit<Cloth, 'as'>
export const fabrics = {
  id: 'finishing/fabrics@1',
  of: 'job',
  many: false,
  schema: {
    type: 'array',
    items: object({ id: text, name: text, fibres: { type: 'array', items: text }, care: { type: 'object' } }, [
      'id',
      'name',
      'fibres',
    ]),
  },
} as const satisfies Fact as Fact<readonly Known[], 'job'> & { readonly many: false }

/** What is to be finished at a treatment: only where the order has a part of this plugin at it, at its window or at its fabric. */
export interface Wanted {
  readonly steam?: boolean | undefined
  /** Hours; 0: not tied. */
  readonly tie: number
  readonly tieAt: string
  readonly cloths: readonly Cloth[]
}
export const wanted = {
  id: 'finishing/wanted@1',
  of: 'treatment',
  many: false,
  schema: object(
    {
      steam: { type: 'boolean' },
      tie: { type: 'integer', minimum: 0 },
      tieAt: text,
      cloths: { type: 'array', items: { type: 'object', required: ['id', 'name', 'as', 'fibres'] } },
    },
    ['tie', 'tieAt', 'cloths'],
  ),
} as const satisfies Fact as Fact<Wanted, 'treatment'> & { readonly many: false }

export const steaming = {
  id: 'finishing/steaming@1',
  of: 'treatment',
  many: false,
  schema: object({
    steam: { type: 'boolean' },
    by: text,
    source: text,
    cloth: text,
    level: { enum: gentleness },
    fibre: text,
    from: { enum: ['either', 'back', 'face'] },
    off: { type: 'boolean' },
    still: { type: 'boolean' },
    spots: { type: 'boolean' },
    pile: { type: 'boolean' },
    relaxer: { enum: ['allowed', 'not allowed', 'unsaid'] },
  }),
} as const satisfies Fact as Fact<Steaming, 'treatment'> & { readonly many: false }

/** How far the top of the drapery stands above the top of the rod, negative below it, and where the heading so hangs. */
export const heading = {
  id: 'finishing/heading@1',
  of: 'treatment',
  many: false,
  schema: object({ over: { type: 'object', required: ['name', 'value'] }, at: { enum: ['front', 'under', 'unclear'] } }),
} as const satisfies Fact as Fact<{ readonly over: LengthReckoning; readonly at: 'front' | 'under' | 'unclear' }, 'treatment'> & {
  readonly many: false
}
