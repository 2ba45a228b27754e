import { type Job, valueAt } from '@evenhem/job'
import { checkReckoning, type Reckoning, type Term } from '@evenhem/length'
import type { Plugin } from '../contract.ts'
import type { Call } from './calls.ts'
import type { Plan } from './host.ts'

/** The plans of one example. */
export interface Tried {
  readonly found: Job
  readonly plans: readonly Plan[]
}

/** Reckonings whose working does not hold: they do not come to their value, or a term stands where something else does, or nothing. */
export function wrongWorkings(plugin: Plugin, tried: readonly Tried[]): readonly string[] {
  return tried.flatMap(({ plans, found }) => {
    const all = plans.flatMap((plan) => plan.reckonings)
    const named = new Map(all.map((each) => [each.name, each.value]))
    return all
      .filter(({ by }) => by.startsWith(`${plugin.id}/`))
      .flatMap((reckoning) => {
        const own = checkReckoning(reckoning)
        const terms = reckoning.terms.flatMap((term) => wrongTerm(term, valueFrom(term, named, found), reckoning))
        return [...(own === undefined ? [] : [own]), ...terms]
      })
  })
}

function wrongTerm({ what, value, from }: Term, there: unknown, { name }: Reckoning): readonly string[] {
  if (there === value) return []
  return [
    there === undefined
      ? `Unexpected term ${what} of ${name} from ${from}, where nothing stands; name the place, the reckoning, trade:… or number:… that it is read from`
      : `Unexpected term ${what} ${value} of ${name}, expected ${JSON.stringify(there)} as at ${from}; read it there, or name where it is from`,
  ]
}
/** What stands where a term is from. What a default of the trade holds only the trade knows. */
function valueFrom({ from, value }: Term, named: ReadonlyMap<string, number>, found: Job): unknown {
  if (named.has(from)) return named.get(from)
  if (from.startsWith('trade:')) return value
  if (from.startsWith('number:')) return Number(from.slice('number:'.length))
  return from.startsWith('/') ? valueAt(found, from) : undefined
}

/** Reckonings inside the facts that a rule gives which nobody gives under `reckonings`: a person could not open them. */
export function unopened(calls: readonly Call[], tried: readonly Tried[]): readonly string[] {
  const opened = new Set(tried.flatMap(({ plans }) => plans.flatMap((plan) => plan.reckonings.map(({ name }) => name))))
  return calls.flatMap(({ rule, answer }) =>
    reckoningsIn(answer)
      .filter(({ name }) => !opened.has(name))
      .map(({ name }) => `${rule.id} gives a fact that holds ${name}, which is not among the reckonings; give it there too`),
  )
}
function reckoningsIn(value: unknown): readonly Reckoning[] {
  if (typeof value !== 'object' || value === null) return []
  const own = 'terms' in value && 'how' in value && 'name' in value ? [value as Reckoning] : []
  return [...own, ...Object.values(value).flatMap(reckoningsIn)]
}
