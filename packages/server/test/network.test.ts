import { once } from 'node:events'
import { request } from 'node:https'
import { hostname } from 'node:os'
import { expect, test } from 'vitest'
import { addressOf } from '../src/addresses.ts'
import { isFromDesk, refusal } from '../src/guard.ts'
import { devicesIn, listen as open, type ServerOptions } from '../src/index.ts'
import { cert, key } from './certificate.ts'
import { server } from './folder.ts'
import { networked } from './network.ts'
import { listen } from './stream.ts'

/** A server that listens, and one tablet that is paired with it. */
async function listeningTo(options: Partial<ServerOptions> = {}) {
  const site = await networked({ pace: { lookMs: 20, stillMs: 200 }, ...options })
  const { paired, id } = await site.pair('Ana’s tablet')
  const address = await open(site.built, 0, { network: true })
  const port = Number(new URL(address).port)
  const headers = { host: `tablet.test:${port}`, cookie: String(paired.cookie) }
  return { ...site, id, address, port, join: (by: string) => listen(port, `/live?by=${by}`, headers) }
}

test('on the network it has an address on this machine, and one for each of its names there', async () => {
  const { built, address, port } = await listeningTo()
  expect(address).toBe(`http://127.0.0.1:${port}`)
  expect(built.desk.addresses()[0]).toBe(`http://tablet.test:${port}`)
  expect(built.server.address()).toMatchObject({ address: '0.0.0.0' })
})

test('left out, it listens to this machine alone, and does not go further than it was built for', async () => {
  const built = await server()
  await expect(open(built, 0, { network: true })).rejects.toThrow('expected a server that was built for it')
  await open(built, 0)
  expect(built.server.address()).toMatchObject({ address: '127.0.0.1' })
})

test('it is known by its names, those of the machine and those that were given, with its port', async () => {
  const { tablet, pair, built } = await networked()
  const { paired } = await pair('Tablet')
  const asked = (host: string) => built.inject({ url: '/job', remoteAddress: '192.0.2.9', headers: { host, ...paired } })
  for (const host of ['tablet.test', 'TABLET.test:80', hostname(), `${hostname()}.local`])
    expect([host, (await asked(host)).statusCode]).toEqual([host, 200])
  for (const host of ['tablet.test:4170', 'tablet.test.', 'atablet.test']) expect((await asked(host)).statusCode).toBe(421)
  expect((await tablet('/job', undefined, { ...paired, origin: 'http://tablet.test' })).statusCode).toBe(200)
})

test('who is here has the name of the tablet, and the desk has none', async () => {
  const { join, port } = await listeningTo()
  const one = await join('tablet-1')
  await listen(port, '/live?by=desk')
  expect(await one.next('here', ({ here }) => here.length === 2)).toEqual({
    here: [
      { by: 'tablet-1', at: '', name: 'Ana’s tablet' },
      { by: 'desk', at: '' },
    ],
  })
})

test('revoking a tablet at the desk ends its streams, and nobody else’s', async () => {
  const { join, port, id, built } = await listeningTo()
  const [one, own] = [await join('tablet-1'), await listen(port, '/live?by=desk')]
  const headers = { host: `localhost:${port}`, origin: `http://localhost:${port}`, 'content-type': 'application/json' }
  await built.inject({ method: 'POST', url: '/devices/revoke', headers, payload: JSON.stringify({ id }) })
  await one.ended
  expect(await own.next('here', ({ here }) => here.length === 1)).toEqual({ here: [{ by: 'desk', at: '' }] })
})

test('so does revoking it from another process', async () => {
  const { join, id, devices } = await listeningTo()
  const one = await join('tablet-1')
  await devicesIn(devices).remove(id)
  await one.ended
  expect(one.answer.complete).toBe(true)
})

test('over https it is asked under https alone, and its cookie goes no other way', async () => {
  const { built } = await networked({ https: { cert, key } })
  const port = Number(new URL(await open(built, 0, { network: true })).port)
  expect(built.desk.invite().link).toMatch(new RegExp(`^https://tablet\\.test:${port}/#pair=`))
  const post = async (origin: string) => {
    const headers = { host: `tablet.test:${port}`, origin, 'content-type': 'application/json' }
    const sent = request({
      host: '127.0.0.1',
      servername: 'tablet.test',
      ca: cert,
      port,
      path: '/pair',
      method: 'POST',
      headers,
      agent: false,
    })
    sent.end(JSON.stringify({ code: built.desk.invite().code, name: 'Tablet' }))
    const [answer] = await once(sent, 'response')
    answer.resume()
    return [answer.statusCode, String(answer.headers['set-cookie'])]
  }
  expect(await post(`http://tablet.test:${port}`)).toEqual([403, 'undefined'])
  expect(await post(`https://tablet.test:${port}`)).toEqual([200, expect.stringMatching(/; Secure$/)])
})

test('the port may be left out where it is the usual one, of http and of https', () => {
  const status = (scheme: 'http' | 'https', port: number) =>
    refusal(
      { method: 'GET', headers: { host: 'tablet.test', origin: `${scheme}://tablet.test` } },
      { scheme, port, names: ['tablet.test'] },
    )?.status
  expect([status('http', 80), status('https', 443), status('http', 443), status('https', 80)]).toEqual([
    undefined,
    undefined,
    421,
    421,
  ])
})

test.each([
  ['127.0.0.1', 'localhost:80', true],
  ['::1', '[::1]', true],
  ['::ffff:127.0.0.1', '127.0.0.1', true],
  ['192.0.2.9', 'localhost', false],
  ['::ffff:192.0.2.9', 'localhost', false],
  ['127.0.0.1', 'tablet.test', false],
  ['127.0.0.1', '', false],
])('who asks from %s for "%s" sits at the desk: %s', (ip, host, isDesk) => {
  expect(isFromDesk({ ip, headers: { host } }, { port: 80, scheme: 'http' })).toBe(isDesk)
})

const base = 'http://192.0.2.7:4170'
test.each([
  ['/', `${base}/`],
  ['/jobs/heron-point/', `${base}/jobs/heron-point/`],
  ['/jobs/tern hollow/', `${base}/jobs/tern%20hollow/`],
  ['/#/den/w1', `${base}/#/den/w1`],
  ['/../../x', `${base}/x`],
  ['', undefined],
  ['jobs', undefined],
  ['//elsewhere.example', undefined],
  ['/\\elsewhere.example', undefined],
  ['/\t/elsewhere.example', undefined],
  ['http://elsewhere.example/', undefined],
  ['javascript:1', undefined],
  [`/${'x'.repeat(500)}`, undefined],
  [['/'], undefined],
])('the address of %j is %s', (path, address) => expect(addressOf(path, base)).toBe(address))

test('an address of this server is made a picture, on the network and without one', async () => {
  for (const { desk } of [await networked(), await networked({ network: undefined })]) {
    const answer = await desk('/qr?of=/jobs/heron-point/')
    expect([answer.statusCode, answer.headers['content-type']]).toEqual([200, 'image/svg+xml'])
    expect(answer.body).toMatch(/^<svg [\s\S]*<\/svg>\s*$/)
    expect((await desk('/qr?of=//elsewhere.example')).json().code).toBe('address')
    expect((await desk('/qr')).statusCode).toBe(400)
  }
})
