import { expect, test } from 'vitest'
import { refusal } from '../src/guard.ts'
import { listening, send, server } from './folder.ts'

const host = 'localhost:4600'
const status = (method: string, headers: Record<string, string>) =>
  refusal({ method, headers }, { port: 4600, scheme: 'http', names: [] })?.status

test.each(['localhost:4600', '127.0.0.1:4600', '[::1]:4600', 'LOCALHOST:4600'])('the host %s is this machine', (name) => {
  expect(status('GET', { host: name })).toBeUndefined()
})

test.each([
  'evil.example:4600',
  'localhost',
  'localhost:4601',
  'localhost:4600.evil.example',
  '127.0.0.1.evil.example:4600',
  '0.0.0.0:4600',
  '192.168.1.4:4600',
  'localhost:4600@evil.example',
  '',
])('the host "%s" is refused', (name) => {
  expect(status('GET', { host: name })).toBe(421)
})

test('a request without a host is refused', () => expect(status('GET', {})).toBe(421))

test('on port 80 the port may be left out, as browsers do', () => {
  expect(refusal({ method: 'GET', headers: { host: '127.0.0.1' } }, { port: 80, scheme: 'http', names: [] })).toBeUndefined()
})

test.each([
  'https://localhost:4600',
  'http://localhost:4601',
  'http://evil.example',
  'http://localhost:4600.evil.example',
  'null',
  '',
])('the origin "%s" is refused, even to read', (origin) => {
  expect(status('GET', { host, origin })).toBe(403)
})

test('its own page may read and change', () => {
  expect(status('GET', { host, origin: 'http://localhost:4600' })).toBeUndefined()
  expect(status('POST', { host, origin: 'http://localhost:4600' })).toBeUndefined()
})

test.each(['POST', 'PUT', 'PATCH', 'DELETE'])('%s must say where it comes from', (method) => {
  expect(status(method, { host })).toBe(403)
})

test('a page that made its own name point here gets a sentence and nothing else', async () => {
  const answer = await (await server()).inject({ url: '/job', headers: { host: 'evil.example' } })
  expect(answer.statusCode).toBe(421)
  expect(answer.json()).toEqual({
    code: 'host',
    message: 'Unexpected host "evil.example", expected localhost; open the address that `evenhem serve` printed.',
  })
})

test.each(['/', '/assets/app.js', '/job', '/nowhere', '/%zz'])('the guard stands before %s', async (url) => {
  const answer = await (await server()).inject({ url, headers: { host: 'evil.example' } })
  expect(answer.statusCode).toBe(421)
})

test('the port that counts is the one it listens on', async () => {
  const { port } = await listening()
  expect((await send(port, '/job')).status).toBe(200)
  expect((await send(port, '/job', { host: `localhost:${port + 1}` })).status).toBe(421)
})
