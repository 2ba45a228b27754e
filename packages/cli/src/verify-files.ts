import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { disk } from '@evenhem/photos'
import type { Fillings } from './voice.ts'

/** Something that is not as it should be: a code of the command line or of the readers, and where, as a path from the job's folder. */
export interface Odd {
  readonly code: string
  readonly values: Fillings
  readonly file: string
  readonly line?: number
  /** Left out: it is a fault. */
  readonly isNote?: true
}
const odd = (code: string, file: string, values: Fillings = {}): Odd => ({ code, file, values })

/** SHA-256 of a text in UTF-8, in hexadecimal. */
export const hashOfText = (text: string): string => createHash('sha256').update(text).digest('hex')

/** SHA-256 of a file, in hexadecimal, read piece by piece. Throws what the file system throws. */
export async function hashOfFile(file: string): Promise<string> {
  const hash = createHash('sha256')
  await pipeline(createReadStream(file), hash)
  return hash.digest('hex')
}

/** The photos of a folder: the hashes of those that are there as they were, and what is to be said of others. */
export interface PhotosLooked {
  readonly good: ReadonlySet<string>
  /** Those of which there is a file. */
  readonly there: ReadonlySet<string>
  readonly odd: readonly Odd[]
}
const named = /^([0-9a-f]{64})\.(clean\.jpg|jpg|heic|png|webp)$/

/** Looks at the bytes of every photo, one after the other. Copies under `small/` are made of them and are not looked at. */
export async function photosLooked(folder: string): Promise<PhotosLooked> {
  const [good, there, said] = [new Set<string>(), new Set<string>(), [] as Odd[]]
  for (const name of [...(await disk.list(join(folder, 'photos')))].sort()) {
    const [, hash, ending] = named.exec(name) ?? []
    if (!hash) continue
    const file = `photos/${name}`
    there.add(hash)
    if (ending === 'clean.jpg') said.push({ ...odd('verify-photo-cleaned', file), isNote: true })
    else if ((await hashOfFile(join(folder, file))) !== hash) said.push(odd('verify-photo-changed', file))
  }
  const changed = new Set(
    said.flatMap(({ code, file }) => (code === 'verify-photo-changed' ? [basename(file).slice(0, 64)] : [])),
  )
  for (const hash of there) if (!changed.has(hash)) good.add(hash)
  return { good, there, odd: said }
}

const sealName = 'report.seal.json'
const example = '{"file":"report.html","sha256":"…"}'
const noneThere = (error: NodeJS.ErrnoException): undefined => {
  if (error.code !== 'ENOENT') throw error
}

/** The report that lies beside its seal, by the bytes that the seal says; a folder without a seal has nothing to be said. */
export async function reportLooked(folder: string): Promise<readonly Odd[]> {
  const text = await readFile(join(folder, sealName), 'utf8').catch(noneThere)
  if (text === undefined) return []
  const seal = sealIn(text)
  if (!seal) return [odd('verify-report-seal', sealName, { example })]
  const hash = await hashOfFile(join(folder, seal.file)).catch(noneThere)
  if (hash === undefined) return [odd('verify-report-lacks', sealName, { name: seal.file })]
  return hash === seal.sha256 ? [] : [odd('verify-report-changed', seal.file)]
}

/** A report is named plainly: nothing leads out of the folder. */
function sealIn(text: string): { readonly file: string; readonly sha256: string } | undefined {
  try {
    const { file, sha256 } = JSON.parse(text)
    return /^[\w-][\w.-]*\.(html|pdf)$/.test(file) && /^[0-9a-f]{64}$/.test(sha256) ? { file, sha256 } : undefined
  } catch {
    return undefined
  }
}
