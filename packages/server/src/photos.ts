import {
  type Arrived,
  type Cleaner,
  type CopySize,
  cleaner,
  copySizes,
  type Incoming,
  incoming,
  isHash,
  type Limits,
  type Original,
  type PhotoFolder,
  photoFolder,
  type Refused,
  refusedFor,
  type State,
  sayRefused,
  usualLimits,
} from '@evenhem/photos'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { answer, failed, refuse } from './answers.ts'
import type { Place } from './routes.ts'
import { logOwner } from './site.ts'

/** What a workroom may choose about photos. */
export interface PhotoSettings {
  readonly limits?: Partial<Limits>
  /** Left out: originals are kept. They are never served. */
  readonly original?: Original
  /** The bytes of all photos of a job together that are not complete yet. */
  readonly mostWaiting?: number
  /** Who reads photos. Left out: a process of the server's own, with these limits. */
  readonly cleaner?: Cleaner
}
/** How far a photo has come, as it is sent. */
export interface SentState {
  /** Bytes of it that are on the disk. */
  readonly have: number
  readonly done: boolean
  readonly refused?: { readonly code: string; readonly says: Readonly<Record<'en' | 'es', string>> }
}
interface JobPhotos {
  readonly photos: PhotoFolder
  readonly incoming: Incoming
}
type Text = Readonly<Record<string, string | undefined>>
/** Answers with the cleaned copy of the photo whose `:hash` a request names. */
export type SendCopy = (request: FastifyRequest, reply: FastifyReply, size: CopySize) => Promise<FastifyReply>

/**
 * Photos of the job, by the SHA-256 of their content. `GET /photos/<hash>` says how far one has come, `PUT /photos/<hash>?from=0&size=100` adds a piece of at
 * most 1 MiB and answers when it is on the disk; `GET /photos/<hash>/1600` and `/320` are the cleaned copies. Returns how these are sent.
 */
export function servePhotos(server: FastifyInstance, { prefix, jobOf }: Place, settings: PhotoSettings = {}): SendCopy {
  const reader = settings.cleaner ?? ownCleaner(server, settings)
  const folders = new Map<string, JobPhotos>()
  const open = (folder: string): JobPhotos => {
    const photos = photoFolder(folder, { cleaner: reader, original: settings.original, limits: limitsOf(settings) })
    return { photos, incoming: incoming(folder, photos, settings) }
  }
  const photosOf = async (request: FastifyRequest): Promise<JobPhotos> => {
    const { file } = await (await jobOf(request)).source.read()
    const folder = logOwner(file)
    if (folder === undefined) throw answer(409, 'no-folder', noFolder)
    const job = folders.get(folder) ?? open(folder)
    if (!folders.has(folder)) job.incoming.sweep(Date.now()).catch((error) => request.log.error(error))
    folders.set(folder, job)
    return job
  }

  server.get(`${prefix}/photos/:hash`, async (request) => sent(await (await photosOf(request)).incoming.state(hashIn(request))))
  const sendCopy: SendCopy = async (request, reply, size) => {
    const copy = await (await photosOf(request)).photos.copy(hashIn(request), size)
    if (!copy) return refuse(reply, 404, 'no-photo', noPhoto)
    return copy instanceof Uint8Array ? sendJpeg(reply, copy) : sendRefused(reply, { have: 0, done: false, refused: copy })
  }
  for (const size of copySizes) server.get(`${prefix}/photos/:hash/${size}`, (request, reply) => sendCopy(request, reply, size))
  // A scope of its own: nowhere else are bytes taken.
  server.register((scope, _options, registered) => {
    takeBytes(scope)
    scope.put(`${prefix}/photos/:hash`, async (request, reply) => {
      const job = await photosOf(request)
      const piece = pieceIn(request, limitsOf(settings).mostBytes)
      if ('code' in piece) return sendRefused(reply, { have: 0, done: false, refused: piece })
      const arrived = await job.incoming.add(hashIn(request), piece).catch((error: NodeJS.ErrnoException) => {
        request.log.error(error)
        throw answer(507, 'not-kept', notKept(error.code ?? 'unknown'))
      })
      return sendArrived(reply, arrived)
    })
    registered()
  })
  return sendCopy
}

function ownCleaner(server: FastifyInstance, { limits }: PhotoSettings): Cleaner {
  const own = cleaner(limits)
  server.addHook('onClose', async () => own.close())
  return own
}
const limitsOf = ({ limits }: PhotoSettings): Limits => ({ ...usualLimits, ...limits })

function takeBytes(scope: FastifyInstance): void {
  scope.removeAllContentTypeParsers()
  scope.addContentTypeParser('application/octet-stream', { parseAs: 'buffer' }, (_request, body, done) => done(null, body))
  scope.setErrorHandler((error: Parameters<typeof failed>[0], request, reply) =>
    error.code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE' ? refuse(reply, 415, error.code, noBytes) : failed(error, request, reply),
  )
}

/** A name from outside is a hash or nothing. Throws an answer. */
function hashIn({ params }: FastifyRequest): string {
  const { hash = '' } = params as Text
  if (isHash(hash)) return hash
  throw answer(404, 'no-photo', noPhoto)
}

/** The piece of a request; why its photo is not wanted; throws an answer when it is no piece. */
function pieceIn({ query, body }: FastifyRequest, mostBytes: number) {
  const bytes = body instanceof Uint8Array ? body : new Uint8Array()
  const [from, size] = [(query as Text).from, (query as Text).size].map((text = '') =>
    /^\d{1,12}$/.test(text) ? Number(text) : -1,
  )
  if (from === undefined || size === undefined || from < 0 || size < 1 || from + bytes.length > size)
    throw answer(400, 'piece', noPiece)
  const most = Math.floor(mostBytes / 1e6)
  return size > mostBytes ? refusedFor('photo/too-big', { size: Math.ceil(size / 1e6), most }) : { from, size, bytes }
}

const saidOf = (refused: Refused) => ({ code: refused.code, says: sayRefused(refused) })
const sent = ({ have, done, refused }: State): SentState => ({ have, done, ...(refused && { refused: saidOf(refused) }) })

function sendArrived(reply: FastifyReply, arrived: Arrived): FastifyReply {
  if (arrived.is === 'full') return refuse(reply, 507, 'photos-full', full)
  if (arrived.is === 'elsewhere') return reply.code(409).send({ code: 'elsewhere', message: elsewhere, have: arrived.have })
  return arrived.state.refused ? sendRefused(reply, arrived.state) : reply.send(sent(arrived.state))
}

/** The state, and for programs that know nothing of photos a code and a sentence too. */
function sendRefused(reply: FastifyReply, state: State): FastifyReply {
  const { refused } = sent(state)
  return reply.code(422).send({ code: refused?.code, message: refused?.says.en, ...sent(state) })
}

/** What has the name of a content never changes. */
const sendJpeg = (reply: FastifyReply, copy: Uint8Array): FastifyReply =>
  reply.header('cache-control', 'private, max-age=31536000, immutable').type('image/jpeg').send(copy)

const noFolder =
  'Unexpected job file by its own name, expected a folder with job.json, which has room for photos; serve that folder.'
const noPhoto = 'Unexpected photo, expected the SHA-256 of one that is here, as 64 small hexadecimal digits; send it first.'
const noBytes = 'Unexpected type of content, expected bytes of a photo; send them as application/octet-stream.'
const noPiece =
  'Unexpected piece of a photo, expected ?from= where it begins and ?size= of the whole, with the piece inside; ask for the state and go on from there.'
const elsewhere = 'Unexpected start of the piece, expected it where the last one ended; go on from `have`.'
const full =
  'Unexpected number of photos on their way, expected room for this one; let those be sent first. The tablet keeps its photos and sends them again.'
const notKept = (code: string): string =>
  `Unexpected answer of the disk (${code}), expected room for the photo; make room or mend the disk. The tablet keeps its photos and sends them again.`
