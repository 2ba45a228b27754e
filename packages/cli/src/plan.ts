import { windowsOf } from '@evenhem/job'
import { createPlanner, planText, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { tapeFor } from '@evenhem/server'
import {
  type Command,
  csv,
  type ExitCode,
  json,
  type Session,
  subjects,
  Trouble,
  unitIn,
  units,
  watch,
  window,
} from './command.ts'
import { isStanding } from './findings.ts'
import { type Ready, windowNamed, withJob } from './job.ts'
import { planned, type Sheet } from './plans.ts'
import { sheetOf } from './sheet.ts'
import { speechFor } from './speech.ts'
import { writeTakeoff } from './takeoff.ts'

/** 1 when something fails that nobody set aside, or a plugin has a fault. */
const codeOf = ({ checks, faults }: WindowPlan): ExitCode => (faults.length > 0 || checks.some(isStanding) ? 1 : 0)
const worst = (codes: readonly ExitCode[]): ExitCode => (codes.includes(1) ? 1 : 0)

/** All windows as one object, written one by one as they are taken: together they may be more than a text or a memory can hold. */
async function allAsJson({ found, ordered }: Ready, { out, flush }: Session): Promise<ExitCode> {
  const planner = createPlanner(plugins)
  const windows = windowsOf(found)
  let code: ExitCode = 0
  out('{')
  for (const [n, { place }] of windows.entries()) {
    const plan = planner.window(found, ordered, place)
    const text = JSON.stringify(plan, null, 2).replaceAll('\n', '\n  ')
    out(`${n === 0 ? '' : ','}\n  ${JSON.stringify(place)}: ${text}`)
    if (codeOf(plan) === 1) code = 1
    await flush?.()
  }
  out(windows.length === 0 ? '}\n' : '\n}\n')
  return code
}

function oneAsJson(ready: Ready, name: string, session: Session): ExitCode {
  const { sheets } = planned(ready, session, ({ plan }) => ({ text: planText(plan), code: codeOf(plan) }), [
    windowNamed(ready.found, name),
  ])
  session.out(sheets.map(({ text }) => text).join(''))
  return worst(sheets.map(({ code }) => code))
}

export const plan: Command = {
  name: 'plan',
  says: 'plan',
  more: 'plan.more',
  subjects: subjects.job,
  options: {
    window: { ...window, says: '--window.all' },
    takeoff: { says: '--takeoff' },
    json,
    csv: { ...csv, says: '--csv.takeoff' },
    units,
    watch,
  },
  run: (asked, session) =>
    withJob(asked.subject, session, async (ready) => {
      const { options } = asked
      if ('takeoff' in options) return writeTakeoff(ready, asked, session)
      if ('csv' in options) throw new Trouble('no-room', { flag: 'csv', needs: 'takeoff' })
      const { found } = ready
      const name = options.window
      if (found.rooms.every(({ windows }) => windows.length === 0) && name === undefined)
        session.err(`${session.voice('nothing-to-plan')}\n`)
      if ('json' in options) return name === undefined ? allAsJson(ready, session) : oneAsJson(ready, name, session)
      const speech = speechFor(tapeFor(found, unitIn(options)), session.language)
      const windows = name === undefined ? undefined : [windowNamed(found, name)]
      const take = ({ window, plan }: Sheet) => ({ text: sheetOf(found, window, plan, speech), code: codeOf(plan) })
      const { sheets } = planned(ready, session, take, windows)
      session.out(sheets.map(({ text }) => text).join('\n'))
      return worst(sheets.map(({ code }) => code))
    }),
}
