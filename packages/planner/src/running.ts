import type { Arrangement, Node } from './arrangement.ts'
import type { Item } from './item.ts'
import { type Below, type CheckFact, run } from './outcome.ts'
import type { Fault } from './plan.ts'

/** What all rules of a planner run on. */
export interface Ground {
  readonly arrangement: Arrangement
  readonly checkFact: CheckFact | undefined
}
const nothingBelow: Below = () => []

/** Runs rules, givers before readers, on the items of their profiles, and returns what went wrong. Rules of plugins that sleep don't run. */
export function runAll(
  { checkFact }: Ground,
  nodes: readonly Node[],
  items: readonly Item[],
  asleep: ReadonlySet<string>,
  belowOf: (item: Item) => Below = () => nothingBelow,
): readonly Fault[] {
  const faults: Fault[] = []
  for (const node of nodes) {
    if (asleep.has(node.plugin.id)) continue
    for (const item of items) {
      if (item.profile !== node.profile || !concerns(node, item)) continue
      item.outcomes[node.slot] = run(node, item, belowOf(item), faults, checkFact)
    }
  }
  return faults
}

/** A rule on a part concerns only items that have it. */
const concerns = (node: Node, item: Item): boolean => !node.onAddition || item.it.with?.[node.plugin.id] !== undefined
