import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fastifyStatic } from '@fastify/static'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { notFound, tagged } from './answers.ts'

/** What the page of every job needs, and its page at `/`. */
export function serveViewer(server: FastifyInstance, viewer: string): void {
  server.register(fastifyStatic, {
    root: `${viewer}/assets`,
    prefix: '/assets/',
    index: false,
    dotfiles: 'ignore',
    cacheControl: false,
    // What lies there compressed is sent so to whoever can read it.
    preCompressed: true,
    setHeaders: (reply) => {
      reply.header('vary', 'accept-encoding')
    },
  })
  server.get('/', (_request, reply) => sendPage(reply, viewer))
  server.get('/sw.js', (request, reply) => {
    // It answers for every page of this server, whichever job the page is of.
    reply.header('service-worker-allowed', '/')
    return sendText(request, reply, join(viewer, 'sw.js'), 'text/javascript; charset=utf-8')
  })
  server.get('/manifest.webmanifest', (request, reply) =>
    sendText(request, reply, join(viewer, 'manifest.webmanifest'), 'application/manifest+json; charset=utf-8'),
  )
}

/** The page of the sheet, the same at every address of one. */
export const sendPage = (reply: FastifyReply, viewer: string): FastifyReply => reply.sendFile('index.html', viewer)

async function sendText(request: FastifyRequest, reply: FastifyReply, file: string, type: string): Promise<FastifyReply> {
  const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ENOENT') throw error
  })
  if (!bytes) return notFound(request, reply)
  const etag = `"${createHash('sha256').update(bytes).digest('base64url')}"`
  return tagged(request, reply, etag, type, () => bytes)
}
