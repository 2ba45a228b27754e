import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { Agent, get } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildServer, listen } from '@evenhem/server'
import { fastifyStatic } from '@fastify/static'
import fastify from 'fastify'
import { jobOf } from '../tools/jobs.ts'

/** Bytes of an address, read over a connection that is kept. */
const fetched = (agent: Agent, address: string) =>
  new Promise<Buffer>((resolve, reject) => {
    get(address, { agent }, (answer) => {
      const parts: Buffer[] = []
      answer.on('data', (part: Buffer) => parts.push(part)).on('end', () => resolve(Buffer.concat(parts)))
      answer.on('error', reject)
    }).on('error', reject)
  })

/** Requests in a second, best of a few rounds of so many one after another. */
async function rate(address: string, requests: number): Promise<number> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 })
  let best = 0
  for (let round = 0; round < 4; round++) {
    const from = performance.now()
    for (let n = 0; n < requests; n++) await fetched(agent, address)
    best = Math.max(best, (1000 * requests) / (performance.now() - from))
  }
  agent.destroy()
  return best
}

/** How fast the read job of so many windows is served, as a share of a static file of the same bytes. Loopback only. */
export async function servedShare(windows: number): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-bench-'))
  const requests = windows > 100 ? 30 : 400
  await writeFile(join(folder, 'job.json'), JSON.stringify(jobOf(1, windows, 0)))
  const server = buildServer({ job: folder })
  const address = await listen(server, 0)
  const agent = new Agent()
  await writeFile(join(folder, 'static.json'), await fetched(agent, `${address}/job`))
  agent.destroy()
  const plain = fastify()
  plain.register(fastifyStatic, { root: folder })
  const beside = await plain.listen({ host: '127.0.0.1', port: 0 })
  try {
    const file = await rate(`${beside}/static.json`, requests)
    return (await rate(`${address}/job`, requests)) / file
  } finally {
    await Promise.all([server.close(), plain.close()])
    await rm(folder, { recursive: true, force: true })
  }
}
