import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { madeCopies } from './report-photos.ts'

/** Larger ones first. */
const sizes = [1600, 320] as const

const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff

/** The largest small copy of a photo in a job's folder; undefined when none is there that is a JPEG. */
async function copyOf(folder: string, hash: string): Promise<Uint8Array | undefined> {
  for (const size of sizes) {
    const bytes = await readFile(join(folder, 'photos', 'small', `${hash}-${size}.jpg`)).catch(() => undefined)
    if (bytes && isJpeg(bytes)) return bytes
  }
  return undefined
}

/** The small copies of photos that are here, by their hash, made where they are missing. `hashes` are hashes: nothing else becomes a path. */
export async function smallPhotos(folder: string, hashes: readonly string[]): Promise<ReadonlyMap<string, Uint8Array>> {
  await madeCopies(folder, { of: new Set(hashes) })
  const photos = new Map<string, Uint8Array>()
  for (const hash of new Set(hashes)) {
    const bytes = /^[0-9a-f]{64}$/.test(hash) ? await copyOf(folder, hash) : undefined
    if (bytes) photos.set(hash, bytes)
  }
  return photos
}
