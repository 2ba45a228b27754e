import type { Extensions } from '@evenhem/job/read'
import { eventId, type LogFile } from '@evenhem/site-log'
import type { JobSource, Served } from './job.ts'
import type { LogFiles } from './log-files.ts'
import { type SentEntry, sent } from './sent-entry.ts'
import { entriesOf, logOwner } from './site.ts'

/** A job and its log as they lie on the disk. */
export interface JobOnDisk {
  readonly source: JobSource
  readonly logs: LogFiles
}
/** What came since somebody looked the last time. */
export interface New {
  readonly entries: readonly SentEntry[]
  /** The order or a catalogue of it changed. */
  readonly isOtherJob: boolean
}
export interface News {
  /** The first look finds nothing new. Never throws. */
  readonly look: () => Promise<New>
  /** Those of these entries that are new; from now on they are not. */
  readonly take: (entries: readonly SentEntry[]) => readonly SentEntry[]
}

export function newsOf({ source, logs }: JobOnDisk, extensions: Extensions): News {
  const seen = new Set<string>()
  let tag: string | undefined
  const isNew = ({ event }: Pick<SentEntry, 'event'>): boolean => !seen.has(eventId(event))
  const take = <E extends Pick<SentEntry, 'event'>>(entries: readonly E[]): readonly E[] => {
    const fresh = entries.filter(isNew)
    for (const { event } of fresh) seen.add(eventId(event))
    return fresh
  }

  async function look(): Promise<New> {
    const served = await source.read().catch(() => undefined)
    const job = served?.read.job
    const lines = served && job ? (await logOf(served, logs)).flatMap((file) => file.lines) : []
    const [before, fresh] = [tag, take(lines)]
    tag = served?.etag ?? 'none'
    if (before === undefined || !job) return { entries: [], isOtherJob: before !== undefined && before !== tag }
    return { entries: entriesOf(job, fresh, extensions).map(sent), isOtherJob: before !== tag }
  }
  return { look, take }
}

/** What is wrong with a log is told by whoever asks for all of it. */
async function logOf({ file }: Served, logs: LogFiles): Promise<readonly LogFile[]> {
  const folder = logOwner(file)
  return folder === undefined ? [] : logs(folder).catch(() => [])
}
