import type { Job, Place } from '@evenhem/job'
import { createPlanner, type PlannedCheck, type WindowPlan } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { traverse } from '@evenhem/plugin-traverse'
import { expect } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { drapery } from '../src/index.ts'

// Windows of the example of this name, changed a little, and what their plans say.

export const planner = createPlanner([drapery, rodAndRing, traverse, returns])
export const { found } = example('will-it-hold')
export const at = (window: string): Place => `/rooms/barn/windows/${window}`
export const over = (window: string): Place => `${at(window)}/treatments/over`
export type Change = readonly [place: string, value: unknown]
export const jobWith = (changes: readonly Change[], from: Job = found): Job =>
  changes.reduce<Job>((before, [place, value]) => changed(before, place, value), from)
export const plan = (window: string, changes: readonly Change[] = []): WindowPlan => {
  const job = jobWith(changes)
  const planned = planner.window(job, job, at(window))
  expect(planned.faults).toEqual([])
  return planned
}
export const number = ({ reckonings }: WindowPlan, name: string): number => {
  const own = reckonings.find((each) => each.name.endsWith(name))
  if (!own) throw new Error(`Unexpected plan without ${name}, expected it`)
  return own.value
}
export const checkOf = ({ checks }: WindowPlan, code: string): PlannedCheck | undefined =>
  checks.find((each) => each.code === code)
export const verdict = (window: string, code: string, changes: readonly Change[] = []) =>
  checkOf(plan(window, changes), code)?.verdict
