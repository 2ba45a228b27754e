import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { folder, listening, secret, send, server } from './folder.ts'

test('the page stands at the root', async () => {
  const answer = await (await server()).inject('/')
  expect([answer.statusCode, answer.headers['content-type'], answer.body]).toEqual([
    200,
    'text/html; charset=utf-8',
    '<title>Sheet</title>',
  ])
})

test('what the page needs stands under assets', async () => {
  const answer = await (await server()).inject('/assets/app.js')
  expect([answer.statusCode, answer.headers['content-type'], answer.body]).toEqual([
    200,
    'application/javascript; charset=utf-8',
    'export {}',
  ])
})

test('what lies there compressed is sent so to whoever can read it, and only to them', async () => {
  const { job, viewer } = await folder()
  await writeFile(join(viewer, 'assets/app.js.gz'), gzipSync('export {}'))
  const built = await server({ job, viewer })
  const [packed, plain] = await Promise.all([
    built.inject({ url: '/assets/app.js', headers: { 'accept-encoding': 'gzip' } }),
    built.inject('/assets/app.js'),
  ])
  expect(packed.headers).toMatchObject({
    'content-encoding': 'gzip',
    vary: 'accept-encoding',
    'content-type': 'application/javascript; charset=utf-8',
  })
  expect(gunzipSync(packed.rawPayload).toString()).toBe('export {}')
  expect([plain.headers['content-encoding'], plain.headers.vary, plain.body]).toEqual([undefined, 'accept-encoding', 'export {}'])
})

test('an asset that did not change is not sent again', async () => {
  const built = await server()
  const { etag } = (await built.inject('/assets/app.js')).headers
  expect((await built.inject({ url: '/assets/app.js', headers: { 'if-none-match': String(etag) } })).statusCode).toBe(304)
})

test('the worker that keeps the page answers for the whole server, and the manifest is one', async () => {
  const { job, viewer } = await folder()
  const built = await server({ job, viewer })
  for (const url of ['/sw.js', '/manifest.webmanifest']) expect((await built.inject(url)).statusCode).toBe(404)
  await writeFile(join(viewer, 'sw.js'), 'self')
  await writeFile(join(viewer, 'manifest.webmanifest'), '{}')
  const [worker, manifest] = [await built.inject('/sw.js'), await built.inject('/manifest.webmanifest')]
  expect([worker.body, worker.headers]).toMatchObject([
    'self',
    { 'content-type': 'text/javascript; charset=utf-8', 'service-worker-allowed': '/', 'cache-control': 'no-cache' },
  ])
  expect([manifest.body, manifest.headers['content-type']]).toEqual(['{}', 'application/manifest+json; charset=utf-8'])
  const headers = { 'if-none-match': String(worker.headers.etag) }
  expect((await built.inject({ url: '/sw.js', headers })).statusCode).toBe(304)
})

test('the page may ask for the camera, and for nothing else of the tablet', async () => {
  const { headers } = await (await server()).inject('/')
  expect(headers['permissions-policy']).toBe('camera=(self), geolocation=(), microphone=(), payment=(), usb=()')
})

const up = [
  '../',
  '..%2f',
  '%2e%2e/',
  '%2e%2e%2f',
  '..%5c',
  '..\\',
  '%252e%252e%252f',
  '....//',
  '..;/',
  '..%00/',
  '%c0%ae%c0%ae/',
  '..%u2215',
  '.%2e/',
  '%2e./',
]
const outside = up.flatMap((step) => [1, 2, 5].map((times) => `/assets/${step.repeat(times)}secret.txt`))
const others = [
  '/secret.txt',
  '//secret.txt',
  '/assets//../secret.txt',
  '/assets/.hidden',
  '/assets/%2ehidden',
  '/assets/app.js/../../secret.txt',
  '/assets/%00',
  '/assets/',
  '/index.html/../secret.txt',
  '/?/../secret.txt#',
  '/assets/C:/secret.txt',
  '/assets//etc/passwd',
  '/assets/%2fetc%2fpasswd',
]

test('nothing outside is served, whatever the path', async () => {
  const { port } = await listening()
  const answers = await Promise.all([...outside, ...others].map(async (path) => ({ path, ...(await send(port, path)) })))
  expect(answers.filter(({ text }) => text.includes(secret) || text.includes('root:'))).toEqual([])
  expect(
    answers
      .filter(({ status, path }) => status !== 404 && status !== 400 && status !== 403 && path !== '/?/../secret.txt#')
      .map(({ path, status }) => `${path} ${status}`),
  ).toEqual([])
})
