import { type Place, valueAt } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import type { Sheet } from './sheet.ts'

type Capture = NonNullable<WindowPlan['steps'][number]['captures']>[number]

/** What ought to stand at a place: what was ordered, else what the step expects; and how much it may be off. */
export interface Meant {
  readonly value?: number
  readonly isOrdered: boolean
  readonly allowed?: number
}

const numberIn = (quantity: Capture['expected']): number | undefined => {
  const [value] = quantity ? Object.values(quantity) : []
  return typeof value === 'number' ? value : undefined
}

export function meantAt(sheet: Pick<Sheet, 'ordered' | 'plan'>, at: Place): Meant {
  const capture = sheet.plan.steps.flatMap(({ captures = [] }) => captures).find((each) => each.at === at)
  const ordered = valueAt(sheet.ordered, at)
  const value = typeof ordered === 'number' ? ordered : numberIn(capture?.expected)
  const allowed = numberIn(capture?.tolerance)
  return {
    isOrdered: typeof ordered === 'number',
    ...(value === undefined ? {} : { value }),
    ...(allowed === undefined ? {} : { allowed }),
  }
}

/** Whether a value is further off than it may be. Without a tolerance nothing is; of a count only what is missing. */
export function isOff({ value: meant, allowed }: Meant, value: unknown, as: Capture['as']): boolean {
  if (typeof value !== 'number' || meant === undefined) return false
  if (as === 'count') return value < meant
  return allowed !== undefined && Math.abs(value - meant) > allowed
}
