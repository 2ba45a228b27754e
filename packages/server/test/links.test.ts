import { expect, test } from 'vitest'
import { folder } from './folder.ts'
import { networked } from './network.ts'

const json = { 'content-type': 'application/json' }
const desk = { host: 'localhost', origin: 'http://localhost', ...json }
const away = { remoteAddress: '192.0.2.9', headers: { host: 'tablet.test' } }

async function site() {
  const { built } = await networked(await folder())
  const post = async (url: string, body: object) =>
    built.inject({ method: 'POST', url, headers: desk, payload: JSON.stringify(body) })
  const path = (link: string): string => new URL(link).pathname
  return { built, post, path }
}

test('a link shows a stranger the report of the job, in its own policy, and nothing else', async () => {
  const { built, post, path } = await site()
  const { link, name } = (await post('/links', { name: 'The household' })).json()
  expect([name, new URL(link).host]).toEqual(['The household', 'tablet.test'])
  const report = await built.inject({ ...away, url: path(link) })
  expect([report.statusCode, report.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8'])
  expect(report.body).toContain('Heron Lodge')
  expect(report.headers['content-security-policy']).toMatch(/^default-src 'none'/)
  for (const url of ['/job', '/log', '/links', '/report', `${path(link)}/photos`])
    expect([url, (await built.inject({ ...away, url })).statusCode >= 400]).toEqual([url, true])
  expect((await built.inject({ ...away, url: `${path(link)}?lang=xx` })).statusCode).toBe(400)
})

test('a link that was taken back, guessed or cut is none', async () => {
  const { built, post, path } = await site()
  const { link, id } = (await post('/links', { name: 'Ana' })).json()
  const ask = async (url: string) => (await built.inject({ ...away, url })).statusCode
  expect([await ask(path(link).slice(0, -1)), await ask('/shared/a.b'), await ask('/shared/%2e%2e.x')]).toEqual([404, 404, 404])
  expect((await built.inject({ url: '/links', headers: desk })).json().links).toMatchObject([{ id, name: 'Ana' }])
  expect((await post('/links/revoke', { id })).json()).toEqual({ links: [] })
  expect([await ask(path(link)), (await post('/links/revoke', { id })).statusCode]).toEqual([404, 404])
})

test('without a network there is no link to give away', async () => {
  const { buildServer } = await import('../src/index.ts')
  const server = buildServer(await folder())
  const answer = await server.inject({ method: 'POST', url: '/links', headers: desk, payload: '{"name":"Ana"}' })
  expect([answer.statusCode, answer.json().code]).toEqual([409, 'no-network'])
  await server.close()
})
