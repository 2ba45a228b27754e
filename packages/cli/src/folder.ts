import { access, mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { catalogueSchemaOf, type JsonSchema, schemaOf } from '@evenhem/job/read'
import { Trouble } from './command.ts'
import { extensions } from './job.ts'

/** What a job and a catalogue written here name as their schemas; each stands beside its file. */
export const ownSchema = './job.schema.json'
export const ownCatalogueSchema = './catalogue.schema.json'

const isThere = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  )
const refused =
  (path: string) =>
  (error: NodeJS.ErrnoException): never => {
    if (error.code === 'EEXIST') throw new Trouble('job-there', { file: path })
    throw new Trouble('cannot-make', { path, error: error.code ?? '' })
  }

/** Throws `Trouble` when a file of a job stands there. */
export async function mustBeFree(file: string): Promise<void> {
  if (await isThere(file)) throw new Trouble('job-there', { file })
}

/** Writes a job into a folder, which is made, and the schema for editors beside it. Never writes over a file. Returns the job's file. */
export async function startFolder(folder: string, job: string): Promise<string> {
  const file = join(folder, 'job.json')
  await mkdir(folder, { recursive: true }).catch(refused(folder))
  await writeFile(file, job, { flag: 'wx' }).catch(refused(file))
  await writeSchema(join(folder, ownSchema), schemaOf(extensions))
  return file
}

/** Throws `Trouble` when another catalogue than this stands there. */
export async function mustBeSame(file: string, catalogue: string): Promise<void> {
  const there = await readFile(file, 'utf8').catch(() => undefined)
  if (there !== catalogue && (there !== undefined || (await isThere(file)))) throw new Trouble('catalogue-there', { file })
}

/** Writes a catalogue where jobs look for it, and its schema beside it, where none is. Returns its file. */
export async function startCatalogue(file: string, catalogue: string): Promise<string> {
  await mkdir(dirname(file), { recursive: true }).catch(refused(dirname(file)))
  if (!(await isThere(file))) await writeFile(file, catalogue, { flag: 'wx' }).catch(refused(file))
  await writeSchema(join(dirname(file), ownCatalogueSchema), catalogueSchemaOf(extensions))
  return file
}

async function writeSchema(file: string, schema: JsonSchema): Promise<void> {
  if (!(await isThere(file))) await writeFile(file, `${JSON.stringify(schema, null, 2)}\n`).catch(refused(file))
}
