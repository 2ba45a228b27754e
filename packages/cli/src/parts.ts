import { type Job, nameOf, type PlacedWindow, placeInWords } from '@evenhem/job'
import { type PullLine, pullList } from '@evenhem/planner'
import { tapeFor } from '@evenhem/server'
import { type Command, csv, json, subjects, Trouble, unitIn, units, window } from './command.ts'
import { csvOf } from './csv.ts'
import { windowNamed, withJob } from './job.ts'
import { planned } from './plans.ts'
import { type Speech, speechFor } from './speech.ts'
import { plain, table } from './table.ts'
import type { Voice } from './voice.ts'

/** What was counted for a window, and whether places must be measured before the rest can be. */
interface Counted {
  readonly window: PlacedWindow
  readonly lines: readonly PullLine[]
  readonly isOpen: boolean
}

const hardwareName = (job: Job, { hardware }: PullLine, { language }: Speech): string =>
  hardware === undefined ? '' : placeInWords(job, hardware, '', language)

const linesOf = (job: Job, lines: readonly PullLine[], speech: Speech): string => {
  const { say, length, voice } = speech
  return table(
    lines.map((line) => [
      String(line.count).padStart(4),
      say(line.what),
      line.length === undefined ? '' : length(line.length),
      hardwareName(job, line, speech),
      line.spares === undefined ? '' : voice('spare', { spares: line.spares }),
    ]),
  )
}

/** The pull list for people: by window, then in all, then what is left as spares. */
function text(job: Job, windows: readonly Counted[], inAll: readonly PullLine[] | undefined, speech: Speech): string {
  const { voice } = speech
  const each = windows.map(
    ({ window: { room, window }, lines }) => `${room.name}, ${window.name}\n${linesOf(job, lines, speech)}`,
  )
  const all = inAll ? [`${voice('in-all')}\n${linesOf(job, inAll, speech)}`] : []
  const spares = job.job.handOver?.spares ?? []
  const left = spares.length > 0 ? [`${voice('left-as-spares', { list: spares.join(', ') })}\n`] : []
  return plain(`${job.job.name}\n\n${[...each, ...all, ...left].join('\n')}`)
}

function rows(job: Job, windows: readonly Counted[], speech: Speech): readonly (readonly string[])[] {
  const { say, length, voice } = speech
  const head = (['room', 'window', 'count', 'part', 'length', 'hardware', 'spares'] as const).map((name) => voice(`csv.${name}`))
  const body = windows.flatMap(({ window: { room, window }, lines }) =>
    lines.map((line) => [
      room.name,
      window.name,
      String(line.count),
      say(line.what),
      line.length === undefined ? '' : length(line.length),
      hardwareName(job, line, speech),
      line.spares === undefined ? '' : String(line.spares),
    ]),
  )
  return [head, ...body]
}

/** What the list cannot hold yet, because it follows from what is not measured; empty when it is whole. */
function lacking(windows: readonly Counted[], voice: Voice): string {
  const open = windows.filter(({ isOpen }) => isOpen)
  if (open.length === 0) return ''
  return `${plain(voice('not-all', { count: open.length, names: open.map(({ window }) => nameOf(window)).join(', ') }))}\n`
}

export const parts: Command = {
  name: 'parts',
  says: 'parts',
  more: 'parts.more',
  subjects: subjects.job,
  options: { window: { ...window, says: '--window.all' }, json, csv, units },
  run: ({ subject, options }, session) =>
    withJob(subject, session, async (ready) => {
      if ('json' in options && 'csv' in options) throw new Trouble('not-both', { first: '--json', second: '--csv' })
      const { found } = ready
      const chosen = options.window === undefined ? undefined : [windowNamed(found, options.window)]
      const { sheets } = planned(
        ready,
        session,
        ({ window, plan }) => ({ window, parts: plan.parts, isOpen: plan.asks.length > 0 }),
        chosen,
      )
      const list = pullList(sheets.map(({ window, parts }) => ({ window: window.place, parts })))
      const windows = sheets.map(({ window, isOpen }, n) => ({ window, isOpen, lines: list.windows[n]?.lines ?? [] }))
      const speech = speechFor(tapeFor(found, unitIn(options)), session.language)
      if ('json' in options) session.out(`${JSON.stringify(list, null, 2)}\n`)
      else if ('csv' in options) session.out(csvOf(rows(found, windows, speech)))
      else session.out(sheets.length === 0 ? '' : text(found, windows, chosen ? undefined : list.job, speech))
      session.err(sheets.length === 0 ? `${session.voice('nothing-to-pack')}\n` : lacking(windows, session.voice))
      return 0
    }),
}
