import type { Extensions } from '@evenhem/job/read'
import { foundWith } from '@evenhem/site-log'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { answer, jobHasErrors, refuse, tagged } from './answers.ts'
import { listed } from './job-list.ts'
import type { Jobs, ServedJob } from './jobs.ts'
import { serveLinks } from './links.ts'
import { guestIn } from './live.ts'
import { serveLog } from './log.ts'
import { type PhotoSettings, servePhotos } from './photos.ts'
import { type Reporter, type ReportPhotos, wishesIn } from './report.ts'
import { linkedPhotos, reportCopies } from './report-photos.ts'
import { logOwner, readSite } from './site.ts'
import { sendPage } from './viewer.ts'

/** Where the routes of jobs stand, and which job a request is about; it throws the answer when there is none. */
export interface Place {
  readonly prefix: '' | '/jobs/:name'
  readonly jobOf: (request: FastifyRequest) => Promise<ServedJob>
}

type Text = Readonly<Record<string, unknown>>
/** What the routes of jobs work with. */
export interface Serving {
  /** The folder of the built viewer. */
  readonly viewer: string
  readonly report: Reporter
  readonly extensions: Extensions
  readonly photos?: PhotoSettings
}

/** All jobs, and the routes of each: at the root where there is one, else under `/jobs/` and the name of its folder. */
export function serveJobs(server: FastifyInstance, jobs: Jobs, { viewer, report, extensions, photos }: Serving): void {
  const jobOf = async ({ params }: FastifyRequest): Promise<ServedJob> => {
    const name = String((params as Text).name ?? '')
    const job = await jobs.named(name)
    if (job) return job
    throw answer(404, 'no-job', `Unexpected job “${name.slice(0, 80)}”, expected one of those listed; start at /.`)
  }
  const place: Place = { prefix: jobs.areMany ? '/jobs/:name' : '', jobOf }
  server.get('/jobs', async () => ({ jobs: await listed(await jobs.all()) }))
  if (jobs.areMany) serveNames(server, place, viewer)
  serveJob(server, place)
  serveLog(server, place, extensions)
  serveLive(server, place)
  serveReport(server, place, report, extensions)
  servePhotos(server, place, photos)
  serveLinks(server, place, { viewer, report, extensions })
}

/** The page of each of many jobs. */
function serveNames(server: FastifyInstance, { prefix, jobOf }: Place, viewer: string): void {
  server.get('/job', () => {
    throw answer(404, 'many-jobs', 'Unexpected request for one job, expected its name: many are served here; ask for /jobs.')
  })
  server.get(`${prefix}/`, async (request, reply) => {
    // Who is not paired is told nothing of the jobs, not even what they are called.
    if (request.visitor.is !== 'stranger') await jobOf(request)
    return sendPage(reply, viewer)
  })
  server.get(prefix, async (request, reply) => reply.redirect((await jobOf(request)).at))
}

/** The job as it is read: `{ hash, ordered?, readings, diagnostics }`, without `ordered` when it has errors; diagnostics by language. */
function serveJob(server: FastifyInstance, { prefix, jobOf }: Place): void {
  server.get(`${prefix}/job`, async (request, reply) => {
    const { body, etag } = await (await jobOf(request)).source.read()
    return tagged(request, reply, etag, 'application/json', () => body)
  })
}

/** What happens at the job, as it happens: `/live?by=tablet-1&at=/rooms/den/windows/w1`. */
function serveLive(server: FastifyInstance, { prefix, jobOf }: Place): void {
  server.get(`${prefix}/live`, { exposeHeadRoute: false }, async (request, reply) => {
    const here = guestIn(request.query as Text)
    if (typeof here === 'string') return refuse(reply, 400, 'guest', here)
    const { live } = await jobOf(request)
    const { paired } = request.visitor
    const guest = paired ? { ...here, name: paired.name, paired: paired.id } : here
    return (await live.join(reply, guest)) === 'full' ? refuse(reply, 503, 'too-many-streams', tooMany) : reply
  })
}
const tooMany =
  'Unexpected number of open pages, expected at most 64; close pages that nobody needs. What is entered here is kept all the same.'

/** Photos through this server, by links from beside the report. */
async function servedPhotos(file: string): Promise<ReportPhotos> {
  const folder = logOwner(file)
  const copies = folder === undefined ? undefined : await reportCopies(folder)
  if (!copies || copies.size === 0) return {}
  return { photos: linkedPhotos(copies, (hash) => `photos/${hash}/1600`), pictures: "'self'" }
}

/** The customer's report: `/report?paper=a4&units=mm&lang=es`. It stands under its own policy, which lets in its one style sheet and nothing else. */
function serveReport(server: FastifyInstance, { prefix, jobOf }: Place, report: Reporter, extensions: Extensions): void {
  server.get(`${prefix}/report`, async (request, reply) => {
    const wishes = wishesIn(request.query as Text)
    if (typeof wishes === 'string') return refuse(reply, 400, 'wish', wishes)
    const { file, read } = await (await jobOf(request)).source.read()
    if (!read.job) return jobHasErrors(reply)
    const { site } = await readSite(file, read.job, extensions)
    const { html, policy } = report(read.job, foundWith(read.readings, site), wishes, await servedPhotos(file))
    return reply
      .header('content-security-policy', `${policy}; frame-ancestors 'none'`)
      .type('text/html; charset=utf-8')
      .send(html)
  })
}
