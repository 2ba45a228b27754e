import { copyFile, mkdir, readdir, readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { windowsOf } from '@evenhem/job'
import { editAt, readJob } from '@evenhem/job/read'
import { cataloguesOf } from '@evenhem/server'
import { signaturesAt } from '@evenhem/site-log'
import { readSiteLog } from '@evenhem/site-log/folder'
import { hint } from './arguments.ts'
import { type Command, Trouble } from './command.ts'
import { mustBeFree, mustBeSame, ownCatalogueSchema, ownSchema, startCatalogue, startFolder } from './folder.ts'
import { extensions } from './job.ts'
import { plain, table } from './table.ts'
import type { Voice } from './voice.ts'

/** Three folders up from here, whether this is `src` or `dist`. */
const home = fileURLToPath(new URL('../../../schema/examples/', import.meta.url))

/** The folders with a job in them, by name. */
async function names(): Promise<readonly string[]> {
  const entries = await readdir(home, { withFileTypes: true }).catch(() => [])
  if (entries.length === 0) throw new Trouble('no-examples')
  return entries
    .filter((entry) => entry.isDirectory() && entry.name !== 'not-ok')
    .map((entry) => entry.name)
    .sort()
}
const textOf = (name: string): Promise<string> => readFile(`${home}${name}/job.json`, 'utf8')

/** Its name, how many windows it has, and what its note says it shows; without a note what it is called. */
async function line(name: string, voice: Voice): Promise<readonly string[]> {
  const text = await textOf(name)
  const catalogues = await cataloguesOf(`${home}${name}/job.json`, Buffer.from(text))
  const { job } = readJob(text, { ...extensions, catalogues })
  if (!job) return [name, '', '']
  const shows = job.job.note?.split(/(?<=[.!?])\s/)[0] ?? job.job.name
  return [name, voice('windows', { count: windowsOf(job).length }), shows]
}

/** The catalogues of an example, by where a copy of the example in this folder looks for them. */
async function cataloguesFor(folder: string, name: string, text: string): Promise<readonly (readonly [string, string])[]> {
  const catalogues = await cataloguesOf(`${home}${name}/job.json`, Buffer.from(text))
  return [...catalogues].flatMap(([file, content]) => {
    if (!(content instanceof Uint8Array)) return []
    const catalogue = Buffer.from(content).toString()
    return [[join(folder, file), editAt(catalogue, '/$schema', ownCatalogueSchema) ?? catalogue] as const]
  })
}

/** What goes along with the job, as paths from its folder: what was found, which is the log and its photos, and the report that was signed. */
async function found(name: string): Promise<readonly string[]> {
  const [own, log, photos] = await Promise.all(['.', 'log', 'photos'].map((part) => filesOf(name, part)))
  return [...(log ?? []), ...(photos ?? []), ...(own ?? []).filter((file) => /^report\./.test(file))]
}
const filesOf = async (name: string, part: string): Promise<readonly string[]> => {
  const entries = await readdir(join(home, name, part), { withFileTypes: true }).catch(() => [])
  return entries.flatMap((entry) => (entry.isFile() ? [join(part, entry.name)] : [])).sort()
}

async function copyFound(name: string, folder: string, files: readonly string[]): Promise<readonly string[]> {
  for (const file of files) {
    await mkdir(dirname(join(folder, file)), { recursive: true })
    await copyFile(join(home, name, file), join(folder, file))
  }
  return files.map((file) => join(folder, file))
}

/** A job that somebody signed stays as it is, byte for byte; any other names the schema that is written beside it. */
async function copied(name: string, text: string): Promise<string> {
  const { files } = await readSiteLog(join(home, name))
  const isSigned = files.some(({ lines }) => lines.some(({ event }) => event.place.startsWith(`${signaturesAt}/`)))
  return isSigned ? text : (editAt(text, '/$schema', ownSchema) ?? text)
}

/** Copies an example; returns the files that are the copy. */
async function copy(name: string, folder: string | undefined): Promise<readonly string[]> {
  const known = await names()
  if (!known.includes(name)) throw new Trouble('no-example', { got: name, names: known.join(', '), hint: hint(name, known) })
  if (folder === undefined) throw new Trouble('no-target', { name })
  const text = await textOf(name)
  const catalogues = await cataloguesFor(folder, name, text)
  const along = await found(name)
  for (const file of ['job.json', ...along]) await mustBeFree(join(folder, file))
  for (const each of catalogues) await mustBeSame(...each)
  const started = [await startFolder(folder, await copied(name, text))]
  for (const each of catalogues) started.push(await startCatalogue(...each))
  return [...started, ...(await copyFound(name, folder, along))]
}

export const examples: Command = {
  name: 'examples',
  says: 'examples',
  more: 'examples.more',
  subjects: [
    { is: 'name', mayLack: true },
    { is: 'folder', mayLack: true },
  ],
  options: {},
  run: async ({ subjects: [name, folder] }, { out, voice }) => {
    if (name === undefined) out(plain(table(await Promise.all((await names()).map((each) => line(each, voice))), '')))
    else out((await copy(name, folder)).map((file) => `${plain(file)}\n`).join(''))
    return 0
  },
}
