import { open as openFile } from 'node:fs/promises'
import { basename, extname } from 'node:path'
import type { Place } from '@evenhem/job'
import { cleaner, type PhotoFolder, photoFolder, sayRefused, type Taken } from '@evenhem/photos'
import { type Command, type ExitCode, type Session, Trouble } from './command.ts'
import { type Opened, why, windowNamed } from './job.ts'
import { photosFolder, shortHash, sizeOf } from './photos.ts'
import { recorder } from './photos-log.ts'
import { plain } from './table.ts'
import type { Phrase } from './voice.ts'

/** What became of a file: of one that cannot be read, why. */
type Outcome = Taken | { readonly is: 'unreadable'; readonly why: Phrase }

const atOnce = 2

/** Takes in a file; throws `Trouble` when it is the folder that does not do. */
async function taken(photos: PhotoFolder, file: string, folder: string): Promise<Outcome> {
  const unreadable = await cannotRead(file)
  if (unreadable) return { is: 'unreadable', why: unreadable }
  return photos.takeIn(file).catch(({ code, message }: NodeJS.ErrnoException) => {
    throw new Trouble('photos-not-kept', { folder, error: code ?? message })
  })
}

/** Why a file cannot be read; undefined when it can. */
const cannotRead = (file: string): Promise<Phrase | undefined> =>
  openFile(file)
    .then(async (handle) => {
      const looks = await handle.stat().finally(() => handle.close())
      return looks.isFile() ? undefined : why('EISDIR')
    })
    .catch(({ code }: NodeJS.ErrnoException) => why(code))

/** Does the work of a few at a time and hands over what each came to, in order. Where one throws no other is begun. */
async function inOrder<T, R>(items: readonly T[], work: (item: T) => Promise<R>, use: (item: T, result: R) => Promise<void>) {
  const begun: Promise<R>[] = []
  const begin = (at: number): void => {
    const item = items[at]
    if (item === undefined) return
    const now = work(item)
    // It is awaited further down; until then nobody listens.
    now.catch(() => undefined)
    begun.push(now)
  }
  for (let at = 0; at < atOnce; at++) begin(at)
  for (const [at, item] of items.entries()) {
    const result = await (begun[at] as Promise<R>)
    begin(at + atOnce)
    await use(item, result)
  }
}

/** One line of a photo: its file, the start of its name, its size, and what became of it. */
function lineOf(file: string, outcome: Outcome, { voice, language }: Session): string {
  if (outcome.is === 'unreadable') return `${file}: ${voice('photo-unreadable', { why: outcome.why })}`
  if (outcome.is === 'refused') return `${file}: ${sayRefused(outcome.refused)[language]}`
  return `${file}  ${shortHash(outcome.hash)}  ${sizeOf(outcome.bytes)}  ${voice(outcome.isNew ? 'photo-taken' : 'photo-there')}`
}

/** Back to the start of the line, and what stands there taken away. */
const wiped = '\r\u001b[K'

/** Says on one line of a terminal how far it is. */
function tell({ err, voice, progress }: Session, total: number): { readonly done: (line: () => void) => void } {
  let done = 0
  const show = () => progress && total > 1 && done < total && err(plain(voice('photos-done', { done, total })))
  show()
  return {
    done: (line) => {
      done++
      if (progress && total > 1) err(wiped)
      line()
      show()
    },
  }
}

/** What its photos show, at a window that was asked for; undefined when none was. */
function windowIn({ job, file }: Opened, window: string | undefined): Place | undefined {
  if (window === undefined) return undefined
  if (!job) throw new Trouble('has-errors', { file })
  return windowNamed(job, window).place
}

const exitOf: Readonly<Record<Outcome['is'], ExitCode>> = { taken: 0, refused: 1, unreadable: 2 }
const showsOf = (file: string): string => basename(file, extname(file))

export const photosAdd: Command = {
  name: 'photos add',
  says: 'photos-add',
  more: 'photos-add.more',
  subjects: [{ is: 'folder' }, { is: 'files' }],
  options: { window: { says: '--window.photos', value: 'ID' }, cleaned: { says: '--cleaned' } },
  run: async ({ subject, subjects: [, ...files], options }, session) => {
    const opened = await photosFolder(subject)
    const window = windowIn(opened, options.window)
    const record = window === undefined ? undefined : recorder(opened.folder, window)
    const reader = cleaner()
    const photos = photoFolder(opened.folder, { cleaner: reader, original: 'cleaned' in options ? 'drop' : 'keep' })
    const progress = tell(session, files.length)
    let exit: ExitCode = 0
    try {
      await inOrder(
        files,
        (file) => taken(photos, file, subject),
        async (file, outcome) => {
          exit = Math.max(exit, exitOf[outcome.is]) as ExitCode
          if (outcome.is === 'taken') await record?.(outcome.hash, showsOf(file))
          const write = outcome.is === 'taken' ? session.out : session.err
          progress.done(() => write(`${plain(lineOf(file, outcome, session))}\n`))
        },
      )
      return exit
    } finally {
      reader.close()
    }
  },
}
