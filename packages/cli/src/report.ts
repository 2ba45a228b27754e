import { join } from 'node:path'
import { plugins } from '@evenhem/plugins'
import { reportOf } from '@evenhem/report'
import { jobFile, logOwner, type ReportPhotos, type ReportWishes, reportOrders } from '@evenhem/server'
import { type Command, type Option, out, subjects, Trouble, unitIn, units } from './command.ts'
import { put } from './file.ts'
import { withJob } from './job.ts'
import { putPdf } from './report-pdf.ts'
import { madeCopies, photosBeside, photosInPage } from './report-photos.ts'
import { type ReportProgress, reportInView } from './report-progress.ts'
import { sealReport } from './report-seal.ts'

const paper: Option = { says: '--paper', value: 'PAPER', choices: ['a4', 'letter'] }
const pdf: Option = { says: '--pdf', value: 'FILE' }

/** A folder is asked for by its last sign. */
const isFolder = (out: string): boolean => /[\\/]$/.test(out)

interface PhotosAndFile {
  readonly photos: ReportPhotos
  readonly file?: string
}
/** The photos of a report and the file that it goes into: a page by itself, or one in a folder with its photos beside it. Throws `Trouble`. */
async function photosFor(
  folder: string | undefined,
  out: string | undefined,
  { copied }: ReportProgress,
): Promise<PhotosAndFile> {
  const copies = folder === undefined ? new Map() : await madeCopies(folder, { copied })
  if (out === undefined || !isFolder(out)) return { photos: photosInPage(copies), ...(out === undefined ? {} : { file: out }) }
  const photos = await photosBeside(copies, out).catch(({ code }: NodeJS.ErrnoException) => {
    throw new Trouble('cannot-write', { file: out, error: code ?? '' })
  })
  return { photos, file: join(out, 'index.html') }
}

export const report: Command = {
  name: 'report',
  says: 'report',
  more: 'report.more',
  subjects: subjects.folder,
  options: { out, pdf, paper, units },
  run: ({ subject, options }, session) =>
    withJob(subject, session, async ({ ordered, readings }) => {
      const { language } = session
      const wishes: ReportWishes = { unit: unitIn(options), paper: options.paper as ReportWishes['paper'], language }
      const folder = logOwner(await jobFile(subject))
      const seal = async (file?: string) => folder !== undefined && file !== undefined && sealReport(folder, file, session)
      if (options.pdf !== undefined) {
        await putPdf({ ordered, readings, wishes, file: options.pdf, ...(folder === undefined ? {} : { folder }) }, session)
        await seal(options.pdf)
        if (options.out === undefined) return 0
      }
      const { html, file } = await reportInView(session, async (progress) => {
        const { photos, file } = await photosFor(folder, options.out, progress)
        const order = reportOrders(plugins)(ordered, readings, wishes, photos)
        return { html: reportOf({ ...order, told: progress.told }).html, file }
      })
      await put(html, file, session)
      await seal(file)
      return 0
    }),
}
