import { readFileSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import type { Job, Readings } from '@evenhem/job'
import { plugins } from '@evenhem/plugins'
import { linkedPhotos, type ReportCopies, type ReportWishes, reportOrders } from '@evenhem/server'
import { type Session, Trouble } from './command.ts'
import { madeCopies } from './report-photos.ts'
import { type ReportProgress, reportInView } from './report-progress.ts'

/** Above so many bytes of large copies the small ones are printed: 320 pixels on 54 mm are 150 to the inch. */
const mostOfLarge = 40_000_000

/** Reads the copy of a photo that a PDF prints; undefined when it is not here. */
function readerOf(copies: ReportCopies): (photo: { readonly hash: string }) => Uint8Array | undefined {
  const isLarge = [...copies.values()].reduce((sum, { bytes }) => sum + bytes, 0) <= mostOfLarge
  // Both copies are made together and stand side by side.
  const fileOf = (file: string): string => (isLarge ? file : file.replace(/-1600\.jpg$/, '-320.jpg'))
  return ({ hash }) => {
    const copy = copies.get(hash)
    try {
      return copy && readFileSync(fileOf(copy.file))
    } catch {
      return undefined
    }
  }
}

/** A report that is asked for as a PDF. `folder`: of the job, where it has one; `file`: where the PDF goes. */
export interface PdfReport {
  readonly ordered: Job
  readonly readings: Readings
  readonly wishes: ReportWishes
  readonly folder?: string
  readonly file: string
}

/** Writes a report as a PDF, says which file that is, and which letters its fonts lack. Throws `Trouble` when the file cannot be written. */
export async function putPdf({ file, ...report }: PdfReport, session: Session): Promise<void> {
  const { out, err, voice } = session
  let letters: readonly string[] = []
  const lost = (all: readonly string[]): void => {
    letters = all
  }
  const bytes = await reportInView(session, (progress) => leavingNothing(() => bytesOf(report, progress, lost)))
  if (letters.length > 0) err(`${voice('pdf-letters', { letters: letters.join(' ') })}\n`)
  await writeFile(file, bytes).catch(({ code }: NodeJS.ErrnoException) => {
    throw new Trouble('cannot-write-pdf', { file, error: code ?? '' })
  })
  out(`${file}\n`)
}

const signals = { SIGINT: 130, SIGTERM: 143 } as const
/** Who stops the command meanwhile ends it by way of `exit`, where files that are in the making are taken away. */
async function leavingNothing<T>(work: () => Promise<T>): Promise<T> {
  const stops = Object.entries(signals).map(([signal, code]) => ({ signal, stop: () => process.exit(code) }))
  for (const { signal, stop } of stops) process.once(signal, stop)
  try {
    return await work()
  } finally {
    for (const { signal, stop } of stops) process.off(signal, stop)
  }
}

async function bytesOf(
  { ordered, readings, wishes, folder }: Omit<PdfReport, 'file'>,
  { copied, told }: ReportProgress,
  lost: (letters: readonly string[]) => void,
): Promise<Uint8Array> {
  // Loaded here, so that no other command waits for what sets type.
  const { pdfOf } = await import('@evenhem/report/pdf')
  const copies: ReportCopies = folder === undefined ? new Map() : await madeCopies(folder, { copied })
  const order = reportOrders(plugins)(ordered, readings, wishes, { photos: linkedPhotos(copies, (hash) => hash) })
  return pdfOf({ ...order, told }, { lost, photo: readerOf(copies) })
}
