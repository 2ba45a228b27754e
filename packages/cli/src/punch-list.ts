import { dirname } from 'node:path'
import { isDate } from '@evenhem/job'
import { wordsOf } from '@evenhem/planner/say'
import { plugins } from '@evenhem/plugins'
import { isSettled, type ListedPoint, photosOf, pointsOfJob, pointsOfWindow, punchListOf } from '@evenhem/report'
import { jobFile, paperFor, tapeFor } from '@evenhem/server'
import { calendarOf } from './calendar.ts'
import { type Asked, all, type Command, csv, json, type Option, type Session, subjects, Trouble, window } from './command.ts'
import { csvOf } from './csv.ts'
import { put } from './file.ts'
import { type Ready, windowNamed, withJob } from './job.ts'
import { planned } from './plans.ts'
import { punchJson, punchRows, punchText } from './punch-rows.ts'
import { smallPhotos } from './small-photos.ts'
import { speechFor } from './speech.ts'
import { visitsOf } from './visits.ts'

const owner: Option = { says: '--owner', value: 'OWNER', choices: ['workroom', 'installer', 'other-trade', 'customer'] }
const ways = ['csv', 'ics', 'json', 'html'] as const

/** Throws `Trouble` when two ways of writing are asked for, or a day that is none. */
function mustMakeSense({ options }: Asked): void {
  const [first, second] = ways.filter((way) => way in options)
  if (first && second) throw new Trouble('not-both', { first: `--${first}`, second: `--${second}` })
  if (options.by !== undefined && !isDate(options.by)) throw new Trouble('not-a-day', { option: '--by', got: options.by })
}

/** The points of a job, in the order of its windows; those of no window last. */
function pointsOf(ready: Ready, name: string | undefined, session: Session): readonly ListedPoint[] {
  const chosen = name === undefined ? undefined : [windowNamed(ready.found, name)]
  const { sheets, whole } = planned(ready, session, ({ window: placed, plan }) => pointsOfWindow(placed, plan), chosen)
  return [...sheets.flat(), ...(chosen ? [] : pointsOfJob(whole()))]
}

/** Those that were asked for: what is left, of one owner, by a day. What has no day is due by none. */
const asked = (points: readonly ListedPoint[], { options }: Asked): readonly ListedPoint[] =>
  points.filter(
    (point) =>
      ('all' in options || !isSettled(point)) &&
      (options.owner === undefined || point.owner === options.owner.replace('-', ' ')) &&
      (options.by === undefined || (point.by !== undefined && point.by <= options.by)),
  )

/** Writes the page for a workroom or another trade, with the photos that are in the job's folder. */
async function writePage(subject: string, file: string, points: readonly ListedPoint[], { found }: Ready, session: Session) {
  const photos = await smallPhotos(dirname(await jobFile(subject)), points.flatMap(photosOf))
  const { language } = session
  const page = punchListOf({ found, points, photos, words: wordsOf(plugins), language, paper: paperFor(found) })
  await put(page.html, file, session)
}

async function write(line: Asked, points: readonly ListedPoint[], ready: Ready, session: Session): Promise<void> {
  const { options, subject } = line
  const { found, readings } = ready
  const speech = speechFor(tapeFor(found), session.language)
  if (options.html !== undefined) return writePage(subject, options.html, points, ready, session)
  if ('json' in options) session.out(`${JSON.stringify(punchJson(points), null, 2)}\n`)
  else if ('csv' in options) session.out(csvOf(punchRows(found, points, speech)))
  else if ('ics' in options) session.out(calendarOf(visitsOf(found, points, readings, speech)))
  else if (points.length > 0) session.out(punchText(found, points, speech))
  if (points.length === 0) session.err(`${session.voice('punch.nothing')}\n`)
}

export const punchList: Command = {
  name: 'punch-list',
  says: 'punch-list',
  more: 'punch-list.more',
  subjects: subjects.folder,
  options: {
    owner,
    window: { ...window, says: '--window.all' },
    by: { says: '--by', value: 'DAY' },
    all: { ...all, says: '--all.points' },
    json,
    csv,
    ics: { says: '--ics' },
    html: { says: '--html', value: 'FILE' },
  },
  run: async (line, session) => {
    mustMakeSense(line)
    return withJob(line.subject, session, async (ready) => {
      await write(line, asked(pointsOf(ready, line.options.window, session), line), ready, session)
      return 0
    })
  },
}
