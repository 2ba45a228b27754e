import type { Place } from '@evenhem/job'
import { below } from '@evenhem/job'
import type { Check, Step } from '@evenhem/plugin'
import type { Arrangement, Collected, Node } from './arrangement.ts'
import { asksOf, walkingOrder } from './asks.ts'
import type { Item } from './item.ts'
import type { Held } from './outcome.ts'
import { read } from './outcome.ts'
import { overrideKey } from './override.ts'
import type { Fault, GivenFact, PlannedCheck, Results, Unread } from './plan.ts'
import { byText } from './plan.ts'
import type { GivenStep } from './steps.ts'
import { planSteps, stops } from './steps.ts'

/** What a summary needs; a sheet needs all. */
export type Extent = 'summary' | 'sheet'
const inSummary: ReadonlySet<Collected> = new Set<Collected>(['checks', 'steps', 'parts'])

/** All that rules gave on these items, in one order whatever the order of plugins. For a summary the lists that only a sheet shows stay empty. */
export function resultsOf(
  arrangement: Arrangement,
  items: readonly Item[],
  faults: readonly Fault[],
  unread: readonly Unread[],
  root: unknown,
  extent: Extent = 'sheet',
): Results {
  const order = walkingOrder(root)
  const all = [...faults]
  const { checks, parts, reckonings, layers, entries, given } = collect(arrangement, items, order, extent)
  const steps = planSteps(given, checks, all)
  const asks = [...asksOf(items)].sort((a, b) => order(a.at, b.at))
  return {
    checks,
    steps,
    parts,
    reckonings,
    layers,
    entries,
    asks,
    unread,
    faults: all,
    facts: extent === 'summary' ? [] : factsOf(arrangement, items),
  } as Results
}

type Lists = Record<Exclude<Collected, 'steps' | 'checks'>, object[]> & {
  readonly checks: PlannedCheck[]
  readonly given: GivenStep[]
}
/** Goes once through all that was given: items in their order, then rules by name. */
function collect(arrangement: Arrangement, items: readonly Item[], order: (a: Place, b: Place) => number, extent: Extent): Lists {
  const lists: Lists = { checks: [], parts: [], reckonings: [], layers: [], entries: [], given: [] }
  for (const item of items)
    for (const node of arrangement.nodes.get(item.profile) ?? []) {
      const { gave, held } = item.outcomes[node.slot] ?? {}
      if (held) for (const code of node.rule.codes ?? []) lists.checks.push(unknown(code, held, node, item, arrangement, order))
      if (gave)
        for (const { key, list } of node.collects)
          for (const each of (gave[key] ?? []) as readonly object[]) {
            if (extent === 'summary' && !inSummary.has(list)) continue
            if (list === 'steps') lists.given.push({ step: each as Step, plugin: node.plugin.id, rule: node.rule.id, item })
            else
              lists[list].push(
                list === 'checks' ? checkOf(each as Check, node, item) : ({ ...each, by: node.name, on: item.at } as never),
              )
          }
    }
  return lists
}

function checkOf(check: Check, node: Node, item: Item): PlannedCheck {
  const mayBeLifted = !check.isFirm && (check.verdict === 'fail' || stops(check))
  const override = mayBeLifted ? overrideOf(check, item) : undefined
  return { ...check, by: node.name, on: item.at, ...(override === undefined ? {} : { override }) }
}
/** A check of a rule that did not run, with what holds it up: places before faults before facts that nobody gives. */
function unknown(
  code: string,
  held: Held,
  node: Node,
  item: Item,
  { codes }: Arrangement,
  order: (a: Place, b: Place) => number,
): PlannedCheck {
  const waits = [...held.asks].sort(order)
  const because = waits.length > 0 ? 'waits' : held.faults.length > 0 ? 'faulted' : 'not-given'
  const list = because === 'waits' ? waits : because === 'faulted' ? held.faults : held.missing
  const says = codes.has(`${code}.unknown`) ? `${code}.unknown` : `host/${because}`
  const values = { count: { count: list.length }, first: list[0] ?? '' }
  return {
    code,
    says,
    verdict: 'unknown',
    at: item.at,
    values,
    by: node.name,
    on: item.at,
    because,
    ...(waits.length > 0 ? { waits } : {}),
  }
}
/** A reason given at the item or above it, under `found/overrides`: for what exactly this check is about, or for its code, whatever it is about. */
function overrideOf(check: Check, item: Item): string | undefined {
  for (const level of ['treatment', 'window', 'room'] as const) {
    const found = item.line[level]?.it.found as { readonly overrides?: Readonly<Record<string, unknown>> } | undefined
    for (const key of new Set([overrideKey(check), check.code])) {
      const reason = found?.overrides?.[key]
      if (typeof reason === 'string' && reason.trim() !== '') return reason
    }
  }
  return undefined
}

/** The facts between rules, by id and then in the order of items. `only` these ids, when given. */
export function factsOf(arrangement: Arrangement, items: readonly Item[], only?: ReadonlySet<string>): readonly GivenFact[] {
  const facts: GivenFact[] = []
  for (const item of items)
    for (const { fact, givers } of arrangement.facts.get(item.profile) ?? []) {
      const value = only && !only.has(fact.id) ? undefined : read(fact, givers, item.outcomes)?.value
      if (value !== undefined) facts.push({ id: fact.id, at: item.at, value })
    }
  return facts.sort((a, b) => byText(a.id, b.id))
}

/** What no plugin reads of these items: hardware of a kind unknown or not there, and parts under `with`. */
export function unreadOf(arrangement: Arrangement, items: readonly Item[], asleep: ReadonlySet<string>): readonly Unread[] {
  return items.flatMap((item): readonly Unread[] => [
    ...hardwareUnread(arrangement, item, asleep),
    ...Object.keys(item.it.with ?? {})
      .filter((plugin) => asleep.has(plugin) || !reads(arrangement, item, plugin))
      .map((plugin): Unread => ({ at: below(item.at, 'with', plugin), what: 'with', name: plugin })),
  ])
}
function hardwareUnread(arrangement: Arrangement, item: Item, asleep: ReadonlySet<string>): readonly Unread[] {
  if (item.level !== 'treatment') return []
  if (!item.hardware)
    return [
      { at: below(item.at, 'hardware'), what: 'hardware', name: (item.it as { readonly hardware?: string }).hardware ?? '' },
    ]
  const owner = arrangement.kinds.get(item.hardware.kind)
  return owner && !asleep.has(owner.id)
    ? []
    : [{ at: below(item.hardwareAt ?? '', 'kind'), what: 'kind', name: item.hardware.kind }]
}
const reads = ({ plugins }: Arrangement, item: Item, id: string): boolean => {
  const plugin = plugins.find((each) => each.id === id)
  if (!plugin) return false
  return plugin.additions.some(({ to }) => to === item.level) || plugin.kinds.some(({ kind }) => kind === item.hardware?.kind)
}
