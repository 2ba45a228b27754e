import { readFileSync } from 'node:fs'
import { open, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { keptIn } from '@evenhem/photos'
import { type PhotoCopy, type Photos, type PictureSize, sizeOfJpeg } from '@evenhem/report'

/** A photo that a folder keeps, with the large copy of it that a report shows. */
export interface ReportCopy extends Partial<PictureSize> {
  readonly hash: string
  /** Where the copy is, or would be. */
  readonly file: string
  /** Of the copy; 0 where it is not made yet. */
  readonly bytes: number
}
export type ReportCopies = ReadonlyMap<string, ReportCopy>

// The size of a picture stands in its first bytes: a copy has nothing else before it.
const headBytes = 4096

async function headOf(file: string): Promise<Uint8Array> {
  const handle = await open(file)
  try {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(headBytes), 0, headBytes, 0)
    return buffer.subarray(0, bytesRead)
  } finally {
    await handle.close()
  }
}

async function copyOf(folder: string, hash: string): Promise<ReportCopy> {
  const file = join(folder, 'photos', 'small', `${hash}-1600.jpg`)
  const there = await stat(file).catch(() => undefined)
  const head = there?.isFile() ? await headOf(file).catch(() => undefined) : undefined
  return { hash, file, bytes: head ? (there?.size ?? 0) : 0, ...(head ? sizeOfJpeg(head) : {}) }
}

/** The copies of all photos that a job's folder keeps, one after the other; one that is not made yet has neither bytes nor size. */
export async function reportCopies(folder: string): Promise<ReportCopies> {
  const copies = new Map<string, ReportCopy>()
  for (const { hash } of await keptIn(folder)) copies.set(hash, await copyOf(folder, hash))
  return copies
}

const sized = ({ width, height }: ReportCopy, src: string): PhotoCopy => ({ src, ...(width && height ? { width, height } : {}) })

/** Photos by a link. `to`: the address of a photo's copy, as it stands in the page. */
export const linkedPhotos =
  (copies: ReportCopies, to: (hash: string) => string): Photos =>
  (hash) => {
    const copy = copies.get(hash)
    return copy && sized(copy, to(hash))
  }

/** Photos as part of the page. A copy that cannot be read is not here. */
export const heldPhotos =
  (copies: ReportCopies): Photos =>
  (hash) => {
    const copy = copies.get(hash)
    const base64 = copy && copy.bytes > 0 ? base64Of(copy.file) : undefined
    return copy && base64 ? sized(copy, `data:image/jpeg;base64,${base64}`) : undefined
  }
function base64Of(file: string): string | undefined {
  try {
    return readFileSync(file, 'base64')
  } catch {
    return undefined
  }
}
