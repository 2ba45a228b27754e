import type { OutgoingHttpHeaders } from 'node:http'
import type { FastifyInstance, FastifyReply } from 'fastify'
import type { Devices } from './devices.ts'

/** How often a stream looks at the disk, and says that it is still there. In milliseconds. */
export interface Pace {
  readonly lookMs: number
  readonly stillMs: number
}
export const usualPace: Pace = { lookMs: 2_000, stillMs: 10_000 }

/** A connection that stays open, over which a client is told what happens. */
export interface Stream {
  /** The event as one line of JSON. A client that leaves too much unread is dropped. */
  readonly send: (event: string, data: object) => void
  readonly end: () => void
}
/** Whose a stream is: a device of the log, and the paired device that it came from, where it came from one. */
export interface Owner {
  readonly by: string
  readonly paired?: string
}
/** All streams of a server, of whatever job. */
export interface Streams {
  /** Undefined when there are too many already, or when the server closes. */
  readonly open: (reply: FastifyReply, owner: Owner, ended: () => void) => Stream | undefined
  /** The paired devices that have a stream open. */
  readonly paired: () => ReadonlySet<string>
  readonly endOf: (paired: string) => void
  /** Ends every stream; no other is opened. */
  readonly endAll: () => void
}

const mostStreams = 64
// More than a browser opens: the older ones are of pages that went without a word, as a tablet out of reach does.
const mostOfOne = 8
const mostUnread = 1024 * 1024
const partingMs = 1_000

export function streamsOf(pace: Pace): Streams {
  const open = new Map<Stream, Owner>()
  let isOver = false
  const those = (which: (owner: Owner) => boolean) => [...open].flatMap(([stream, owner]) => (which(owner) ? [stream] : []))
  const end = (streams: readonly Stream[]): void => {
    for (const stream of streams) stream.end()
  }
  return {
    open: (reply, owner, ended) => {
      end(those(({ by, paired }) => by === owner.by && paired === owner.paired).slice(0, 1 - mostOfOne))
      if (isOver || open.size >= mostStreams) return undefined
      const stream = streamOver(reply, pace, () => {
        open.delete(stream)
        ended()
      })
      open.set(stream, owner)
      return stream
    },
    paired: () => new Set([...open.values()].flatMap(({ paired }) => paired ?? [])),
    endOf: (device) => end(those(({ paired }) => paired === device)),
    endAll: () => {
      isOver = true
      end([...open.keys()])
    },
  }
}

/** Server-sent events in answer to a request. */
function streamOver(reply: FastifyReply, { stillMs }: Pace, ended: () => void): Stream {
  reply.hijack()
  const { raw } = reply
  const headers = reply.headers({ 'content-type': 'text/event-stream; charset=utf-8', 'cache-control': 'no-store' }).getHeaders()
  raw.writeHead(200, headers as OutgoingHttpHeaders)
  raw.flushHeaders()
  // Whoever takes nothing in for so long is gone.
  raw.socket?.setTimeout(3 * stillMs)
  const send: Stream['send'] = (event, data) => {
    if (raw.destroyed || raw.writableEnded) return
    if (raw.writableLength > mostUnread) raw.destroy()
    else raw.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`)
  }
  const still = setInterval(() => send('still', {}), stillMs).unref()
  raw.on('error', () => raw.destroy())
  raw.once('close', () => {
    clearInterval(still)
    ended()
  })
  const end = (): void => {
    raw.end()
    setTimeout(() => raw.destroy(), partingMs).unref()
  }
  return { send, end }
}

/** Ends the streams of devices that are not paired any more, also when another process revoked them. */
export function watchRevoked(server: FastifyInstance, streams: Streams, devices: Devices, { lookMs }: Pace): void {
  const look = async (): Promise<void> => {
    const open = streams.paired()
    if (open.size === 0) return
    const known = new Set((await devices.all().catch(() => [])).map(({ id }) => id))
    for (const id of open) if (!known.has(id)) streams.endOf(id)
  }
  const timer = setInterval(() => void look(), lookMs).unref()
  server.addHook('onClose', async () => clearInterval(timer))
}
