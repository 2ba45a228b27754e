import { plugins } from '@evenhem/plugins'
import { type ReportWishes, reporter } from '@evenhem/server'
import { type Command, out, unitIn, units } from './command.ts'
import { put } from './file.ts'
import { withJob } from './job.ts'

const paper = { says: "The paper to print on; left out: that of the job's country.", value: 'PAPER', choices: ['a4', 'letter'] }

export const report: Command = {
  name: 'report',
  says: "Write the customer's report as one HTML page.",
  more: 'The page holds everything it needs; it opens in any browser and prints on A4 or Letter.',
  subject: 'folder',
  options: { out, paper, units },
  run: ({ subject, options }, streams) =>
    withJob(subject, streams, async ({ ordered, readings }) => {
      const wishes: ReportWishes = { unit: unitIn(options), paper: options.paper as ReportWishes['paper'] }
      await put(reporter(plugins)(ordered, readings, wishes).html, options.out, streams)
      return 0
    }),
}
