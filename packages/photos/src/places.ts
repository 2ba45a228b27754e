import { join } from 'node:path'
import { type Disk, disk } from '@evenhem/disk'
import type { Format } from './format.ts'

export const photosIn = (folder: string): string => join(folder, 'photos')
export const smallIn = (folder: string): string => join(photosIn(folder), 'small')
export const incomingIn = (folder: string): string => join(photosIn(folder), '.incoming')

const hash = /^[0-9a-f]{64}$/
/** Whether a text names a photo: nothing else ever becomes part of a path. */
export const isHash = (text: string): boolean => hash.test(text)

/** Of a photo whose original was not to be kept only the cleaned copy stands there, under this ending. */
export const cleanedEnding = 'clean.jpg'
export type Ending = Format | typeof cleanedEnding
const endings: readonly Ending[] = ['jpg', 'heic', 'png', 'webp', cleanedEnding]
const named = /^([0-9a-f]{64})\.(jpg|heic|png|webp|clean\.jpg)$/

/** A photo that a folder keeps. */
export interface Kept {
  readonly hash: string
  readonly ending: Ending
  readonly file: string
  readonly bytes: number
}

/** The photo of that name; undefined when it is not kept, or when the name is no hash. */
export async function keptAs(on: Disk, folder: string, hash: string): Promise<Kept | undefined> {
  if (!isHash(hash)) return undefined
  const found = await Promise.all(
    endings.map(async (ending) => {
      const file = join(photosIn(folder), `${hash}.${ending}`)
      const bytes = await on.size(file)
      return bytes === undefined ? undefined : { hash, ending, file, bytes }
    }),
  )
  return found.find((each) => each !== undefined)
}

/** Where a photo stands by its name alone. */
export type Named = Omit<Kept, 'bytes'>

/** Every photo whose name stands in a folder, once and in their order: the one that `keptAs` finds. */
export async function namedIn(folder: string, on: Disk): Promise<readonly Named[]> {
  const all = (await on.list(photosIn(folder))).flatMap((name) => {
    const [, hash, ending] = named.exec(name) ?? []
    return hash && ending ? [{ hash, ending: ending as Ending, file: join(photosIn(folder), name) }] : []
  })
  const first = all.toSorted((a, b) => endings.indexOf(a.ending) - endings.indexOf(b.ending))
  return [...new Map(first.toReversed().map((each) => [each.hash, each])).values()].sort((a, b) => (a.hash < b.hash ? -1 : 1))
}

/** Every photo that a folder keeps, by name. */
export async function keptIn(folder: string, on: Disk = disk): Promise<readonly Kept[]> {
  const all = await namedIn(folder, on)
  return Promise.all(all.map(async (each) => ({ ...each, bytes: (await on.size(each.file)) ?? 0 })))
}
