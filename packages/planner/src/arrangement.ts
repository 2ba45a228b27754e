import type { Fact, Level, Need, On, Plugin, Rule } from '@evenhem/plugin'
import { checks, entries, layers, parts, reckonings, steps } from '@evenhem/plugin'
import { byText } from './plan.ts'

export const levels: readonly Level[] = ['job', 'room', 'window', 'treatment']
/** The lists that the host collects, by the id of their fact. */
export const collected: ReadonlyMap<string, Collected> = new Map<string, Collected>([
  [checks.id, 'checks'],
  [steps.id, 'steps'],
  [parts.id, 'parts'],
  [layers.id, 'layers'],
  [reckonings.id, 'reckonings'],
  [entries.id, 'entries'],
])
export type Collected = 'checks' | 'steps' | 'parts' | 'layers' | 'reckonings' | 'entries'

/** Items that run the same rules: a level, and of treatments those of one kind. `treatment/` are those of a kind nobody knows. */
export type Profile = string
export const profileOfKind = (kind: string): Profile => `treatment/${kind}`

/** Where a fact is found among the outcomes of an item. */
export interface GiverAt {
  readonly slot: number
  readonly key: string
}
export interface Source {
  readonly key: string
  readonly fact: Fact
  readonly mode: 'needed' | 'maybe' | 'each'
  /** The givers by the profile of the item that has the fact. */
  readonly givers: ReadonlyMap<Profile, readonly GiverAt[]>
}
/** A rule in one profile. */
export interface Node {
  /** `plugin/rule`. */
  readonly name: string
  readonly plugin: Plugin
  readonly rule: Rule
  readonly level: Level
  readonly profile: Profile
  /** Its number among the rules of its profile. */
  readonly slot: number
  /** Runs only where the plugin has its own part. */
  readonly onAddition: boolean
  readonly gives: ReadonlyMap<string, Fact>
  readonly collects: readonly { readonly key: string; readonly list: Collected }[]
  readonly sources: Source[]
  readonly before: Node[]
  /** A job or room rule that depends on what was gathered from windows. */
  gathers: boolean
}
export interface Arrangement {
  readonly plugins: readonly Plugin[]
  readonly kinds: ReadonlyMap<string, Plugin | undefined>
  /** By profile, each sorted by name. */
  readonly nodes: ReadonlyMap<Profile, readonly Node[]>
  /** All nodes, givers before readers. */
  readonly order: readonly Node[]
  /** Each a whole path whose last node gives to its first. */
  readonly cycles: readonly (readonly Node[])[]
  /** The facts of a profile, by id, without the collected ones. */
  readonly facts: ReadonlyMap<Profile, readonly { readonly fact: Fact; readonly givers: readonly GiverAt[] }[]>
  /** Facts that job and room rules gather from windows and treatments. */
  readonly gathered: ReadonlySet<string>
  /** Codes that have words, in some language. */
  readonly codes: ReadonlySet<string>
}

export const factOf = (need: Need): Fact => ('maybe' in need ? need.maybe : 'each' in need ? need.each : need)
const modeOf = (need: Need): Source['mode'] => ('maybe' in need ? 'maybe' : 'each' in need ? 'each' : 'needed')
export const levelOf = (on: On): Level => (typeof on === 'string' ? on : 'kind' in on ? 'treatment' : on.to)
const kindOf = (on: On): string | undefined => (typeof on !== 'string' && 'kind' in on ? on.kind : undefined)

/** Puts rules in order, once. Finds what follows from the order; faults are named by `faultsOf`. */
export function arrange(plugins: readonly Plugin[]): Arrangement {
  const kinds = kindsOf(plugins)
  const profiles: Profile[] = ['job', 'room', 'window', ...['', ...kinds.keys()].map(profileOfKind)]
  const rules = plugins
    .flatMap((plugin) => plugin.rules.map((rule) => ({ plugin, rule })))
    .sort((a, b) => byText(a.plugin.id, b.plugin.id) || byText(a.rule.id, b.rule.id))
  const nodes = new Map(profiles.map((profile) => [profile, nodesIn(profile, rules)]))
  const facts = new Map([...nodes].map(([profile, list]) => [profile, factsIn(list)]))
  const all = [...nodes.values()].flat()
  for (const node of all) link(node, nodes, facts)
  const { order, cycles } = sorted(all)
  for (const node of order)
    node.gathers =
      isAboveWindows(node) &&
      (node.sources.some((source) => source.mode === 'each') || node.before.some((giver) => giver.gathers))
  return {
    plugins,
    kinds,
    nodes,
    order,
    cycles,
    facts: new Map([...facts].map(([profile, list]) => [profile, [...list.values()]])),
    gathered: gatheredBy(order),
    codes: codesOf(plugins),
  }
}

const isAboveWindows = (node: Node): boolean => node.level === 'job' || node.level === 'room'
const gatheredBy = (order: readonly Node[]): ReadonlySet<string> =>
  new Set(
    order
      .filter(isAboveWindows)
      .flatMap((node) => node.sources.filter((source) => source.mode === 'each').map((source) => source.fact.id)),
  )

const codesOf = (plugins: readonly Plugin[]): ReadonlySet<string> =>
  new Set(plugins.flatMap((plugin) => Object.values(plugin.words).flatMap((words) => Object.keys(words))))

function kindsOf(plugins: readonly Plugin[]): ReadonlyMap<string, Plugin | undefined> {
  const kinds = new Map<string, Plugin | undefined>()
  for (const plugin of plugins) for (const { kind } of plugin.kinds) kinds.set(kind, plugin)
  for (const rule of plugins.flatMap((plugin) => plugin.rules)) {
    const kind = kindOf(rule.on)
    if (kind !== undefined && !kinds.has(kind)) kinds.set(kind, undefined)
  }
  return new Map([...kinds].sort(([a], [b]) => byText(a, b)))
}

function nodesIn(profile: Profile, rules: readonly { readonly plugin: Plugin; readonly rule: Rule }[]): readonly Node[] {
  const here = rules.filter(({ rule }) => {
    const kind = kindOf(rule.on)
    return kind === undefined ? profile.split('/', 1)[0] === levelOf(rule.on) : profile === profileOfKind(kind)
  })
  return here.map(({ plugin, rule }, slot) => ({
    name: `${plugin.id}/${rule.id}`,
    plugin,
    rule,
    level: levelOf(rule.on),
    profile,
    slot,
    onAddition: typeof rule.on !== 'string' && 'to' in rule.on,
    gives: new Map(Object.entries(rule.gives)),
    collects: Object.entries(rule.gives).flatMap(([key, fact]) => {
      const list = collected.get(fact.id)
      return list ? [{ key, list }] : []
    }),
    sources: [],
    before: [],
    gathers: false,
  }))
}

type FactsIn = ReadonlyMap<string, { readonly fact: Fact; readonly givers: readonly GiverAt[] }>
function factsIn(nodes: readonly Node[]): FactsIn {
  const facts = new Map<string, { fact: Fact; givers: GiverAt[] }>()
  for (const node of nodes)
    for (const [key, fact] of node.gives) {
      if (collected.has(fact.id)) continue
      const known = facts.get(fact.id)
      if (known) known.givers.push({ slot: node.slot, key })
      else facts.set(fact.id, { fact, givers: [{ slot: node.slot, key }] })
    }
  return new Map([...facts].sort(([a], [b]) => byText(a, b)))
}

function link(node: Node, nodes: ReadonlyMap<Profile, readonly Node[]>, facts: ReadonlyMap<Profile, FactsIn>): void {
  const before = new Set<Node>()
  for (const [key, need] of Object.entries(node.rule.needs)) {
    const fact = factOf(need)
    const mode = modeOf(need)
    const from =
      mode === 'each'
        ? [...nodes.keys()].filter((profile) => profile.split('/', 1)[0] === fact.of)
        : [fact.of === 'treatment' ? node.profile : fact.of]
    const givers = new Map(from.map((profile) => [profile, facts.get(profile)?.get(fact.id)?.givers ?? []]))
    node.sources.push({ key, fact, mode, givers })
    for (const [profile, list] of givers) for (const { slot } of list) before.add(nodes.get(profile)?.[slot] as Node)
  }
  node.before.push(...before)
}

/** Depth first, givers before readers, in order of names: the same whatever the order of plugins. */
function sorted(all: readonly Node[]): { readonly order: readonly Node[]; readonly cycles: readonly (readonly Node[])[] } {
  const order: Node[] = []
  const cycles: Node[][] = []
  const path: Node[] = []
  const seen = new Map<Node, 'open' | 'done'>()
  const visit = (node: Node): void => {
    if (seen.get(node) === 'done') return
    if (seen.get(node) === 'open') {
      cycles.push(path.slice(path.indexOf(node)).reverse())
      return
    }
    seen.set(node, 'open')
    path.push(node)
    node.before.forEach(visit)
    path.pop()
    seen.set(node, 'done')
    order.push(node)
  }
  all.forEach(visit)
  return { order, cycles }
}
