import { constants } from 'node:fs'
import { open, realpath } from 'node:fs/promises'
import { dirname, join, relative, sep } from 'node:path'
import { type CatalogueContent, cataloguesNamed, mayBeCatalogue, type UnreadCatalogue } from '@evenhem/job/read'

/** A catalogue is some thousand entries at most; a larger file is hardly one. In bytes. */
export const largestCatalogue = 4_000_000

/** The catalogue files that a job names, by these names: what each holds, or why that is not known. */
export async function cataloguesOf(jobFile: string, bytes: Uint8Array): Promise<ReadonlyMap<string, CatalogueContent>> {
  const files = await catalogueFiles(jobFile, bytes)
  const read = [...files].map(async ([name, file]) => [name, await contentOf(file.path, file.folder).catch(unread)] as const)
  return new Map(await Promise.all(read))
}

/** Where a catalogue is looked for, and the folder of its job, really. */
export interface CatalogueFile {
  readonly path: string
  readonly folder: string
}
/** Where the catalogues are looked for that a job names, by these names; a name that leads elsewhere is left out. */
export async function catalogueFiles(jobFile: string, bytes: Uint8Array): Promise<ReadonlyMap<string, CatalogueFile>> {
  const names = cataloguesNamed(new TextDecoder().decode(bytes))
  if (names.length === 0) return new Map()
  const folder = await realpath(dirname(jobFile))
  return new Map(names.map((name) => [name, { path: join(folder, name), folder }]))
}

// A pipe that nobody writes into must not be waited for, and what became a link in the meantime is not followed. Windows has neither.
const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) | (constants.O_NOFOLLOW ?? 0)

/** Links are followed first: the rule for names holds for where the file really is. */
async function contentOf(path: string, folder: string): Promise<CatalogueContent> {
  const real = await realpath(path)
  if (!mayBeCatalogue(relative(folder, real).replaceAll(sep, '/'))) return { why: 'outside' }
  const file = await open(real, flags)
  try {
    const looks = await file.stat()
    if (!looks.isFile()) return { why: 'no-file' }
    if (looks.size > largestCatalogue) return { why: 'too-large', values: inMegabytes(looks.size) }
    return await file.readFile()
  } finally {
    await file.close()
  }
}

const inMegabytes = (size: number) => ({ size: Math.ceil(size / 100_000) / 10, most: largestCatalogue / 1_000_000 })

function unread({ code = 'unknown' }: NodeJS.ErrnoException): UnreadCatalogue {
  if (code === 'ENOENT' || code === 'ENOTDIR') return { why: 'missing' }
  return code === 'EISDIR' ? { why: 'no-file' } : { why: 'unreadable', values: { error: code } }
}
