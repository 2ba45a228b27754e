import { readFile } from 'node:fs/promises'
import { findWindow, type Job, lay, nameOf, type PlacedWindow, type Readings, windowsOf } from '@evenhem/job'
import { extensionsOf, formatDiagnostics, type ReadJob, readJob } from '@evenhem/job/read'
import { plugins } from '@evenhem/plugins'
import { cataloguesOf, jobFile, readSite, type SiteRead } from '@evenhem/server'
import { foundWith } from '@evenhem/site-log'
import { hint } from './arguments.ts'
import { type ExitCode, type Session, Trouble } from './command.ts'
import { logLines } from './log-lines.ts'
import { type Language, type Phrase, reader } from './voice.ts'

export const extensions = extensionsOf(plugins)

/** A job file that was read, and its path. Without `job` something about it is an error. */
export interface Opened extends ReadJob {
  readonly file: string
  /** What the log beside it says; its readings are laid over those of the file. */
  readonly found?: SiteRead
}

/** Opens a job: a file, or a folder with `job.json` in it. Throws `Trouble` when there is none. */
export async function open(path: string): Promise<Opened> {
  const file = await jobFile(path).catch((error) => none(path, error))
  const bytes = await readFile(file).catch((error) => none(file, error))
  const read = readJob(bytes, { ...extensions, catalogues: await cataloguesOf(file, bytes) })
  if (!read.job) return { file, ...read }
  const found = await readSite(file, read.job, extensions)
  return { file, ...read, readings: foundWith(read.readings, found.site), found }
}

function none(path: string, { code }: NodeJS.ErrnoException): never {
  throw new Trouble('no-job', { path, why: why(code) })
}
/** What the system had against it. */
export const why = (error = 'unknown'): Phrase =>
  error === 'ENOENT'
    ? { code: 'why.nothing-there' }
    : error === 'EACCES'
      ? { code: 'why.not-allowed' }
      : { code: 'why.system', values: { error } }

const isObject = (text: string): boolean => {
  try {
    const value: unknown = JSON.parse(text.replace(/^\ufeff/, ''))
    return value !== null && typeof value === 'object' && !Array.isArray(value)
  } catch {
    return false
  }
}

/** 0: good. 1: there are errors. 2: it is no JSON, no object, or of a format newer than ours. */
export function exitCode({ text, diagnostics }: Opened): ExitCode {
  if (!diagnostics.some(({ severity }) => severity === 'error')) return 0
  return isObject(text) && !diagnostics.some(({ code }) => code === 'job/newer-format') ? 1 : 2
}

/** What is to be said about a job file, each with the line that it is about. */
export const written = ({ diagnostics, text, file }: Opened, language: Language, colours: boolean): string =>
  formatDiagnostics(diagnostics, text, { file, colour: colours, ...reader[language] })

/** A job as ordered and as found. */
export interface Ready {
  readonly ordered: Job
  readonly found: Job
  readonly readings: Readings
}

/** Does something with a job. When it has errors, says them to `err` instead. */
export async function withJob(
  path: string,
  { err, language, voice }: Session,
  use: (ready: Ready) => Promise<ExitCode>,
): Promise<ExitCode> {
  const opened = await open(path)
  const { job: ordered, readings, diagnostics } = opened
  const errors = diagnostics.filter(({ severity }) => severity === 'error')
  if (errors.length > 0) err(written({ ...opened, diagnostics: errors }, language, false))
  if (opened.found && ordered) err(logLines(opened.found, ordered, language, voice))
  return ordered ? use({ ordered, readings, found: lay(ordered, readings).job }) : exitCode(opened)
}

/** The window of that name; `Trouble` that lists what there is when it is none or several. */
export function windowNamed(job: Job, name: string): PlacedWindow {
  const search = findWindow(job, name)
  if (search.is === 'one') return search.found
  const names = search.among.map(nameOf)
  if (search.is === 'several') throw new Trouble('several-windows', { name, names: names.join(', ') })
  if (names.length === 0) throw new Trouble('no-windows', { name })
  const ids = windowsOf(job).map(({ window }) => window.id)
  throw new Trouble('no-window', { name, names: names.join(', '), hint: hint(name, [...names, ...ids]) })
}
