import { readPlain } from '@evenhem/job/read'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { answer } from './answers.ts'

/** A body stays the text that came, for `job` to read: a framework's reading drops unknown members and turns one type into another. */
export function readBodiesAsText(server: FastifyInstance): void {
  server.removeAllContentTypeParsers()
  server.addContentTypeParser('application/json', { parseAs: 'string' }, (_request, body, done) => done(null, body))
}

/** The members of a body; throws an answer when it is not such an object. */
export function bodyOf({ body }: FastifyRequest, expected: string): Readonly<Record<string, unknown>> {
  const plain = typeof body === 'string' ? readPlain(body) : undefined
  const value = plain && 'value' in plain ? plain.value : undefined
  if (value !== null && typeof value === 'object' && !Array.isArray(value)) return value as Readonly<Record<string, unknown>>
  throw answer(400, 'body', `Unexpected content, expected ${expected}; send plain JSON.`)
}

/** The id that a body names; throws an answer when it names none. `list`: where ids are listed. */
export function idOf(request: FastifyRequest, list: string): string {
  const { id } = bodyOf(request, '{"id":"…"}')
  if (typeof id === 'string') return id
  throw answer(400, 'body', `Unexpected id, expected text; send it as ${list} lists it.`)
}
