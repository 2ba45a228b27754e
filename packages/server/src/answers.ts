import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify'
import { secure } from './headers.ts'

/** What a client is told when a request comes to nothing: a code for programs, a sentence for people, never a stack. */
export const refuse = (reply: FastifyReply, status: number, code: string, message: string): FastifyReply =>
  secure(reply).code(status).send({ code, message })

export const notFound = (request: FastifyRequest, reply: FastifyReply): FastifyReply =>
  refuse(
    reply,
    404,
    'not-found',
    `Unexpected ${request.method} ${request.url.slice(0, 120)}, expected a page of Evenhem; start at /.`,
  )

export const jobHasErrors = (reply: FastifyReply): FastifyReply =>
  refuse(reply, 409, 'job-has-errors', 'Unexpected errors in the job, expected none; the sheet names them, put them right first.')

/** The last stop of every error. What we did not foresee is logged here and told nobody else. */
export function failed(
  error: FastifyError & { readonly isAnswer?: true },
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply {
  const status = error.statusCode ?? 500
  if (status < 500 || error.isAnswer)
    return refuse(reply, status, error.code ?? 'request', sentences[error.code] ?? error.message)
  request.log.error(error)
  return refuse(
    reply,
    500,
    'fault',
    'Unexpected fault in Evenhem, expected an answer; the terminal that runs `evenhem serve` says what happened.',
  )
}

const sentences: Readonly<Record<string, string>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'Unexpected type of content, expected JSON; send it as application/json.',
  FST_ERR_CTP_BODY_TOO_LARGE: 'Unexpected size of the content, expected at most 1 MiB; send it in smaller parts.',
  FST_ERR_MAX_PARAM_LENGTH: 'Unexpected length of the address, expected the name of a job in it; start at /.',
  FST_ERR_BAD_URL: 'Unexpected characters in the address, expected an address of Evenhem; start at /.',
}

/** An answer that a route gives by throwing it. */
export const answer = (statusCode: number, code: string, message: string): Error =>
  Object.assign(new Error(message), { statusCode, code, isAnswer: true })

/** Content with a tag of it; nothing but its head when the client has it already. */
export function tagged(
  request: FastifyRequest,
  reply: FastifyReply,
  etag: string,
  type: string,
  content: () => string | Uint8Array,
): FastifyReply {
  reply.header('etag', etag)
  return request.headers['if-none-match'] === etag ? reply.code(304).send() : reply.type(type).send(content())
}
