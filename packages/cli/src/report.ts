import { plugins } from '@evenhem/plugins'
import { type ReportWishes, reporter } from '@evenhem/server'
import { type Command, type Option, out, subjects, unitIn, units } from './command.ts'
import { put } from './file.ts'
import { withJob } from './job.ts'

const paper: Option = { says: '--paper', value: 'PAPER', choices: ['a4', 'letter'] }

export const report: Command = {
  name: 'report',
  says: 'report',
  more: 'report.more',
  subjects: subjects.folder,
  options: { out, paper, units },
  run: ({ subject, options }, streams) =>
    withJob(subject, streams, async ({ ordered, readings }) => {
      const { language } = streams
      const wishes: ReportWishes = { unit: unitIn(options), paper: options.paper as ReportWishes['paper'], language }
      await put(reporter(plugins)(ordered, readings, wishes).html, options.out, streams)
      return 0
    }),
}
