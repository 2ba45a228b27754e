import { defaults } from '@evenhem/drapery'
import { valueAt } from '@evenhem/job'
import { checkReckonings, createPlanner, leavesOf } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { describe, expect, test } from 'vitest'
import { examples } from '../tools/examples.ts'

const planner = createPlanner(plugins)

describe.each(examples)('$name', ({ read, ordered, found, places }) => {
  const plans = places.map((place) => planner.window(found, ordered, place))
  // That a frozen copy is not what its catalogue says now is no complaint about the file.
  test('is read without a complaint', () =>
    expect(read.diagnostics.filter(({ code }) => code !== 'job/catalogue-changed')).toEqual([]))
  test('is planned without a fault', () => expect(plans.flatMap((plan) => plan.faults)).toEqual([]))
  test('every reckoning comes to its value, and its leaves are places that hold those values', () => {
    expect(plans.flatMap((plan) => checkReckonings(plan, found, defaults))).toEqual([])
    expect(plans.flatMap((plan) => plan.reckonings.filter((reckoning) => leavesOf(plan, reckoning).length === 0))).toEqual([])
  })
  test('every number on a drawing stands at a reckoning or a place of the job', () => {
    const figures = plans.flatMap((plan) =>
      figuresOf(plan.layers).map((figure) => ({ ...figure, holds: holds(plan, figure.of, found) })),
    )
    expect(
      figures.filter(({ value, mass, holds }) =>
        mass === undefined ? value !== holds : mass !== Number((Number(holds) / gravity).toPrecision(12)),
      ),
    ).toEqual([])
    expect(figures.length).toBeGreaterThan(places.length * 3)
  })
})

test('all rules of all plugins arrange', () => expect(planner.unmet).toEqual([]))

/** A load is told as the kilograms that weigh as much. */
const gravity = 9.80665
interface Figure {
  readonly of: string
  readonly value?: number
  readonly mass?: number
}
const figuresOf = (value: unknown): readonly Figure[] =>
  value === null || typeof value !== 'object'
    ? []
    : 'figure' in value
      ? [value.figure as Figure]
      : Object.values(value).flatMap(figuresOf)
function holds(
  plan: { readonly reckonings: readonly { readonly name: string; readonly value: number }[] },
  of: string,
  job: unknown,
): unknown {
  return of.includes('#') ? plan.reckonings.find((each) => each.name === of)?.value : valueAt(job, of)
}
