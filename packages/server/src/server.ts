import { fileURLToPath } from 'node:url'
import { type Extensions, extensionsOf } from '@evenhem/job/read'
import type { Plugin } from '@evenhem/plugin'
import { plugins as ours } from '@evenhem/plugins'
import fastify, { type FastifyInstance } from 'fastify'
import { guard, turnedAway } from './access.ts'
import { serveAddresses } from './addresses.ts'
import { failed, notFound } from './answers.ts'
import { readBodiesAsText } from './bodies.ts'
import { type Door, deskOf, serveDesk } from './desk.ts'
import { devicesIn } from './devices.ts'
import { type ListedJob, listed } from './job-list.ts'
import { jobsAt } from './jobs.ts'
import { type Network, ownAddress } from './network.ts'
import { pairing } from './pairing.ts'
import type { PhotoSettings } from './photos.ts'
import { reporter } from './report.ts'
import { serveJobs } from './routes.ts'
import { type Pace, streamsOf, usualPace, watchRevoked } from './streams.ts'
import { serveViewer } from './viewer.ts'

export interface ServerOptions {
  /** A job's folder, or a job file; or a folder of jobs' folders. */
  readonly job: string
  /** The built viewer. Left out: the one of this checkout. */
  readonly viewer?: string
  readonly plugins?: readonly Plugin[]
  /** How long a client may take to send its request, in milliseconds. */
  readonly patienceMs?: number
  /** How often streams look at the disk and say that they are still there. */
  readonly pace?: Pace
  /** Left out: this machine only, and nobody needs to pair. */
  readonly network?: Network
  readonly photos?: PhotoSettings
  /** What time it is, in milliseconds; left out: by this machine's clock. */
  readonly now?: () => number
  /** Errors that nobody foresaw are written here. Left out: to standard error. */
  readonly log?: NodeJS.WritableStream
}

/** The viewer that this checkout builds. */
export const builtViewer = fileURLToPath(new URL('../../../viewer/dist', import.meta.url))

// The name of a folder has up to 255 bytes, each three characters in an address.
const longestName = 3 * 255
// Browsers hold up to six each, of which a stream is one.
const mostConnections = 200

/** The server of a job or of many, not yet listening: `inject` tests it, `listen` opens it on this machine only. */
export function buildServer(options: ServerOptions): FastifyInstance {
  const { job, viewer = builtViewer, plugins = ours, pace = usualPace, network, photos, now = Date.now } = options
  const server = bareServer(options)
  const door: Door | undefined = network && { network, devices: devicesIn(network.devices, now), pairing: pairing(now) }
  server.decorate('desk', deskOf(server, door))
  guard(server, network, door?.devices)
  readBodiesAsText(server)
  server.setErrorHandler(failed)
  server.setNotFoundHandler(notFound)
  serveViewer(server, viewer)
  const extensions = addedBy(plugins)
  const streams = streamsOf(pace)
  server.addHook('preClose', async () => streams.endAll())
  if (door) watchRevoked(server, streams, door.devices, pace)
  serveDesk(server, streams, door)
  serveAddresses(server, () => ownAddress(server, network))
  serveJobs(server, jobsAt(job, extensions, streams, pace), { viewer, report: reporter(plugins), extensions, photos })
  return server
}

/** The jobs that a server of this path lists. Throws what the file system throws. */
export const listJobs = async (path: string, plugins: readonly Plugin[] = ours): Promise<readonly ListedJob[]> =>
  listed(await jobsAt(path, addedBy(plugins), streamsOf(usualPace), usualPace).all())

/** A server that answers nothing yet, with the limits of every request. */
function bareServer({ patienceMs = 10_000, log = process.stderr, network }: ServerOptions): FastifyInstance {
  const limits = { headersTimeout: patienceMs, connectionsCheckingInterval: patienceMs / 4, maxHeaderSize: 16 * 1024 }
  const server = fastify({
    logger: { level: 'error', stream: log },
    bodyLimit: 1024 * 1024,
    requestTimeout: patienceMs,
    connectionTimeout: 2 * patienceMs,
    keepAliveTimeout: 5_000,
    maxRequestsPerSocket: 1_000,
    routerOptions: { maxParamLength: longestName },
    ...(network?.https ? { https: { ...limits, ...network.https } } : { http: limits }),
    frameworkErrors: (error, request, reply) => {
      if (!turnedAway(request, reply, network)) failed(error, request, reply)
    },
  }) as FastifyInstance
  server.server.maxConnections = mostConnections
  return server
}

const added = new WeakMap<readonly Plugin[], Extensions>()
/** What plugins add to the format, the same for the same list: validators are kept by it. */
function addedBy(plugins: readonly Plugin[]): Extensions {
  const extensions = added.get(plugins) ?? extensionsOf(plugins)
  added.set(plugins, extensions)
  return extensions
}

/**
 * Opens the server, to this machine and nobody else or to the network that it was built for; returns its address on this machine. Port 0: any that
 * is free. Throws a TypeError for a network that it was not built for.
 */
export async function listen(
  server: FastifyInstance,
  port: number,
  { network = false }: { readonly network?: boolean } = {},
): Promise<string> {
  if (network && !server.desk.isOnNetwork)
    throw new TypeError('Unexpected network, expected a server that was built for it; give buildServer a network')
  const address = await server.listen({ host: network ? '0.0.0.0' : '127.0.0.1', port })
  return address.replace('//0.0.0.0:', '//127.0.0.1:')
}
