import { type Disk, disk, makeSure, replaceFile, syncFolder, writeSynced } from '@evenhem/disk'
import { hashOf } from '../chain.ts'
import { isWrong, readEvent, type Wrong, wrong } from '../event.ts'
import { bytesOf, type Last, type Line, lastOf, readLogFile } from '../log-file.ts'
import { withLines } from '../merge.ts'
import { type Held, type Lock, lockFile } from './lock.ts'
import { largestFile, logFolder, logPath, tooBig } from './reading.ts'

/** What became of lines that were to be added. `last`: the line of the highest number that the file holds now. */
export type Added =
  | { readonly is: 'kept'; readonly last: Last | undefined /** How many of them were new. */; readonly added: number }
  /** They do not follow what is there: nothing was added. */
  | { readonly is: 'refused'; readonly last: Last | undefined; readonly wrong: Wrong }

/** The writer of a job's log. */
export interface LogWriter {
  /**
   * Adds lines of one device, in order, and answers when they are on the disk. Lines that are there already count as added: whoever did not hear
   * the answer sends them again. Throws what the file system throws: then nothing is confirmed, and adding them again is safe.
   */
  readonly add: (device: string, lines: readonly Line[]) => Promise<Added>
}

/** The file of a device as this writer knows it to be on the disk. */
interface Known {
  readonly size: number
  readonly last: Line
}
const ending = (line: Line | undefined): Last | undefined => lastOf(line ? [line] : [])

/**
 * A writer for a job's folder. It adds only behind what it wrote itself and knows to be on the disk. Everything else that it finds in a file, or that
 * it wrote without success, it writes anew first: whoever wrote that may have been killed before it was on the disk, and after a sync that failed a
 * later one succeeds without it.
 */
export function logWriter(job: string, on: Disk = disk, locked: Lock = lockFile): LogWriter {
  const known = new Map<string, Known>()
  const queues = new Map<string, Promise<unknown>>()

  async function add(device: string, lines: readonly Line[]): Promise<Added> {
    const last = known.get(device)?.last
    const odd = lines.map((line) => oddOf(device, line)).find((each) => each !== undefined)
    if (odd) return { is: 'refused', last: ending(last), wrong: odd }
    if (lines.length === 0) return { is: 'kept', last: ending(last), added: 0 }
    try {
      return await addOnDisk(device, lines)
    } catch (error) {
      known.delete(device)
      throw error
    }
  }

  async function addOnDisk(device: string, lines: readonly Line[]): Promise<Added> {
    if (!known.has(device)) await makeLogFolder(job, on)
    const held = await locked(logPath(job, device))
    try {
      const added = await addLocked(device, lines, held)
      held.sure()
      return added
    } finally {
      await held.free()
    }
  }

  async function addLocked(device: string, lines: readonly Line[], held: Held): Promise<Added> {
    const size = await on.size(logPath(job, device))
    const before = known.get(device)
    const bytes = bytesOf(lines.map(({ text }) => text))
    if ((size ?? 0) + bytes.length > largestFile) return { is: 'refused', last: ending(before?.last), wrong: tooBig(device) }
    const isKnown = before !== undefined && before.size === size
    if (!isKnown || lines[0]?.event.n !== before.last.event.n + 1) return addAnew(device, lines, size, isKnown, held)
    const odd = unlike(new Map([[before.last.event.n, before.last]]), lines)
    return odd ? { is: 'refused', last: ending(before.last), wrong: odd } : append(device, lines, bytes, before)
  }

  /** The quick way. The folder is synced too: another process may have put its file in the place of ours. */
  async function append(device: string, lines: readonly Line[], bytes: Uint8Array, before: Known): Promise<Added> {
    await writeSynced(on, logPath(job, device), 'a', bytes)
    await syncFolder(on, logFolder(job))
    return kept(device, { size: before.size + bytes.length, last: lines.at(-1) ?? before.last }, lines.length)
  }

  /** The sure way: lines that are there are passed over, lines that are lacking get their place, what was torn off is left out. */
  async function addAnew(device: string, lines: readonly Line[], size: number | undefined, isKnown: boolean, held: Held) {
    const file = logPath(job, device)
    const there = readLogFile(device, size === undefined ? new Uint8Array() : await on.read(file))
    const has = new Map(there.lines.map((line) => [line.event.n, line]))
    const last = highest([...there.lines])
    const clash = lines.find(({ event, text }) => has.has(event.n) && has.get(event.n)?.text !== text)
    const more = lines.filter(({ event }) => !has.has(event.n))
    const odd = clash ? wrong('log/clash', { by: device, n: clash.event.n }) : unlike(has, more)
    if (odd) return { is: 'refused', last: ending(last), wrong: odd } as const
    if (isKnown && more.length === 0) return { is: 'kept', last: ending(last), added: 0 } as const
    const bytes = withLines(there.rows, more)
    await replaceFile(on, file, bytes, held.sure)
    return kept(device, { size: bytes.length, last: highest([...there.lines, ...more]) as Line }, more.length)
  }

  function kept(device: string, now: Known, added: number): Added {
    known.set(device, now)
    return { is: 'kept', last: ending(now.last), added }
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

const highest = (lines: readonly Line[]): Line | undefined =>
  lines.reduce<Line | undefined>((most, line) => (most && most.event.n > line.event.n ? most : line), undefined)

/** Why a line would not be read again from the file of this device. */
function oddOf(device: string, { text }: Line): Wrong | undefined {
  const event = readEvent(text)
  if (isWrong(event)) return event
  return event.by === device ? undefined : wrong('log/other-device', { by: event.by, device })
}

/** Why new lines do not stand in one chain with those that a file has; undefined when they do. */
function unlike(has: ReadonlyMap<number, Line>, more: readonly Line[]): Wrong | undefined {
  const all = new Map(has)
  for (const line of more) {
    const { n, count, before } = line.event
    const [last, next] = [all.get(n - 1), all.get(n + 1)]
    if (all.has(n)) return wrong('log/twice', { by: line.event.by, n })
    if (n > 1 && !last) return wrong('log/gap', { n, after: Math.max(0, ...[...all.keys()].filter((each) => each < n)) })
    if (before !== (last && hashOf(last.text))) return wrong('log/chain', { n })
    if (count <= (last?.event.count ?? 0)) return wrong('log/count', { n, count, after: last?.event.count ?? 0 })
    if (next && next.event.before !== hashOf(line.text)) return wrong('log/chain', { n: n + 1 })
    all.set(n, line)
  }
  return undefined
}

/** Makes the folder of a job's log, where it is not there yet, and is sure that its name is on the disk. */
export const makeLogFolder = (job: string, on: Disk): Promise<void> => makeSure(on, job, logFolder(job))
