import { readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { cataloguesNamed } from '@evenhem/job/read'

/** The catalogue files that a job names, by these names; only what may be read is looked for, and what is not there is left out. */
export async function cataloguesOf(jobFile: string, bytes: Uint8Array): Promise<ReadonlyMap<string, Uint8Array>> {
  const names = cataloguesNamed(new TextDecoder().decode(bytes))
  const found = await Promise.all(
    names.map(async (name) => [name, await readFile(join(dirname(jobFile), name)).catch(() => undefined)] as const),
  )
  return new Map(found.flatMap(([name, content]) => (content === undefined ? [] : [[name, content] as const])))
}
