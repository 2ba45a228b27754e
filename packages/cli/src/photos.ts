import { type Job, type Place, placeInWords } from '@evenhem/job'
import { isHash, type Kept, keptIn } from '@evenhem/photos'
import { logOwner, type SiteRead } from '@evenhem/server'
import { type Command, json, type Session, subjects, Trouble } from './command.ts'
import { exitCode, type Opened, open, written } from './job.ts'
import { plain, table } from './table.ts'

/** A photo that the log speaks of: where, and what it shows there. */
interface Shown {
  readonly hash: string
  readonly window: Place
  readonly shows: string
}
/** Where the log says what a photo shows. */
export const photoPlace = (window: Place, hash: string): Place => `${window}/found/photos/${hash}`
const photoAt = /^(.*)\/found\/photos\/([^/]*)$/

/** What stands in the log about photos. */
function shownIn({ site }: SiteRead): readonly Shown[] {
  return [...site.places].flatMap(([place, { live }]) => {
    const [, window = '', hash = ''] = photoAt.exec(place) ?? []
    const shows = live.find(({ event }) => typeof event.value === 'string')?.event.value
    return isHash(hash) && typeof shows === 'string' ? [{ hash, window: window as Place, shows }] : []
  })
}

/** A job's folder that can hold photos. Throws `Trouble` when there is none. */
export async function photosFolder(path: string): Promise<Opened & { readonly folder: string }> {
  const opened = await open(path)
  const folder = logOwner(opened.file)
  if (folder === undefined) throw new Trouble('photos-no-folder', { file: opened.file })
  return { ...opened, folder }
}

/** Bytes as people read them: never less than they are. */
export const sizeOf = (bytes: number): string => `${Math.ceil(bytes / 1000)} kB`
export const shortHash = (hash: string): string => hash.slice(0, 8)

/** A photo once, with each window that it shows; those that are only spoken of come last. */
interface Listed {
  readonly hash: string
  readonly kept?: Kept
  readonly windows: readonly Shown[]
}
function listed(kept: readonly Kept[], shown: readonly Shown[]): readonly Listed[] {
  const windowsOf = (hash: string) => shown.filter((each) => each.hash === hash)
  const away = new Set(shown.map(({ hash }) => hash).filter((hash) => !kept.some((each) => each.hash === hash)))
  return [
    ...kept.map((each) => ({ hash: each.hash, kept: each, windows: windowsOf(each.hash) })),
    ...[...away].map((hash) => ({ hash, windows: windowsOf(hash) })),
  ]
}

function text(photos: readonly Listed[], job: Job, { voice, language }: Session): string {
  const rows = photos.flatMap(({ hash, kept, windows }) => {
    const size = kept ? sizeOf(kept.bytes) : voice('photo-not-sent')
    const where = windows.map(({ window, shows }) => [placeInWords(job, window, '', language), shows])
    return (where.length > 0 ? where : [['', '']]).map((each) => [shortHash(hash), size, ...each])
  })
  return plain(table(rows, ''))
}

/** The same for programs. `bytes` is left out where the photo is not here yet. */
const asJson = (photos: readonly Listed[]): string =>
  `${JSON.stringify(
    photos.map(({ hash, kept, windows }) => ({
      hash,
      ...(kept && { bytes: kept.bytes, file: `photos/${hash}.${kept.ending}` }),
      windows: windows.map(({ window, shows }) => ({ window, shows })),
    })),
    null,
    2,
  )}\n`

export const photos: Command = {
  name: 'photos',
  says: 'photos',
  more: 'photos.more',
  subjects: subjects.folder,
  options: { json },
  run: async ({ subject, options }, session) => {
    const opened = await photosFolder(subject)
    const { job, found, folder } = opened
    if (!job || !found) {
      session.err(written(opened, session.language, false))
      return exitCode(opened)
    }
    const all = listed(await keptIn(folder), shownIn(found))
    if ('json' in options) session.out(asJson(all))
    else if (all.length > 0) session.out(text(all, job, session))
    else session.err(`${plain(session.voice('no-photos', { folder: subject }))}\n`)
    return 0
  },
}
