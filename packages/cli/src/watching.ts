import { type FSWatcher, watch } from 'node:fs'
import { readFile, realpath } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import { catalogueFiles, cataloguesOf, jobFile } from '@evenhem/server'
import type { ExitCode, Session } from './command.ts'
import { open } from './job.ts'
import { plain } from './table.ts'

// An editor writes in several steps; what stands there after this many milliseconds is read.
const settling = 60

/** What stands in a file; undefined while nothing does, as between the two steps of an editor. */
const contentOf = (file: string): Promise<Buffer | undefined> => readFile(file).catch(() => undefined)

type Contents = ReadonlyMap<string, string>
/** The same of a job and the catalogues that it names, or why these are not read, by their paths; the job comes first. */
async function contentsOf(file: string): Promise<Contents | undefined> {
  const content = await contentOf(file)
  if (content === undefined) return undefined
  const [files, catalogues] = await Promise.all([catalogueFiles(file, content), cataloguesOf(file, content)])
  const read = [...catalogues].map(
    ([name, what]) =>
      [
        files.get(name)?.path ?? name,
        what instanceof Uint8Array ? Buffer.from(what).toString('latin1') : JSON.stringify(what),
      ] as const,
  )
  return new Map([[file, content.toString('latin1')], ...read])
}
/** The first that holds something else than before. */
const changedIn = (before: Contents | undefined, now: Contents): string | undefined =>
  [...now].find(([path, content]) => before?.get(path) !== content)?.[0]

/** Which names in which folders tell of a change. */
type Names = ReadonlyMap<string, ReadonlySet<string>>

/**
 * Folders are watched and not files, since many editors put a new file in the place of the old one. Those above a catalogue are watched too, up
 * to the one that holds the job's folder: they may come later. Where a link leads is watched as well.
 */
async function namesOf(file: string): Promise<Names> {
  const names = new Map([[dirname(file), new Set([basename(file)])]])
  const add = (path: string): void => {
    const folder = dirname(path)
    names.set(folder, (names.get(folder) ?? new Set()).add(basename(path)))
  }
  const catalogues = await catalogueFiles(file, (await contentOf(file)) ?? Buffer.from(''))
  for (const { path, folder } of catalogues.values()) {
    for (let part = path; part !== folder && part !== dirname(folder); part = dirname(part)) add(part)
    add(await realpath(path).catch(() => path))
  }
  return names
}

/** Watches what is there; what is not, the folders above it tell of. */
function watchersOf(names: Names, changed: () => void): readonly FSWatcher[] {
  return [...names].flatMap(([folder, known]) => {
    try {
      const watcher = watch(folder, (_, name) => {
        if (name === null || known.has(name)) changed()
      })
      // A folder that goes away is no trouble: the one above tells of it.
      return [watcher.on('error', () => watcher.close())]
    } catch {
      return []
    }
  })
}

/**
 * Runs something at once and whenever the file of a job, or a catalogue that it names, holds something else, until the process is told to end;
 * the last exit code is the result.
 */
export async function watched(path: string, { err, voice }: Session, work: () => Promise<ExitCode>): Promise<ExitCode> {
  const file = await jobFile(path).catch(async () => (await open(path)).file)
  const told = stopped()
  let timer: NodeJS.Timeout | undefined
  let watchers: readonly FSWatcher[] = []
  let shown: Contents | undefined
  let last = Promise.resolve<ExitCode>(0)
  // First watched and then read, so that no change falls between; the old watchers go when the new ones are there.
  const read = async (): Promise<Contents | undefined> => {
    const before = watchers
    watchers = watchersOf(await namesOf(file), changed)
    for (const watcher of before) watcher.close()
    return contentsOf(file)
  }
  const say = (code: 'watching' | 'again', file: string) => err(`${plain(voice(code, { file }))}\n`)
  const look = async (before: ExitCode): Promise<ExitCode> => {
    const now = await read()
    const changed = now && changedIn(shown, now)
    if (changed === undefined) return before
    shown = now
    say('again', changed)
    return work()
  }
  const changed = (): void => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      last = last.then(look)
    }, settling)
  }
  shown = await read()
  last = last.then(work)
  say('watching', file)
  await told
  clearTimeout(timer)
  for (const watcher of watchers) watcher.close()
  return last
}

/** Until the process is told to end. */
const stopped = (): Promise<void> =>
  new Promise((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done())
  })
