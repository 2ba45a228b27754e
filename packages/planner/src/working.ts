import type { Job, Place } from '@evenhem/job'
import { valueAt } from '@evenhem/job'
import type { Reckoning, Term } from '@evenhem/length'
import { comesTo } from '@evenhem/length'
import type { Giver } from './plan.ts'

/** Any plan, or plans put together, that holds the reckonings. */
interface Workings {
  readonly reckonings: readonly (Reckoning & Partial<Giver>)[]
}
/** The values behind `trade:…`, by name. */
type Defaults = Readonly<Record<string, { readonly value: number }>>
/** What is wrong with a reckoning: `name` is its own, `from` the term that it concerns. */
export interface WorkingProblem {
  readonly name: string
  readonly what: 'twice' | 'does-not-come-to-it' | 'without-source' | 'not-found' | 'not-what-is-there' | 'circle' | 'not-whole'
  readonly from?: string
  readonly message: string
}

/** The reckoning that a term, a figure or a number of a step comes from; undefined when it comes from a place or a default. */
export const openReckoning = (plan: Workings, from: string): Reckoning | undefined =>
  plan.reckonings.find((each) => each.name === from)

/** The terms that a reckoning comes from in the end: places of the job and defaults of the trade, each once, as they come. */
export function leavesOf(plan: Workings, reckoning: Reckoning): readonly Term[] {
  const opened = new Set<string>([reckoning.name])
  const leaves = new Map<string, Term>()
  const open = (terms: readonly Term[]): void => {
    for (const term of terms) {
      const inner = openReckoning(plan, term.from)
      if (!inner) leaves.set(term.from, leaves.get(term.from) ?? term)
      else if (!opened.has(inner.name)) {
        opened.add(inner.name)
        open(inner.terms)
      }
    }
  }
  open(reckoning.terms)
  return [...leaves.values()]
}

/**
 * Everything that does not hold in the workings of a plan: a value that its terms do not come to, a leaf whose place holds
 * something else, a name that nothing has, two that have the same, a circle. `defaults` are the values behind `trade:…`.
 */
export function checkReckonings(plan: Workings, found: Job, defaults: Defaults): readonly WorkingProblem[] {
  return plan.reckonings.flatMap((reckoning, at) => [
    ...(plan.reckonings.findIndex(({ name }) => name === reckoning.name) < at
      ? [problem(reckoning, 'twice', 'unexpected second reckoning of this name, expected one')]
      : []),
    ...ownProblems(reckoning),
    ...reckoning.terms.flatMap((term) => termProblems(plan, reckoning, term, found, defaults)),
    ...(isInCircle(plan, reckoning) ? [problem(reckoning, 'circle', 'unexpected circle: its terms come from itself')] : []),
  ])
}

const problem = ({ name }: Reckoning, what: WorkingProblem['what'], message: string, from?: string): WorkingProblem => ({
  name,
  what,
  ...(from === undefined ? {} : { from }),
  message: `${name}: ${message}`,
})

function ownProblems(reckoning: Reckoning): readonly WorkingProblem[] {
  const { how, terms, value, unit, source } = reckoning
  const wanted = comesTo(how, terms, reckoning.unit)
  return [
    ...(how !== 'formula' && wanted !== value
      ? [
          problem(
            reckoning,
            'does-not-come-to-it',
            `unexpected value ${value}, expected ${wanted} from its ${terms.length} terms by ${how}`,
          ),
        ]
      : []),
    ...(how === 'formula' && !source
      ? [problem(reckoning, 'without-source', 'unexpected formula without a source, expected words for how it works')]
      : []),
    ...((unit === 'length' || unit === 'count') && !Number.isSafeInteger(value)
      ? [problem(reckoning, 'not-whole', `unexpected ${unit} ${value}, expected a whole number`)]
      : []),
  ]
}

function termProblems(
  plan: Workings,
  reckoning: Reckoning,
  { from, value, what }: Term,
  found: Job,
  defaults: Defaults,
): readonly WorkingProblem[] {
  const there = valueFrom(plan, from, found, defaults)
  if (there === value) return []
  return [
    there === undefined
      ? problem(reckoning, 'not-found', `nothing stands at ${from}, where ${what} ${value} comes from`, from)
      : problem(
          reckoning,
          'not-what-is-there',
          `unexpected ${what} ${value}, expected ${JSON.stringify(there)} as at ${from}`,
          from,
        ),
  ]
}
const valueFrom = (plan: Workings, from: string, found: Job, defaults: Defaults): unknown => {
  const inner = openReckoning(plan, from)
  if (inner) return inner.value
  if (from.startsWith('trade:')) return defaults[from.slice('trade:'.length)]?.value
  if (from.startsWith('number:')) return Number(from.slice('number:'.length))
  return from.startsWith('/') ? valueAt(found, from as Place) : undefined
}

function isInCircle(plan: Workings, reckoning: Reckoning): boolean {
  const seen = new Set<string>()
  const leads = (terms: readonly Term[]): boolean =>
    terms.some(({ from }) => {
      if (from === reckoning.name) return true
      if (seen.has(from)) return false
      seen.add(from)
      return leads(openReckoning(plan, from)?.terms ?? [])
    })
  return leads(reckoning.terms)
}
