import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { below, type Job, lay, windowsOf } from '@evenhem/job'
import { readJob } from '@evenhem/job/read'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { extensions } from '../tools/examples.ts'
import { jobOf } from '../tools/jobs.ts'
import { best, sizes, tell } from './measure.ts'

/** Full plans, what they keep, and one reading planned again. */
export function plan(): void {
  console.log('\nplan')
  const perWindow = new Map(sizes.map((windows) => [windows, fullPlan(windows)]))
  for (const [windows, is] of perWindow)
    tell({ what: `${windows} windows, a full plan of each`, is, unit: 'ms a window', limit: 1 })
  const is = (perWindow.get(3000) ?? Number.NaN) / (perWindow.get(300) ?? Number.NaN)
  tell({ what: 'a window of 3,000 against a window of 300', is, unit: '×', limit: 1.2 })
  tell({ what: '3,000 windows, kept', is: kept(read(3000).job), unit: 'MB', limit: 50 })
  again(read(3000).job)
}

function read(windows: number) {
  const { job, readings } = readJob(JSON.stringify(jobOf(1, windows, 0, true)), extensions)
  if (!job)
    throw new Error(`Unexpected errors in the generated job of ${windows} windows, expected none; see tests/tools/jobs.ts.`)
  return { job, readings }
}

/** Milliseconds a window. */
function fullPlan(windows: number): number {
  const { job: ordered, readings } = read(windows)
  const { job: found } = lay(ordered, readings)
  return best(windows > 100 ? 4 : 100, () => createPlanner(plugins).job(found, ordered)) / windows
}

/** Megabytes that a planner keeps of a whole job. */
function kept(ordered: Job): number {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  /** Megabytes in use; what only weak maps hold goes at the second or third time. */
  const used = (): number => {
    for (let i = 0; i < 4; i++) collect()
    return process.memoryUsage().heapUsed / 1e6
  }
  const planner = createPlanner(plugins)
  const before = used()
  planner.job(ordered, ordered)
  const more = used() - before
  // It is asked once more, so that it is still there when it is measured.
  planner.job(ordered, ordered)
  return more
}

function again(ordered: Job): void {
  const planner = createPlanner(plugins)
  planner.job(ordered, ordered)
  const place = windowsOf(ordered)[1500]?.place ?? ''
  let sixteenths = 0
  /** The job with one more panel measured, each time another sixteenth longer. */
  const measured = () => {
    sixteenths += 1
    const value = 2_000_000_000 + (sixteenths * 25_400_000) / 16
    return lay(ordered, { [below(place, 'treatments', 'over', 'panels', 'left', 'finishedLength')]: { value } }).job
  }
  const window = best(200, () => planner.window(measured(), ordered, place))
  tell({ what: '3,000 windows, one reading laid and its window re-planned', is: window, unit: 'ms', limit: 2 })
  tell({
    what: '3,000 windows, one reading laid and the job re-planned',
    is: best(20, () => planner.job(measured(), ordered)),
    unit: 'ms',
  })
}
