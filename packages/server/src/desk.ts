import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { cookieOf } from './access.ts'
import { answer, refuse } from './answers.ts'
import { bodyOf, idOf } from './bodies.ts'
import { type Device, type Devices, nameOf } from './devices.ts'
import { addressesOf, type Network, ownAddress } from './network.ts'
import type { Code, Pairing, Tried } from './pairing.ts'
import { qrSvg } from './qr.ts'
import type { Streams } from './streams.ts'

/** A code and the link that holds it. */
export interface Invitation extends Code {
  readonly link: string
}
/** What whoever sits at the server may do about tablets. */
export interface Desk {
  readonly isOnNetwork: boolean
  /** Where tablets find this server, the likeliest first; none when it is on no network. */
  readonly addresses: () => readonly string[]
  /** A new code; the one before counts no more. Throws an answer when there is no network. */
  readonly invite: () => Invitation
}
declare module 'fastify' {
  interface FastifyInstance {
    desk: Desk
  }
}
/** What pairing needs, where a server is on a network. */
export interface Door {
  readonly network: Network
  readonly devices: Devices
  readonly pairing: Pairing
}

export const deskOf = (server: FastifyInstance, door?: Door): Desk => ({
  isOnNetwork: door !== undefined,
  addresses: () => (door ? addressesOf(server, door.network) : []),
  invite: () => {
    const { network, pairing } = onNetwork(door)
    const code = pairing.newCode()
    const [address = ownAddress(server, network)] = addressesOf(server, network)
    return { ...code, link: `${address}/#pair=${code.code}` }
  },
})

function onNetwork(door?: Door): Door {
  if (door) return door
  throw answer(
    409,
    'no-network',
    'Unexpected request about tablets, expected a server that they reach; start it as `evenhem serve --network`.',
  )
}

/** Pairing: what the desk asks for, and what a tablet sends. */
export function serveDesk(server: FastifyInstance, streams: Streams, door?: Door): void {
  const { desk } = server
  const shown = async () => ((await door?.devices.all()) ?? []).map(shownDevice)
  server.get('/devices', async () => ({ network: desk.isOnNetwork, devices: await shown(), addresses: desk.addresses() }))
  server.post('/devices/code', async () => {
    const { link, ...code } = desk.invite()
    return { ...code, link, qr: await qrSvg(link) }
  })
  server.post('/devices/revoke', async (request) => {
    const id = idOf(request, '/devices')
    if (!(await door?.devices.remove(id)))
      throw answer(404, 'no-device', 'Unexpected device, expected one of those that are paired; ask for /devices.')
    streams.endOf(id)
    return { devices: await shown() }
  })
  server.post('/pair', (request, reply) => pair(request, reply, onNetwork(door)))
}

const shownDevice = ({ id, name, since, seen }: Device) => ({ id, name, since, ...(seen && { seen }) })

async function pair(request: FastifyRequest, reply: FastifyReply, { network, devices, pairing }: Door): Promise<FastifyReply> {
  const { code, name: written } = bodyOf(request, '{"code":"…","name":"…"}')
  const name = typeof written === 'string' ? nameOf(written) : undefined
  if (typeof code !== 'string') return refuse(reply, 400, 'body', 'Unexpected code, expected text; send it as it is shown.')
  if (name === undefined) return refuse(reply, 400, 'name', notAName)
  // A file that is broken says so before a code is used up.
  await devices.all()
  const tried = pairing.use(code)
  if (tried !== 'right') return refused(reply, tried)
  const { device, token } = await devices.add(name)
  return reply.header('set-cookie', cookieOf(token, network)).send({ id: device.id, name: device.name })
}

const notAName = 'Unexpected name, expected 1 to 40 characters that can be seen; write what people call this tablet.'
const askForAnother = 'ask for a new one at the computer that runs `evenhem serve`.'

function refused(reply: FastifyReply, tried: Exclude<Tried, 'right'>): FastifyReply {
  if (tried === 'none') return refuse(reply, 410, 'no-code', `Unexpected code, expected one that is still good; ${askForAnother}`)
  if (tried === 'void')
    return refuse(
      reply,
      429,
      'code-void',
      `Unexpected code for the fifth time, which ends the one that was good; ${askForAnother}`,
    )
  const { left } = tried
  const message = `Unexpected code, expected the one that the computer shows; ${left} more ${left === 1 ? 'try is' : 'tries are'} left.`
  return reply.code(403).send({ code: 'wrong-code', message, left })
}
