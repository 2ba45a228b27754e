import { watch } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import { cataloguesOf, jobFile } from '@evenhem/server'
import type { ExitCode, Session } from './command.ts'
import { open } from './job.ts'
import { plain } from './table.ts'

// An editor writes in several steps; what stands there after this many milliseconds is read.
const settling = 60

/** What stands in a file; undefined while nothing does, as between the two steps of an editor. */
const contentOf = (file: string): Promise<string | undefined> => readFile(file, 'latin1').catch(() => undefined)

/** The same of a job and the catalogues that it names. */
async function allOf(file: string): Promise<string | undefined> {
  const content = await contentOf(file)
  if (content === undefined) return undefined
  const catalogues = await cataloguesOf(file, Buffer.from(content, 'latin1'))
  return [content, ...[...catalogues.values()].map((bytes) => Buffer.from(bytes).toString('latin1'))].join('\n')
}

/**
 * Runs something at once and whenever the file of a job holds something else, until the process is told to end; the last exit code is the
 * result. The folder is watched, not the file, since many editors put a new file in the place of the old one.
 */
export async function watched(path: string, { err, voice }: Session, work: () => Promise<ExitCode>): Promise<ExitCode> {
  const file = await jobFile(path).catch(async () => (await open(path)).file)
  const told = stopped()
  let shown = await allOf(file)
  const say = (code: 'watching' | 'again') => err(`${plain(voice(code, { file }))}\n`)
  let last = work()
  say('watching')
  const look = async (before: ExitCode): Promise<ExitCode> => {
    const content = await allOf(file)
    if (content === undefined || content === shown) return before
    shown = content
    say('again')
    return work()
  }
  let timer: NodeJS.Timeout | undefined
  const watcher = watch(dirname(file), (_, name) => {
    if (name !== null && name !== basename(file) && !name.endsWith('.json')) return
    clearTimeout(timer)
    timer = setTimeout(() => {
      last = last.then(look)
    }, settling)
  })
  await told
  clearTimeout(timer)
  watcher.close()
  return last
}

/** Until the process is told to end. */
const stopped = (): Promise<void> =>
  new Promise((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done())
  })
