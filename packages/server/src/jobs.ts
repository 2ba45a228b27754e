import { existsSync, readdirSync } from 'node:fs'
import { readdir, realpath } from 'node:fs/promises'
import { isAbsolute, join, relative, sep } from 'node:path'
import type { Extensions } from '@evenhem/job/read'
import { type JobSource, jobSource } from './job.ts'
import { type Live, liveOf } from './live.ts'
import { type LogFiles, logFiles } from './log-files.ts'
import type { Pace, Streams } from './streams.ts'

/** A job that is served. */
export interface ServedJob {
  /** Its address: `/`, or `/jobs/heron-point/` where there are many. */
  readonly at: string
  readonly path: string
  readonly source: JobSource
  readonly logs: LogFiles
  readonly live: Live
}
/** The jobs that a server serves: one, or those of a folder by the names of their folders. */
export interface Jobs {
  readonly areMany: boolean
  /** The job of that name; undefined when there is none. The name of a single job is empty. */
  readonly named: (name: string) => Promise<ServedJob | undefined>
  readonly all: () => Promise<readonly ServedJob[]>
}

/** Whether a path is a folder without a job of its own whose folders hold jobs. What cannot be looked into does not. */
export function holdsJobs(path: string): boolean {
  try {
    if (existsSync(join(path, 'job.json'))) return false
    return readdirSync(path).some((name) => isShown(name) && existsSync(join(path, name, 'job.json')))
  } catch {
    return false
  }
}

export function jobsAt(path: string, extensions: Extensions, streams: Streams, pace: Pace): Jobs {
  const serve = (at: string, folder: string): ServedJob => {
    const disk = { source: jobSource(folder, extensions), logs: logFiles() }
    return { at, path: folder, ...disk, live: liveOf(disk, extensions, streams, pace) }
  }
  if (holdsJobs(path)) return manyJobs(path, serve)
  const only = serve('/', path)
  return { areMany: false, named: async (name) => (name === '' ? only : undefined), all: async () => [only] }
}

/** Names from outside are only compared with those that the folder lists. */
function manyJobs(path: string, serve: (at: string, folder: string) => ServedJob): Jobs {
  const kept = new Map<string, ServedJob>()
  const keep = (name: string, folder: string): ServedJob => {
    const job = kept.get(name) ?? serve(`/jobs/${encodeURIComponent(name)}/`, folder)
    kept.set(name, job)
    return job
  }
  const named = async (name: string): Promise<ServedJob | undefined> => {
    const folder = (await foldersIn(path)).get(name)
    return folder !== undefined && (await isJobWithin(path, folder)) ? keep(name, folder) : undefined
  }
  const all = async (): Promise<readonly ServedJob[]> => {
    const names = [...(await foldersIn(path)).keys()]
    for (const name of kept.keys()) if (!names.includes(name)) kept.delete(name)
    const jobs = await Promise.all(names.map(named))
    return jobs.filter((job) => job !== undefined)
  }
  return { areMany: true, named, all }
}

const isShown = (name: string): boolean => !name.startsWith('.')

/** What may be folders of jobs in a folder, by name. */
const foldersIn = async (path: string): Promise<ReadonlyMap<string, string>> =>
  new Map((await readdir(path)).filter(isShown).map((name) => [name, join(path, name)]))

const parts = ['log', 'photos', '.evenhem']

/** Whether a folder holds a job that really lies in the folder that is served, with all that is read and written beside it: a link must not lead out. */
async function isJobWithin(path: string, folder: string): Promise<boolean> {
  const real = (each: string) => realpath(each).catch(() => undefined)
  const [top, own, job, ...others] = await Promise.all(
    [path, folder, join(folder, 'job.json'), ...parts.map((part) => join(folder, part))].map(real),
  )
  const isWithin = (each: string | undefined) => each !== undefined && top !== undefined && isBelow(relative(top, each))
  return [own, job, ...others.filter((each) => each !== undefined)].every(isWithin)
}
const isBelow = (way: string): boolean => way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way)
