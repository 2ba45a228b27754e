import { writeSync } from 'node:fs'
import { type Disk, disk } from '@evenhem/disk'
import { logWriter, mergeFolders } from '../src/folder/index.ts'
import { batchesOf } from './crashes.ts'

// One process of the tests in processes.ts: adds or merges, says what was confirmed, and kills itself at the call it was told.

/** What a process is to do. */
export interface Orders {
  readonly job: string
  /** What it adds; or else the folder that it merges, so many times. */
  readonly device?: string
  readonly sizes?: readonly number[]
  readonly from?: string
  readonly times?: number
  /** The call of the file system before which it dies; of a write, half of it is done. */
  readonly dies?: number
}

function mortal(dies: number): Disk {
  let calls = 0
  const call = <T>(act: () => Promise<T>, half?: () => Promise<unknown>): Promise<T> => {
    const die = () => process.kill(process.pid, 'SIGKILL')
    if (++calls < dies) return act()
    return (half?.() ?? Promise.resolve()).then(
      () => new Promise<T>(die),
      () => new Promise<T>(die),
    )
  }
  return {
    list: (folder) => call(() => disk.list(folder)),
    size: (file) => call(() => disk.size(file)),
    real: (path) => call(() => disk.real(path)),
    read: (file) => call(() => disk.read(file)),
    makeFolder: (folder) => call(() => disk.makeFolder(folder)),
    rename: (from, to) => call(() => disk.rename(from, to)),
    remove: (file) => call(() => disk.remove(file)),
    open: (file, flags, mode) =>
      call(async () => {
        const { write, sync, close } = await disk.open(file, flags, mode)
        return {
          write: (bytes) =>
            call(
              () => write(bytes),
              () => write(bytes.subarray(0, bytes.length >> 1)),
            ),
          sync: () => call(sync),
          close: () => call(close),
        }
      }),
  }
}

const {
  job,
  device = '',
  sizes = [],
  from,
  times = 1,
  dies = Number.POSITIVE_INFINITY,
} = JSON.parse(process.argv[2] ?? '{}') as Orders
const on = mortal(dies)
if (from !== undefined) {
  for (let i = 0; i < times; i++) await mergeFolders(job, from, on)
} else {
  const writer = logWriter(job, on)
  for (const batch of batchesOf(device, ...sizes)) {
    const added = await writer.add(device, batch)
    if (added.is === 'refused') throw new Error(`${device} was refused: ${JSON.stringify(added.wrong)}`)
    // At once and whole: what was said before a process dies was said.
    writeSync(1, `${JSON.stringify({ n: added.last?.n, added: added.added })}\n`)
  }
}
