import { mkdir, open, readdir, readFile, realpath, rename, stat, unlink } from 'node:fs/promises'
import { dirname } from 'node:path'

/** What is asked of the file system: all of it, so that tests can stand in its place and fail at any call. */
export interface Disk {
  readonly list: (folder: string) => Promise<readonly string[]>
  readonly size: (file: string) => Promise<number | undefined>
  /** Where a path really leads, every link on the way followed. */
  readonly real: (path: string) => Promise<string>
  readonly read: (file: string) => Promise<Uint8Array>
  readonly makeFolder: (folder: string) => Promise<void>
  /** `mode`: who may do what with a new file; left out, what is usual. */
  readonly open: (file: string, flags: 'a' | 'wx' | 'r', mode?: number) => Promise<OpenFile>
  readonly rename: (from: string, to: string) => Promise<void>
  readonly remove: (file: string) => Promise<void>
}
export interface OpenFile {
  /** May write less than all; answers how much. */
  readonly write: (bytes: Uint8Array) => Promise<number>
  readonly sync: () => Promise<void>
  readonly close: () => Promise<void>
}

/** For what may be gone already: undefined then; every other error is thrown. */
export const noneThere = (error: NodeJS.ErrnoException): undefined => {
  if (error.code !== 'ENOENT') throw error
  return undefined
}

/** The file system of this machine. */
export const disk: Disk = {
  list: (folder) => readdir(folder).catch((error) => noneThere(error) ?? []),
  size: (file) => stat(file).then(({ size }) => size, noneThere),
  real: realpath,
  read: (file) => readFile(file),
  makeFolder: (folder) => mkdir(folder).catch((error) => (error.code === 'EEXIST' ? undefined : Promise.reject(error))),
  open: async (file, flags, mode) => {
    const handle = await open(file, flags, mode)
    return {
      write: (bytes) => handle.write(bytes).then(({ bytesWritten }) => bytesWritten),
      sync: () => handle.sync(),
      close: () => handle.close(),
    }
  },
  rename,
  remove: unlink,
}

/** Makes sure that what stands in a folder, by name, is on the disk. */
export async function syncFolder({ open: opened }: Disk, folder: string): Promise<void> {
  const handle = await opened(folder, 'r')
  await handle.sync().finally(handle.close)
}

/** Makes a folder where there is none, and is sure that its name is on the disk. */
export async function makeSure(on: Disk, parent: string, folder: string): Promise<void> {
  await on.makeFolder(folder)
  await syncFolder(on, parent)
}

/**
 * Writes all of the bytes into a new file or behind what one has, and waits until they are on the disk. Throws what the system throws; then nobody knows
 * how much is there.
 */
export async function writeSynced(on: Disk, file: string, flags: 'a' | 'wx', bytes: Uint8Array, mode?: number): Promise<void> {
  const handle = await on.open(file, flags, mode)
  try {
    for (let rest = bytes; rest.length > 0; ) {
      const written = await handle.write(rest)
      if (written === 0) throw Object.assign(new Error('nothing was written'), { code: 'EIO' })
      rest = rest.subarray(written)
    }
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/**
 * Puts a file in the place of another: whoever looks sees the old one or the new one, whole. Nobody else may write it meanwhile: `still` is asked before
 * the new one takes its place and throws when that is not so any more.
 */
export async function replaceFile(on: Disk, file: string, bytes: Uint8Array, still: () => void, mode?: number): Promise<void> {
  const beside = `${file}.new`
  await on.remove(beside).catch(noneThere)
  try {
    await writeSynced(on, beside, 'wx', bytes, mode)
    still()
    await on.rename(beside, file)
  } catch (error) {
    // On a full disk half a copy would only be in the way. What went wrong before is what is told.
    await on.remove(beside).catch(() => undefined)
    throw error
  }
  await syncFolder(on, dirname(file))
}
