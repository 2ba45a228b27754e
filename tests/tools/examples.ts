import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Job, lay, type Place, windowsOf } from '@evenhem/job'
import { cataloguesNamed, extensionsOf, type ReadJob, readJob } from '@evenhem/job/read'
import { plugins } from '@evenhem/plugins'

const folder = fileURLToPath(new URL('../../schema/examples/', import.meta.url))
export const extensions = extensionsOf(plugins)

/** An example as it is read: the order, the job as found, and its windows. */
export interface Example {
  readonly name: string
  readonly read: ReadJob
  readonly ordered: Job
  readonly found: Job
  readonly places: readonly Place[]
}

/** Reads a job from text; throws when it is none, for tests that need one. */
export function exampleOf(name: string, text: string, known = extensions): Example {
  const read = readJob(text, { ...known, file: name, catalogues: cataloguesIn(`${folder}${name}/`, text) })
  if (!read.job) throw new Error(`${name} is no job: ${JSON.stringify(read.diagnostics, null, 1)}`)
  const { job: found } = lay(read.job, read.readings)
  return { name, read, ordered: read.job, found, places: windowsOf(found).map((window) => window.place) }
}

/** The catalogues that a text names, from this folder. */
export const cataloguesIn = (from: string, text: string): ReadonlyMap<string, Uint8Array> =>
  new Map(cataloguesNamed(text).flatMap((file) => (existsSync(from + file) ? [[file, readFileSync(from + file)] as const] : [])))

/** The names of all examples: the folders with a job in `schema/examples`. */
export const names: readonly string[] = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'not-ok')
  .map((entry) => entry.name)
  .sort()
export const example = (name: string): Example => exampleOf(name, readFileSync(`${folder}${name}/job.json`, 'utf8'))
/** All examples. */
export const examples: readonly Example[] = names.map(example)
