import { realpath } from 'node:fs/promises'
import { type Carried, carryPhotos, sayRefused } from '@evenhem/photos'
import { logOwner } from '@evenhem/server'
import { Refusal } from '@evenhem/site-log'
import { type Merged, mergeFolders } from '@evenhem/site-log/folder'
import { type Command, type ExitCode, type Session, Trouble } from './command.ts'
import { open } from './job.ts'
import { plain } from './table.ts'
import { reader } from './voice.ts'

/** A folder with a job in it, and which job that is. Throws `Trouble` when there is none, or when it cannot be read. */
async function jobIn(path: string): Promise<{ readonly folder: string; readonly number: string }> {
  const { file, job } = await open(path)
  const folder = logOwner(file)
  if (folder === undefined) throw new Trouble('merge-no-folder', { file })
  if (!job) throw new Trouble('has-errors', { file })
  return { folder, number: job.job.number }
}

/** What came, by device, and how many photos. */
function came({ added }: Merged, { hashes, leftOut }: Carried, theirs: string, { voice }: Session): readonly string[] {
  const lines = added.map(({ device, lines: count }) => voice('merge-added', { device, count, from: theirs }))
  const photos = hashes.length > 0 ? [voice('merge-photos', { count: hashes.length, from: theirs })] : []
  const isNothing = lines.length + photos.length + leftOut.length === 0
  return isNothing ? [voice('merge-nothing', { from: theirs })] : [...lines, ...photos]
}

/** What is odd in either log, and the photos that were left out. */
function odd({ wrong }: Merged, { leftOut }: Carried, ours: string, theirs: string, { voice, language }: Session) {
  const lines = wrong.map(({ in: where, file, line, code, values }) => {
    const at = `${where === 'ours' ? ours : theirs}/log/${file}${line === undefined ? '' : `:${line}`}`
    return `${reader[language].labels.warning}: ${at}: ${reader[language].say(code, values).says}`
  })
  const photos = leftOut.map(({ name, refused }) =>
    voice('merge-left-out', { file: `${theirs}/photos/${name}`, why: sayRefused(refused)[language] }),
  )
  return [...lines, ...photos]
}

const noPhotos: Carried = { hashes: [], leftOut: [] }
const paragraph = (lines: readonly string[]): string => plain(lines.map((line) => `${line}\n`).join(''))

/** Merges the logs, then the photos, which they speak of; says what came also where the photos do not fit. */
async function merged(ours: string, theirs: string, into: string, session: Session): Promise<ExitCode> {
  const logs = await mergeFolders(ours, theirs)
  const failed = (error: NodeJS.ErrnoException) =>
    new Trouble('merge-photos-failed', { folder: into, error: error.code ?? String(error) })
  const photos = await carryPhotos(ours, theirs).catch(failed)
  const carried = photos instanceof Trouble ? noPhotos : photos
  if (carried === photos || logs.added.length > 0) session.out(paragraph(came(logs, carried, theirs, session)))
  session.err(paragraph(odd(logs, carried, ours, theirs, session)))
  if (photos instanceof Trouble) throw photos
  return carried.leftOut.length > 0 ? 1 : 0
}

/** Merging refused: which entry it is about, and what to do. */
function refused({ wrong }: Refusal, { err, language }: Session): ExitCode {
  const { says, help } = reader[language].say(wrong.code, wrong.values)
  err(plain(`${says}\n${help}\n`))
  return 1
}

export const merge: Command = {
  name: 'merge',
  says: 'merge',
  more: 'merge.more',
  subjects: [{ is: 'folder' }, { is: 'folder' }],
  options: {},
  run: async ({ subjects: [into = '', from = ''] }, session) => {
    const [ours, theirs] = [await jobIn(into), await jobIn(from)]
    if ((await realpath(ours.folder)) === (await realpath(theirs.folder))) throw new Trouble('merge-same', { folder: into })
    if (ours.number !== theirs.number)
      throw new Trouble('merge-other-job', { folder: from, number: theirs.number, expected: ours.number })
    try {
      return await merged(ours.folder, theirs.folder, into, session)
    } catch (error) {
      if (error instanceof Refusal) return refused(error, session)
      if (error instanceof Trouble) throw error
      throw new Trouble('merge-failed', { folder: into, error: (error as NodeJS.ErrnoException).code ?? String(error) })
    }
  },
}
