import { setTimeout } from 'node:timers/promises'
import { lock } from 'proper-lockfile'
import { hashOf } from '../chain.ts'
import { type Wrong, wrong } from '../event.ts'
import { bytesOf, type Last, type Line, lastOf, readLogFile } from '../log-file.ts'
import { type Disk, disk, replaceFile, syncFolder, writeAll } from './disk.ts'
import { logFolder, logPath } from './reading.ts'

/** What became of lines that were to be added. `last`: what the file ends with now. */
export type Added =
  | { readonly is: 'kept'; readonly last: Last | undefined /** How many of them were new. */; readonly added: number }
  /** They do not follow what is there: nothing was added. */
  | { readonly is: 'refused'; readonly last: Last | undefined; readonly wrong: Wrong }

/** Lets nobody else write the file of a device meanwhile, in this process or another. */
export type Lock = (file: string) => Promise<() => Promise<void>>

// A process that was killed leaves its lock behind; after ten seconds without a sign of life it counts no more.
const asks = { realpath: false, stale: 10_000 }
const mostTries = 300
/** A lock that other processes heed. Waits for one that is taken; throws what the file system throws. */
export const lockFile: Lock = async (file) => {
  for (let tries = 1; ; tries++) {
    const free = await lock(file, asks).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ELOCKED' || tries === mostTries) throw error
    })
    if (free) return free
    await setTimeout(20 + 60 * Math.random())
  }
}

/** The writer of a job's log. */
export interface LogWriter {
  /**
   * Adds lines of one device, in order, and answers when they are on the disk. Lines that are there already count as added: whoever did not hear
   * the answer sends them again. Throws what the file system throws: then nothing is confirmed, and adding them again is safe.
   */
  readonly add: (device: string, lines: readonly Line[]) => Promise<Added>
}

/** The file of a device as it is known to be on the disk. */
interface Known {
  readonly size: number
  readonly last: Last | undefined
}

const nothing = new Uint8Array()

/** A writer for a job's folder. One at a time adds to a device's file; a file that somebody else touched is read again. */
export function logWriter(job: string, on: Disk = disk, locked: Lock = lockFile): LogWriter {
  const known = new Map<string, Known>()
  const doubtful = new Set<string>()
  const queues = new Map<string, Promise<unknown>>()

  async function add(device: string, lines: readonly Line[]): Promise<Added> {
    await makeLogFolder(job, on)
    const free = await locked(logPath(job, device))
    try {
      return await addLocked(device, lines)
    } finally {
      await free()
    }
  }

  async function addLocked(device: string, lines: readonly Line[]): Promise<Added> {
    const size = await on.size(logPath(job, device))
    const before = known.get(device)
    const isNext = lines[0]?.event.n === (before?.last?.n ?? 0) + 1
    if (!before || before.size !== size || !isNext) return addRead(device, lines, size === undefined ? nothing : undefined)
    const odd = follows(before.last, lines)
    return odd ? { is: 'refused', last: before.last, wrong: odd } : append(device, lines, before)
  }

  /** The slower way: the file is read, what was torn off is taken away, lines that are there are passed over. */
  async function addRead(device: string, lines: readonly Line[], empty: Uint8Array | undefined): Promise<Added> {
    const bytes = empty ?? (await on.read(logPath(job, device)))
    const there = readLogFile(device, bytes)
    const last = lastOf(there.lines)
    const has = new Map(there.lines.map(({ event, text }) => [event.n, text]))
    const clash = lines.find(({ event, text }) => has.has(event.n) && has.get(event.n) !== text)
    const more = lines.filter(({ event }) => !has.has(event.n))
    const odd = clash ? wrong('log/clash', { by: device, n: clash.event.n }) : follows(last, more)
    if (odd) return { is: 'refused', last, wrong: odd }
    if (there.whole < bytes.length || doubtful.has(device)) return rewrite(device, bytes.subarray(0, there.whole), more, last)
    const added = await append(device, more, { size: bytes.length, last })
    // Whoever wrote what is there may have been killed before it was on the disk, and its name too.
    await sure(device, async () => {
      await syncFolder(on, logFolder(job))
      await syncFolder(on, job)
    })
    return added
  }

  async function append(device: string, lines: readonly Line[], before: Known): Promise<Added> {
    const bytes = bytesOf(lines.map(({ text }) => text))
    await sure(device, async () => {
      const handle = await on.open(logPath(job, device), 'a')
      await writeAll(handle, bytes).finally(handle.close)
    })
    const last = lastOf(lines) ?? before.last
    known.set(device, { size: before.size + bytes.length, last })
    return { is: 'kept', last, added: lines.length }
  }

  async function rewrite(device: string, whole: Uint8Array, lines: readonly Line[], before: Last | undefined): Promise<Added> {
    const bytes = Buffer.concat([whole, bytesOf(lines.map(({ text }) => text))])
    await sure(device, () => replaceFile(on, logPath(job, device), logFolder(job), bytes))
    doubtful.delete(device)
    const last = lastOf(lines) ?? before
    known.set(device, { size: bytes.length, last })
    return { is: 'kept', last, added: lines.length }
  }

  /** When writing fails nobody knows what is on the disk, and a later success says nothing of it: the file is then written anew. */
  async function sure(device: string, write: () => Promise<void>): Promise<void> {
    try {
      await write()
    } catch (error) {
      known.delete(device)
      doubtful.add(device)
      throw error
    }
  }

  return {
    add: (device, lines) => {
      const now = (queues.get(device) ?? Promise.resolve()).then(() => add(device, lines))
      queues.set(
        device,
        now.catch(() => undefined),
      )
      return now
    },
  }
}

/** Why lines do not follow what is there; undefined when they do. */
function follows(last: Last | undefined, lines: readonly Line[]): Wrong | undefined {
  let [n, hash, count] = [last?.n ?? 0, last?.hash, last?.count ?? 0]
  for (const { event, text } of lines) {
    if (event.n !== n + 1) return wrong('log/gap', { n: event.n, after: n })
    if (event.before !== hash) return wrong('log/chain', { n: event.n })
    if (event.count <= count) return wrong('log/count', { n: event.n, count: event.count, after: count })
    ;[n, hash, count] = [event.n, hashOf(text), event.count]
  }
  return undefined
}

/** Makes the folder of a job's log, where it is not there yet. */
export async function makeLogFolder(job: string, on: Disk): Promise<void> {
  if ((await on.size(logFolder(job))) !== undefined) return
  await on.makeFolder(logFolder(job))
  await syncFolder(on, job)
}
