import { join } from 'node:path'
import { disk } from '@evenhem/disk'
import { hashOfFile } from './file.ts'
import { type SealedReport, sealedReports, sealName } from './report-seal.ts'
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
  const [there, changed, said] = [new Set<string>(), new Set<string>(), [] as Odd[]]
  for (const name of [...(await disk.list(join(folder, 'photos')))].sort()) {
    const [, hash, ending] = named.exec(name) ?? []
    if (!hash) continue
    const file = `photos/${name}`
    there.add(hash)
    if (ending === 'clean.jpg') said.push({ ...odd('verify-photo-cleaned', file), isNote: true })
    else if ((await hashOfFile(join(folder, file))) !== hash) {
      changed.add(hash)
      said.push(odd('verify-photo-changed', file))
    }
  }
  return { good: new Set([...there].filter((hash) => !changed.has(hash))), there, odd: said }
}

const example = '{"file":"report.html","sha256":"…"}'

/** The reports beside their seal, by the bytes that it says; a folder without a seal has nothing to be said. */
export async function reportLooked(folder: string): Promise<readonly Odd[]> {
  const reports = await sealedReports(folder)
  if (!reports) return [odd('verify-report-seal', sealName, { example })]
  return (await Promise.all(reports.map((report) => oddOf(folder, report)))).flat()
}

async function oddOf(folder: string, { file, sha256 }: SealedReport): Promise<readonly Odd[]> {
  const hash = await hashOfFile(join(folder, file)).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ENOENT') throw error
  })
  if (hash === undefined) return [odd('verify-report-lacks', sealName, { name: file })]
  return hash === sha256 ? [] : [odd('verify-report-changed', file)]
}
