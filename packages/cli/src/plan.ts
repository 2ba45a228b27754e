import { planText, type WindowPlan } from '@evenhem/planner'
import { tapeFor } from '@evenhem/server'
import { type Command, type ExitCode, json, subjects, unitIn, units, watch, window } from './command.ts'
import { isStanding } from './findings.ts'
import { windowNamed, withJob } from './job.ts'
import { planned } from './plans.ts'
import { sheetOf } from './sheet.ts'
import { speechFor } from './speech.ts'

/** 1 when something fails that nobody set aside, or a plugin has a fault. */
const exitCode = (plans: readonly WindowPlan[]): ExitCode =>
  plans.some(({ checks, faults }) => faults.length > 0 || checks.some(isStanding)) ? 1 : 0

const all = (plans: readonly WindowPlan[]): string =>
  `${JSON.stringify(Object.fromEntries(plans.map((each) => [each.window, each])), null, 2)}\n`

export const plan: Command = {
  name: 'plan',
  says: 'plan',
  more: 'plan.more',
  subjects: subjects.job,
  options: { window: { ...window, says: '--window.all' }, json, units, watch },
  run: ({ subject, options }, session) =>
    withJob(subject, session, async (ready) => {
      const { found } = ready
      const windows = options.window === undefined ? undefined : [windowNamed(found, options.window)]
      const { sheets } = planned(ready, session, (sheet) => sheet, windows)
      const plans = sheets.map(({ plan }) => plan)
      if (sheets.length === 0) session.err(`${session.voice('nothing-to-plan')}\n`)
      const speech = speechFor(tapeFor(found, unitIn(options)), session.language)
      if (!('json' in options)) session.out(sheets.map(({ window, plan }) => sheetOf(found, window, plan, speech)).join('\n'))
      else session.out(options.window === undefined ? all(plans) : plans.map(planText).join(''))
      return exitCode(plans)
    }),
}
