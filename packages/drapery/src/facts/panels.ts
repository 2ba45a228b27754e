import type { Known, Length, LengthReckoning } from '@evenhem/length'
import type { Hook } from '../arithmetic/panel.ts'
import type { Side } from './ground.ts'
import { array, count, hook, known, list, object, one, reckoning, side, text } from './shapes.ts'

/** How a panel is made: its hooks from the leading edge outward, and the sizes that follow. */
export interface PanelMakeUp {
  readonly panel: string
  readonly outer: Side
  readonly pleats: number
  readonly hooks: readonly Hook[]
  readonly space: LengthReckoning
  readonly finishedWidth: LengthReckoning
  readonly leadingFlat: Known<Length>
  readonly firstToLast: Known<Length>
  /** 0 without a return. */
  readonly return: Known<Length>
  /** Last pleat to the outer edge; undefined with a return. */
  readonly outerFlat?: Known<Length> | undefined
  readonly finishedLength: Known<Length>
  readonly pin: Known<Length>
}
export interface MakeUp {
  readonly panels: readonly PanelMakeUp[]
}
export const makeUp = one<MakeUp, 'treatment'>(
  'drapery/make-up@1',
  'treatment',
  object({
    panels: array(
      object(
        {
          panel: text,
          outer: side,
          pleats: count,
          hooks: array(hook),
          space: reckoning,
          finishedWidth: reckoning,
          leadingFlat: known,
          firstToLast: known,
          return: known,
          outerFlat: known,
          finishedLength: known,
          pin: known,
        },
        [
          'panel',
          'outer',
          'pleats',
          'hooks',
          'space',
          'finishedWidth',
          'leadingFlat',
          'firstToLast',
          'return',
          'finishedLength',
          'pin',
        ],
      ),
    ),
  }),
)

/** The glass that is seen of all that a treatment covers: its edges and its width. Where nobody wants to know it is not there. */
export interface Glass {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly width: LengthReckoning
}
export const glass = one<Glass, 'treatment'>(
  'drapery/glass@1',
  'treatment',
  object({ left: reckoning, right: reckoning, width: reckoning }),
)

/** How wide each panel stacks by the rule that the workroom chose; empty where a third of the share holds. */
export const stackRules = one<readonly { readonly panel: string; readonly width: LengthReckoning }[], 'treatment'>(
  'drapery/stack-rules@1',
  'treatment',
  array(object({ panel: text, width: reckoning })),
)

/** Where the pattern of a fabric begins its repeat, above the level line. */
export const patternLine = one<{ readonly fabric: string; readonly line: LengthReckoning }, 'treatment'>(
  'drapery/pattern-line@1',
  'treatment',
  object({ fabric: text, line: reckoning }),
)

/** The label of a panel's bag, and where the order says it. */
export const bags = list<{ readonly bag: string; readonly at: string }, 'treatment'>(
  'drapery/bags@1',
  'treatment',
  object({ bag: text, at: text }),
)

/** Whether the cloth of a treatment has neither lining nor interlining; not there while its fabric is not known. */
export const unlined = one<boolean, 'treatment'>('drapery/unlined@1', 'treatment', { type: 'boolean' })
