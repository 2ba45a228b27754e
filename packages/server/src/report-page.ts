import { dirname } from 'node:path'
import { foundWith } from '@evenhem/site-log'
import type { FastifyInstance, FastifyReply } from 'fastify'
import { jobHasErrors, refuse } from './answers.ts'
import type { Served } from './job.ts'
import { type ReportPhotos, wishesIn } from './report.ts'
import { linkedPhotos, reportCopies } from './report-photos.ts'
import type { Place, Serving } from './routes.ts'
import { logOwner, readSite } from './site.ts'

type Query = Readonly<Record<string, unknown>>

/** The customer's report: `/report?paper=a4&units=mm&lang=es`. Its photos come by links from beside it. */
export function serveReport(server: FastifyInstance, { prefix, jobOf }: Place, serving: Serving): void {
  server.get(`${prefix}/report`, async (request, reply) => {
    const served = await (await jobOf(request)).source.read()
    return sendReport(reply, served, request.query as Query, serving, (hash) => `photos/${hash}/1600`)
  })
}

/**
 * Answers with the report of a job, under a policy of its own, which lets in its one style sheet, photos of this server and nothing else.
 * `to`: where the page finds the copy of a photo.
 */
export async function sendReport(
  reply: FastifyReply,
  { file, read }: Served,
  query: Query,
  { report, extensions }: Pick<Serving, 'report' | 'extensions'>,
  to: (hash: string) => string,
): Promise<FastifyReply> {
  const wishes = wishesIn(query)
  if (typeof wishes === 'string') return refuse(reply, 400, 'wish', wishes)
  if (!read.job) return jobHasErrors(reply)
  const { site } = await readSite(file, read.job, extensions)
  const { html, policy } = report(read.job, foundWith(read.readings, site), wishes, await servedPhotos(file, to))
  return reply.header('content-security-policy', `${policy}; frame-ancestors 'none'`).type('text/html; charset=utf-8').send(html)
}

async function servedPhotos(file: string, to: (hash: string) => string): Promise<ReportPhotos> {
  if (logOwner(file) === undefined) return {}
  const copies = await reportCopies(dirname(file))
  return copies.size === 0 ? {} : { photos: linkedPhotos(copies, to), pictures: "'self'" }
}
