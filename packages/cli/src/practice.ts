import { cp, mkdtemp, readFile, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { basename, dirname, join, resolve } from 'node:path'
import { cataloguesNamed } from '@evenhem/job/read'

/** A copy of a job to try things on: what is entered goes into it, and it goes away. */
export interface Practice {
  readonly folder: string
  readonly away: () => Promise<void>
}

/** Copies a job's folder, and the catalogues that it names, into the system's temporary folder. Throws what the file system throws. */
export async function practiceOn(subject: string): Promise<Practice> {
  const from = (await stat(subject)).isDirectory() ? resolve(subject) : dirname(resolve(subject))
  const top = await mkdtemp(join(tmpdir(), 'evenhem-practice-'))
  const folder = join(top, basename(from))
  // Who is paired with the job's own server is none of the copy's business.
  await cp(from, folder, { recursive: true, filter: (path) => basename(path) !== '.evenhem' })
  const named = cataloguesNamed(await readFile(join(from, 'job.json'), 'utf8'))
  for (const name of named) await cp(join(from, name), join(folder, name)).catch(() => undefined)
  return { folder, away: () => rm(top, { recursive: true, force: true }) }
}
