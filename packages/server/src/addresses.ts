import type { FastifyInstance } from 'fastify'
import { refuse } from './answers.ts'
import { qrSvg } from './qr.ts'

const longest = 500

/** A page of this server as a square that a camera reads: `/qr?of=/jobs/heron-point/`. Of nothing else is one made. */
export function serveAddresses(server: FastifyInstance, own: () => string): void {
  server.get('/qr', async (request, reply) => {
    const [base = own()] = server.desk.addresses()
    const address = addressOf((request.query as Readonly<Record<string, unknown>>).of, base)
    if (address === undefined) return refuse(reply, 400, 'address', notHere)
    return reply.type('image/svg+xml').send(await qrSvg(address))
  })
}
const notHere = `Unexpected address, expected a path of this server of up to ${longest} characters; write it as ?of=/jobs/heron-point/.`

/** A path made whole; undefined when it is none, or leads elsewhere, as `//elsewhere.example` and `/\\elsewhere.example` do. */
export function addressOf(path: unknown, base: string): string | undefined {
  if (typeof path !== 'string' || !path.startsWith('/') || path.length > longest || !URL.canParse(path, base)) return undefined
  const { href, origin } = new URL(path, base)
  return origin === new URL(base).origin && href.length <= 3 * longest ? href : undefined
}
