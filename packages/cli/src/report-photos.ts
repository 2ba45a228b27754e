import { copyFile, mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { cleaner, photoFolder } from '@evenhem/photos'
import { heldPhotos, linkedPhotos, type ReportCopies, type ReportPhotos, reportCopies } from '@evenhem/server'
import { Trouble } from './command.ts'

/** What the photos of a report in one page may come to, in bytes: what a mailbox and a browser still take (common practice, no source). */
export const mostInOnePage = 30_000_000

const atOnce = 8

/** Makes the copies that a folder lacks. One that cannot be made, of a photo that is damaged or on a disk that is full, is not here for the report. */
async function makeMissing(folder: string, missing: readonly string[], copied: Copied): Promise<void> {
  const reader = cleaner()
  const photos = photoFolder(folder, { cleaner: reader })
  try {
    for (const [n, hash] of missing.entries()) {
      await photos.copy(hash, 1600).catch(() => undefined)
      copied(n + 1, missing.length)
    }
  } finally {
    reader.close()
  }
}

/** How many of how many copies that were missing are made. */
type Copied = (done: number, total: number) => void
interface CopiesWanted {
  /** Their hashes; left out: all of them. */
  readonly of?: ReadonlySet<string>
  readonly copied?: Copied
}

/** The copies of all photos of a job's folder, made where they are missing and wanted. */
export async function madeCopies(folder: string, { of, copied = () => undefined }: CopiesWanted = {}): Promise<ReportCopies> {
  const copies = await reportCopies(folder)
  const lacks = [...copies.values()].filter(({ bytes }) => bytes === 0).map(({ hash }) => hash)
  const missing = lacks.filter((hash) => of?.has(hash) ?? true)
  if (missing.length === 0) return copies
  await makeMissing(folder, missing, copied)
  return reportCopies(folder)
}

/** Photos as part of the page. Throws `Trouble` when they come to more than a page may hold. */
export function photosInPage(copies: ReportCopies): ReportPhotos {
  const bytes = [...copies.values()].reduce((sum, copy) => sum + copy.bytes, 0)
  if (bytes > mostInOnePage) throw new Trouble('photos-too-many', { size: Math.ceil(bytes / 1e6), most: mostInOnePage / 1e6 })
  return { photos: heldPhotos(copies) }
}

/** Photos beside the page, in its folder. A few at a time are copied there. */
export async function photosBeside(copies: ReportCopies, folder: string): Promise<ReportPhotos> {
  const here = new Map([...copies].filter(([, { bytes }]) => bytes > 0))
  await mkdir(join(folder, 'photos'), { recursive: true })
  const waiting = [...here.values()]
  while (waiting.length > 0)
    await Promise.all(waiting.splice(0, atOnce).map(({ hash, file }) => copyFile(file, join(folder, 'photos', `${hash}.jpg`))))
  return { photos: linkedPhotos(here, (hash) => `photos/${hash}.jpg`), pictures: "'self'" }
}
