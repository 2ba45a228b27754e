import { createHash, randomUUID } from 'node:crypto'
import { basename, join } from 'node:path'
import { type Disk, disk, makeSure, syncFolder, writeSynced } from '@evenhem/disk'
import { formatOf } from './format.ts'
import { bigger, usualLimits } from './limits.ts'
import { cleanedEnding, keptAs, type Named, namedIn, photosIn } from './places.ts'
import { type Refused, refusedFor } from './refused.ts'

/** What came into a folder from another copy of it. */
export interface Carried {
  /** The photos that were not here before. */
  readonly hashes: readonly string[]
  /** What stays there: the name of its file, and why. */
  readonly leftOut: readonly { readonly name: string; readonly refused: Refused }[]
}

/**
 * Takes over the photos that another copy of a job's folder keeps and this one does not, and is sure that they are on the disk. Small copies are made
 * again when they are asked for. The other folder is not changed, and nothing outside of it is read. Throws what the file system throws where it is
 * written: then photos are here whole or not at all, and doing it again is safe.
 */
export async function carryPhotos(ours: string, theirs: string, on: Disk = disk): Promise<Carried> {
  const there = await namedIn(theirs, on)
  const [hashes, leftOut]: [string[], Carried['leftOut'][number][]] = [[], []]
  if (there.length > 0) await makeSure(on, ours, photosIn(ours))
  for (const photo of there) {
    if (await keptAs(on, ours, photo.hash)) continue
    const content = await contentOf(photo, theirs, on)
    if ('code' in content) leftOut.push({ name: basename(photo.file), refused: content })
    else hashes.push(await put(on, ours, photo, content))
  }
  // Also where nothing came: whoever did it before may have been killed before the names were on the disk.
  if (there.length > 0) await syncFolder(on, photosIn(ours))
  return { hashes, leftOut }
}

/** The bytes of a photo of that folder, or why they are not taken. */
async function contentOf(photo: Named, folder: string, on: Disk): Promise<Uint8Array | Refused> {
  try {
    if (await isElsewhere(photo, folder, on)) return refusedFor('photo/elsewhere')
    const size = (await on.size(photo.file)) ?? 0
    const refused = size === 0 ? refusedFor('photo/empty') : bigger(size, usualLimits)
    if (refused) return refused
    const bytes = await on.read(photo.file)
    return isIt(photo, bytes) ? bytes : refusedFor('photo/other-name')
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === undefined) throw error
    return refusedFor('photo/unreadable', { code })
  }
}
const isElsewhere = async ({ file }: Named, folder: string, on: Disk): Promise<boolean> =>
  (await on.real(file)) !== join(photosIn(await on.real(folder)), basename(file))

/** Of a cleaned copy nobody can say whether it was made of the photo whose name it has. */
function isIt({ hash, ending }: Named, bytes: Uint8Array): boolean {
  if (ending === cleanedEnding) return formatOf(bytes) === 'jpg'
  return formatOf(bytes) === ending && createHash('sha256').update(bytes).digest('hex') === hash
}

/** The name comes last: killed before, nothing is there but a temporary file, which is swept up later. */
async function put(on: Disk, ours: string, { hash, file }: Named, bytes: Uint8Array): Promise<string> {
  const beside = join(photosIn(ours), `.${hash}-${randomUUID()}.new`)
  try {
    await writeSynced(on, beside, 'wx', bytes)
    await on.rename(beside, join(photosIn(ours), basename(file)))
    return hash
  } catch (error) {
    await on.remove(beside).catch(() => undefined)
    throw error
  }
}
