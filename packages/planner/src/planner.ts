import type { Job, Place } from '@evenhem/job'
import type { Plugin } from '@evenhem/plugin'
import type { Node } from './arrangement.ts'
import { arrange } from './arrangement.ts'
import { createHouse } from './house.ts'
import { misfitsOf } from './misfits.ts'
import type { CheckFact } from './outcome.ts'
import type { JobPlan, WindowPlan } from './plan.ts'
import { Refusal } from './refusal.ts'

export interface Planner {
  /** Plans one window. Throws a RangeError when the job has no window there; nothing else in a job makes it throw. */
  readonly window: (found: Job, ordered: Job, place: Place) => WindowPlan
  /** Plans what concerns the whole job, with a summary of every window. */
  readonly job: (found: Job, ordered: Job) => JobPlan
  /** Needs that no plugin here can fill, not even for one kind of hardware: most often a name written wrong. */
  readonly unmet: readonly { readonly plugin: string; readonly rule: string; readonly fact: string }[]
}
export interface PlannerOptions {
  readonly checkFact?: CheckFact
}

/**
 * Arranges plugins once and plans jobs with them.
 *
 * A rule runs for an item when all its needed facts are given there. When a giver asks, waits or has a fault, it waits.
 * When nobody gives a needed fact for such an item (hardware of a kind that nobody knows, a plugin that is not here), the
 * rule does not run there: that is no fault, since plugins must work beside strangers and alone. Either way each of its
 * `codes` shows as `unknown`, saying `host/waits`, `host/faulted` or `host/not-given`. Lists (`many`) without a giver are empty.
 *
 * Rules on a job or a room see only its own members: `rooms` and `windows` are empty there, and gathered with `each`.
 * A window's plan is kept while the objects that it read are the same ones, so `found` must be changed by copying the path.
 *
 * Throws one `Refusal` that lists all reasons why these plugins can't work together.
 */
export function createPlanner(plugins: readonly Plugin[], options: PlannerOptions = {}): Planner {
  const arrangement = arrange(plugins)
  const misfits = misfitsOf(arrangement)
  if (misfits.length > 0) throw new Refusal(misfits)
  const house = createHouse({ arrangement, checkFact: options.checkFact })
  return { window: house.window, job: house.job, unmet: unmetOf(arrangement.order) }
}

function unmetOf(nodes: readonly Node[]): Planner['unmet'] {
  const given = new Set(nodes.flatMap((node) => [...node.gives.values()].map((fact) => fact.id)))
  const unmet = nodes.flatMap((node) =>
    node.sources
      .filter(({ mode, fact }) => mode === 'needed' && !fact.many && !given.has(fact.id))
      .map(({ fact }) => ({ plugin: node.plugin.id, rule: node.rule.id, fact: fact.id as string })),
  )
  return [...new Map(unmet.map((each) => [JSON.stringify(each), each])).values()]
}
