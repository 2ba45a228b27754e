import type { Job } from '@evenhem/job'
import type { Plugin, Rule } from '../contract.ts'
import { type Call, leftOut } from './calls.ts'
import type { Plan } from './host.ts'
import type { Tried } from './workings.ts'

/** Rules that no example runs, with what they wait for. */
export function unrun(plugin: Plugin, calls: readonly Call[], tried: readonly Tried[]): readonly string[] {
  const jobs = tried.map(({ found }) => found)
  const faults = tried.flatMap(({ plans }) => plans.flatMap((plan) => plan.faults.filter((each) => each.plugin === plugin.id)))
  return plugin.rules
    .filter((rule) => !calls.some((call) => call.rule === rule))
    .map((rule) => `${rule.id} never ran to its end: ${remedy(rule, jobs, faults)}`)
}

function remedy({ id, on, needs }: Rule, jobs: readonly Job[], faults: Plan['faults']): string {
  const fault = faults.find(({ rule }) => rule === id)
  if (fault) return `${fault.message}; mend that first`
  if (typeof on !== 'string' && 'kind' in on && !jobs.some(({ hardware = [] }) => hardware.some(({ kind }) => kind === on.kind)))
    return `no job has hardware of the kind "${on.kind}"; add one`
  const waited = Object.values(needs).flatMap((need) => (leftOut(need) === undefined && 'id' in need ? [need.id] : []))
  return waited.length === 0
    ? 'no job has what it is on; add one'
    : `it needs ${waited.join(', ')}; add a job in which the rules that give it have all that they ask for`
}

/** Facts that a rule declares and gives in no example. What the host collects a rule may have nothing to add to. */
export const ungiven = (plugin: Plugin, calls: readonly Call[]): readonly string[] =>
  plugin.rules.flatMap((rule) => {
    const answers = calls.filter((call) => call.rule === rule).map(({ answer }) => answer as Record<string, unknown> | undefined)
    if (answers.length === 0) return []
    return Object.entries(rule.gives)
      .filter(([key, { id }]) => !id.startsWith('host/') && !answers.some((answer) => answer?.[key] !== undefined))
      .map(
        ([, { id }]) => `${rule.id} declares ${id} and never gives it; add a job in which it does, or leave it out of \`gives\``,
      )
  })
