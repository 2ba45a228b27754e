import type { Signature } from '@evenhem/job'
import { logOwner } from '@evenhem/server'
import {
  againstSeal,
  type Event,
  fold,
  hashOf,
  inOrder,
  isFault,
  isSignature,
  type Line,
  photoOf,
  type SealFinding,
  type Site,
  signaturesAt,
} from '@evenhem/site-log'
import { readSiteLog, type SiteLog } from '@evenhem/site-log/folder'
import { Trouble } from './command.ts'
import { hashOfFile } from './file.ts'
import { type Opened, why } from './job.ts'
import { type Odd, type PhotosLooked, photosLooked, reportLooked } from './verify-files.ts'

/** A line of the log, and where it stands: a path from the job's folder. */
export interface Placed extends Line {
  readonly hash: string
  readonly file: string
  readonly line: number
}
/** A signature against what is there now. */
export interface Verified {
  readonly placed: Placed
  readonly value: Signature
  /** It was neither withdrawn nor put over. */
  readonly stands: boolean
  readonly findings: readonly SealFinding[]
}
/** All that can be said about a folder. */
export interface FolderVerified {
  readonly folder: string
  readonly job: string
  readonly lines: readonly Placed[]
  readonly signatures: readonly Verified[]
  readonly odd: readonly Odd[]
}

/** Looks at all of a job's folder. Throws `Trouble` when it is no folder, or cannot be read. */
export async function verified(opened: Opened): Promise<FolderVerified> {
  const folder = logOwner(opened.file)
  if (folder === undefined) throw new Trouble('verify-no-folder', { file: opened.file })
  return look(folder, opened).catch(unread(folder))
}
/** Says what the file system had against reading; every other error is thrown on. */
export const unread =
  (path: string) =>
  (error: NodeJS.ErrnoException): never => {
    throw error.code === undefined || error instanceof Trouble
      ? error
      : new Trouble('verify-unread', { path: error.path ?? path, why: why(error.code) })
  }

async function look(folder: string, opened: Opened): Promise<FolderVerified> {
  const [job, log] = [await hashOfFile(opened.file), await readSiteLog(folder)]
  const photos = await photosLooked(folder)
  const lines = linesOf(log)
  const site = fold(lines.map(({ event }) => ({ event, read: event.value })))
  const put = lines.filter(({ event }) => isSigned(event) && event.value !== undefined)
  const unread = put.flatMap((line) => unreadOf(line, opened))
  const good = put.filter((line) => !unread.some((each) => each.file === line.file && each.line === line.line))
  return {
    ...{ folder, job, lines },
    signatures: good.map((line) => against(line, job, lines, photos, site)),
    odd: [...oddLines(log), ...unread, ...photos.odd, ...lacking(lines, photos), ...(await reportLooked(folder))],
  }
}

const linesOf = ({ files }: SiteLog): readonly Placed[] =>
  files
    .flatMap(({ device, rows }) =>
      rows.flatMap(({ line }, i) =>
        line ? [{ ...line, hash: hashOf(line.text), file: `log/${device}.jsonl`, line: i + 1 }] : [],
      ),
    )
    .sort((a, b) => inOrder(a.event, b.event))
const isSigned = ({ place }: Event): boolean => place.startsWith(`${signaturesAt}/`)

const oddLines = ({ wrong }: SiteLog): readonly Odd[] => wrong.map((each) => ({ ...each, file: `log/${each.file}` }))

/** What is wrong with a signature that cannot be read: as its place takes it where the job can be read, by its seal in any case. */
function unreadOf({ event, file, line }: Placed, { found }: Opened): readonly Odd[] {
  const refused = found?.entries.find((entry) => entry.event.by === event.by && entry.event.n === event.n)?.refused
  if (refused) return [{ ...refused, file, line }]
  return isSignature(event.value) ? [] : [{ code: 'verify-no-seal', values: {}, file, line }]
}

function against(placed: Placed, job: string, lines: readonly Placed[], { good }: PhotosLooked, site: Site): Verified {
  const value = placed.event.value as Signature
  const live = site.places.get(placed.event.place)?.live
  return {
    ...{ placed, value },
    stands: live?.some(({ event }) => event === placed.event) ?? false,
    findings: againstSeal({ event: placed.event, value }, job, lines, good),
  }
}

/** Photos that lines name and of which there is no file, each at the first line that names it. */
function lacking(lines: readonly Placed[], { there }: PhotosLooked): readonly Odd[] {
  const first = new Map<string, Placed>()
  for (const line of lines) {
    const photo = photoOf(line.event)
    if (photo !== undefined && !there.has(photo) && !first.has(photo)) first.set(photo, line)
  }
  return [...first].map(([photo, { file, line }]) => ({
    code: 'verify-photo-lacks',
    values: { photo: photo.slice(0, 8) },
    file,
    line,
  }))
}

/** Whether all of it is as it should be. */
export const isGood = ({ signatures, odd }: FolderVerified): boolean =>
  !signatures.some(({ findings }) => findings.some(isFault)) && odd.every(({ isNote }) => isNote)
