import { createHash, randomUUID } from 'node:crypto'
import { join } from 'node:path'
import { type Disk, disk, makeSure, noneThere, syncFolder, writeSynced } from '@evenhem/disk'
import type { Cleaned, Cleaner } from './cleaner.ts'
import { type Format, formatOf } from './format.ts'
import { bigger, type Limits, usualLimits } from './limits.ts'
import { cleanedEnding, type Ending, type Kept, keptAs, photosIn, smallIn } from './places.ts'
import { type Refused, refusedFor } from './refused.ts'

/** Whether the file stays as it came, or only what was cleaned of it. */
export type Original = 'keep' | 'drop'
/** The longest sides of the copies, in pixels. */
export const copySizes = [1600, 320] as const
export type CopySize = (typeof copySizes)[number]

/** What became of a photo. `hash`: the SHA-256 of its content, in hexadecimal. */
export type Taken =
  | {
      readonly is: 'taken'
      readonly hash: string
      readonly bytes: number /** It was not there before. */
      readonly isNew: boolean
    }
  | { readonly is: 'refused'; readonly hash: string; readonly refused: Refused }

/** The photos of a job's folder. */
export interface PhotoFolder {
  /** Takes a photo in, and answers when it is on the disk under its name. Throws what the file system throws; nothing is left over then but what is swept up later. */
  readonly takeIn: (source: Uint8Array | string) => Promise<Taken>
  /** The photo of that name; undefined when it is not kept. What is told is on the disk. */
  readonly kept: (hash: string) => Promise<Kept | undefined>
  /** The cleaned copy of a photo as JPEG, made again where it is missing; undefined when the photo is not kept. */
  readonly copy: (hash: string, size: CopySize) => Promise<Uint8Array | Refused | undefined>
}
export interface FolderOptions {
  readonly cleaner: Cleaner
  /** Left out: it is kept. */
  readonly original?: Original
  readonly limits?: Pick<Limits, 'mostBytes'>
  readonly on?: Disk
}

export const copyPath = (folder: string, hash: string, size: CopySize): string => join(smallIn(folder), `${hash}-${size}.jpg`)
const isRefused = (cleaned: Cleaned | Refused): cleaned is Refused => 'code' in cleaned

export function photoFolder(folder: string, options: FolderOptions): PhotoFolder {
  const { cleaner, original = 'keep', limits = usualLimits, on = disk } = options
  const photos = photosIn(folder)
  /** Names that are on the disk for sure. */
  const sure = new Set<string>()
  const making = new Map<string, Promise<Cleaned | Refused>>()

  async function takeIn(source: Uint8Array | string): Promise<Taken> {
    const tooBig = typeof source === 'string' ? bigger((await on.size(source)) ?? 0, limits) : undefined
    if (tooBig) return { is: 'refused', hash: '', refused: tooBig }
    const bytes = typeof source === 'string' ? await on.read(source) : source
    const hash = createHash('sha256').update(bytes).digest('hex')
    const format = formatOf(bytes)
    const refused = unfit(bytes, limits, format)
    if (refused || !format) return { is: 'refused', hash, refused: refused ?? refusedFor('photo/format') }
    if (await kept(hash)) return { is: 'taken', hash, bytes: bytes.length, isNew: false }
    return addNew(hash, format, bytes)
  }

  /** The name comes last: killed before, nothing is there but a temporary file. */
  async function addNew(hash: string, format: Format, bytes: Uint8Array): Promise<Taken> {
    await makeSure(on, folder, photos)
    const beside = join(photos, `.${hash}-${randomUUID()}.new`)
    try {
      await writeSynced(on, beside, 'wx', bytes)
      const cleaned = await cleaner.clean(beside, format)
      if (isRefused(cleaned)) return { is: 'refused', hash, refused: cleaned }
      if (original === 'keep') await putName(beside, hash, format)
      else await replace(cleaned.large, hash, cleanedEnding)
      await keepCopies(hash, cleaned)
      return { is: 'taken', hash, bytes: bytes.length, isNew: true }
    } finally {
      // Where it is left over it is swept up later. What went wrong before is what is told.
      await on.remove(beside).catch(() => undefined)
    }
  }

  async function replace(bytes: Uint8Array, hash: string, ending: Ending): Promise<void> {
    const beside = join(photos, `.${hash}-${randomUUID()}.new`)
    await writeSynced(on, beside, 'wx', bytes)
    await putName(beside, hash, ending)
  }
  async function putName(beside: string, hash: string, ending: Ending): Promise<void> {
    await on.rename(beside, join(photos, `${hash}.${ending}`))
    await syncFolder(on, photos)
    sure.add(hash)
  }

  /** They can be made again, so their names need not be on the disk; whoever finds a name must find the whole copy. */
  async function keepCopies(hash: string, { large, small }: Cleaned): Promise<void> {
    await on.makeFolder(smallIn(folder))
    await Promise.all([keepCopy(copyPath(folder, hash, 1600), large), keepCopy(copyPath(folder, hash, 320), small)])
  }
  async function keepCopy(file: string, bytes: Uint8Array): Promise<void> {
    const beside = `${file}.${randomUUID()}.new`
    await writeSynced(on, beside, 'wx', bytes)
    await on.rename(beside, file)
  }

  async function kept(hash: string): Promise<Kept | undefined> {
    const found = await keptAs(on, folder, hash)
    // Whoever gave it its name may have been killed before that was on the disk.
    if (found && !sure.has(hash)) await syncFolder(on, photos)
    if (found) sure.add(hash)
    return found
  }

  async function copy(hash: string, size: CopySize): Promise<Uint8Array | Refused | undefined> {
    const found = await kept(hash)
    if (!found) return undefined
    const there = await on.read(copyPath(folder, hash, size)).catch(noneThere)
    if (there) return there
    const made = await again(found)
    return isRefused(made) ? made : size === 1600 ? made.large : made.small
  }

  /** Makes the copies once, however many ask for them. */
  function again(photo: Kept): Promise<Cleaned | Refused> {
    const made = making.get(photo.hash) ?? remake(photo).finally(() => making.delete(photo.hash))
    making.set(photo.hash, made)
    return made
  }
  async function remake({ hash, file, ending }: Kept): Promise<Cleaned | Refused> {
    const isCleaned = ending === cleanedEnding
    const cleaned = await cleaner.clean(file, isCleaned ? 'jpg' : ending)
    if (isRefused(cleaned)) return cleaned
    // What was cleaned already stays as it is: writing it as JPEG once more would only blur it.
    const copies = isCleaned ? { ...cleaned, large: await on.read(file) } : cleaned
    await keepCopies(hash, copies)
    return copies
  }

  return { takeIn, kept, copy }
}

function unfit(bytes: Uint8Array, limits: Pick<Limits, 'mostBytes'>, format: Format | undefined): Refused | undefined {
  if (bytes.length === 0) return refusedFor('photo/empty')
  return bigger(bytes.length, limits) ?? (format ? undefined : refusedFor('photo/format'))
}
