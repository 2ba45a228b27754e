import { mkdir, open, rename, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import { lockFile } from '@evenhem/site-log/folder'

/**
 * Puts a text in the place of a file that only its owner may read, and is sure that it is on the disk. `text` is asked once nobody else writes the file
 * any more; when it throws, the file stays. Throws what the file system throws.
 */
export async function replacePrivate(file: string, text: () => Promise<string>): Promise<void> {
  const folder = dirname(file)
  const first = await mkdir(folder, { recursive: true, mode: 0o700 })
  if (first !== undefined) await syncFolder(dirname(first))
  const held = await lockFile(file)
  const beside = `${file}.new`
  try {
    const content = await text()
    await rm(beside, { force: true })
    await writeSynced(beside, content)
    held.sure()
    await rename(beside, file)
    await syncFolder(folder)
  } finally {
    await rm(beside, { force: true })
    await held.free()
  }
}

async function writeSynced(file: string, content: string): Promise<void> {
  const handle = await open(file, 'wx', 0o600)
  try {
    await handle.writeFile(content)
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** Makes sure that the new name is on the disk. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r')
  await handle.sync().finally(() => handle.close())
}
