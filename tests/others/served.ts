import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildServer, listen } from '@evenhem/server'

/** A job's server that can be stopped and comes back at the same address. */
export interface Served {
  readonly address: string
  readonly stop: () => Promise<void>
  readonly start: () => Promise<void>
  /** What lies in the log: the lines of every tablet, as they were written. */
  readonly log: () => Promise<readonly { readonly place: string; readonly value?: unknown }[]>
  /** Stops it and takes its folder away. */
  readonly away: () => Promise<void>
}

/** Serves a copy of a job's folder, with this built viewer. */
export async function serve(job: string, viewer: string): Promise<Served> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-others-'))
  await cp(job, folder, { recursive: true })
  const make = () => buildServer({ job: folder, viewer })
  let server = make()
  const address = await listen(server, 0)
  const stop = async () => {
    const stopped = server.close()
    // A page that asks again just now would hold it open.
    const closing = setInterval(() => server.server.closeAllConnections(), 20)
    await stopped.finally(() => clearInterval(closing))
  }
  const start = async () => {
    server = make()
    await listen(server, Number(new URL(address).port))
  }
  const away = async () => {
    await stop()
    await rm(folder, { recursive: true, maxRetries: 10 })
  }
  return { address, stop, start, log: () => linesIn(join(folder, 'log')), away }
}

async function linesIn(folder: string) {
  const names = await readdir(folder).catch(() => [])
  const texts = await Promise.all(
    names.filter((name) => name.endsWith('.jsonl')).map((name) => readFile(join(folder, name), 'utf8')),
  )
  return texts.flatMap((text) => text.trim().split('\n').filter(Boolean)).map((line) => JSON.parse(line))
}

/** A copy of a built viewer that tells the test what it complains of; see told.js. Returns its folder. */
export async function telling(viewer: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-telling-'))
  await cp(viewer, folder, { recursive: true })
  await cp(fileURLToPath(new URL('told.js', import.meta.url)), join(folder, 'assets', 'told.js'))
  const page = await readFile(join(folder, 'index.html'), 'utf8')
  await writeFile(join(folder, 'index.html'), page.replace('<head>', '<head><script src="/assets/told.js"></script>'))
  return folder
}
