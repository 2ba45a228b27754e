import { execFile } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { inject, onTestFinished } from 'vitest'
import type { ExitCode, Streams } from '../src/command.ts'
import { run } from '../src/run.ts'

export const root = fileURLToPath(new URL('../../..', import.meta.url))
export const example = (name: string): string => `${root}schema/examples/${name}`

/** What a command line came to, in this process. */
export const line = (...words: readonly string[]) => lineWith({}, ...words)

/** The same with a terminal: one that answers, or one that shows progress. */
export async function lineWith(
  more: Partial<Streams>,
  ...words: readonly string[]
): Promise<{ readonly code: ExitCode; readonly out: string; readonly err: string }> {
  const written = { out: '', err: '' }
  const code = await run(words, {
    out: (text) => {
      written.out += text
    },
    err: (text) => {
      written.err += text
    },
    colours: false,
    ...more,
  })
  return { code, ...written }
}

/** How the command line is started: a file for `node`. */
export const command = inject('command')

/** The same as a process of its own. */
export const started = (
  ...words: readonly string[]
): Promise<{ readonly code: number; readonly out: string; readonly err: string }> =>
  new Promise((done) => {
    execFile(process.execPath, [command, ...words], { cwd: root, maxBuffer: 64 * 1024 * 1024 }, (error, out, err) =>
      done({ code: Number(error?.code ?? 0), out, err }),
    )
  })

/** A file with this text, in a folder of its own. */
export async function fileWith(text: string, name = 'job.json'): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-'))
  onTestFinished(() => rm(folder, { recursive: true }))
  const file = join(folder, name)
  await writeFile(file, text)
  return file
}

export const smallJob = {
  format: 'evenhem-job/1',
  units: 'in',
  job: { number: '1', name: 'Heron Lodge', country: 'US' },
  rooms: [{ id: 'den', name: 'Den', windows: [] }],
}

/** A folder of its own. */
export async function folder(): Promise<string> {
  const path = await mkdtemp(join(tmpdir(), 'evenhem-'))
  onTestFinished(() => rm(path, { recursive: true }))
  return path
}
