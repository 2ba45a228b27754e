import { dirname, join } from 'node:path'
import { foundWith } from '@evenhem/site-log'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { answer, jobHasErrors, refuse } from './answers.ts'
import { bodyOf } from './bodies.ts'
import { type Devices, devicesIn, nameOf } from './devices.ts'
import { wishesIn } from './report.ts'
import { heldPhotos, reportCopies } from './report-photos.ts'
import type { Place, Serving } from './routes.ts'
import { logOwner, readSite } from './site.ts'

type Text = Readonly<Record<string, unknown>>

/**
 * Links by which a customer reads the report of one job and nothing else, until they are taken back. At the desk `GET /links` lists them, `POST /links`
 * `{ name }` makes one for somebody, `POST /links/revoke` `{ id }` takes one back; `GET /shared/<token>` is the report, with its photos in it. Of a link
 * only the SHA-256 of its secret is kept, in `.evenhem/links.json` of the job's folder.
 */
export function serveLinks(server: FastifyInstance, { prefix, jobOf }: Place, { report, extensions }: Serving): void {
  const linksOf = async (request: FastifyRequest): Promise<Devices> => {
    const { file } = await (await jobOf(request)).source.read()
    const folder = logOwner(file)
    if (folder === undefined) throw answer(409, 'no-folder', noFolder)
    return devicesIn(join(folder, '.evenhem', 'links.json'), Date.now, broken)
  }
  server.get(`${prefix}/links`, async (request) => ({ links: await shown(await linksOf(request)) }))
  server.post(`${prefix}/links`, async (request, reply) => {
    const name = named(bodyOf(request, '{"name":"…"}'))
    const [address] = server.desk.addresses()
    if (address === undefined) return refuse(reply, 409, 'no-network', noNetwork)
    const { device, token } = await (await linksOf(request)).add(name)
    return {
      id: device.id,
      name: device.name,
      since: device.since,
      link: `${address}${dirname(request.url)}/shared/${token}`.replace('//shared', '/shared'),
    }
  })
  server.post(`${prefix}/links/revoke`, async (request, reply) => {
    const { id } = bodyOf(request, '{"id":"…"}')
    const links = await linksOf(request)
    if (typeof id !== 'string' || !(await links.remove(id))) return refuse(reply, 404, 'no-link', noLink)
    return { links: await shown(links) }
  })
  server.get(`${prefix}/shared/:token`, async (request, reply) => {
    const link = await (await linksOf(request)).by(String((request.params as Text).token ?? ''))
    if (!link) return refuse(reply, 404, 'no-link', gone)
    return sendReport(request, reply)
  })

  async function sendReport(request: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> {
    const wishes = wishesIn(request.query as Text)
    if (typeof wishes === 'string') return refuse(reply, 400, 'wish', wishes)
    const { file, read } = await (await jobOf(request)).source.read()
    if (!read.job) return jobHasErrors(reply)
    const { site } = await readSite(file, read.job, extensions)
    const photos = heldPhotos(await reportCopies(dirname(file)))
    const { html, policy } = report(read.job, foundWith(read.readings, site), wishes, { photos })
    return reply
      .header('content-security-policy', `${policy}; frame-ancestors 'none'`)
      .type('text/html; charset=utf-8')
      .send(html)
  }
}

const shown = async (links: Devices) => (await links.all()).map(({ id, name, since }) => ({ id, name, since }))
function named({ name }: Text): string {
  const written = typeof name === 'string' ? nameOf(name) : undefined
  if (written === undefined)
    throw answer(400, 'name', 'Unexpected name, expected 1 to 40 characters; write for whom the link is.')
  return written
}

const noFolder =
  'Unexpected job file by its own name, expected a folder with job.json, which has room for links; serve that folder.'
const noNetwork =
  'Unexpected link, expected a server that others reach; start it as `evenhem serve --network`, or send the report as a file.'
const noLink = 'Unexpected link, expected one of those that are listed; ask for /links.'
const gone = 'Unexpected link, expected one that is still good; ask whoever sent it for a new one.'
const broken =
  'Unexpected content of .evenhem/links.json in the folder of the job, expected the list of links; no link is good until it is put right or moved away.'
