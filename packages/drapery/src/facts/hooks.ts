import type { Length, LengthReckoning, Reckoning } from '@evenhem/length'
import type { Hook } from '../arithmetic/panel.ts'
import { array, count, hook, length, object, one, reckoning, text } from './shapes.ts'

/** Where a hook goes. `to` is a code of words; `number` counts from the leading edge; x when drawn and when stacked. */
export interface HookPlace {
  readonly panel: string
  readonly hook: Hook
  readonly to: string
  readonly number?: number
  readonly note?: string
  readonly drawn: Length
  readonly stacked: Length
}
export interface HookMap {
  readonly places: readonly HookPlace[]
  /** How many movable bearers (rings, carriers) the map takes. */
  readonly bearers: Reckoning
  /** How wide each panel stacks: measured, or estimated and at least its bearers side by side. */
  readonly stacks?: readonly { readonly panel: string; readonly width: LengthReckoning }[] | undefined
  /** What they look like: rings around the rod, unless said otherwise, or carriers in it. */
  readonly drawnAs?: 'rings' | 'carriers' | undefined
  /** The order in which they go on the rod, from left to right: codes and counts. */
  readonly threading: readonly { readonly what: string; readonly count: number }[]
}
export const hookMap = one<HookMap, 'treatment'>(
  'drapery/hook-map@1',
  'treatment',
  object(
    {
      places: array(
        object({ panel: text, hook, to: text, number: count, note: text, drawn: length, stacked: length }, [
          'panel',
          'hook',
          'to',
          'drawn',
          'stacked',
        ]),
      ),
      bearers: reckoning,
      threading: array(object({ what: text, count })),
      stacks: array(object({ panel: text, width: reckoning })),
      drawnAs: { enum: ['rings', 'carriers'] },
    },
    ['places', 'bearers', 'threading'],
  ),
)
