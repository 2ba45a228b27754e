import { join } from 'node:path'
import { type Disk, disk } from '@evenhem/disk'
import { isDevice, type Wrong, wrong } from '../event.ts'
import { type LogFile, readLogFile } from '../log-file.ts'

const ending = '.jsonl'
/** The most bytes of one device's file that are read: some hundred thousand events. */
export const largestFile = 64 * 1024 * 1024

export const logFolder = (job: string): string => join(job, 'log')
export const logPath = (job: string, device: string): string => join(logFolder(job), device + ending)

/** Something wrong in the log of a job: in which file, and at which line where there is one. */
export interface LogWrong extends Wrong {
  readonly file: string
  readonly line?: number
}
/** The log of a job: what every device wrote. */
export interface SiteLog {
  readonly files: readonly LogFile[]
  readonly wrong: readonly LogWrong[]
}

/** Reads the log of a job's folder; a folder without one has an empty log. Throws only what the file system throws. */
export async function readSiteLog(job: string, on: Disk = disk): Promise<SiteLog> {
  const names = [...(await on.list(logFolder(job)))].sort()
  const ours = names.filter((name) => name.endsWith(ending) && isDevice(name.slice(0, -ending.length)))
  const strange = names
    .filter((name) => name.endsWith(ending) && !ours.includes(name))
    .map((name) => ({ ...wrong('log/strange-file', { name }), file: name }))
  const read = await Promise.all(ours.map((name) => readDevice(job, name.slice(0, -ending.length), on)))
  const files = read.filter((each): each is LogFile => 'lines' in each)
  return {
    files,
    wrong: [
      ...strange,
      ...read.filter((each): each is LogWrong => 'code' in each),
      ...files.flatMap(({ device, wrong: own }) => own.map((each) => ({ ...each, file: device + ending }))),
    ],
  }
}

/** What is said of a device's file that is, or would become, bigger than what is read. */
export const tooBig = (device: string): Wrong => wrong('log/big-file', { name: device + ending, most: largestFile / 1024 / 1024 })

async function readDevice(job: string, device: string, on: Disk): Promise<LogFile | LogWrong> {
  const file = logPath(job, device)
  if (((await on.size(file)) ?? 0) > largestFile) return { ...tooBig(device), file: device + ending }
  return readLogFile(device, await on.read(file))
}
