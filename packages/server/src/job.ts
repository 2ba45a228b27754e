import { createHash } from 'node:crypto'
import { readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import {
  type CatalogueContent,
  cataloguesNamed,
  diagnosticsJson,
  type Extensions,
  type ReadJob,
  type ReadOptions,
  readJob,
  sayEnglish,
  saySpanish,
} from '@evenhem/job/read'
import { answer } from './answers.ts'
import { cataloguesOf } from './catalogues.ts'
import { looksOf } from './looks.ts'

/** The job file at a path: a folder holds its job as `job.json`, a file is a job itself. Throws what the file system throws. */
export async function jobFile(path: string): Promise<string> {
  return (await stat(path)).isDirectory() ? join(path, 'job.json') : path
}

/** The read job as it is sent, and the name of its content. */
export interface Served {
  readonly file: string
  readonly read: ReadJob
  readonly body: string
  readonly etag: string
}
export interface JobSource {
  readonly read: () => Promise<Served>
}

interface Kept {
  readonly looks: string
  readonly settled: boolean
  readonly hash: string
  readonly served: Served
}

/** The job at a path, read again only when its file changed: by its looks (time and size), and if these say nothing sure, by its content. */
export function jobSource(path: string, extensions: Extensions): JobSource {
  let kept: Kept | undefined
  const read = async (): Promise<Served> => {
    const file = await jobFile(path)
    const { text: looks, areSettled } = await looksOf(file)
    if (kept?.settled && kept.looks === looks) return kept.served
    const bytes = await readFile(file)
    const catalogues = await cataloguesOf(file, bytes)
    // A job with catalogues beside it changes with them too, so it is never taken to be settled.
    const settled = areSettled && cataloguesNamed(new TextDecoder().decode(bytes)).length === 0
    const hash = hashOf(bytes, ...[...catalogues.values()].map(bytesOf))
    const same = kept?.hash === hash && kept.served.file === file
    kept = { looks, settled, hash, served: same && kept ? kept.served : serve(file, bytes, hash, { ...extensions, catalogues }) }
    return kept.served
  }
  return { read: () => read().catch(missing) }
}

function missing(error: NodeJS.ErrnoException): never {
  if (error.code !== 'ENOENT' && error.code !== 'ENOTDIR') throw error
  throw answer(404, 'no-job', 'Unexpected folder without job.json, expected one; put the job file back.')
}

/** What became of a catalogue, as bytes: also why it was not read. */
const bytesOf = (content: CatalogueContent): Uint8Array =>
  content instanceof Uint8Array ? content : Buffer.from(JSON.stringify(content))

function hashOf(...contents: readonly Uint8Array[]): string {
  const hash = createHash('sha256')
  // With its length, so that nothing moves unseen from one file to the next.
  for (const content of contents) hash.update(`${content.length} `).update(content)
  return hash.digest('base64url')
}

/** SHA-256 of the job file itself, in hexadecimal: what a signature is put under. */
const sealedBy = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

function serve(file: string, bytes: Uint8Array, hash: string, options: ReadOptions): Served {
  const read = readJob(bytes, options)
  // In every language of the sheet: its reader may change it when there is no network any more.
  const diagnostics = { en: diagnosticsJson(read.diagnostics, sayEnglish), es: diagnosticsJson(read.diagnostics, saySpanish) }
  const body = JSON.stringify({ hash: sealedBy(bytes), ordered: read.job, readings: read.readings, diagnostics })
  return { file, read, body, etag: `"${hash}"` }
}
