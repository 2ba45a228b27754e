import { access, mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { schemaOf } from '@evenhem/job/read'
import { Trouble } from './command.ts'
import { extensions } from './job.ts'

/** What a job written here names as its schema; it stands beside it. */
export const ownSchema = './job.schema.json'

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

/** Throws `Trouble` when a job stands in that folder. */
export async function mustBeFree(folder: string): Promise<void> {
  const file = join(folder, 'job.json')
  if (await isThere(file)) throw new Trouble('job-there', { file })
}

/** Writes a job into a folder, which is made, and the schema for editors beside it. Never writes over a file. Returns the job's file. */
export async function startFolder(folder: string, job: string): Promise<string> {
  const file = join(folder, 'job.json')
  await mkdir(folder, { recursive: true }).catch(refused(folder))
  await writeFile(file, job, { flag: 'wx' }).catch(refused(file))
  const schema = join(folder, ownSchema)
  if (!(await isThere(schema)))
    await writeFile(schema, `${JSON.stringify(schemaOf(extensions), null, 2)}\n`).catch(refused(schema))
  return file
}
