import type { Job } from '@evenhem/job'
import type { Plugin, Rule } from '../contract.ts'
import { type Call, leftOut } from './calls.ts'

/** Rules that no example runs, with what they wait for. */
export const unrun = (plugin: Plugin, calls: readonly Call[], jobs: readonly Job[]): readonly string[] =>
  plugin.rules
    .filter((rule) => !calls.some((call) => call.rule === rule))
    .map((rule) => `${rule.id} never ran: ${remedy(rule, jobs)}`)

function remedy({ on, needs }: Rule, jobs: readonly Job[]): string {
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
