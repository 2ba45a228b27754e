import { type Job, type Place, placeInWords } from '@evenhem/job'
import type { Asked, Fault, JobPlan, PlannedCheck } from '@evenhem/planner'
import { findingLines } from './findings.ts'
import type { Sheet } from './plans.ts'
import type { Speech } from './speech.ts'

/** What the plan says about a window, a room or the whole job. */
export interface Group {
  /** The names on the way: room and window; none: the whole job. */
  readonly names: readonly string[]
  readonly at: Place
  readonly checks: readonly PlannedCheck[]
  readonly asks: readonly Asked[]
  readonly faults: readonly Fault[]
}

export const groupOf = ({ window: { room, window }, plan }: Sheet): Group => ({
  names: [room.name, window.name],
  at: plan.window,
  checks: plan.checks,
  asks: plan.asks,
  faults: plan.faults,
})

/** What rules of rooms and of the job found themselves; what their windows found is left to those. */
export function groupsAbove(job: Job, plan: JobPlan, windows: readonly Group[]): readonly Group[] {
  const below = new Set(windows.flatMap(({ asks }) => asks.map(({ at }) => at)))
  const inWindow = new Set<object>(plan.windows.flatMap(({ faults }) => faults))
  const own = { asks: plan.asks.filter(({ at }) => !below.has(at)), faults: plan.faults.filter((each) => !inWindow.has(each)) }
  const rooms = job.rooms.map(({ id, name }) => ({ at: `/rooms/${id}`, names: [name] }))
  const homeOf = (at: Place): Place => rooms.find((room) => at === room.at || at.startsWith(`${room.at}/`))?.at ?? ''
  return [{ at: '', names: [] }, ...rooms].map(({ at, names }) => ({
    at,
    names,
    checks: plan.checks.filter(({ on }) => homeOf(on) === at),
    asks: own.asks.filter((each) => homeOf(each.at) === at),
    faults: own.faults.filter((each) => homeOf(each.at) === at),
  }))
}

/** A check that only waits for what is to be measured: told once for all of them. */
const isWaiting = ({ verdict, because }: PlannedCheck): boolean => verdict === 'unknown' && because === 'waits'

/** A group for people: its name, then what fails, is unknown, to be looked at or to be measured. Empty when there is nothing to say. */
export function groupLines({ names, at, checks, asks, faults }: Group, job: Job, speech: Speech, isAll: boolean): string {
  const { voice } = speech
  const width = Math.max(
    7,
    ...(['pass', 'warn', 'fail', 'unknown'] as const).map((verdict) => voice(`verdict.${verdict}`).length),
  )
  const place = (of: Place): string => placeInWords(job, of, of.startsWith(`${at}/`) ? at : '', speech.language)
  const waiting = checks.filter(isWaiting).length
  const lines = [
    findingLines(
      checks.filter((check) => isAll || (check.verdict !== 'pass' && !isWaiting(check))),
      speech,
      place,
    ),
    ...(waiting > 0 && !isAll
      ? [`  ${voice('verdict.unknown').padEnd(width)}  ${voice('checks-wait', { count: waiting })}\n`]
      : []),
    ...asks.map(
      (ask) => `  ${voice('to-measure').padEnd(width)}  ${voice('waits', { place: place(ask.at), count: ask.holds })}\n`,
    ),
    ...faults.map(({ message, at: of }) => `  ${voice('fault').padEnd(width)}  ${place(of)}: ${message}\n`),
  ].join('')
  return lines === '' ? '' : `${names.join(', ') || voice('whole-job')}\n${lines}\n`
}
