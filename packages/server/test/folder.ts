import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { type IncomingHttpHeaders, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Writable } from 'node:stream'
import type { FastifyInstance } from 'fastify'
import { onTestFinished } from 'vitest'
import { buildServer, listen, type ServerOptions } from '../src/index.ts'

export const secret = 'nobody outside may read this'
export const smallJob = {
  format: 'evenhem-job/1',
  units: 'in',
  job: { number: '1', name: 'Heron Lodge', country: 'US' },
  rooms: [{ id: 'den', name: 'Den', ceiling: '96', windows: [] }],
}

/** When what a test made is taken away again. */
export type Later = (work: () => Promise<void>) => void

/** A job's folder beside a built viewer, with a secret beside both. */
export async function folder(
  job: object = smallJob,
  later: Later = onTestFinished,
): Promise<{ readonly job: string; readonly viewer: string }> {
  const top = await mkdtemp(join(tmpdir(), 'evenhem-'))
  later(() => rm(top, { recursive: true }))
  await mkdir(join(top, 'job'))
  await mkdir(join(top, 'viewer/assets'), { recursive: true })
  await writeFile(join(top, 'secret.txt'), secret)
  await writeFile(join(top, 'viewer/secret.txt'), secret)
  await writeFile(join(top, 'viewer/assets/.hidden'), secret)
  await writeFile(join(top, 'job/job.json'), JSON.stringify(job))
  await writeFile(join(top, 'viewer/index.html'), '<title>Sheet</title>')
  await writeFile(join(top, 'viewer/assets/app.js'), 'export {}')
  return { job: join(top, 'job'), viewer: join(top, 'viewer') }
}

const quiet = new Writable({ write: (_chunk, _encoding, done) => done() })

export async function server(options: Partial<ServerOptions> = {}, later: Later = onTestFinished): Promise<FastifyInstance> {
  const built = buildServer({ ...(await folder(smallJob, later)), log: quiet, ...options })
  later(async () => void (await built.close()))
  return built
}

/** A server that listens on a free port of this machine. */
export async function listening(options: Partial<ServerOptions> = {}): Promise<{ readonly port: number }> {
  return { port: Number(new URL(await listen(await server(options), 0)).port) }
}

export interface Answer {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly text: string
}

/** Sends a path as it is written: nothing is tidied up on the way, as `inject` and browsers do. */
export const send = (port: number, path: string, headers: Readonly<Record<string, string>> = {}): Promise<Answer> =>
  new Promise((done, fail) => {
    const sent = request({ host: '127.0.0.1', port, path, headers, agent: false }, (answer) => {
      let text = ''
      answer
        .setEncoding('utf8')
        .on('data', (part) => {
          text += part
        })
        .on('end', () => done({ status: answer.statusCode ?? 0, headers: answer.headers, text }))
    })
    sent.on('error', fail).end()
  })
