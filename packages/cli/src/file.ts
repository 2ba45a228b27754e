import { writeFile } from 'node:fs/promises'
import { type Streams, Trouble } from './command.ts'

/** Writes a result into a file that was asked for, and says which; otherwise to `out`. */
export async function put(text: string, file: string | undefined, { out }: Streams): Promise<void> {
  if (file === undefined) return out(text)
  await writeFile(file, text).catch((error: NodeJS.ErrnoException) => {
    throw new Trouble('cannot-write', { file, error: error.code ?? '' })
  })
  out(`${file}\n`)
}
