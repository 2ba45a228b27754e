import type { FastifyRequest } from 'fastify'

const names = ['localhost', '127.0.0.1', '[::1]']
const reading = new Set(['GET', 'HEAD', 'OPTIONS'])

/** Why a request is refused, in words for whoever sent it; undefined when it is welcome. */
export interface Refusal {
  readonly status: 403 | 421
  readonly code: string
  readonly message: string
}

/**
 * A page of another site must reach nothing here. Its address shows in `Host` when it made its own name point to this machine,
 * and in `Origin` when it sends requests across sites. A request that changes something must say where it comes from.
 */
export function refusal({ headers, method }: Pick<FastifyRequest, 'headers' | 'method'>, port: number): Refusal | undefined {
  const hosts = names.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]))
  const { host, origin } = headers
  if (!host || !hosts.includes(host.toLowerCase()))
    return {
      status: 421,
      code: 'host',
      message: `Unexpected host ${shown(host)}, expected ${hosts[0]}; open the address that \`evenhem serve\` printed.`,
    }
  if (origin === undefined && reading.has(method)) return undefined
  if (origin === undefined || !hosts.some((name) => origin.toLowerCase() === `http://${name}`))
    return {
      status: 403,
      code: 'origin',
      message: `Unexpected origin ${shown(origin)}, expected http://${hosts[0]}; only Evenhem's own page may ask this.`,
    }
  return undefined
}

const shown = (text: string | undefined) => (text === undefined ? 'none' : `"${text.slice(0, 80)}"`)
