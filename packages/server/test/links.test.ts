import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { cleaner } from '@evenhem/photos'
import { afterAll, expect, test } from 'vitest'
import { hashOf, jpeg } from '../../photos/test/drawn.ts'
import { folder, server } from './folder.ts'
import { networked } from './network.ts'

const tern = JSON.parse(await readFile(new URL('../../../schema/examples/tern-hollow/job.json', import.meta.url), 'utf8'))
const json = { 'content-type': 'application/json' }
const desk = { host: 'localhost', origin: 'http://localhost', ...json }
const away = { remoteAddress: '192.0.2.9', headers: { host: 'tablet.test' } }
const reader = cleaner()
afterAll(() => reader.close())

/** A server on a network, of one job or of a folder in which it is called `tern hollow`. */
async function site(name?: string) {
  const at = await folder()
  const job = name === undefined ? at.job : join(at.job, name)
  if (name !== undefined) await mkdir(job)
  if (name !== undefined) await rename(join(at.job, 'job.json'), join(job, 'job.json'))
  const { built } = await networked({ ...at, photos: { cleaner: reader } })
  const post = async (url: string, body: object) =>
    built.inject({ method: 'POST', url, headers: desk, payload: JSON.stringify(body) })
  const visit = (url: string) => built.inject({ ...away, url })
  return { built, post, visit, job, links: join(job, '.evenhem/links.json') }
}
const path = (link: string): string => new URL(link).pathname
const gone = [404, expect.stringMatching(/^Unexpected link, .*\n\nEnlace inesperado, .*\n$/)]
const said = ({ statusCode, body }: { readonly statusCode: number; readonly body: string }) => [statusCode, body]

test('a link shows a stranger the report of the job, in its own policy, and nothing else', async () => {
  const { post, visit } = await site()
  const { link, name } = (await post('/links?a=b/c', { name: 'The household' })).json()
  expect([name, link]).toEqual([
    'The household',
    expect.stringMatching(/^http:\/\/tablet\.test\/shared\/[a-z0-9]{8}\.[\w-]{43}$/),
  ])
  const report = await visit(path(link))
  expect([report.statusCode, report.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8'])
  expect(report.body).toContain('Heron Lodge')
  expect(report.headers['content-security-policy']).toMatch(/^default-src 'none'.*frame-ancestors 'none'$/)
  expect(report.headers['cache-control']).toBe('no-store')
  expect((await visit(`${path(link)}?lang=es`)).body).toContain('<html lang="es">')
  expect((await visit(`${path(link)}?lang=xx`)).statusCode).toBe(400)
  for (const url of ['/job', '/log', '/links', '/report', `${path(link)}/photos`, `${path(link)}/job`])
    expect([url, (await visit(url)).statusCode]).toEqual([url, url === '/links' ? 403 : 401])
})

test('a link that was taken back, guessed or cut is none, and a browser shows that in both languages', async () => {
  const { built, post, visit } = await site()
  const { link, id } = (await post('/links', { name: 'Ana' })).json()
  for (const url of [path(link).slice(0, -1), '/shared/a.b', '/shared/%2e%2e.x']) expect(said(await visit(url))).toEqual(gone)
  expect((await visit('/shared/a.b')).headers['content-type']).toBe('text/plain; charset=utf-8')
  expect((await built.inject({ url: '/links', headers: desk })).json().links).toMatchObject([{ id, name: 'Ana' }])
  expect((await post('/links/revoke', { id })).json()).toEqual({ links: [] })
  expect(said(await visit(path(link)))).toEqual(gone)
  expect((await post('/links/revoke', { id })).json().code).toBe('no-link')
  expect((await post('/links/revoke', { id: 7 })).json()).toEqual({ code: 'body', message: expect.stringContaining('/links') })
})

test('photos of the report come by the link, made where their copies are missing, and go with it', async () => {
  const { post, visit, job } = await site()
  const bytes = await jpeg()
  const hash = hashOf(bytes)
  await mkdir(join(job, 'photos'))
  await writeFile(join(job, 'photos', `${hash}.jpg`), bytes)
  const found = { [`/rooms/garden-room/windows/w1/found/photos/${hash}`]: { value: 'The wall' } }
  await writeFile(join(job, 'job.json'), JSON.stringify({ ...tern, found }))
  const { link, id } = (await post('/links', { name: 'Ana' })).json()
  const report = await visit(path(link))
  const [, src = ''] = /<img src="([^"]+)" alt="Photo\. The wall"/.exec(report.body) ?? []
  expect(report.headers['content-security-policy']).toContain("img-src data: 'self';")
  const photo = new URL(src, link).pathname
  expect(photo).toBe(`${path(link)}/photos/${hash}`)
  expect((await visit(photo)).headers['content-type']).toBe('image/jpeg')
  expect((await visit(`${path(link)}/photos/..%2f..%2fjob.json`)).statusCode).toBe(404)
  expect((await visit(`/photos/${hash}/1600`)).statusCode).toBe(401)
  await post('/links/revoke', { id })
  expect(said(await visit(photo))).toEqual(gone)
})

test('of many jobs a link shows its own, and who has none learns of no job whether there is one', async () => {
  const { post, visit } = await site('tern hollow')
  const { link } = (await post('/jobs/tern%20hollow/links', { name: 'Ana' })).json()
  expect(path(link)).toMatch(/^\/jobs\/tern%20hollow\/shared\//)
  expect((await visit(path(link))).body).toContain('Heron Lodge')
  const [, token] = path(link).split('/shared/')
  for (const url of ['/jobs/tern%20hollow/shared/a.b', '/jobs/nowhere/shared/a.b', `/jobs/nowhere/shared/${token}`])
    expect(said(await visit(url))).toEqual(gone)
  expect((await post('/jobs/nowhere/links', { name: 'Ana' })).json().code).toBe('no-job')
})

test('a file of links that is broken is said at the desk, stays as it is, and a customer is told nothing of it', async () => {
  const { built, post, visit, links } = await site()
  const { link, id } = (await post('/links', { name: 'Ana' })).json()
  await writeFile(links, '[')
  const answers = [
    await built.inject({ url: '/links', headers: desk }),
    await post('/links', { name: 'Odo' }),
    await post('/links/revoke', { id }),
  ]
  for (const answer of answers)
    expect(answer.json()).toEqual({ code: 'links-broken', message: expect.stringContaining('.evenhem/links.json') })
  expect(said(await visit(path(link)))).toEqual([503, expect.stringMatching(/^Unexpected fault.*\n\nFalla inesperada.*\n$/)])
  expect(await readFile(links, 'utf8')).toBe('[')
})

test('a job that cannot be read is told the customer as a fault, not what is wrong with it', async () => {
  const { post, visit, job } = await site()
  const { link } = (await post('/links', { name: 'Ana' })).json()
  await writeFile(join(job, 'job.json'), '{')
  expect(said(await visit(path(link)))).toEqual([503, expect.stringMatching(/^Unexpected fault/)])
})

test('a name that is none makes no link, and without a network there is none to give away', async () => {
  const { post } = await site()
  for (const body of [{}, { name: '' }, { name: 7 }, { name: 'x'.repeat(41) }])
    expect((await post('/links', body)).json().code).toBe('name')
  const alone = await server()
  const answer = await alone.inject({ method: 'POST', url: '/links', headers: desk, payload: '{"name":"Ana"}' })
  expect([answer.statusCode, answer.json().code]).toEqual([409, 'no-network'])
})
