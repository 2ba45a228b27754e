import type { FastifyRequest } from 'fastify'

/** What a browser on this machine calls it. */
export const loopback = ['localhost', '127.0.0.1', '[::1]'] as const
const reading = new Set(['GET', 'HEAD', 'OPTIONS'])

/** Why a request is refused, in words for whoever sent it; undefined when it is welcome. */
export interface Refusal {
  readonly status: 403 | 421
  readonly code: string
  readonly message: string
}
/** How a server is asked for: where it listens, and what it is called beyond its machine. */
export interface Reach {
  readonly port: number
  readonly scheme: 'http' | 'https'
  readonly names: readonly string[]
}
type Asking = Pick<FastifyRequest, 'headers' | 'method'>

const usualPorts = { http: 80, https: 443 }
/** Names as they stand in `Host`: with the port, which browsers leave out where it is the usual one. */
const hostsOf = (names: readonly string[], { port, scheme }: Omit<Reach, 'names'>): readonly string[] =>
  names.flatMap((name) => (port === usualPorts[scheme] ? [name, `${name}:${port}`] : [`${name}:${port}`]))

/**
 * A page of another site must reach nothing here. Its address shows in `Host` when it made its own name point to this machine,
 * and in `Origin` when it sends requests across sites. A request that changes something must say where it comes from.
 */
export function refusal({ headers, method }: Asking, reach: Reach): Refusal | undefined {
  const hosts = hostsOf([...loopback, ...reach.names], reach)
  const { host, origin } = headers
  if (!host || !hosts.includes(host.toLowerCase()))
    return {
      status: 421,
      code: 'host',
      message: `Unexpected host ${shown(host)}, expected ${hosts[0]}; open the address that \`evenhem serve\` printed.`,
    }
  if (origin === undefined && reading.has(method)) return undefined
  if (origin === undefined || !hosts.some((name) => origin.toLowerCase() === `${reach.scheme}://${name}`))
    return {
      status: 403,
      code: 'origin',
      message: `Unexpected origin ${shown(origin)}, expected ${reach.scheme}://${hosts[0]}; only Evenhem's own page may ask this.`,
    }
  return undefined
}

/** Whether a request comes from a browser on this machine that asked for this machine: from whoever sits at it. */
export function isFromDesk({ headers, ip }: Pick<FastifyRequest, 'headers' | 'ip'>, reach: Omit<Reach, 'names'>): boolean {
  return /^(?:127\.|::1$|::ffff:127\.)/.test(ip) && hostsOf(loopback, reach).includes(headers.host?.toLowerCase() ?? '')
}

const shown = (text: string | undefined) => (text === undefined ? 'none' : `"${text.slice(0, 80)}"`)
