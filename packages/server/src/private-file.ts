import { mkdir } from 'node:fs/promises'
import { dirname } from 'node:path'
import { disk, replaceFile, syncFolder } from '@evenhem/disk'
import { lockFile } from '@evenhem/site-log/folder'

/**
 * Puts a text in the place of a file that only its owner may read, and is sure that it is on the disk. `text` is asked once nobody else writes the file
 * any more; when it throws, the file stays. Throws what the file system throws.
 */
export async function replacePrivate(file: string, text: () => Promise<string>): Promise<void> {
  const first = await mkdir(dirname(file), { recursive: true, mode: 0o700 })
  if (first !== undefined) await syncFolder(disk, dirname(first))
  const held = await lockFile(file)
  try {
    await replaceFile(disk, file, Buffer.from(await text()), held.sure, 0o600)
  } finally {
    await held.free()
  }
}
