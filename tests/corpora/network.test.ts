import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildServer, listen } from '@evenhem/server'
import { isDevice } from '@evenhem/site-log'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { everyCase, filesOf, stringsOf } from './corpora.ts'

const job = {
  format: 'evenhem-job/1',
  units: 'in',
  job: { number: '1', name: 'Heron Point', country: 'US' },
  rooms: [{ id: 'den', name: 'Den', ceiling: '96', windows: [] }],
}
const texts = [...stringsOf('strings/naughty.json'), ...stringsOf('web/script.json')]
const every = [...texts, ...stringsOf('web/traversal.json')]

const top = mkdtempSync(join(tmpdir(), 'evenhem-'))
mkdirSync(join(top, 'heron'))
writeFileSync(join(top, 'heron/job.json'), JSON.stringify(job))
const server = buildServer({ job: top, network: { names: ['tablet.test'], devices: join(top, '.evenhem/devices.json') } })
let port = 0
beforeAll(async () => {
  port = Number(new URL(await listen(server, 0, { network: true })).port)
})
afterAll(async () => {
  await server.close()
  rmSync(top, { recursive: true })
})

interface Answer {
  readonly status: number
  readonly type: string
  readonly text: string
}
/** Asks as the desk does; of a stream the first event is the answer. */
const ask = (path: string, body?: Uint8Array | string): Promise<Answer> =>
  new Promise((done, fail) => {
    const origin = { origin: `http://127.0.0.1:${port}`, 'content-type': 'application/json' }
    const sent = request({
      host: '127.0.0.1',
      port,
      path,
      method: body === undefined ? 'GET' : 'POST',
      headers: body === undefined ? {} : origin,
    })
    sent.on('error', fail)
    sent.on('response', (answer) => {
      let text = ''
      const type = String(answer.headers['content-type'])
      const end = () => done({ status: answer.statusCode ?? 0, type, text })
      answer.setEncoding('utf8').on('error', () => undefined)
      answer.on('end', end).on('data', (part) => {
        text += part
        if (!type.startsWith('text/event-stream') || !text.includes('\n\n')) return
        end()
        sent.destroy()
      })
    })
    sent.end(body)
  })
const post = (path: string, body: object): Promise<Answer> => ask(path, JSON.stringify(body))

/** A lone surrogate is no character: no address can hold one, and no JSON that is read here. */
const isWellFormed = (text: string): boolean => !/\p{Surrogate}/u.test(text)
const sendable = every.filter(isWellFormed)
const encoded = encodeURIComponent
const shown = (text: string, { status, text: body }: Answer): string => `${JSON.stringify(text)}: ${status} ${body.slice(0, 80)}`
/** What is wrong with an answer that is to be of this status, and a sentence where it is a refusal. */
const unless = (status: number, text: string, answer: Answer): string | undefined =>
  answer.status === status && (status < 400 || /"message":"Unexpected /.test(answer.text)) ? undefined : shown(text, answer)

test('no text opens a stream but the id of a device', () =>
  everyCase('/live?by=', sendable, async (text) =>
    unless(isDevice(text) ? 200 : 400, text, await ask(`/jobs/heron/live?by=${encoded(text)}`)),
  ))

test('no text is a place to look at, but none at all', () =>
  everyCase('/live?at=', sendable, async (text) =>
    unless(text === '' ? 200 : 400, text, await ask(`/jobs/heron/live?by=a&at=${encoded(text)}`)),
  ))

test('below rooms a place comes back as it was sent, or is refused', () =>
  everyCase('/live?at=/rooms/', sendable, async (text) => {
    const at = `/rooms/${text}`
    const isPlace = text !== '' && at.length <= 500 && !/~(?![01])/.test(at)
    const answer = await ask(`/jobs/heron/live?by=place&at=${encoded(at)}`)
    const [, data] = /^event: here\ndata: ([^\n]*)\n\n/.exec(answer.text) ?? []
    const said = unless(isPlace ? 200 : 400, at, answer)
    return (
      said ??
      (isPlace && !JSON.parse(data ?? '').here.some((one: { at: string }) => one.at === at) ? shown(at, answer) : undefined)
    )
  }))

test('no text is a code', () =>
  everyCase('/pair code', every, async (code) => {
    server.desk.invite()
    const answer = await post('/pair', { code, name: 'Tablet' })
    return isWellFormed(code) ? unless(403, code, answer) : unless(400, code, answer)
  }))

test('a name is kept as it was written, but for spaces around it, or refused', () =>
  everyCase('/pair name', texts, async (name) => {
    const answer = await post('/pair', { code: server.desk.invite().code, name })
    if (answer.status !== 200) return unless(400, name, answer)
    const { id, name: kept } = JSON.parse(answer.text)
    const listed = JSON.parse((await ask('/devices')).text).devices.map((each: { name: string }) => each.name)
    await post('/devices/revoke', { id })
    return kept === name.trim().normalize('NFC') && listed.includes(kept) ? undefined : `${JSON.stringify(name)} became ${kept}`
  }))

test('no text is the id of a device to revoke', async () => {
  await post('/pair', { code: server.desk.invite().code, name: 'It stays' })
  await everyCase('/devices/revoke', every, async (id) =>
    unless(isWellFormed(id) ? 404 : 400, id, await post('/devices/revoke', { id })),
  )
  expect(JSON.parse((await ask('/devices')).text).devices).toMatchObject([{ name: 'It stays' }])
})

test('an address is made a picture only where it is of this server', () =>
  everyCase('/qr?of=', sendable, async (text) => {
    const answer = await ask(`/qr?of=${encoded(text)}`)
    const base = `http://127.0.0.1:${port}`
    const isOurs = text.startsWith('/') && text.length <= 500 && URL.canParse(text, base) && new URL(text, base).origin === base
    const said = unless(isOurs ? 200 : 400, text, answer)
    return (
      said ??
      (isOurs && !/^<svg [^<]*<path [^<]*\/><path [^<]*\/><\/svg>\s*$/.test(answer.text) ? shown(text, answer) : undefined)
    )
  }))

test('a link is for whom it was written, but for spaces around the name, or is refused', () =>
  everyCase('/links name', texts, async (name) => {
    const answer = await post('/jobs/heron/links', { name })
    if (answer.status !== 200) return unless(400, name, answer)
    const { id, name: kept } = JSON.parse(answer.text)
    const { links } = JSON.parse((await ask('/jobs/heron/links')).text)
    await post('/jobs/heron/links/revoke', { id })
    const isListed = links.some((each: { id: string; name: string }) => each.id === id && each.name === kept)
    return kept === name.trim().normalize('NFC') && isListed ? undefined : `${JSON.stringify(name)} became ${kept}`
  }))

test('no text is a link that is good, nor the id of one', async () => {
  const { link } = JSON.parse((await post('/jobs/heron/links', { name: 'It stays' })).text)
  const { pathname } = new URL(link)
  await everyCase('/links/revoke', every, async (id) =>
    unless(isWellFormed(id) ? 404 : 400, id, await post('/jobs/heron/links/revoke', { id })),
  )
  const lost = async (text: string, path: string): Promise<string | undefined> => {
    const answer = await ask(path)
    const isTold = answer.type.startsWith('text/plain')
      ? answer.text.startsWith('Unexpected link')
      : /"Unexpected /.test(answer.text)
    return [400, 404, 414].includes(answer.status) && isTold ? undefined : shown(text, answer)
  }
  await everyCase('/shared/', sendable, (text) => lost(text, `/jobs/heron/shared/${encoded(text)}`))
  const names = stringsOf('web/traversal.json')
  await everyCase('/shared/…/photos/', names, (text) => lost(text, `${pathname}/photos/${encoded(text)}`))
  expect((await ask(pathname)).text).toContain('Heron Point')
})

const wishes = ['units', 'paper', 'lang']
test('a report takes no wish that it does not know', () =>
  everyCase(
    '/report',
    wishes.flatMap((wish) => sendable.map((text) => ({ wish, text }))),
    async ({ wish, text }) => unless(400, text, await ask(`/jobs/heron/report?${wish}=${encoded(text)}`)),
  ))

const posts = [
  ...['/pair', '/devices/revoke', '/devices/code'],
  ...['/jobs/heron/log', '/jobs/heron/links', '/jobs/heron/links/revoke'],
]
test('no JSON that somebody made to break a reader is taken, and none breaks this one', () =>
  everyCase(
    'bodies',
    posts.flatMap((path) => filesOf('json', '').map(({ name, bytes }) => ({ path, name, bytes }))),
    async ({ path, name, bytes }) => {
      const answer = await ask(path, bytes)
      // A code is asked for without saying anything, so nothing that is said changes it.
      return unless(path === '/devices/code' ? 200 : 400, `${path} ${name}`, answer)
    },
  ))
