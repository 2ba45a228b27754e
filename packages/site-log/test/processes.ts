import { execFile } from 'node:child_process'
import { mkdir, mkdtemp, readdir, rm, utimes } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { logFolder, logWriter, mergeFolders, readSiteLog } from '../src/folder/index.ts'
import type { Orders } from './child.ts'
import { type Batches, batchesOf } from './crashes.ts'

// Real processes on the real disk: killed at a call, or several at once in one folder.

/** The program of a process, bundled: loading sources would take longer than what they do. */
export async function program(folder: string): Promise<string> {
  const outfile = join(folder, 'child.cjs.mjs')
  const child = fileURLToPath(new URL('child.ts', import.meta.url))
  const banner = { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" }
  await build({ entryPoints: [child], outfile, bundle: true, platform: 'node', format: 'esm', conditions: ['source'], banner })
  return outfile
}
export const tempFolder = async (): Promise<string> => mkdtemp(join((await import('node:os')).tmpdir(), 'evenhem-log-'))

/** How a process ended and what it had confirmed. */
export interface Ended {
  readonly killed: boolean
  readonly failed: string
  readonly said: readonly { readonly n: number; readonly added: number }[]
}
export const run = (file: string, orders: Orders): Promise<Ended> =>
  new Promise((done) => {
    execFile(process.execPath, [file, JSON.stringify(orders)], (error, out, err) => {
      const killed = error?.signal === 'SIGKILL'
      const said = out.split('\n').flatMap((line) => (line === '' ? [] : [JSON.parse(line)]))
      done({ killed, failed: error && !killed ? err : '', said })
    })
  })

/** The locks that dead processes left behind look as they do ten seconds later. */
export async function tenSecondsLater(job: string): Promise<void> {
  const names = await readdir(logFolder(job)).catch(() => [])
  const before = new Date(Date.now() - 11_000)
  for (const name of names.filter((each) => each.endsWith('.lock'))) await utimes(join(logFolder(job), name), before, before)
}

const textsIn = async (job: string, device: string): Promise<readonly string[]> =>
  ((await readSiteLog(job)).files.find((file) => file.device === device)?.lines ?? []).map(({ text }) => text)
const textsOf = (batches: Batches): readonly string[] => batches.flat().map(({ text }) => text)

const sizes = [1, 2, 1]
const sent = textsOf(batchesOf('tablet-1', ...sizes))

/** Adds with a process that dies at a call, and then with one that lives. Answers whether it died. */
export async function killedWhileAdding(file: string, dies: number): Promise<boolean> {
  const job = await tempFolder()
  try {
    const { killed, failed, said } = await run(file, { job, device: 'tablet-1', sizes, dies })
    const there = await textsIn(job, 'tablet-1')
    const heard = said.at(-1)?.n ?? 0
    if (failed) throw new Error(`call ${dies}: ${failed}`)
    if (there.length < heard || there.join() !== sent.slice(0, there.length).join())
      throw new Error(`call ${dies}: ${heard} lines were confirmed, and there is ${there}`)
    await tenSecondsLater(job)
    const writer = logWriter(job)
    for (const batch of batchesOf('tablet-1', ...sizes)) await writer.add('tablet-1', batch)
    await mustBe(job, { 'tablet-1': sent }, `call ${dies}`)
    return killed
  } finally {
    await rm(job, { recursive: true })
  }
}

/** The same with merging. */
export async function killedWhileMerging(file: string, dies: number): Promise<boolean> {
  const root = await tempFolder()
  const [job, from] = [join(root, 'job'), join(root, 'other')]
  try {
    await Promise.all([job, from].map((each) => mkdir(each)))
    const [one, two] = [batchesOf('tablet-1', ...sizes), batchesOf('tablet-2', 2)]
    for (const batch of one) await logWriter(from).add('tablet-1', batch)
    for (const batch of two) await logWriter(from).add('tablet-2', batch)
    await logWriter(job).add('tablet-1', one[0] ?? [])
    const { killed, failed } = await run(file, { job, from, dies })
    const there = await textsIn(job, 'tablet-1')
    if (failed) throw new Error(`call ${dies}: ${failed}`)
    if (there.length === 0 || there.join() !== sent.slice(0, there.length).join())
      throw new Error(`call ${dies}: there is ${there}`)
    await tenSecondsLater(job)
    await mergeFolders(job, from)
    await mustBe(job, { 'tablet-1': sent, 'tablet-2': textsOf(two) }, `call ${dies}`)
    return killed
  } finally {
    await rm(root, { recursive: true })
  }
}

/** These devices have these lines, nothing is odd in their files, and nothing else lies there. */
async function mustBe(job: string, expected: Readonly<Record<string, readonly string[]>>, where: string): Promise<void> {
  const { files, wrong } = await readSiteLog(job)
  if (wrong.length > 0) throw new Error(`${where}: ${JSON.stringify(wrong)}`)
  for (const { device, lines } of files)
    if (lines.map(({ text }) => text).join() !== expected[device]?.join()) throw new Error(`${where}: ${device} has other lines`)
  const names = Object.keys(expected).map((device) => `${device}.jsonl`)
  const there = await readdir(logFolder(job))
  if (there.sort().join() !== names.sort().join()) throw new Error(`${where}: in the folder are ${there}`)
}

/**
 * Several processes at once: three add the same lines of one device, as a tablet does that sends again, one adds those of another, and one merges a
 * folder in which a third device and the first one's lines are. Answers how many lines were added by those who add.
 */
export async function together(file: string, batches: number): Promise<number> {
  const root = await tempFolder()
  const [job, from] = [join(root, 'job'), join(root, 'other')]
  try {
    await Promise.all([job, from].map((each) => mkdir(each)))
    const many = Array.from({ length: batches }, (_, i) => 1 + (i % 3))
    const [one, two, three] = ['tablet-1', 'tablet-2', 'tablet-3'].map((device) => batchesOf(device, ...many))
    for (const batch of three ?? []) await logWriter(from).add('tablet-3', batch)
    const adding = (device: string) => run(file, { job, device, sizes: many })
    const ends = await Promise.all([
      ...['tablet-1', 'tablet-1', 'tablet-1', 'tablet-2'].map(adding),
      run(file, { job, from, times: Math.ceil(batches / 5) }),
    ])
    const failed = ends.find((end) => end.failed || end.killed)
    if (failed) throw new Error(`together: ${failed.failed}`)
    await mustBe(
      job,
      { 'tablet-1': textsOf(one ?? []), 'tablet-2': textsOf(two ?? []), 'tablet-3': textsOf(three ?? []) },
      'together',
    )
    return ends.flatMap(({ said }) => said).reduce((sum, { added }) => sum + added, 0)
  } finally {
    await rm(root, { recursive: true })
  }
}
