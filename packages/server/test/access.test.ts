import { subscribe, unsubscribe } from 'node:diagnostics_channel'
import { mkdir, rename } from 'node:fs/promises'
import { join } from 'node:path'
import type { FastifyInstance, InjectOptions } from 'fastify'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildServer, type ServerOptions } from '../src/index.ts'
import { folder, smallJob } from './folder.ts'
import { asking, networked } from './network.ts'

/** What each route is: whom it is for, and a request that it would answer. A new route needs a line here. */
const table = {
  'GET /': { for: 'anybody' },
  'GET /jobs/:name/': { for: 'anybody', url: '/jobs/heron/' },
  'GET /assets/*': { for: 'anybody', url: '/assets/app.js' },
  'GET /sw.js': { for: 'anybody' },
  'GET /manifest.webmanifest': { for: 'anybody' },
  'POST /pair': { for: 'anybody', body: { code: 'abcd-efgh', name: 'Tablet' } },
  'GET /devices': { for: 'desk' },
  'POST /devices/code': { for: 'desk', body: {} },
  'POST /devices/revoke': { for: 'desk', body: { id: 'a' } },
  'GET /qr': { for: 'paired', url: '/qr?of=/' },
  'GET /jobs': { for: 'paired' },
  'GET /job': { for: 'paired' },
  'GET /log': { for: 'paired' },
  'POST /log': { for: 'paired', body: { lines: [] } },
  'GET /live': { for: 'paired', url: '/live?by=A' },
  'GET /report': { for: 'paired' },
  'GET /links': { for: 'desk' },
  'POST /links': { for: 'desk', body: { name: 'Ana' } },
  'POST /links/revoke': { for: 'desk', body: { id: 'a' } },
  'GET /shared/:token': { for: 'anybody', url: '/shared/a.b' },
  'GET /shared/:token/photos/:hash': { for: 'anybody', url: '/shared/a.b/photos/0' },
  'GET /photos/:hash': { for: 'paired' },
  'PUT /photos/:hash': { for: 'paired', url: '/photos/0?from=0&size=1', body: {} },
  'GET /photos/:hash/1600': { for: 'paired' },
  'GET /photos/:hash/320': { for: 'paired' },
  'GET /jobs/:name': { for: 'paired', url: '/jobs/heron' },
  'GET /jobs/:name/job': { for: 'paired', url: '/jobs/heron/job' },
  'GET /jobs/:name/log': { for: 'paired', url: '/jobs/heron/log' },
  'POST /jobs/:name/log': { for: 'paired', url: '/jobs/heron/log', body: { lines: [] } },
  'GET /jobs/:name/live': { for: 'paired', url: '/jobs/heron/live?by=A' },
  'GET /jobs/:name/photos/:hash': { for: 'paired', url: '/jobs/heron/photos/0' },
  'PUT /jobs/:name/photos/:hash': { for: 'paired', url: '/jobs/heron/photos/0?from=0&size=1', body: {} },
  'GET /jobs/:name/photos/:hash/1600': { for: 'paired', url: '/jobs/heron/photos/0/1600' },
  'GET /jobs/:name/photos/:hash/320': { for: 'paired', url: '/jobs/heron/photos/0/320' },
  'GET /jobs/:name/links': { for: 'desk', url: '/jobs/heron/links' },
  'POST /jobs/:name/links': { for: 'desk', url: '/jobs/heron/links', body: { name: 'Ana' } },
  'POST /jobs/:name/links/revoke': { for: 'desk', url: '/jobs/heron/links/revoke', body: { id: 'a' } },
  'GET /jobs/:name/shared/:token': { for: 'anybody', url: '/jobs/heron/shared/a.b' },
  'GET /jobs/:name/shared/:token/photos/:hash': { for: 'anybody', url: '/jobs/heron/shared/a.b/photos/0' },
  'GET /jobs/:name/report': { for: 'paired', url: '/jobs/heron/report' },
} as const satisfies Record<string, { for: 'anybody' | 'paired' | 'desk'; url?: string; body?: object }>
type Name = keyof typeof table
interface Row {
  readonly for: 'anybody' | 'paired' | 'desk'
  readonly url?: string
  readonly body?: object
}

/** Every route that is registered, those of HEAD aside. */
async function routesOf(build: () => FastifyInstance): Promise<readonly string[]> {
  const routes = new Set<string>()
  const watch = (message: unknown) =>
    (message as { fastify: FastifyInstance }).fastify.addHook('onRoute', ({ method, url }) => {
      for (const each of [method].flat()) if (each !== 'HEAD') routes.add(`${each} ${url}`)
    })
  subscribe('fastify.initialization', watch)
  const server = build()
  unsubscribe('fastify.initialization', watch)
  await server.ready()
  await server.close()
  return [...routes].sort()
}

describe('the table of routes', () => {
  let network: ServerOptions['network']
  let one: Awaited<ReturnType<typeof folder>>
  let many: Awaited<ReturnType<typeof folder>>
  let routes: Readonly<Record<'one' | 'many', readonly string[]>>
  let servers: Readonly<Record<'one' | 'many', Awaited<ReturnType<typeof networked>>>>
  let paired: Readonly<Record<'one' | 'many', { readonly cookie: string | undefined }>>
  const made: (() => Promise<void>)[] = []
  const later = (work: () => Promise<void>) => void made.unshift(work)
  afterAll(async () => {
    for (const away of made) await away()
  })
  beforeAll(async () => {
    ;[one, many] = [await folder(smallJob, later), await folder(smallJob, later)]
    await mkdir(join(many.job, 'heron'))
    await rename(join(many.job, 'job.json'), join(many.job, 'heron/job.json'))
    network = { names: ['tablet.test'], devices: join(one.job, '.evenhem/devices.json') }
    routes = {
      one: await routesOf(() => buildServer({ ...one, network })),
      many: await routesOf(() => buildServer({ ...many, network })),
    }
    servers = { one: await networked(one, later), many: await networked(many, later) }
    paired = { one: (await servers.one.pair('Tablet')).paired, many: (await servers.many.pair('Tablet')).paired }
  })

  test('names every route, and none that is not there', () => {
    expect([...new Set([...routes.one, ...routes.many])].sort()).toEqual(Object.keys(table).sort())
  })

  /** Sends the request of each route, otherwise as it says. */
  async function answers(how: (row: Row, mode: 'one' | 'many') => InjectOptions, which: (row: Row) => boolean = () => true) {
    const said: [string, number, string][] = []
    for (const mode of ['one', 'many'] as const)
      for (const name of routes[mode]) {
        const row: Row = table[name as Name]
        const [method, path = ''] = name.split(' ')
        if (!which(row)) continue
        const asked = { method: method as 'GET', url: row.url ?? path, ...(row.body && { payload: JSON.stringify(row.body) }) }
        const answer = await servers[mode].built.inject({ ...asked, ...how(row, mode) })
        said.push([name, answer.statusCode, /^\{/.test(answer.body) ? answer.json().code : ''])
      }
    expect(said.length).toBeGreaterThan(0)
    return said
  }
  const odd = (said: readonly [string, number, string][], status: number, code: string) =>
    said.filter(([, isStatus, isCode]) => isStatus !== status || isCode !== code)
  const json = { 'content-type': 'application/json' }
  const fromDesk = { host: 'localhost', ...json }
  const fromTablet = { host: 'tablet.test', origin: 'http://tablet.test', ...json }
  const away = '192.0.2.9'

  test.each(['evil.example', 'localhost.evil.example', '203.0.113.7', 'tablet.test:81'])(
    'no route answers to the host "%s"',
    async (host) => {
      const how = () => ({ headers: { ...fromTablet, host, origin: `http://${host}` } })
      expect(odd(await answers(how), 421, 'host')).toEqual([])
    },
  )

  test.each(['http://evil.example', 'https://tablet.test', 'http://tablet.test:81', 'null'])(
    'no route answers to a page of %s',
    async (origin) => {
      const how = (_: Row, mode: 'one' | 'many') => ({ remoteAddress: away, headers: { ...fromTablet, ...paired[mode], origin } })
      expect(odd(await answers(how), 403, 'origin')).toEqual([])
    },
  )

  test('no route that changes something answers to whoever does not say where it comes from', async () => {
    const said = await answers(
      () => ({ headers: fromDesk }),
      ({ body }) => body !== undefined,
    )
    expect(odd(said, 403, 'origin')).toEqual([])
  })

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x'])(
    'no route takes a body of type %s',
    async (type) => {
      const how = () => ({ headers: { ...fromDesk, origin: 'http://localhost', 'content-type': type } })
      const said = await answers(how, ({ body }) => body !== undefined)
      expect(odd(said, 415, 'FST_ERR_CTP_INVALID_MEDIA_TYPE')).toEqual([])
    },
  )

  test.each([undefined, '', 'evenhem-device=abcdefgh.secret', 'evenhem-device=', 'evenhem-device=.', 'other=1'])(
    'who brings the cookie %j gets nothing but the page',
    async (cookie) => {
      const how = () => ({ remoteAddress: away, headers: { ...fromTablet, ...(cookie !== undefined && { cookie }) } })
      expect(odd(await answers(how, (row) => row.for === 'paired'), 401, 'unpaired')).toEqual([])
      const open = await answers(how, (row) => row.for === 'anybody')
      expect(open.filter(([, status]) => status === 401 || status === 403)).toEqual([])
    },
  )

  test('only the desk gets what is for the desk: no tablet, and nobody who only says to be it', async () => {
    const isForDesk = (row: Row) => row.for === 'desk'
    const tablet = (_: Row, mode: 'one' | 'many') => ({ remoteAddress: away, headers: { ...fromTablet, ...paired[mode] } })
    expect(odd(await answers(tablet, isForDesk), 403, 'desk-only')).toEqual([])
    const sayingSo = () => ({ remoteAddress: away, headers: { ...fromDesk, origin: 'http://localhost' } })
    expect(odd(await answers(sayingSo, isForDesk), 403, 'desk-only')).toEqual([])
    const byNetwork = () => ({ remoteAddress: '127.0.0.1', headers: fromTablet })
    expect(odd(await answers(byNetwork, isForDesk), 403, 'desk-only')).toEqual([])
    const said = await answers(() => ({ headers: { ...fromDesk, origin: 'http://localhost' } }), isForDesk)
    expect(said.filter(([, status]) => status === 401 || status === 403)).toEqual([])
  })

  test('a tablet that is paired gets all that is for paired ones', async () => {
    const how = (_: Row, mode: 'one' | 'many') => ({ remoteAddress: away, headers: { ...fromTablet, ...paired[mode] } })
    const said = await answers(how, (row) => row.for === 'paired')
    expect(said.filter(([, status]) => status === 401 || status === 403 || status >= 500)).toEqual([])
  })

  test('a page that is not there is a secret too, and so are the names of jobs', async () => {
    const { tablet } = asking(servers.many.built)
    expect((await tablet('/nowhere')).statusCode).toBe(401)
    const pages = await Promise.all(['/jobs/heron/', '/jobs/nowhere/'].map((url) => tablet(url)))
    expect(pages.map(({ statusCode, body }) => [statusCode, body])).toEqual(Array(2).fill([200, '<title>Sheet</title>']))
    expect((await tablet('/jobs/nowhere/', undefined, paired.many)).statusCode).toBe(404)
  })
})

test('without a network nobody is asked to pair, and no other name is taken', async () => {
  const { built, desk } = await networked({ network: undefined })
  expect((await desk('/job')).statusCode).toBe(200)
  expect((await desk('/devices')).json()).toEqual({ network: false, devices: [], addresses: [] })
  const said = [await desk('/devices/code', {}), await desk('/pair', { code: 'a', name: 'Tablet' })]
  expect(said.map((answer) => [answer.statusCode, answer.json().code])).toEqual(Array(2).fill([409, 'no-network']))
  expect(said[0]?.json().message).toContain('evenhem serve --network')
  expect((await desk('/devices/revoke', { id: 'a' })).statusCode).toBe(404)
  expect((await built.inject({ url: '/job', headers: { host: 'tablet.test' } })).statusCode).toBe(421)
})
