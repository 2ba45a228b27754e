import { expect, test } from 'vitest'
import { server } from './folder.ts'

const origin = 'http://localhost'

/** A server with a route that gives back what it took in. */
async function echo() {
  const built = await server()
  built.post('/echo', async (request) => ({ is: typeof request.body, body: request.body }))
  return built
}
const post = async (payload: string, type?: string) =>
  (await echo()).inject({ method: 'POST', url: '/echo', payload, headers: { origin, ...(type && { 'content-type': type }) } })

test.each(['{"a": 1, "a": 2,  "__proto__": {}}', '{"n": 1.0, "s": "\\ud800"}', '{"torn": ', '[]', '﻿{}'])(
  'the body %j arrives as the text it was sent as',
  async (text) => {
    expect((await post(text, 'application/json')).json()).toEqual({ is: 'string', body: text })
  },
)

test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', 'application/xml', undefined])(
  'a body of type %s is refused',
  async (type) => {
    const answer = await post('{}', type)
    expect(answer.statusCode).toBe(415)
    expect(answer.json().message).toBe('Unexpected type of content, expected JSON; send it as application/json.')
  },
)

test('a body that is too long is refused', async () => {
  const answer = await post(`"${'x'.repeat(1024 * 1024)}"`, 'application/json')
  expect(answer.statusCode).toBe(413)
  expect(answer.json().message).toBe('Unexpected size of the content, expected at most 1 MiB; send it in smaller parts.')
})
