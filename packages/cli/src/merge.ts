import { realpath } from 'node:fs/promises'
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

/** What came, by device, and what is odd in either log. */
function said({ added, wrong }: Merged, ours: string, theirs: string, { voice, language }: Session): readonly [string, string] {
  const lines = added.map(({ device, lines: count }) => `${voice('merge-added', { device, count, from: theirs })}\n`)
  const odd = wrong.map(({ in: where, file, line, code, values }) => {
    const at = `${where === 'ours' ? ours : theirs}/log/${file}${line === undefined ? '' : `:${line}`}`
    return `${reader[language].labels.warning}: ${at}: ${reader[language].say(code, values).says}\n`
  })
  return [lines.length > 0 ? lines.join('') : `${voice('merge-nothing', { from: theirs })}\n`, odd.join('')]
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
      const [out, err] = said(await mergeFolders(ours.folder, theirs.folder), ours.folder, theirs.folder, session)
      session.out(plain(out))
      session.err(plain(err))
      return 0
    } catch (error) {
      if (error instanceof Refusal) return refused(error, session)
      throw new Trouble('merge-failed', { folder: into, error: (error as NodeJS.ErrnoException).code ?? String(error) })
    }
  },
}
