import type { HookMap } from '@evenhem/drapery/facts'
import type { WindowPlan } from '@evenhem/planner'

export type { HookMap }
/** The hook maps of a window, one for each treatment. */
export const factsIn = (plan: WindowPlan): readonly HookMap[] =>
  plan.facts.filter(({ id }) => id === 'drapery/hook-map@1').map(({ value }) => value as HookMap)
