import type { Place } from '@evenhem/job'
import type { Fact } from '@evenhem/plugin'
import type { GiverAt, Node, Source } from './arrangement.ts'
import type { Item } from './item.ts'
import { subjectOf } from './item.ts'
import { malformed } from './malformed.ts'
import type { Fault } from './plan.ts'

/** Why a rule did not run: places to be filled, facts that nobody gives here, rules with a fault. */
export interface Held {
  readonly asks: readonly Place[]
  readonly missing: readonly string[]
  readonly faults: readonly string[]
}
export interface Outcome {
  readonly gave?: Readonly<Record<string, unknown>>
  readonly held?: Held
}
/** A fact as read: its value, or why there is none. */
export interface Reading {
  readonly value?: unknown
  readonly held?: Held
}
/** What a rule gathers from below, by source. */
export type Below = (source: Source) => Iterable<{ readonly at: Place; readonly reading: Reading | undefined }>
/** Says what is wrong with the value of a fact; undefined when it is well. The kit and a sandbox give one. */
export type CheckFact = (fact: Fact, value: unknown) => string | undefined

const waits = (held: Held | undefined): boolean => held !== undefined && (held.asks.length > 0 || held.faults.length > 0)
const joined = (list: readonly Held[]): Held => {
  if (list.length === 1) return list[0] as Held
  const all = (of: (held: Held) => readonly string[]): readonly string[] => [...new Set(list.flatMap(of))]
  return { asks: all((held) => held.asks), missing: all((held) => held.missing), faults: all((held) => held.faults) }
}

/** Reads a fact among outcomes. Undefined when no giver ran. A list is complete or it is not there: it waits when one of its givers waits. */
export function read(fact: Fact, givers: readonly GiverAt[], outcomes: Item['outcomes']): Reading | undefined {
  return fact.many ? readList(givers, outcomes) : readOne(givers, outcomes)
}
function readOne(givers: readonly GiverAt[], outcomes: Item['outcomes']): Reading | undefined {
  for (const { slot, key } of givers) {
    const outcome = outcomes[slot]
    if (outcome?.held) return { held: outcome.held }
    if (outcome?.gave?.[key] !== undefined) return { value: outcome.gave[key] }
  }
  return undefined
}
function readList(givers: readonly GiverAt[], outcomes: Item['outcomes']): Reading | undefined {
  const ran = givers.flatMap(({ slot, key }) => {
    const outcome = outcomes[slot]
    return outcome ? [{ outcome, key }] : []
  })
  const waiting = ran.filter(({ outcome }) => waits(outcome.held)).map(({ outcome }) => outcome.held as Held)
  if (waiting.length > 0) return { held: joined(waiting) }
  const gave = ran.filter(({ outcome }) => outcome.gave)
  return gave.length === 0
    ? undefined
    : { value: gave.flatMap(({ outcome, key }) => (outcome.gave?.[key] as readonly unknown[] | undefined) ?? []) }
}

/** What a rule gets, or why it has to wait. */
export function inputsOf(
  node: Node,
  item: Item,
  below: Below,
): { readonly facts: Readonly<Record<string, unknown>>; readonly held: Held | undefined } {
  const facts: Record<string, unknown> = {}
  const held: Held[] = []
  for (const source of node.sources) {
    const reading = source.mode === 'each' ? gather(source, below) : above(source, item)
    if (source.mode !== 'maybe' && reading.held) held.push(reading.held)
    facts[source.key] = reading.value
  }
  return { facts, held: held.length === 0 ? undefined : joined(held) }
}
function above({ fact, mode, givers }: Source, item: Item): Reading {
  const owner = item.line[fact.of] as Item
  const reading = read(fact, givers.get(owner.profile) ?? [], owner.outcomes)
  if (reading) return reading
  return fact.many && mode === 'needed' ? { value: [] } : { held: { asks: [], missing: [fact.id], faults: [] } }
}
function gather(source: Source, below: Below): Reading {
  const list: { at: Place; value: unknown }[] = []
  const held: Held[] = []
  for (const { at, reading } of below(source)) {
    if (reading?.value !== undefined) list.push({ at, value: reading.value })
    else if (waits(reading?.held)) held.push(reading?.held as Held)
  }
  return held.length === 0 ? { value: list } : { held: joined(held) }
}

/** Runs one rule on one item. What it gets wrong costs that rule at that item: a fault, and nothing given. */
export function run(node: Node, item: Item, below: Below, faults: Fault[], checkFact?: CheckFact): Outcome {
  const { facts, held } = inputsOf(node, item, below)
  if (held) return { held }
  const fault = (what: Fault['what'], message: string): Outcome => {
    faults.push({ plugin: node.plugin.id, rule: node.rule.id, at: item.at, what, message })
    return { held: { asks: [], missing: [], faults: [node.name] } }
  }
  let answer: unknown
  try {
    answer = node.rule.run(subjectOf(item, node.plugin.id), facts)
  } catch (error) {
    return fault('threw', `Unexpected error in ${node.name}: ${textOf(error)}`)
  }
  const wrong = malformed(node, answer, checkFact)
  if (wrong) return fault(wrong.what, wrong.message)
  const given = answer as { readonly ask?: readonly Place[] }
  return given.ask ? { held: { asks: [...new Set(given.ask)], missing: [], faults: [] } } : { gave: answer as Outcome['gave'] }
}

const textOf = (error: unknown): string => {
  try {
    return String((error as { readonly message?: unknown } | null)?.message ?? error)
  } catch {
    return 'without words'
  }
}
