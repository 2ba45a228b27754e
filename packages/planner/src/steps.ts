import { below, type Place } from '@evenhem/job'
import type { Stage, Step } from '@evenhem/plugin'
import { stages } from '@evenhem/plugin'
import type { Item } from './item.ts'
import type { Fault, PlannedCheck, PlannedStep } from './plan.ts'
import { byText } from './plan.ts'

/** A step with the item that its rule ran on. */
export interface GivenStep {
  readonly step: Step
  readonly plugin: string
  readonly rule: string
  readonly item: Item
}

/** Puts steps in order and says which are closed and which are done. Steps that want each other first are a fault, and stand by name. */
export function planSteps(given: readonly GivenStep[], checks: readonly PlannedCheck[], faults: Fault[]): readonly PlannedStep[] {
  const stopping = checks.filter(isStopping)
  const byStage = stages.map((): GivenStep[] => [])
  for (const each of given) byStage[stages.indexOf(each.step.stage)]?.push(each)
  return byStage
    .flatMap((list) => ordered(list, faults))
    .map(({ step, plugin, rule, item }) => {
      const found = item.it.found as { readonly done?: Readonly<Record<string, Readonly<Record<string, unknown>>>> } | undefined
      const closed = stopping.length === 0 ? [] : closedBy(step.stage, item.at, stopping)
      return {
        ...step,
        plugin,
        rule,
        on: item.at,
        closed,
        done: found?.done?.[plugin]?.[step.id] === true,
        doneAt: below(item.at, 'found', 'done', plugin, step.id),
      }
    })
}

/** A check stops while it fails, or while nobody has said what it must know. */
export const stops = ({ verdict, stops: stage }: Pick<PlannedCheck, 'verdict' | 'stops'>): boolean =>
  stage !== undefined && (verdict === 'fail' || verdict === 'unknown')
/** It stops, and nobody gave a reason to go on all the same. */
const isStopping = (check: PlannedCheck): boolean => stops(check) && check.override === undefined

function ordered(steps: readonly GivenStep[], faults: Fault[]): readonly GivenStep[] {
  // Layers go up one after the other, from the glass outward.
  const layers = [...new Set(steps.flatMap(({ item }) => (item.level === 'treatment' ? [item] : [])))]
  const rank = ({ item }: GivenStep): number => Math.max(0, layers.indexOf(item))
  const left = [...steps].sort((a, b) => rank(a) - rank(b) || byText(a.plugin, b.plugin) || byText(a.step.id, b.step.id))
  const order: GivenStep[] = []
  while (left.length > 0) {
    const free = left.findIndex((step) => !left.some((other) => other !== step && isBefore(other, step)))
    if (free < 0) faults.push(circle(left))
    order.push(...left.splice(Math.max(free, 0), 1))
  }
  return order
}
/** `after` names a step by its id, or by `plugin/id`; on another treatment it is another step. */
const isBefore = (first: GivenStep, then: GivenStep): boolean =>
  areTogether(first.item, then.item) &&
  (then.step.after?.some((id) => id === first.step.id || id === `${first.plugin}/${first.step.id}`) ?? false)
const areTogether = (a: Item, b: Item): boolean => a === b || a.level !== 'treatment' || b.level !== 'treatment'

function circle(left: readonly GivenStep[]): Fault {
  const [{ plugin, rule, item }] = left as readonly [GivenStep]
  const names = left
    .filter(({ step }) => step.after)
    .map((each) => `${each.plugin}/${each.step.id}`)
    .join(', ')
  return {
    plugin,
    rule,
    at: item.at,
    what: 'order',
    message: `Unexpected steps that each come after another: ${names}; they stand by name, take one \`after\` out`,
  }
}

/** The checks that close a step of this stage of an item: a failing check of a treatment closes steps of that treatment and of its window; one of the window closes all. */
export const closing = (stage: Stage, at: Place, checks: readonly PlannedCheck[]): readonly PlannedCheck[] =>
  checks.filter(
    (check) =>
      isStopping(check) &&
      stages.indexOf(check.stops as Stage) <= stages.indexOf(stage) &&
      (check.on === at || at.startsWith(`${check.on}/`) || check.on.startsWith(`${at}/`)),
  )
const closedBy = (stage: Stage, at: Place, stopping: readonly PlannedCheck[]): readonly string[] => [
  ...new Set(closing(stage, at, stopping).map((check) => check.code)),
]
