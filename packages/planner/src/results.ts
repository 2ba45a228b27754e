import { below } from '@evenhem/job'
import type { Place } from '@evenhem/job'
import type { Check } from '@evenhem/plugin'
import type { Arrangement, Collected, Node } from './arrangement.ts'
import { asksOf, walkingOrder } from './asks.ts'
import type { Item } from './item.ts'
import { read } from './outcome.ts'
import type { Held } from './outcome.ts'
import { byText } from './plan.ts'
import type { Fault, GivenFact, PlannedCheck, Results, Unread } from './plan.ts'
import { planSteps } from './steps.ts'
import type { GivenStep } from './steps.ts'

/** All that rules gave on these items, in one order whatever the order of plugins. */
export function resultsOf(arrangement: Arrangement, items: readonly Item[], faults: readonly Fault[], unread: readonly Unread[], root: unknown): Results {
  const order = walkingOrder(root)
  const all = [...faults]
  const checks = items.flatMap((item) => nodesOf(arrangement, item).flatMap((node) => checksOf(arrangement, node, item, order)))
  const steps = planSteps(items.flatMap((item) => nodesOf(arrangement, item).flatMap((node) => stepsOf(node, item))), checks, all)
  const list = <K extends Collected>(name: K) => items.flatMap((item) => nodesOf(arrangement, item).flatMap((node) => given(node, item, name))) as unknown as Results[K]
  return {
    checks, steps, parts: list('parts'), reckonings: list('reckonings'), layers: list('layers'), entries: list('entries'),
    asks: [...asksOf(items)].sort((a, b) => order(a.at, b.at)), unread, faults: all, facts: factsOf(arrangement, items),
  }
}

const nodesOf = (arrangement: Arrangement, item: Item): readonly Node[] => arrangement.nodes.get(item.profile) ?? []

function given(node: Node, item: Item, name: Collected): readonly object[] {
  const gave = item.outcomes[node.slot]?.gave
  if (!gave) return []
  return node.collects.filter(({ list }) => list === name).flatMap(({ key }) => ((gave[key] ?? []) as readonly object[]).map((each) => ({ ...each, by: node.name, on: item.at })))
}

const stepsOf = (node: Node, item: Item): readonly GivenStep[] => node.collects.filter(({ list }) => list === 'steps').flatMap(({ key }) =>
  ((item.outcomes[node.slot]?.gave?.[key] ?? []) as readonly GivenStep['step'][]).map((step) => ({ step, plugin: node.plugin.id, rule: node.rule.id, item })))

function checksOf(arrangement: Arrangement, node: Node, item: Item, order: (a: Place, b: Place) => number): readonly PlannedCheck[] {
  const held = item.outcomes[node.slot]?.held
  if (held) return (node.rule.codes ?? []).map((code) => unknown(code, held, node, item, arrangement, order))
  return (given(node, item, 'checks') as readonly PlannedCheck[]).map((check) => {
    const override = overrideOf(check, item)
    return override === undefined ? check : { ...check, override }
  })
}
/** A check of a rule that did not run, with what holds it up: places before faults before facts that nobody gives. */
function unknown(code: string, held: Held, node: Node, item: Item, { codes }: Arrangement, order: (a: Place, b: Place) => number): PlannedCheck {
  const waits = [...held.asks].sort(order)
  const because = waits.length > 0 ? 'waits' : held.faults.length > 0 ? 'faulted' : 'not-given'
  const list = because === 'waits' ? waits : because === 'faulted' ? held.faults : held.missing
  const says = codes.has(`${code}.unknown`) ? `${code}.unknown` : `host/${because}`
  const values = { count: { count: list.length }, first: list[0] ?? '' }
  return { code, says, verdict: 'unknown', at: item.at, values, by: node.name, on: item.at, because, ...(waits.length > 0 ? { waits } : {}) }
}
/** A reason given at the item or above it, under `found/overrides`. */
function overrideOf({ code, verdict }: Check, item: Item): string | undefined {
  if (verdict !== 'fail') return undefined
  for (const level of ['treatment', 'window', 'room'] as const) {
    const found = item.line[level]?.it.found as { readonly overrides?: Readonly<Record<string, unknown>> } | undefined
    const reason = found?.overrides?.[code]
    if (typeof reason === 'string' && reason.trim() !== '') return reason
  }
  return undefined
}

/** The facts between rules, by id and then in the order of items. `only` these ids, when given. */
export function factsOf(arrangement: Arrangement, items: readonly Item[], only?: ReadonlySet<string>): readonly GivenFact[] {
  const facts = items.flatMap((item) => (arrangement.facts.get(item.profile) ?? []).flatMap(({ fact, givers }) => {
    const value = only && !only.has(fact.id) ? undefined : read(fact, givers, item.outcomes)?.value
    return value === undefined ? [] : [{ id: fact.id as string, at: item.at, value }]
  }))
  return facts.sort((a, b) => byText(a.id, b.id))
}

/** What no plugin reads of these items: hardware of a kind unknown or not there, and parts under `with`. */
export function unreadOf(arrangement: Arrangement, items: readonly Item[], asleep: ReadonlySet<string>): readonly Unread[] {
  return items.flatMap((item): readonly Unread[] => [...hardwareUnread(arrangement, item, asleep), ...Object.keys(item.it.with ?? {})
    .filter((plugin) => asleep.has(plugin) || !reads(arrangement, item, plugin))
    .map((plugin): Unread => ({ at: below(item.at, 'with', plugin), what: 'with', name: plugin }))])
}
function hardwareUnread(arrangement: Arrangement, item: Item, asleep: ReadonlySet<string>): readonly Unread[] {
  if (item.level !== 'treatment') return []
  if (!item.hardware) return [{ at: below(item.at, 'hardware'), what: 'hardware', name: (item.it as { readonly hardware?: string }).hardware ?? '' }]
  const owner = arrangement.kinds.get(item.hardware.kind)
  return owner && !asleep.has(owner.id) ? [] : [{ at: below(item.hardwareAt ?? '', 'kind'), what: 'kind', name: item.hardware.kind }]
}
const reads = ({ plugins }: Arrangement, item: Item, id: string): boolean => {
  const plugin = plugins.find((each) => each.id === id)
  if (!plugin) return false
  return plugin.additions.some(({ to }) => to === item.level) || plugin.kinds.some(({ kind }) => kind === item.hardware?.kind)
}
