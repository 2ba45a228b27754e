import type { Fact, Level, Plugin, Rule } from '@evenhem/plugin'
import type { Arrangement, Node } from './arrangement.ts'
import { collected, factOf, levelOf, levels } from './arrangement.ts'
import { byText } from './plan.ts'

import type { Misfit } from './refusal.ts'

/** All misfits of these plugins, in the order of their names; empty when they fit. */
export function misfitsOf(arrangement: Arrangement): readonly Misfit[] {
  const { plugins } = arrangement
  const found = [
    ...plugins.flatMap(contractOf),
    ...pluginsTwice(plugins),
    ...kindsTwice(plugins),
    ...plugins.flatMap(rulesTwice),
    ...plugins.flatMap(additionsOf),
    ...eachRule(plugins, namesOf),
    ...declarationsOf(plugins),
    ...eachRule(plugins, readsOf),
    ...eachRule(plugins, givesOf),
    ...twoGivers(arrangement),
    ...cyclesOf(arrangement),
    ...gatheredReads(arrangement),
  ]
  return [...new Map(found.map((misfit) => [misfit.message, misfit])).values()]
}

const eachRule = (plugins: readonly Plugin[], of: (plugin: Plugin, rule: Rule) => readonly Misfit[]): readonly Misfit[] =>
  plugins.flatMap((plugin) => plugin.rules.flatMap((rule) => of(plugin, rule)))
const depth = (level: Level): number => levels.indexOf(level)

const contractOf = (plugin: Plugin): readonly Misfit[] =>
  (plugin.contract as number) === 1
    ? []
    : [
        {
          what: 'contract',
          plugin: plugin.id,
          message: `${plugin.id}: unexpected contract ${plugin.contract}, expected 1; build the plugin for this version`,
        },
      ]

const pluginsTwice = (plugins: readonly Plugin[]): readonly Misfit[] =>
  twice(plugins.map((plugin) => plugin.id)).map((id) => ({
    what: 'plugin-twice',
    plugin: id,
    message: `${id}: unexpected second plugin of this name, expected one; leave one out or rename it`,
  }))

const kindsTwice = (plugins: readonly Plugin[]): readonly Misfit[] =>
  twice(plugins.flatMap((plugin) => plugin.kinds.map(({ kind }) => kind))).map((kind) => {
    const owners = plugins.flatMap((plugin) => plugin.kinds.filter((each) => each.kind === kind).map(() => plugin.id))
    return {
      what: 'kind-twice',
      plugin: owners[0] as string,
      message: `${owners.join(' and ')}: unexpected second plugin for hardware of kind "${kind}", expected one; leave one out`,
    }
  })

const rulesTwice = (plugin: Plugin): readonly Misfit[] =>
  twice(plugin.rules.map((rule) => rule.id)).map((id) => ({
    what: 'rule-twice',
    plugin: plugin.id,
    rule: id,
    message: `${plugin.id}/${id}: unexpected second rule of this id, expected one; rename it`,
  }))

function additionsOf(plugin: Plugin): readonly Misfit[] {
  const to = plugin.additions.map((addition) => addition.to)
  const again = twice(to).map(
    (level): Misfit => ({
      what: 'addition',
      plugin: plugin.id,
      message: `${plugin.id}: unexpected second addition to ${level}, expected one; join their schemas`,
    }),
  )
  const strange = plugin.rules
    .filter(({ on }) => typeof on !== 'string' && 'to' in on && !to.includes(on.to))
    .map(
      (rule): Misfit => ({
        what: 'addition',
        plugin: plugin.id,
        rule: rule.id,
        message: `${plugin.id}/${rule.id}: unexpected rule on an addition to ${levelOf(rule.on)} that the plugin does not list; add it to \`additions\``,
      }),
    )
  return [...again, ...strange]
}

/** `ask` is how a rule answers that it waits, so no fact can be given under that name. */
const namesOf = (plugin: Plugin, rule: Rule): readonly Misfit[] =>
  'ask' in rule.gives
    ? [
        {
          what: 'name',
          plugin: plugin.id,
          rule: rule.id,
          message: `${plugin.id}/${rule.id}: unexpected name "ask" in gives, expected another; rename it`,
        },
      ]
    : []

const factsOf = (rule: Rule): readonly Fact[] => [...Object.values(rule.needs).map(factOf), ...Object.values(rule.gives)]
function declarationsOf(plugins: readonly Plugin[]): readonly Misfit[] {
  const uses = plugins
    .flatMap((plugin) =>
      plugin.rules.flatMap((rule) =>
        factsOf(rule)
          .filter((fact) => !collected.has(fact.id))
          .map((fact) => ({ plugin, rule, fact })),
      ),
    )
    .sort((a, b) => byText(a.plugin.id, b.plugin.id) || byText(a.rule.id, b.rule.id))
  return uses.flatMap(({ plugin, rule, fact }): readonly Misfit[] => {
    const first = uses.find((use) => use.fact.id === fact.id)
    if (!first || shape(first.fact) === shape(fact)) return []
    return [
      {
        what: 'declaration',
        plugin: plugin.id,
        rule: rule.id,
        message: `${plugin.id}/${rule.id}: unexpected ${shape(fact)} for ${fact.id}, expected ${shape(first.fact)} as in ${first.plugin.id}/${first.rule.id}; declare it alike`,
      },
    ]
  })
}
const shape = (fact: Fact): string => `{ of: '${fact.of}', many: ${fact.many} }`

function readsOf(plugin: Plugin, rule: Rule): readonly Misfit[] {
  const level = levelOf(rule.on)
  const name = `${plugin.id}/${rule.id}`
  return Object.values(rule.needs).flatMap((need): readonly Misfit[] => {
    const fact = factOf(need)
    if (fact.id.startsWith('host/'))
      return [
        {
          what: 'collected',
          plugin: plugin.id,
          rule: rule.id,
          message: `${name}: unexpected read of ${fact.id}, which the host collects; read the fact that it was made from`,
        },
      ]
    const isBelow = depth(fact.of) > depth(level)
    if (isBelow === 'each' in need) return []
    return [
      {
        what: 'level',
        plugin: plugin.id,
        rule: rule.id,
        message: isBelow
          ? `${name}: unexpected read of ${fact.id} of the ${fact.of} from the ${level} above it; gather it with { each: … }`
          : `${name}: unexpected { each: ${fact.id} }: a fact of the ${fact.of} does not lie below the ${level}; read it without each`,
      },
    ]
  })
}

function givesOf(plugin: Plugin, rule: Rule): readonly Misfit[] {
  const level = levelOf(rule.on)
  const name = `${plugin.id}/${rule.id}`
  return Object.values(rule.gives)
    .filter((fact) => !collected.has(fact.id))
    .flatMap((fact): readonly Misfit[] => {
      if (fact.id.startsWith('host/'))
        return [
          {
            what: 'collected',
            plugin: plugin.id,
            rule: rule.id,
            message: `${name}: unexpected ${fact.id}, expected one of ${[...collected.keys()].join(', ')}`,
          },
        ]
      return fact.of === level
        ? []
        : [
            {
              what: 'level',
              plugin: plugin.id,
              rule: rule.id,
              message: `${name}: unexpected gift of ${fact.id} of the ${fact.of}, expected a fact of the ${level} that the rule is on`,
            },
          ]
    })
}

const twoGivers = ({ nodes, facts }: Arrangement): readonly Misfit[] =>
  [...facts].flatMap(([profile, list]) =>
    list
      .filter(({ fact, givers }) => !fact.many && givers.length > 1)
      .map(({ fact, givers }): Misfit => {
        const [first, ...others] = givers.map(({ slot }) => nodes.get(profile)?.[slot] as Node)
        const names = [first, ...others].map((node) => node?.name).join(' and ')
        return {
          what: 'two-givers',
          plugin: first?.plugin.id ?? '',
          rule: first?.rule.id,
          message: `${names}: unexpected second giver of ${fact.id} for the same ${fact.of}, expected one; leave one out, or put each on a kind of its own`,
        }
      }),
  )

const cyclesOf = ({ cycles }: Arrangement): readonly Misfit[] =>
  cycles.map((cycle) => {
    const start = cycle.reduce((least, node, at) => (byText(node.name, cycle[least]?.name ?? '') < 0 ? at : least), 0)
    const path = [...cycle.slice(start), ...cycle.slice(0, start)]
    const legs = path.map((node, at) => `${node.name} (gives ${between(node, path[(at + 1) % path.length] as Node)})`)
    return {
      what: 'cycle',
      plugin: path[0]?.plugin.id ?? '',
      rule: path[0]?.rule.id,
      message: `Unexpected cycle, expected an order: ${[...legs, path[0]?.name].join(' → ')}; let one of them read something else`,
    }
  })
const between = (giver: Node, reader: Node): string => {
  const given = new Set([...giver.gives.values()].map((fact) => fact.id))
  return reader.sources
    .map((source) => source.fact.id as string)
    .filter((id) => given.has(id as Fact['id']))
    .join(', ')
}

const gatheredReads = ({ order }: Arrangement): readonly Misfit[] =>
  order
    .filter((node) => node.level === 'window' || node.level === 'treatment')
    .flatMap((node) =>
      node.before
        .filter((giver) => giver.gathers)
        .map(
          (giver): Misfit => ({
            what: 'gathered',
            plugin: node.plugin.id,
            rule: node.rule.id,
            message: `${node.name}: unexpected read of ${between(giver, node)}, which ${giver.name} gathered from windows; what is gathered is for the job’s pages, read facts of this window instead`,
          }),
        ),
    )

const twice = <T>(list: readonly T[]): readonly T[] => [...new Set(list.filter((item, at) => list.indexOf(item) !== at))]
