import { hostname, networkInterfaces } from 'node:os'
import type { FastifyInstance } from 'fastify'
import { loopback } from './guard.ts'

/** How a server is reached beyond its machine. */
export interface Network {
  /** What this machine is called there, beside its own name and its addresses. */
  readonly names: readonly string[]
  /** The file of the paired devices. */
  readonly devices: string
  /** Left out: plain http, which others in the network can read. */
  readonly https?: Https
}
export interface Https {
  readonly cert: string | Uint8Array
  readonly key: string | Uint8Array
}

// Of machines inside this one, and of tunnels: what is beside it in the house does not reach these.
const inner = /^(?:docker|br-|veth|virbr|vmnet|vbox|tun|tap|utun|zt|wg)/
const byReach = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number =>
  Number(inner.test(a)) - Number(inner.test(b))

/** The addresses of this machine that are not its own loopback, the likeliest first. */
const ownAddresses = (family: 'IPv4' | 'IPv6'): readonly string[] =>
  Object.entries(networkInterfaces())
    .sort(byReach)
    .flatMap(([, all]) => all?.filter((each) => !each.internal && each.family === family).map(({ address }) => address) ?? [])

/** Every name under which a request may ask for this machine. They change when it moves to another network. */
export function namesOf({ names }: Network): readonly string[] {
  const own = hostname()
  const addresses = [...ownAddresses('IPv4'), ...ownAddresses('IPv6').map((address) => `[${address}]`)]
  return [...names, ...(own === '' ? [] : [own, `${own}.local`]), ...addresses].map((name) => name.toLowerCase())
}

/** Where tablets find a server: under its names where it was given any, else by its addresses. */
export const addressesOf = (server: FastifyInstance, network: Network): readonly string[] =>
  [...network.names, ...ownAddresses('IPv4')].map((name) => addressAt(server, name, network))

/** Where a browser on this machine finds it. */
export const ownAddress = (server: FastifyInstance, network?: Network): string => addressAt(server, loopback[1], network)

function addressAt(server: FastifyInstance, name: string, network?: Network): string {
  const port = portOf(server, network)
  const scheme = network?.https ? 'https' : 'http'
  return `${scheme}://${name}${port === usualPort(network) ? '' : `:${port}`}`
}

const usualPort = (network?: Network): number => (network?.https ? 443 : 80)
/** The port that a server listens on; before it does, that of its scheme. */
export function portOf({ server }: FastifyInstance, network?: Network): number {
  const address = server.address()
  return address !== null && typeof address === 'object' ? address.port : usualPort(network)
}
