import { basename, dirname } from 'node:path'
import type { Job } from '@evenhem/job'
import { type Extensions, readEntry } from '@evenhem/job/read'
import { type Entry, fold, type Line, type Site } from '@evenhem/site-log'
import { type LogWrong, readSiteLog } from '@evenhem/site-log/folder'

/** What was found on site, as the log of a job says it. */
export interface SiteRead {
  readonly entries: readonly Entry[]
  readonly site: Site
  /** What is wrong in the log's files; values that their places refuse are with their entries. */
  readonly wrong: readonly LogWrong[]
}

/** The folder whose log belongs to a job file; undefined for a file by another name, which has none. */
export const logOwner = (file: string): string | undefined => (basename(file) === 'job.json' ? dirname(file) : undefined)

/** Reads an event's value by what the format says at its place. A withdrawal has none. */
export function entryOf(job: Job, { event }: Line, extensions: Extensions): Entry {
  if (event.value === undefined) return { event }
  const read = readEntry(job, event.place, event.value, extensions)
  return 'refused' in read ? { event, refused: read.refused } : { event, read: read.value }
}

// Lines never change, and the job seldom: a value is read once.
const kept = new WeakMap<Job, Map<string, Entry>>()
export function entriesOf(job: Job, lines: readonly Line[], extensions: Extensions): readonly Entry[] {
  const known = kept.get(job) ?? new Map<string, Entry>()
  kept.set(job, known)
  return lines.map((line) => {
    const entry = known.get(line.text) ?? entryOf(job, line, extensions)
    known.set(line.text, entry)
    return entry
  })
}

/** The log beside a job file, its values read by the job's format. */
export async function readSite(file: string, job: Job, extensions: Extensions): Promise<SiteRead> {
  const folder = logOwner(file)
  const log = folder === undefined ? { files: [], wrong: [] } : await readSiteLog(folder)
  const lines = log.files.flatMap((each) => each.lines)
  const entries = entriesOf(job, lines, extensions)
  return { entries, site: fold(entries), wrong: log.wrong }
}
