import { type Disk, disk, replaceFile } from '@evenhem/disk'
import type { LogFile } from '../log-file.ts'
import { missingIn, Refusal, withLines } from '../merge.ts'
import { type Held, type Lock, lockFile } from './lock.ts'
import { type LogWrong, largestFile, logPath, readSiteLog, type SiteLog, tooBig } from './reading.ts'
import { makeLogFolder } from './writing.ts'

/** What came into a folder from another one, by device. */
export interface Merged {
  readonly added: readonly { readonly device: string; readonly lines: number }[]
  /** What was wrong in either log. */
  readonly wrong: readonly (LogWrong & { readonly in: 'ours' | 'theirs' })[]
}
/** The file of a device as it is to be. */
interface Grown {
  readonly device: string
  readonly lines: number
  readonly bytes: Uint8Array
}

/**
 * Adds to a job's log what another copy of the folder has and this one has not, and is sure that all of it is on the disk. The other one is not
 * changed. Throws a `Refusal` before anything is written when an event has other content there, or a file is too big.
 */
export async function mergeFolders(ours: string, theirs: string, on: Disk = disk, locked: Lock = lockFile): Promise<Merged> {
  const other = await readSiteLog(theirs, on)
  const files = other.files.filter(({ lines }) => lines.length > 0)
  if (files.length > 0) await makeLogFolder(ours, on)
  const held: Held[] = []
  try {
    // Always in the order of their names, so that two who merge never wait for each other.
    for (const { device } of files) held.push(await locked(logPath(ours, device)))
    const mine = await readSiteLog(ours, on)
    const grown = files.map((file) => grownBy(mine, file))
    // A file that lacks nothing is written too: whoever merged before may have been killed before it was on the disk.
    for (const [i, { device, bytes }] of grown.entries())
      await replaceFile(on, logPath(ours, device), bytes, () => held[i]?.sure())
    return {
      added: grown.filter(({ lines }) => lines > 0).map(({ device, lines }) => ({ device, lines })),
      wrong: both(mine, other),
    }
  } finally {
    await Promise.all(held.map(({ free }) => free()))
  }
}

function grownBy(mine: SiteLog, { device, lines }: LogFile): Grown {
  const unread = mine.wrong.find(({ code, file }) => code === 'log/big-file' && file === `${device}.jsonl`)
  if (unread) throw new Refusal(unread)
  const own = mine.files.find((file) => file.device === device)
  const more = missingIn(own?.lines ?? [], lines)
  const bytes = withLines(own?.rows ?? [], more)
  if (bytes.length > largestFile) throw new Refusal(tooBig(device))
  return { device, lines: more.length, bytes }
}

const both = (mine: SiteLog, other: SiteLog): Merged['wrong'] => [
  ...mine.wrong.map((each) => ({ ...each, in: 'ours' as const })),
  ...other.wrong.map((each) => ({ ...each, in: 'theirs' as const })),
]
