import { fileURLToPath } from 'node:url'
import { extensionsOf } from '@evenhem/job/read'
import type { Plugin } from '@evenhem/plugin'
import { plugins as ours } from '@evenhem/plugins'
import fastify, { type FastifyInstance, type FastifyReply, type FastifyRequest } from 'fastify'
import { failed, notFound, refuse } from './answers.ts'
import { refusal } from './guard.ts'
import { secure } from './headers.ts'
import { jobsAt } from './jobs.ts'
import { reporter } from './report.ts'
import { serveJobs } from './routes.ts'
import { type Pace, streamsOf, usualPace } from './streams.ts'
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
export function buildServer({
  job,
  viewer = builtViewer,
  plugins = ours,
  patienceMs = 10_000,
  pace = usualPace,
  log = process.stderr,
}: ServerOptions): FastifyInstance {
  const server = fastify({
    logger: { level: 'error', stream: log },
    bodyLimit: 1024 * 1024,
    requestTimeout: patienceMs,
    connectionTimeout: 2 * patienceMs,
    keepAliveTimeout: 5_000,
    maxRequestsPerSocket: 1_000,
    routerOptions: { maxParamLength: longestName },
    http: { headersTimeout: patienceMs, connectionsCheckingInterval: patienceMs / 4, maxHeaderSize: 16 * 1024 },
    frameworkErrors: (error, request, reply) => {
      if (!turnedAway(request, reply)) failed(error, request, reply)
    },
  })
  server.server.maxConnections = mostConnections
  guard(server)
  readBodiesAsText(server)
  server.setErrorHandler(failed)
  server.setNotFoundHandler(notFound)
  serveViewer(server, viewer)
  const extensions = extensionsOf(plugins)
  const streams = streamsOf(pace)
  server.addHook('preClose', async () => streams.endAll())
  serveJobs(server, jobsAt(job, extensions, streams, pace), viewer, reporter(plugins), extensions)
  return server
}

/** Opens the server to this machine and nobody else; returns its address. Port 0: any that is free. */
export const listen = (server: FastifyInstance, port: number): Promise<string> => server.listen({ host: '127.0.0.1', port })

function guard(server: FastifyInstance): void {
  server.addHook('onRequest', async (request, reply) => {
    secure(reply)
    return turnedAway(request, reply)
  })
}

function turnedAway(request: FastifyRequest, reply: FastifyReply): FastifyReply | undefined {
  const refused = refusal(request, portOf(request.server))
  return refused && refuse(reply, refused.status, refused.code, refused.message)
}

const portOf = ({ server }: FastifyInstance): number => {
  const address = server.address()
  return address !== null && typeof address === 'object' ? address.port : 80
}

/** A body stays the text that came, for `job` to read: a framework's reading drops unknown members and turns one type into another. */
function readBodiesAsText(server: FastifyInstance): void {
  server.removeAllContentTypeParsers()
  server.addContentTypeParser('application/json', { parseAs: 'string' }, (_request, body, done) => done(null, body))
}
