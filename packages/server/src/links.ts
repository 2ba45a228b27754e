import { join } from 'node:path'
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { answer, refuse } from './answers.ts'
import { bodyOf, idOf } from './bodies.ts'
import { type Devices, devicesIn, nameOf } from './devices.ts'
import { secure } from './headers.ts'
import type { Served } from './job.ts'
import type { ServedJob } from './jobs.ts'
import type { SendCopy } from './photos.ts'
import { sendReport } from './report-page.ts'
import type { Place, Serving } from './routes.ts'
import { logOwner } from './site.ts'

type Text = Readonly<Record<string, unknown>>

/**
 * Links by which a customer reads the report of one job and nothing else, until they are taken back. At the desk `GET /links` lists them, `POST /links`
 * `{ name }` makes one for somebody, `POST /links/revoke` `{ id }` takes one back. Of a link only the SHA-256 of its secret is kept, in
 * `.evenhem/links.json` of the job's folder.
 */
export function serveLinks(server: FastifyInstance, { prefix, jobOf }: Place): void {
  server.get(`${prefix}/links`, async (request) => ({ links: await shown(await linksOf(await jobOf(request))) }))
  server.post(`${prefix}/links`, async (request, reply) => {
    const name = named(bodyOf(request, '{"name":"…"}'))
    const [address] = server.desk.addresses()
    if (address === undefined) return refuse(reply, 409, 'no-network', noNetwork)
    const job = await jobOf(request)
    const { device, token } = await (await linksOf(job)).add(name)
    return { id: device.id, name: device.name, since: device.since, link: `${address}${job.at}shared/${token}` }
  })
  server.post(`${prefix}/links/revoke`, async (request, reply) => {
    const id = idOf(request, '/links')
    const links = await linksOf(await jobOf(request))
    if (!(await links.remove(id))) return refuse(reply, 404, 'no-link', noLink)
    return { links: await shown(links) }
  })
}

/**
 * What such a link leads to: `GET /shared/<token>` is the report, `GET /shared/<token>/photos/<hash>` a photo of it. Whoever has no link that is good is
 * not told whether there is such a job.
 */
export function serveShared(server: FastifyInstance, { prefix, jobOf }: Place, serving: Serving, sendCopy: SendCopy): void {
  const sharedBy = async (request: FastifyRequest): Promise<Served> => {
    const job = await jobOf(request)
    if (await (await linksOf(job)).by(tokenIn(request))) return job.source.read()
    throw answer(404, 'no-link', noLink)
  }
  server.get(`${prefix}/shared/:token`, { errorHandler: tellCustomer }, async (request, reply) => {
    const served = await sharedBy(request)
    if (!served.read.job) return sayTo(reply, 503, notNow)
    reply.header('cache-control', 'no-store')
    return sendReport(reply, served, request.query as Text, serving, (hash) => `${tokenIn(request)}/photos/${hash}`)
  })
  server.get(`${prefix}/shared/:token/photos/:hash`, { errorHandler: tellCustomer }, async (request, reply) => {
    await sharedBy(request)
    return sendCopy(request, reply, 1600)
  })
}

const tokenIn = ({ params }: FastifyRequest): string => String((params as Text).token ?? '')

/** The links of a job. Throws an answer where there is no folder to keep them in. */
async function linksOf({ source }: ServedJob): Promise<Devices> {
  const { file } = await source.read()
  const folder = logOwner(file)
  if (folder === undefined) throw answer(409, 'no-folder', noFolder)
  return devicesIn(join(folder, '.evenhem', 'links.json'), Date.now, { code: 'links-broken', message: broken })
}

const shown = async (links: Devices) => (await links.all()).map(({ id, name, since }) => ({ id, name, since }))
function named({ name }: Text): string {
  const written = typeof name === 'string' ? nameOf(name) : undefined
  if (written === undefined)
    throw answer(400, 'name', 'Unexpected name, expected 1 to 40 characters; write for whom the link is.')
  return written
}

/** What went wrong, for a browser that knows nothing of Evenhem; what only the desk can mend stands in its terminal. */
function tellCustomer(error: FastifyError, request: FastifyRequest, reply: FastifyReply): void {
  const isLost = (error.statusCode ?? 500) < 500
  if (!isLost) request.log.error(error)
  sayTo(reply, isLost ? 404 : 503, isLost ? gone : notNow)
}
/** Says it in both languages: nobody knows which one the customer reads. */
const sayTo = (reply: FastifyReply, status: number, says: readonly string[]): FastifyReply =>
  secure(reply)
    .code(status)
    .header('cache-control', 'no-store')
    .type('text/plain; charset=utf-8')
    .send(`${says.join('\n\n')}\n`)

const gone = [
  'Unexpected link, expected one that is still good; ask whoever sent it for a new one.',
  'Enlace inesperado, se esperaba uno que todavía valga; pida otro a quien se lo mandó.',
]
const notNow = [
  'Unexpected fault where the report is kept, expected the report; tell whoever sent the link.',
  'Falla inesperada donde se guarda el informe, se esperaba el informe; avise a quien le mandó el enlace.',
]
const noFolder =
  'Unexpected job file by its own name, expected a folder with job.json, which has room for links; serve that folder.'
const noNetwork =
  'Unexpected link, expected a server that others reach; start it as `evenhem serve --network`, or send the report as a file.'
const noLink = 'Unexpected link, expected one of those that are listed; ask for /links.'
const broken =
  'Unexpected content of .evenhem/links.json in the folder of the job, expected the list of links; no link is good until it is put right or moved away.'
