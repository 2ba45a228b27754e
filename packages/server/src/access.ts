import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { refuse } from './answers.ts'
import type { Devices } from './devices.ts'
import { isFromDesk, type Reach, refusal } from './guard.ts'
import { secure } from './headers.ts'
import { type Network, namesOf, portOf } from './network.ts'

/** Who asks: whoever sits at this machine, a tablet that was paired, or anybody else. */
export interface Visitor {
  readonly is: 'desk' | 'device' | 'stranger'
  /** The device that was paired, and what it is called. */
  readonly paired?: { readonly id: string; readonly name: string }
}

declare module 'fastify' {
  interface FastifyRequest {
    visitor: Visitor
  }
}

/** What a tablet gets before it is paired: the page on which it pairs. Everything that is not named here is for paired ones. */
const forAnybody = new Set([
  '/',
  '/jobs/:name/',
  '/assets/*',
  '/sw.js',
  '/manifest.webmanifest',
  '/pair',
  '/shared/:token',
  '/jobs/:name/shared/:token',
  '/shared/:token/photos/:hash',
  '/jobs/:name/shared/:token/photos/:hash',
])
const forDesk = new Set([
  ...['/devices', '/devices/code', '/devices/revoke', '/links', '/links/revoke'],
  ...['/jobs/:name/links', '/jobs/:name/links/revoke'],
])

const stranger: Visitor = { is: 'stranger' }

/** Stands before every route: names and origins first, then who asks. */
export function guard(server: FastifyInstance, network?: Network, devices?: Devices): void {
  // Every request has its own before a route sees it; the framework wants no object that all would share.
  server.decorateRequest('visitor', null as never)
  server.addHook('onRequest', async (request, reply) => {
    secure(reply)
    return turnedAway(request, reply, network) ?? admit(request, reply, network, devices)
  })
}

/** What is answered to a request under another name or from another page; undefined when there is nothing against it. */
export function turnedAway(request: FastifyRequest, reply: FastifyReply, network?: Network): FastifyReply | undefined {
  const refused = refusal(request, reachOf(request.server, network))
  return refused && refuse(reply, refused.status, refused.code, refused.message)
}

const reachOf = (server: FastifyInstance, network?: Network): Reach => ({
  port: portOf(server, network),
  scheme: network?.https ? 'https' : 'http',
  names: network ? namesOf(network) : [],
})

async function admit(request: FastifyRequest, reply: FastifyReply, network?: Network, devices?: Devices) {
  const { url = '' } = request.routeOptions
  const isOpen = forAnybody.has(url)
  const visitor = isFromDesk(request, reachOf(request.server, network)) ? { is: 'desk' as const } : deviceOf(request, devices)
  request.visitor = await (isOpen ? Promise.resolve(visitor).catch(() => stranger) : visitor)
  if (request.visitor.is === 'desk') return
  if (forDesk.has(url)) return refuse(reply, 403, 'desk-only', deskOnly)
  if (request.visitor.is === 'stranger' && !isOpen) return refuse(reply, 401, 'unpaired', unpaired)
}

const deskOnly =
  'Unexpected request from a tablet, expected one from the computer that runs `evenhem serve`; do it there, at the first address that it printed.'
const unpaired =
  'Unexpected tablet that is not paired, expected one that is; ask for a code at the computer that runs `evenhem serve`, and enter it here.'

async function deviceOf(request: FastifyRequest, devices?: Devices): Promise<Visitor> {
  const token = tokenIn(request.headers.cookie)
  const device = token === undefined ? undefined : await devices?.by(token)
  if (!device) return stranger
  devices?.saw(device).catch((error) => request.log.error(error))
  return { is: 'device', paired: { id: device.id, name: device.name } }
}

const cookie = 'evenhem-device'
const monthsInSeconds = 15_552_000
const tokenIn = (cookies = ''): string | undefined => new RegExp(`(?:^|; ?)${cookie}=([^;]*)`).exec(cookies)?.[1]
/** The cookie that a paired device brings from then on. */
export const cookieOf = (token: string, { https }: Network): string =>
  `${cookie}=${token}; HttpOnly; SameSite=Strict; Path=/; Max-Age=${monthsInSeconds}${https ? '; Secure' : ''}`
