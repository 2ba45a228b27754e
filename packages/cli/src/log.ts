import { dirname } from 'node:path'
import { below, type Job, type Place, placeInWords, type Signature, valueAt } from '@evenhem/job'
import { readEntry } from '@evenhem/job/read'
import type { Length } from '@evenhem/length'
import { logOwner, tapeFor } from '@evenhem/server'
import { type Entry, type Event, eventId, inOrder, signaturesAt } from '@evenhem/site-log'
import { readSiteLog, type SiteLog } from '@evenhem/site-log/folder'
import { type Command, json, type Session, subjects, unitIn, units, window } from './command.ts'
import { exitCode, extensions, type Opened, open, windowNamed, written } from './job.ts'
import { type Speech, speechFor } from './speech.ts'
import { plain, table } from './table.ts'
import { reader } from './voice.ts'

/** What was put, and where its line stands. */
interface Shown extends Entry {
  readonly file: string
  readonly line: number
  /** Nothing was put over it. */
  readonly stands: boolean
  readonly inConflict: boolean
}

const isWithin = (place: Place, within: Place | undefined): boolean =>
  within === undefined || place === within || place.startsWith(`${within}/`)

/** What was put below a place, each with its line, in the order in which it is shown. */
function shownOf({ found }: Opened, log: SiteLog, within: Place | undefined): readonly Shown[] {
  const lines = new Map(
    log.files.flatMap(({ device, rows }) =>
      rows.flatMap(({ line }, i) => (line ? [[eventId(line.event), { file: `${device}.jsonl`, line: i + 1 }] as const] : [])),
    ),
  )
  const conflicts = new Set(found?.site.conflicts.map(({ place }) => place))
  return (found?.entries ?? [])
    .filter(({ event }) => isWithin(event.place, within))
    .toSorted((a, b) => inOrder(a.event, b.event))
    .map((entry) => {
      const { place } = entry.event
      const stands = found?.site.places.get(place)?.live.some(({ event }) => event === entry.event) ?? false
      const where = lines.get(eventId(entry.event)) ?? { file: `${entry.event.by}.jsonl`, line: 0 }
      return { ...entry, ...where, stands, inConflict: stands && conflicts.has(place) }
    })
}

const inch = 25_400_000
/** Whether a place takes a length: an inch is read as one there, or is absurd for it. */
function takesLength(job: Job, place: Place): boolean {
  const read = readEntry(job, place, '1 in', extensions)
  return 'refused' in read ? read.refused.code.startsWith('job/absurd-length') : read.value === inch
}

/** Who signed and what was accepted. How it was drawn is not for reading, and its seal is what `verify` looks at. */
const signedSays = ({ role, name, accepts, left = '' }: Signature, { voice }: Speech): string =>
  voice('log-signed', { role, name, accepts: accepts?.split(' ')[0] ?? '', left, isLeft: left === '' ? 'no' : 'yes' })

/** A value as people read it: lengths in their unit, what has members by their names. */
function shownValue(job: Job, place: Place, value: unknown, speech: Speech): string {
  if (typeof value === 'number') return takesLength(job, place) ? speech.length(value as Length) : speech.number(value)
  if (typeof value === 'boolean') return speech.voice(value ? 'log-yes' : 'log-no')
  if (Array.isArray(value))
    return value.map((item) => shownValue(job, below(place, String(item?.id ?? '')), item, speech)).join('; ')
  if (value === null || typeof value !== 'object') return String(value)
  if (place.startsWith(`${signaturesAt}/`)) return signedSays(value as Signature, speech)
  return Object.entries(value)
    .filter(([name]) => name !== 'id')
    .map(([name, member]) => {
      const at = below(place, name)
      return `${placeInWords(job, at, place, speech.language)} ${shownValue(job, at, member, speech)}`
    })
    .join(', ')
}

/** `2026-11-25 09:12 UTC`, as the clock of the device said it. */
export const momentOf = (clock: string): string => {
  const [, day, time, zone = ''] = /^(.{10}).(.{5}).*?(Z|z|[+-]\d\d:\d\d)?$/.exec(clock) ?? ['', clock, '']
  return `${day} ${time} ${zone.toUpperCase() === 'Z' ? 'UTC' : zone}`.trim()
}
const whoOf = ({ who, by }: Event): string => (who === undefined ? by : `${who} (${by})`)

/** What stood at the place for whoever put something there: what it was put over, or else what the order says. */
function before(opened: Opened, job: Job, { event }: Shown, speech: Speech): string {
  const { found, readings } = opened
  const over = (event.over ?? []).flatMap((id) => found?.entries.find((entry) => eventId(entry.event) === id) ?? [])
  const values = over.flatMap(({ read }) => (read === undefined ? [] : [shownValue(job, event.place, read, speech)]))
  if (event.over) return values.join(' | ')
  const ordered = valueAt(job, event.place)
  const known = found?.site.readings[event.place] ? ordered : (readings[event.place]?.value ?? ordered)
  return known === undefined ? '' : speech.voice('log-ordered', { value: shownValue(job, event.place, known, speech) })
}

function changeOf(opened: Opened, job: Job, entry: Shown, speech: Speech): string {
  const { event, read, refused } = entry
  const old = before(opened, job, entry, speech)
  const now =
    event.value === undefined
      ? speech.voice('log-withdrawn')
      : refused
        ? JSON.stringify(event.value)
        : shownValue(job, event.place, read, speech)
  return old === '' ? now : `${old} → ${now}`
}

function noteOf({ refused, inConflict, file, line }: Shown, { voice }: Speech): string {
  if (refused) return voice('log-left-out', { why: { refused: refused.code, values: refused.values }, at: `${file}:${line}` })
  return inConflict ? voice('log-in-conflict') : ''
}

/** What was found, for people: one line for each entry, then what is wrong in the files. */
function text(opened: Opened, job: Job, log: SiteLog, shown: readonly Shown[], speech: Speech): string {
  const { say } = reader[speech.language]
  const rows = shown.map((entry) => [
    momentOf(entry.event.clock),
    whoOf(entry.event),
    placeInWords(job, entry.event.place, '', speech.language, (code) => speech.say(code)),
    changeOf(opened, job, entry, speech),
    noteOf(entry, speech),
  ])
  const odd = log.wrong.map(
    ({ file, line, code, values }) => `  ${file}${line === undefined ? '' : `:${line}`}: ${say(code, values).says}\n`,
  )
  const said = odd.length > 0 ? `\n${speech.voice('log-odd-lines')}\n${odd.join('')}` : ''
  return plain(`${job.job.name}\n${rows.length > 0 ? `\n${table(rows)}` : ''}${said}`)
}

/** The same for programs. */
function asJson({ file }: Opened, log: SiteLog, shown: readonly Shown[], { language }: Session) {
  const says = (code: string, values: Parameters<(typeof reader)['en']['say']>[1]) => reader[language].say(code, values).says
  return {
    file,
    entries: shown.map(({ event, refused, stands, inConflict, ...at }) => ({
      id: eventId(event),
      ...event,
      ...(refused && { refused: { code: refused.code, says: says(refused.code, refused.values) } }),
      stands,
      inConflict,
      file: at.file,
      line: at.line,
    })),
    wrong: log.wrong.map(({ values, ...each }) => ({ ...each, says: says(each.code, values) })),
  }
}

export const log: Command = {
  name: 'log',
  says: 'log',
  more: 'log.more',
  subjects: subjects.folder,
  options: { window: { ...window, says: '--window.all' }, json, units },
  run: async ({ subject, options }, session) => {
    const opened = await open(subject)
    const { job, diagnostics } = opened
    if (!job) {
      const errors = diagnostics.filter(({ severity }) => severity === 'error')
      session.err(written({ ...opened, diagnostics: errors }, session.language, false))
      return exitCode(opened)
    }
    const folder = logOwner(opened.file)
    const files: SiteLog = folder === undefined ? { files: [], wrong: [] } : await readSiteLog(folder)
    const within = options.window === undefined ? undefined : windowNamed(job, options.window).place
    const shown = shownOf(opened, files, within)
    const speech = speechFor(tapeFor(job, unitIn(options)), session.language)
    if ('json' in options) session.out(`${JSON.stringify(asJson(opened, files, shown, session), null, 2)}\n`)
    else if (shown.length + files.wrong.length > 0) session.out(text(opened, job, files, shown, speech))
    if (shown.length === 0) session.err(`${plain(session.voice('log-empty', { folder: dirname(opened.file) }))}\n`)
    return files.wrong.length > 0 || shown.some(({ refused, inConflict }) => refused || inConflict) ? 1 : 0
  },
}
