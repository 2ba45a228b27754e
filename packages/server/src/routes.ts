import type { Extensions } from '@evenhem/job/read'
import { foundWith } from '@evenhem/site-log'
import { fastifyStatic } from '@fastify/static'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { refuse } from './answers.ts'
import type { JobSource } from './job.ts'
import { type Reporter, wishesIn } from './report.ts'
import { readSite } from './site.ts'

/** The sheet: its page, and what the page needs. */
export function serveViewer(server: FastifyInstance, viewer: string): void {
  server.register(fastifyStatic, {
    root: `${viewer}/assets`,
    prefix: '/assets/',
    index: false,
    dotfiles: 'ignore',
    cacheControl: false,
  })
  server.get('/', (_request, reply) => reply.sendFile('index.html', viewer))
}

/** A text with a tag of its content; nothing but its head when the client has it already. */
function tagged(request: FastifyRequest, reply: FastifyReply, etag: string, type: string, text: () => string): FastifyReply {
  reply.header('etag', etag)
  return request.headers['if-none-match'] === etag ? reply.code(304).send() : reply.type(type).send(text())
}

/** The job as it is read: `{ ordered?, readings, diagnostics }`, without `ordered` when it has errors; diagnostics by language. */
export function serveJob(server: FastifyInstance, source: JobSource): void {
  server.get('/job', async (request, reply) => {
    const { body, etag } = await source.read()
    return tagged(request, reply, etag, 'application/json', () => body)
  })
}

/** The customer's report: `/report?paper=a4&units=mm&lang=es`. It stands under its own policy, which lets in its one style sheet and nothing else. */
export function serveReport(server: FastifyInstance, source: JobSource, report: Reporter, extensions: Extensions): void {
  server.get('/report', async (request, reply) => {
    const wishes = wishesIn(request.query as Readonly<Record<string, unknown>>)
    if (typeof wishes === 'string') return refuse(reply, 400, 'wish', wishes)
    const { file, read } = await source.read()
    const { job } = read
    if (!job)
      return refuse(
        reply,
        409,
        'job-has-errors',
        'Unexpected errors in the job, expected none; the sheet names them, put them right first.',
      )
    const { site } = await readSite(file, job, extensions)
    const { html, policy } = report(job, foundWith(read.readings, site), wishes)
    return reply
      .header('content-security-policy', `${policy}; frame-ancestors 'none'`)
      .type('text/html; charset=utf-8')
      .send(html)
  })
}
