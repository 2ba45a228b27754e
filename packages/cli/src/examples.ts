import { copyFile, mkdir, readdir, readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { windowsOf } from '@evenhem/job'
import { editAt, readJob } from '@evenhem/job/read'
import { cataloguesOf } from '@evenhem/server'
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

/** What was found goes along: the log and its photos. */
async function copyFound(name: string, folder: string): Promise<readonly string[]> {
  const there = await Promise.all(['log', 'photos'].map((part) => filesOf(`${name}/${part}`)))
  for (const file of there.flat()) {
    const to = join(folder, file.slice(name.length + 1))
    await mkdir(dirname(to), { recursive: true })
    await copyFile(home + file, to)
  }
  return there.flat().map((file) => join(folder, file.slice(name.length + 1)))
}
const filesOf = async (at: string): Promise<readonly string[]> => {
  const entries = await readdir(home + at, { withFileTypes: true }).catch(() => [])
  return entries.flatMap((entry) => (entry.isFile() ? [`${at}/${entry.name}`] : [])).sort()
}

/** Copies an example; returns the files that are the copy. */
async function copy(name: string, folder: string | undefined): Promise<readonly string[]> {
  const known = await names()
  if (!known.includes(name)) throw new Trouble('no-example', { got: name, names: known.join(', '), hint: hint(name, known) })
  if (folder === undefined) throw new Trouble('no-target', { name })
  const text = await textOf(name)
  const catalogues = await cataloguesFor(folder, name, text)
  await mustBeFree(folder)
  for (const each of catalogues) await mustBeSame(...each)
  const started = [await startFolder(folder, editAt(text, '/$schema', ownSchema) ?? text)]
  for (const each of catalogues) started.push(await startCatalogue(...each))
  return [...started, ...(await copyFound(name, folder))]
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
