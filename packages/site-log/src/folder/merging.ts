import type { Line } from '../log-file.ts'
import { missingIn, withLines } from '../merge.ts'
import { type Disk, disk, replaceFile } from './disk.ts'
import { type LogWrong, logFolder, logPath, readSiteLog } from './reading.ts'
import { type Lock, lockFile, makeLogFolder } from './writing.ts'

/** What came into a folder from another one, by device. */
export interface Merged {
  readonly added: readonly { readonly device: string; readonly lines: number }[]
  /** What was wrong in either log. */
  readonly wrong: readonly (LogWrong & { readonly in: 'ours' | 'theirs' })[]
}

/**
 * Adds to a job's log what another copy of the folder has and this one has not. The other one is not changed. Throws a `Clash` before anything is
 * written when an event has other content there.
 */
export async function mergeFolders(ours: string, theirs: string, on: Disk = disk, locked: Lock = lockFile): Promise<Merged> {
  const [mine, other] = [await readSiteLog(ours, on), await readSiteLog(theirs, on)]
  const own = (device: string): readonly Line[] => mine.files.find((file) => file.device === device)?.lines ?? []
  for (const { device, lines } of other.files) missingIn(own(device), lines)
  const added: { device: string; lines: number }[] = []
  for (const { device, lines } of other.files) {
    const more = await mergeDevice(ours, device, lines, on, locked)
    if (more > 0) added.push({ device, lines: more })
  }
  const said = (list: readonly LogWrong[], where: 'ours' | 'theirs') => list.map((each) => ({ ...each, in: where }))
  return { added, wrong: [...said(mine.wrong, 'ours'), ...said(other.wrong, 'theirs')] }
}

/** What is there is read again under the lock: a tablet may have written meanwhile. */
async function mergeDevice(ours: string, device: string, theirs: readonly Line[], on: Disk, locked: Lock): Promise<number> {
  await makeLogFolder(ours, on)
  const free = await locked(logPath(ours, device))
  try {
    const mine = (await readSiteLog(ours, on)).files.find((file) => file.device === device)
    const more = missingIn(mine?.lines ?? [], theirs)
    if (more.length > 0) await replaceFile(on, logPath(ours, device), logFolder(ours), withLines(mine?.rows ?? [], more))
    return more.length
  } finally {
    await free()
  }
}
