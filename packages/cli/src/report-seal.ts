import { readFile } from 'node:fs/promises'
import { basename, dirname, join, resolve } from 'node:path'
import type { Streams } from './command.ts'
import { hashOfFile, put } from './file.ts'

/** A report beside the job file, by its name, and the SHA-256 of its bytes, in hexadecimal. */
export interface SealedReport {
  readonly file: string
  readonly sha256: string
}
export const sealName = 'report.seal.json'
/** A report is named plainly: nothing leads out of the folder. */
const named = /^[\w-][\w.-]*\.(html|pdf)$/

const noneThere = (error: NodeJS.ErrnoException): undefined => {
  if (error.code !== 'ENOENT') throw error
}

/** The reports under the seal of a folder: none where there is no seal, undefined where it is none that can be read. Throws what the file system throws. */
export async function sealedReports(folder: string): Promise<readonly SealedReport[] | undefined> {
  const text = await readFile(join(folder, sealName), 'utf8').catch(noneThere)
  return text === undefined ? [] : reportsIn(text)
}

/** One report stands alone, several in a list. */
function reportsIn(text: string): readonly SealedReport[] | undefined {
  try {
    const reports = [JSON.parse(text)].flat()
    return reports.length > 0 && reports.every(isReport) ? reports : undefined
  } catch {
    return undefined
  }
}
const isReport = (value: SealedReport | null): boolean =>
  named.test(String(value?.file)) && /^[0-9a-f]{64}$/.test(String(value?.sha256))

/** Puts a report that was written beside the job file under the seal, and says so; one that lies elsewhere has none. Throws `Trouble`. */
export async function sealReport(folder: string, file: string, streams: Streams): Promise<void> {
  if (resolve(dirname(file)) !== resolve(folder) || !named.test(basename(file))) return
  const report = { file: basename(file), sha256: await hashOfFile(file) }
  const others = ((await sealedReports(folder)) ?? []).filter((each) => each.file !== report.file)
  const all = [...others, report]
  await put(`${JSON.stringify(all.length === 1 ? report : all)}\n`, join(folder, sealName), streams)
}
