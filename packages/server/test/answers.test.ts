import { once } from 'node:events'
import { connect } from 'node:net'
import { expect, test } from 'vitest'
import { listening, server } from './folder.ts'

const always = [
  'content-security-policy',
  'x-content-type-options',
  'referrer-policy',
  'cross-origin-opener-policy',
  'cross-origin-resource-policy',
  'permissions-policy',
]

test.each(['/', '/assets/app.js', '/job', '/nowhere', '/%zz', '/assets/../x'])(
  'every answer of %s tells the browser what it may do',
  async (url) => {
    const { headers } = await (await server()).inject({ url })
    expect(always.filter((name) => headers[name] === undefined)).toEqual([])
  },
)

test('the page may load from this server only, and nothing inline', async () => {
  const policy = String((await (await server()).inject('/')).headers['content-security-policy'])
  expect(policy.split('; ')).toEqual([
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ])
})

test('a page that is not there is said plainly', async () => {
  const answer = await (await server()).inject('/nowhere')
  expect([answer.statusCode, answer.json()]).toEqual([
    404,
    { code: 'not-found', message: 'Unexpected GET /nowhere, expected a page of Evenhem; start at /.' },
  ])
})

test('a fault of ours shows no stack', async () => {
  const built = await server()
  built.get('/fault', async () => {
    throw new Error('at /private/place.ts:4')
  })
  const answer = await built.inject('/fault')
  expect(answer.statusCode).toBe(500)
  expect(answer.body).not.toMatch(/private|place|\.ts|stack/)
})

test('a fault of ours is logged', async () => {
  const lines: string[] = []
  const { Writable } = await import('node:stream')
  const built = await server({
    log: new Writable({
      write: (line, _encoding, done) => {
        lines.push(String(line))
        done()
      },
    }),
  })
  built.get('/fault', async () => {
    throw new Error('the shelf is empty')
  })
  await built.inject('/fault')
  expect(lines.join('')).toContain('the shelf is empty')
})

test('a client that never ends its request is let go', async () => {
  const { port } = await listening({ patienceMs: 200 })
  const socket = connect(port, '127.0.0.1')
  socket.write('GET /job HTTP/1.1\r\nHost: localhost\r\n')
  socket.resume()
  await once(socket, 'close')
  expect(socket.destroyed).toBe(true)
})

test('a client that never ends its body is let go', async () => {
  const { port } = await listening({ patienceMs: 200 })
  const socket = connect(port, '127.0.0.1')
  socket.write(
    `POST /job HTTP/1.1\r\nHost: localhost:${port}\r\nOrigin: http://localhost:${port}\r\nContent-Type: application/json\r\nContent-Length: 9\r\n\r\n{`,
  )
  socket.resume()
  await once(socket, 'close')
  expect(socket.destroyed).toBe(true)
})
