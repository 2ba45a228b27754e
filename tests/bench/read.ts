import { readJob } from '@evenhem/job/read'
import { extensions } from '../tools/examples.ts'
import { jobOf } from '../tools/jobs.ts'
import { best, sizes, tell } from './measure.ts'
import { plainValidation } from './plain.ts'

/** Open and check, against JSON.parse and schema validation of the same bytes. */
export function read(): void {
  console.log('\nopen and check, against JSON.parse + schema validation of the same bytes')
  const validate = plainValidation()
  for (const windows of sizes)
    for (const [form, indent] of [
      ['compact', 0],
      ['indented', 2],
    ] as const) {
      const bytes = Buffer.from(JSON.stringify(jobOf(1, windows, Math.min(windows, 5)), null, indent))
      const rounds = windows > 100 ? 8 : 2000
      const plain = best(rounds, () => validate(JSON.parse(bytes.toString('utf8'))))
      const ours = best(rounds, () => readJob(bytes, extensions))
      const what = `${windows} windows, ${form}, ${(bytes.length / 1e6).toFixed(2)} MB`
      tell({ what, is: ours / plain, unit: '×', limit: 4, note: `(${ours.toFixed(1)} ms)` })
    }
}
