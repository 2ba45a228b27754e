import type { Place, Readings } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'

type Check = WindowPlan['checks'][number]
type Step = WindowPlan['steps'][number]
type Numbers = NonNullable<Step['numbers']>

/** A number that somebody puts on the wall or counts, before and after. */
export interface ChangedNumber {
  readonly what: string
  readonly of: string
  /** The step in which it is used: it tells one hole from another. */
  readonly step: Step
  readonly from: number | undefined
  readonly to: number | undefined
}
export interface ChangedCheck {
  readonly check: Check
  readonly from: Check['verdict'] | undefined
}
export interface ChangedPart {
  readonly what: string
  readonly from: number
  readonly to: number
}
/** What another value changed in a window's plan. */
export interface Changes {
  readonly numbers: readonly ChangedNumber[]
  readonly checks: readonly ChangedCheck[]
  readonly parts: readonly ChangedPart[]
  /** Steps that were not there before, and those that are there no more. */
  readonly added: readonly Step[]
  readonly gone: readonly Step[]
}

const stepKey = ({ on, plugin, id }: Step): string => `${on} ${plugin} ${id}`
const numbersOf = ({ steps }: WindowPlan): ReadonlyMap<string, Numbers[number] & { readonly step: Step }> =>
  new Map(
    steps.flatMap((step) => (step.numbers ?? []).map((number) => [`${number.of} ${number.what}`, { ...number, step }] as const)),
  )
// A check may run once for each of several things at one place: its number among those tells it apart.
function checksOf({ checks }: WindowPlan): ReadonlyMap<string, Check> {
  const seen = new Map<string, number>()
  return new Map(
    checks.map((check) => {
      const key = `${check.code} ${check.on} ${check.at}`
      const n = seen.get(key) ?? 0
      seen.set(key, n + 1)
      return [`${key} ${n}`, check] as const
    }),
  )
}
const partsOf = ({ parts }: WindowPlan): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>()
  for (const { what, count, on } of parts) sums.set(`${on} ${what}`, (sums.get(`${on} ${what}`) ?? 0) + count)
  return sums
}

/** What is not the same in two plans of one window: marks and counts by how much, checks by their verdict. */
export function changesOf(before: WindowPlan, after: WindowPlan): Changes {
  const [numbers, were] = [numbersOf(after), numbersOf(before)]
  const [checks, checked] = [checksOf(after), checksOf(before)]
  const [parts, counted] = [partsOf(after), partsOf(before)]
  const [steps, stood] = [new Set(after.steps.map(stepKey)), new Set(before.steps.map(stepKey))]
  return {
    numbers: [
      ...[...numbers].flatMap(([key, { what, of, step, value }]) => {
        const from = were.get(key)?.value
        return from === value ? [] : [{ what, of, step, from, to: value }]
      }),
      ...[...were].flatMap(([key, { what, of, step, value }]) =>
        numbers.has(key) ? [] : [{ what, of, step, from: value, to: undefined }],
      ),
    ],
    checks: [...checks].flatMap(([key, check]) => {
      const from = checked.get(key)?.verdict
      return from === check.verdict ? [] : [{ check, from }]
    }),
    parts: [...new Set([...parts.keys(), ...counted.keys()])].flatMap((key) => {
      const [from, to] = [counted.get(key) ?? 0, parts.get(key) ?? 0]
      return from === to ? [] : [{ what: key.split(' ')[1] ?? '', from, to }]
    }),
    added: after.steps.filter((step) => !stood.has(stepKey(step))),
    gone: before.steps.filter((step) => !steps.has(stepKey(step))),
  }
}

/** Whether the plan is the same but for the value itself. */
export const isNothing = ({ numbers, checks, parts, added, gone }: Changes): boolean =>
  numbers.length + checks.length + parts.length + added.length + gone.length === 0

/** Whether there is something to tell: more than checks that now know what they do not know yet. */
export const isNews = ({ checks, ...rest }: Changes): boolean =>
  !isNothing({ ...rest, checks: [] }) || checks.some(({ check, from }) => !(from === undefined && check.verdict === 'unknown'))

/** The places whose values are not the same in two sets of readings. */
export const changedPlaces = (before: Readings, after: Readings): readonly Place[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
    (place) => JSON.stringify(before[place]?.value) !== JSON.stringify(after[place]?.value),
  )
