import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { FastifyInstance, InjectOptions } from 'fastify'
import { onTestFinished } from 'vitest'
import type { Https, ServerOptions } from '../src/index.ts'
import { type Later, server } from './folder.ts'

/** A server on a network in which it is called `tablet.test`, with a clock that stands still until it is moved. */
export async function networked(
  { https, ...options }: Partial<ServerOptions> & { readonly https?: Https } = {},
  later: Later = onTestFinished,
) {
  const top = await mkdtemp(join(tmpdir(), 'evenhem-'))
  later(() => rm(top, { recursive: true, force: true }))
  const devices = join(top, '.evenhem/devices.json')
  const clock = { now: Date.parse('2026-11-25T09:00:00Z') }
  const network = { names: ['tablet.test'], devices, ...(https && { https }) }
  const built = await server({ network, now: () => clock.now, ...options }, later)
  return { built, devices, clock, ...asking(built) }
}

/** Asks as the desk, and as a tablet somewhere in the network. */
export function asking(built: FastifyInstance) {
  const from =
    (host: string, remoteAddress: string) =>
    (url: string, body?: object, headers: InjectOptions['headers'] = {}) =>
      built.inject({
        url,
        remoteAddress,
        headers: { host, ...(body && { origin: `http://${host}`, 'content-type': 'application/json' }), ...headers },
        ...(body && { method: 'POST', payload: JSON.stringify(body) }),
      })
  const [desk, tablet] = [from('localhost', '127.0.0.1'), from('tablet.test', '192.0.2.9')]
  const newCode = async (): Promise<string> => (await desk('/devices/code', {})).json().code
  /** Pairs a tablet; gives back what it was answered, and the header by which it is known from then on. */
  const pair = async (name: string) => {
    const answer = await tablet('/pair', { code: await newCode(), name })
    return { answer, ...answer.json(), paired: { cookie: String(answer.headers['set-cookie']).split(';')[0] } }
  }
  return { desk, tablet, newCode, pair }
}
