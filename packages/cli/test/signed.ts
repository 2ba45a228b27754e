import { createHash } from 'node:crypto'
import { cp, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fold, type Line, lastOf, type Put, readLogFile, sealed, signaturesAt, write } from '@evenhem/site-log'
import { readSiteLog } from '@evenhem/site-log/folder'
import { example, folder, line } from './line.ts'

const clock = '2026-12-08T17:30:00Z'
export const shaOf = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex')

/** Writes entries of a device into the log of a job's folder, as a tablet would that knows all of it. */
export async function record(job: string, device: string, ...puts: readonly Put[]): Promise<void> {
  const file = join(job, 'log', `${device}.jsonl`)
  const bytes = await readFile(file).catch(() => Buffer.alloc(0))
  const { lines } = readLogFile(device, bytes)
  const last = lastOf(lines)
  const site = {
    ...fold((await linesOf(job)).map(({ event }) => ({ event, read: event.value }))),
    count: 10_000 + (last?.n ?? 0),
  }
  const more = write({ device, last, clock, who: 'Odo Fennel' }, puts, site)
  await writeFile(file, Buffer.concat([bytes, Buffer.from(more.map(({ text }) => `${text}\n`).join(''))]))
}
export const linesOf = async (job: string): Promise<readonly Line[]> =>
  (await readSiteLog(job)).files.flatMap(({ lines }) => lines)

const strokes = [
  [0.1, 0.5, 0.2, 0.25, 0.3, 0.75],
  [0.4, 0.5, 0.6, 0.5],
]
/** Signs all that a folder holds. */
export async function sign(job: string, device: string, id: string, role: 'customer' | 'installer', name: string): Promise<void> {
  const accepts = role === 'customer' ? ({ accepts: 'with open points' } as const) : {}
  const hash = shaOf(await readFile(join(job, 'job.json')))
  const value = sealed({ role, name, ...accepts, strokes }, hash, await linesOf(job))
  await record(job, device, { place: `${signaturesAt}/${id}`, value })
}

/** A copy of the day at Heron Point that both signed, the customer first; in a folder of its own, or in that one. */
export async function signedDay(within?: string): Promise<string> {
  const job = join(within ?? (await folder()), 'job')
  await cp(example('heron-point-day'), job, { recursive: true })
  await sign(job, 'tablet-1', 'theirs', 'customer', 'Ida Marsh')
  await sign(job, 'tablet-1', 'ours', 'installer', 'Odo Fennel')
  return job
}

/** The same day before anybody signed. */
export async function unsignedDay(): Promise<string> {
  const job = join(await folder(), 'job')
  await cp(example('heron-point-day'), job, { recursive: true })
  for (const name of await readdir(join(job, 'log'))) {
    const file = join(job, 'log', name)
    const rows = (await readFile(file, 'utf8')).split('\n')
    const at = rows.findIndex((row) => row.includes(signaturesAt))
    if (at >= 0)
      await writeFile(
        file,
        rows
          .slice(0, at)
          .map((row) => `${row}\n`)
          .join(''),
      )
  }
  return job
}

/** What verify says of a folder, for programs. */
export async function verified(job: string) {
  const { code, out } = await line('verify', job, '--json')
  return { code, ...JSON.parse(out) }
}
