import type { Stage } from '@evenhem/report'
import type { Session } from './command.ts'
import { type LineInView, lineInView } from './progress.ts'

/** Hears how far a report is, and of photos that are copied for it. */
export interface ReportProgress {
  readonly copied: (done: number, total: number) => void
  readonly told: (stage: Stage) => void
}

/** Works on a report, saying how far it is on one line of a terminal that is taken away in the end. */
export async function reportInView<T>(session: Seen, work: (progress: ReportProgress) => Promise<T>): Promise<T> {
  const line = lineInView(session)
  let seconds: NodeJS.Timeout | undefined
  try {
    return await work({
      copied: (done, total) => line.say('report-copied', { done, total }),
      told: (stage) => {
        if (stage.is === 'setting') seconds = secondsOn(line)
        else line.say(stage.is === 'planned' ? 'planned' : 'report-drawn', { done: stage.done, total: stage.total })
      },
    })
  } finally {
    clearInterval(seconds)
    line.away()
  }
}

/** What it is said on. */
type Seen = Pick<Session, 'err' | 'voice' | 'progress'>

function secondsOn(line: LineInView): NodeJS.Timeout {
  let seconds = 0
  const show = (): void => line.say('report-setting', { seconds: seconds++ })
  show()
  return setInterval(show, 1000)
}
