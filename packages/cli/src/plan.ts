import { windowsOf } from '@evenhem/job'
import { createPlanner, planText, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { tapeFor } from '@evenhem/server'
import { type Command, type ExitCode, json, unitIn, units, window } from './command.ts'
import { windowNamed, withJob } from './job.ts'
import { sheetOf } from './sheet.ts'
import { speechFor } from './speech.ts'

/** 1 when something fails that nobody set aside, or a plugin has a fault. */
const exitCode = (plans: readonly WindowPlan[]): ExitCode =>
  plans.some(
    ({ checks, faults }) =>
      faults.length > 0 || checks.some(({ verdict, override }) => verdict === 'fail' && override === undefined),
  )
    ? 1
    : 0

const all = (plans: readonly WindowPlan[]): string =>
  `${JSON.stringify(Object.fromEntries(plans.map((each) => [each.window, each])), null, 2)}\n`

export const plan: Command = {
  name: 'plan',
  says: 'Show heights, marks, hooks, checks, steps and parts.',
  more: 'Exit code 1: a check fails.',
  subject: 'job',
  options: { window: { ...window, says: `${window.says} Left out: all windows.` }, json, units },
  run: ({ subject, options }, streams) =>
    withJob(subject, streams, async ({ ordered, found }) => {
      const planner = createPlanner(plugins)
      const windows = options.window === undefined ? windowsOf(found) : [windowNamed(found, options.window)]
      const sheets = windows.map((window) => ({ window, plan: planner.window(found, ordered, window.place) }))
      const plans = sheets.map(({ plan }) => plan)
      if (windows.length === 0) streams.err('There is no window in this job, so there is nothing to plan.\n')
      const speech = speechFor(tapeFor(found, unitIn(options)))
      if (!('json' in options)) streams.out(sheets.map(({ window, plan }) => sheetOf(found, window, plan, speech)).join('\n'))
      else streams.out(options.window === undefined ? all(plans) : plans.map(planText).join(''))
      return exitCode(plans)
    }),
}
