// Prints how fast Evenhem is, as ratios to what the same machine does in the same run. Speed is never a test.
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { below, lay, windowsOf } from '@evenhem/job'
import { readJob } from '@evenhem/job/read'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { extensions } from '../tools/examples.ts'
import { jobOf } from '../tools/jobs.ts'
import { best, line } from './measure.ts'
import { plainValidation } from './plain.ts'
import { readyTimes } from './ready.ts'
import { servedShare } from './served.ts'
import { viewerSizes } from './sizes.ts'

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void
const sizes = [1, 12, 300, 3000]
const validate = plainValidation()

console.log('open and check, against JSON.parse + schema validation of the same bytes')
for (const windows of sizes)
  for (const [form, indent] of [
    ['compact', 0],
    ['indented', 2],
  ] as const) {
    const bytes = Buffer.from(JSON.stringify(jobOf(1, windows, Math.min(windows, 5)), null, indent))
    const rounds = windows > 100 ? 8 : 2000
    const plain = best(rounds, () => validate(JSON.parse(bytes.toString('utf8'))))
    const ours = best(rounds, () => readJob(bytes, extensions))
    console.log(
      line({
        what: `${windows} windows, ${form}, ${(bytes.length / 1e6).toFixed(2)} MB`,
        is: ours / plain,
        unit: '×',
        limit: 4,
        note: `(${ours.toFixed(1)} ms)`,
      }),
    )
  }

console.log('\nplan')
const perWindow = new Map<number, number>()
for (const windows of sizes) {
  const { job: ordered, readings } = readJob(JSON.stringify(jobOf(1, windows, 0)), extensions)
  if (!ordered) throw new Error('the generated job is none')
  const { job: found } = lay(ordered, readings)
  const full = best(windows > 100 ? 4 : 40, () => createPlanner(plugins).job(found, ordered)) / windows
  perWindow.set(windows, full)
  console.log(
    line({
      what: `${windows} windows, a full plan of each`,
      is: full,
      unit: 'ms a window',
      limit: windows === 1 ? Number.POSITIVE_INFINITY : 1,
    }),
  )
}
console.log(
  line({
    what: 'a window of 3,000 against a window of 300',
    is: (perWindow.get(3000) ?? 0) / (perWindow.get(300) ?? 1),
    unit: '×',
    limit: 1.2,
  }),
)

const { job: ordered } = readJob(JSON.stringify(jobOf(1, 3000, 0)), extensions)
if (!ordered) throw new Error('the generated job is none')
const planner = createPlanner(plugins)
collect()
const before = process.memoryUsage().heapUsed
planner.job(ordered, ordered)
collect()
console.log(line({ what: '3,000 windows, kept', is: (process.memoryUsage().heapUsed - before) / 1e6, unit: 'MB', limit: 50 }))

const place = windowsOf(ordered)[1500]?.place ?? ''
/** The job with one more panel measured, each time another sixteenth longer. */
let sixteenths = 0
const measured = () => {
  sixteenths += 1
  const value = 2_000_000_000 + (sixteenths * 25_400_000) / 16
  return lay(ordered, { [below(place, 'treatments', 'over', 'panels', 'left', 'finishedLength')]: { value } }).job
}
const again = best(200, () => planner.window(measured(), ordered, place))
console.log(line({ what: '3,000 windows, one reading laid and its window re-planned', is: again, unit: 'ms', limit: 2 }))
const whole = best(20, () => planner.job(measured(), ordered))
console.log(
  line({
    what: '3,000 windows, one reading laid and the job re-planned',
    is: whole,
    unit: 'ms',
    limit: Number.POSITIVE_INFINITY,
  }),
)

console.log('\nserver, the read job against a static file of the same bytes')
for (const windows of sizes)
  console.log(
    line({ what: `${windows} windows, requests`, is: 100 * (await servedShare(windows)), unit: '%', limit: 70, way: 'least' }),
  )

console.log('\nviewer, compressed script')
const { first, whole: all } = viewerSizes()
console.log(line({ what: 'before the first paint', is: first, unit: 'kB', limit: 60 }))
console.log(line({ what: 'all, with the worker that plans', is: all, unit: 'kB', limit: 120 }))

const { empty, sheet } = await readyTimes([12, 300, 3000])
console.log(`\nviewer ready, against an empty page of the same framework (${empty.toFixed(0)} ms)`)
const times = (windows: number) => sheet.get(windows) ?? Number.NaN
console.log(line({ what: '12 windows', is: times(12) / empty, unit: '×', limit: 1.5, note: `(${times(12).toFixed(0)} ms)` }))
console.log(line({ what: '300 windows', is: times(300) / empty, unit: '×', limit: 2, note: `(${times(300).toFixed(0)} ms)` }))
console.log(line({ what: '3,000 windows', is: times(3000), unit: 'ms', limit: 400 }))
