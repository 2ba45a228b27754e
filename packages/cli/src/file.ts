import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import { pipeline } from 'node:stream/promises'
import { type Streams, Trouble } from './command.ts'

/** Writes a result into a file that was asked for, and says which; otherwise to `out`. */
export async function put(text: string, file: string | undefined, { out }: Streams): Promise<void> {
  if (file === undefined) return out(text)
  await writeFile(file, text).catch((error: NodeJS.ErrnoException) => {
    throw new Trouble('cannot-write', { file, error: error.code ?? '' })
  })
  out(`${file}\n`)
}

/** SHA-256 of a file, in hexadecimal, read piece by piece. Throws what the file system throws. */
export async function hashOfFile(file: string): Promise<string> {
  const hash = createHash('sha256')
  await pipeline(createReadStream(file), hash)
  return hash.digest('hex')
}
