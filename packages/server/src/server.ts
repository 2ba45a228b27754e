import { fileURLToPath } from 'node:url'
import { extensionsOf } from '@evenhem/job/read'
import type { Plugin } from '@evenhem/plugin'
import { plugins as ours } from '@evenhem/plugins'
import fastify, { type FastifyInstance, type FastifyReply, type FastifyRequest } from 'fastify'
import { failed, notFound, refuse } from './answers.ts'
import { refusal } from './guard.ts'
import { secure } from './headers.ts'
import { jobSource } from './job.ts'
import { serveLog } from './log.ts'
import { reporter } from './report.ts'
import { serveJob, serveReport, serveViewer } from './routes.ts'

export interface ServerOptions {
  /** A job's folder, or a job file. */
  readonly job: string
  /** The built viewer. Left out: the one of this checkout. */
  readonly viewer?: string
  readonly plugins?: readonly Plugin[]
  /** How long a client may take to send its request, in milliseconds. */
  readonly patienceMs?: number
  /** Errors that nobody foresaw are written here. Left out: to standard error. */
  readonly log?: NodeJS.WritableStream
}

/** The viewer that this checkout builds. */
export const builtViewer = fileURLToPath(new URL('../../../viewer/dist', import.meta.url))

/** The server of one job, not yet listening: `inject` tests it, `listen` opens it on this machine only. */
export function buildServer({
  job,
  viewer = builtViewer,
  plugins = ours,
  patienceMs = 10_000,
  log = process.stderr,
}: ServerOptions): FastifyInstance {
  const server = fastify({
    logger: { level: 'error', stream: log },
    bodyLimit: 1024 * 1024,
    requestTimeout: patienceMs,
    connectionTimeout: 2 * patienceMs,
    keepAliveTimeout: 5_000,
    maxRequestsPerSocket: 1_000,
    routerOptions: { maxParamLength: 100 },
    http: { headersTimeout: patienceMs, connectionsCheckingInterval: patienceMs / 4, maxHeaderSize: 16 * 1024 },
    frameworkErrors: (error, request, reply) => {
      if (!turnedAway(request, reply)) failed(error, request, reply)
    },
  })
  server.server.maxConnections = 100
  guard(server)
  readBodiesAsText(server)
  server.setErrorHandler(failed)
  server.setNotFoundHandler(notFound)
  serveViewer(server, viewer)
  const extensions = extensionsOf(plugins)
  const source = jobSource(job, extensions)
  serveJob(server, source)
  serveLog(server, source, extensions)
  serveReport(server, source, reporter(plugins), extensions)
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
