import type { Readings } from '@evenhem/job'
import { type Capture, type Stage, type Step, stages } from '@evenhem/plugin'
import type { PlannedCheck, PlannedStep, WindowPlan } from './plan.ts'
import { closing } from './steps.ts'

/** How a stage of the work at a window stands. */
export interface StageOfWork {
  readonly stage: Stage
  readonly steps: readonly PlannedStep[]
  /** How many of them are done. */
  readonly done: number
  /** All are done; one that is not can be done now; or each that is not is closed. */
  readonly standing: 'done' | 'open' | 'closed'
  /** What closes those that are not done. */
  readonly inTheWay: readonly PlannedCheck[]
}
type Work = Pick<WindowPlan, 'steps' | 'checks'>

/** The stages of a window that have steps, in the order of work: what is done, what is open, and what stands in the way. */
export const stagesOf = (plan: Work): readonly StageOfWork[] =>
  stages.flatMap((stage) => {
    const steps = plan.steps.filter((step) => step.stage === stage)
    return steps.length === 0 ? [] : [stageOf(stage, steps, plan)]
  })

function stageOf(stage: Stage, steps: readonly PlannedStep[], plan: Work): StageOfWork {
  const left = steps.filter(({ done }) => !done)
  const standing = left.length === 0 ? 'done' : left.some(isOpen) ? 'open' : 'closed'
  const inWay = new Set(left.flatMap((step) => inTheWay(plan, step)))
  return { stage, steps, done: steps.length - left.length, standing, inTheWay: [...inWay] }
}
const isOpen = ({ closed }: PlannedStep): boolean => closed.length === 0

/** The checks that close a step, as they stand in the plan. */
export const inTheWay = ({ checks }: Pick<WindowPlan, 'checks'>, { stage, on }: PlannedStep): readonly PlannedCheck[] =>
  closing(stage, on, checks)

/** What is next: the first step that is neither done nor closed; undefined when all are done, or something stands in the way of the rest. */
export const nextStep = ({ steps }: Pick<WindowPlan, 'steps'>): PlannedStep | undefined =>
  steps.find((step) => !step.done && isOpen(step))

/** What a step asks for that nobody has read yet. */
export const missingOf = ({ captures = [] }: Pick<Step, 'captures'>, readings: Readings): readonly Capture[] =>
  captures.filter(({ at }) => readings[at]?.value === undefined)
