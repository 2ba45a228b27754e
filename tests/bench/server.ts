import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildServer, listen } from '@evenhem/server'
import { fastifyStatic } from '@fastify/static'
import fastify, { type FastifyInstance } from 'fastify'
import { jobOf } from '../tools/jobs.ts'
import type { Errand } from './client.ts'
import { sizes, tell } from './measure.ts'

/** The read job, against a static file of the same bytes with the same headers. Loopback only. */
export async function server(): Promise<void> {
  console.log('\nserver, the read job against a static file of the same bytes with the same headers')
  const client = fork(new URL('./client.ts', import.meta.url))
  try {
    for (const windows of sizes) await served(windows, client)
  } finally {
    client.kill()
  }
}

async function served(windows: number, client: ChildProcess): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-bench-'))
  await writeFile(join(folder, 'job.json'), JSON.stringify(jobOf(1, windows, 0)))
  const server = buildServer({ job: folder })
  const plain = fastify()
  try {
    const job = `${await listen(server, 0)}/job`
    const answer = await fetch(job)
    const body = Buffer.from(await answer.arrayBuffer())
    const file = await besideOf(plain, folder, body, answer.headers)
    const errand = { bytes: body.length, requests: windows > 1000 ? 40 : windows > 100 ? 200 : 1000, connections: 4 }
    const [ours, theirs] = await bestRates(client, errand, [job, file])
    const what = `${windows} windows, requests, ${(body.length / 1e6).toFixed(2)} MB`
    const note = `(${ours.toFixed(0)} against ${theirs.toFixed(0)} a second)`
    tell({ what, is: (100 * ours) / theirs, unit: '%', limit: 70, way: 'least', note })
  } finally {
    await Promise.all([server.close(), plain.close()])
    await rm(folder, { recursive: true, force: true })
  }
}

// Each answer has its own: what it says of itself, and of its connection.
const own = new Set(['content-length', 'content-type', 'etag', 'last-modified', 'date', 'connection', 'keep-alive'])

/** Serves the bytes as a file, by the framework alone; returns its address. */
async function besideOf(plain: FastifyInstance, folder: string, body: Buffer, headers: Headers): Promise<string> {
  await writeFile(join(folder, 'static.json'), body)
  const same = Object.fromEntries([...headers].filter(([name]) => !own.has(name)))
  plain.addHook('onRequest', async (_request, reply) => void reply.headers(same))
  plain.register(fastifyStatic, { root: folder, cacheControl: false })
  return `${await plain.listen({ host: '127.0.0.1', port: 0 })}/static.json`
}

/** The best rate of each address. They take turns, so that what else the machine does meets both. */
async function bestRates(
  client: ChildProcess,
  errand: Omit<Errand, 'address'>,
  [ours, theirs]: readonly [string, string],
): Promise<readonly [number, number]> {
  let best: readonly [number, number] = [0, 0]
  for (let round = 0; round < 6; round++)
    best = [
      Math.max(best[0], await rate(client, { ...errand, address: ours })),
      Math.max(best[1], await rate(client, { ...errand, address: theirs })),
    ]
  return best
}

async function rate(client: ChildProcess, errand: Errand): Promise<number> {
  client.send(errand)
  const [answer] = await once(client, 'message', { signal: AbortSignal.timeout(60_000) })
  if ('failed' in answer) throw new Error(answer.failed)
  return answer.rate
}
