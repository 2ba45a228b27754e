import type { Extensions } from '@evenhem/job/read'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { answer, refuse, tagged } from './answers.ts'
import { listed } from './job-list.ts'
import type { Jobs, ServedJob } from './jobs.ts'
import { serveLinks, serveShared } from './links.ts'
import { guestIn } from './live.ts'
import { serveLog } from './log.ts'
import { type PhotoSettings, servePhotos } from './photos.ts'
import type { Reporter } from './report.ts'
import { serveReport } from './report-page.ts'
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
export function serveJobs(server: FastifyInstance, jobs: Jobs, serving: Serving): void {
  const jobOf = async ({ params }: FastifyRequest): Promise<ServedJob> => {
    const name = String((params as Text).name ?? '')
    const job = await jobs.named(name)
    if (job) return job
    throw answer(404, 'no-job', `Unexpected job “${name.slice(0, 80)}”, expected one of those listed; start at /.`)
  }
  const place: Place = { prefix: jobs.areMany ? '/jobs/:name' : '', jobOf }
  server.get('/jobs', async () => ({ jobs: await listed(await jobs.all()) }))
  if (jobs.areMany) serveNames(server, place, serving.viewer)
  serveJob(server, place)
  serveLog(server, place, serving.extensions)
  serveLive(server, place)
  serveReport(server, place, serving)
  const sendCopy = servePhotos(server, place, serving.photos)
  serveLinks(server, place)
  serveShared(server, place, serving, sendCopy)
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
