import { execFile } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, rename, writeFile } from 'node:fs/promises'
import { connect } from 'node:net'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { fold, type Line, write } from '@evenhem/site-log'
import { mergeFolders } from '@evenhem/site-log/folder'
import { expect, test } from 'vitest'
import { listen as open } from '../src/index.ts'
import { folder, server, smallJob } from './folder.ts'
import { type Listener, listen } from './stream.ts'

const place = '/rooms/den/ceiling'
const lines = (device: string, values: readonly string[], at = place): readonly Line[] =>
  write(
    { device, last: undefined, clock: '2026-11-25T09:12:00Z' },
    values.map((value) => ({ place: at, value })),
    fold([]),
  )
const line = (device: string, value = '95 3/4'): Line => lines(device, [value])[0]!

/** A server that looks at the disk often, and says often that it is there unless told otherwise. */
async function site(job: object = smallJob, stillMs = 200) {
  const at = await folder(job)
  const built = await server({ ...at, pace: { lookMs: 20, stillMs } })
  const port = Number(new URL(await open(built, 0)).port)
  const join = (by: string, window = '') => listen(port, `/live?by=${by}&at=${encodeURIComponent(window)}`)
  const post = (...sent: readonly Line[]) =>
    fetch(`http://127.0.0.1:${port}/log`, {
      method: 'POST',
      headers: { origin: `http://127.0.0.1:${port}`, 'content-type': 'application/json' },
      body: JSON.stringify({ lines: sent.map(({ text }) => text) }),
    })
  const get = async (path: string) => (await fetch(`http://127.0.0.1:${port}${path}`)).json()
  return { ...at, built, port, join, post, get }
}
const here = (each: Listener, ...names: readonly string[]) =>
  each.next('here', (data) => data.here.map(({ by }: { by: string }) => by).join() === names.join())

test('a stream is server-sent events under the headers of every answer, and starts with who is here', async () => {
  const one = await (await site()).join('tablet-1', '/rooms/den/windows/w1')
  expect(one.answer.headers).toMatchObject({
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    'content-security-policy': expect.stringContaining("default-src 'none'"),
    'x-content-type-options': 'nosniff',
  })
  expect(await one.next('here')).toEqual({ here: [{ by: 'tablet-1', at: '/rooms/den/windows/w1' }] })
})

test('everybody hears who comes, who looks at another window, and who goes', async () => {
  const { join } = await site()
  const one = await join('tablet-1')
  const two = await join('tablet-2')
  await here(one, 'tablet-1', 'tablet-2')
  const again = await join('tablet-2', '/rooms/den/windows/w2')
  const at = (window: string) => [
    { by: 'tablet-1', at: '' },
    { by: 'tablet-2', at: window },
  ]
  expect(await one.next('here')).toEqual({ here: at('/rooms/den/windows/w2') })
  two.close()
  expect(await one.next('here')).toEqual({ here: at('/rooms/den/windows/w2') })
  again.close()
  await here(one, 'tablet-1')
})

test('a line that one tablet sends is told to every stream, its own too, as /log answers it, and once', async () => {
  const { join, post, get } = await site()
  const listeners = [await join('tablet-1'), await join('tablet-2')]
  await post(line('tablet-1'))
  const all = (await get('/log')).entries
  for (const each of listeners) expect(await each.next('log')).toEqual({ entries: all })
  await post(line('tablet-3'))
  for (const each of listeners) expect((await each.next('log')).entries).toMatchObject([{ event: { by: 'tablet-3', n: 1 } }])
})

test('what was on the disk before is not told, and what another process writes is', async () => {
  const { join: enter, job } = await site()
  await mkdir(join(job, 'log'))
  await writeFile(join(job, 'log/tablet-1.jsonl'), `${line('tablet-1').text}\n`)
  const one = await enter('tablet-1')
  await one.next('still')
  const text = `${line('tablet-2', '96 ft tall').text}\n`
  const script = `require('node:fs').appendFileSync(process.argv[1], process.argv[2])`
  await promisify(execFile)(process.execPath, ['-e', script, join(job, 'log/tablet-2.jsonl'), text])
  const { entries } = await one.next('log')
  expect(entries).toMatchObject([{ event: { by: 'tablet-2' }, refused: { says: { en: expect.stringMatching(/^Unexpected/) } } }])
  expect(one.told.filter(({ event }) => event === 'log')).toHaveLength(1)
})

test('what is merged into the log from another copy of the folder is told, between lines that are there too', async () => {
  const [{ join: enter, job }, other] = [await site(), await folder()]
  const all = lines('tablet-2', ['95', '96', '97'])
  const put = async (to: string, some: readonly (Line | undefined)[]) => {
    await mkdir(join(to, 'log'))
    await writeFile(join(to, 'log/tablet-2.jsonl'), some.map((each) => `${each?.text}\n`).join(''))
  }
  await put(job, [all[0], all[2]])
  await put(other.job, all)
  const one = await enter('tablet-1')
  await one.next('here')
  await mergeFolders(job, other.job)
  expect((await one.next('log')).entries).toMatchObject([{ event: { by: 'tablet-2', n: 2 } }])
})

test('a job that is written anew, or whose catalogue is, is told', async () => {
  const { join: enter, job } = await site({ ...smallJob, catalogues: [{ id: 'yard', file: 'yard.json' }] })
  const one = await enter('tablet-1')
  const catalogue = { format: 'evenhem-catalogue/1', name: 'Yard', units: 'in', fabrics: [] }
  await writeFile(join(job, 'new.json'), JSON.stringify(catalogue))
  await rename(join(job, 'new.json'), join(job, 'yard.json'))
  expect(await one.next('job')).toEqual({})
  await writeFile(join(job, 'new.json'), JSON.stringify({ ...smallJob, units: 'mm' }))
  await rename(join(job, 'new.json'), join(job, 'job.json'))
  expect(await one.next('job')).toEqual({})
  expect(await one.next('still')).toEqual({})
})

test.each([
  ['?at=', 'Unexpected device'],
  ['?by=Tablet', 'Unexpected device'],
  ['?by=../x', 'Unexpected device'],
  ['?by=a&by=b', 'Unexpected device'],
  [`?by=${'a'.repeat(41)}`, 'Unexpected device'],
  ['?by=a&at=/job/note', 'Unexpected place'],
  ['?by=a&at=rooms', 'Unexpected place'],
  ['?by=a&at=/rooms/', 'Unexpected place'],
  ['?by=a&at=/rooms/~2', 'Unexpected place'],
  [`?by=a&at=/rooms/${'x'.repeat(494)}`, 'Unexpected place'],
])('/live%s is refused', async (query, message) => {
  const answer = await (await server()).inject(`/live${query}`)
  expect([answer.statusCode, answer.json().message]).toEqual([400, expect.stringContaining(message)])
})

test('a place of 500 characters is one', async () => {
  const at = `/rooms/${'x'.repeat(493)}`
  expect((await (await (await site()).join('a', at)).next('here')).here[0].at).toBe(at)
})

test('more than 64 streams are refused with a sentence, and of one device only the eight latest stay', async () => {
  const { join, get } = await site()
  const own = []
  for (let n = 0; n < 9; n++) own.push(await join('tablet-0'))
  await own[0]?.ended
  const others = await Promise.all(Array.from({ length: 56 }, (_, n) => join(`other-${n}`)))
  expect(await get('/live?by=late')).toMatchObject({ code: 'too-many-streams', message: expect.stringContaining('at most 64') })
  others[0]?.close()
  await here(own[8]!, 'tablet-0', ...Array.from({ length: 55 }, (_, n) => `other-${n + 1}`))
  expect((await join('late')).answer.statusCode).toBe(200)
})

test('closing the server ends every stream', async () => {
  const { join, built } = await site()
  const both = [await join('tablet-1'), await join('tablet-2')]
  await Promise.all([built.close(), ...both.map(({ ended }) => ended)])
  expect(both.map(({ answer }) => answer.complete)).toEqual([true, true])
})

test('a client that leaves more than a megabyte unread is dropped, and the others are told on', async () => {
  // So seldom that nobody is taken to be gone for having taken in nothing for a while.
  const { port, join, post } = await site(smallJob, 60_000)
  const deaf = connect(port, '127.0.0.1')
  deaf.pause().write(`GET /live?by=deaf HTTP/1.1\r\nHost: localhost:${port}\r\n\r\n`)
  const one = await join('tablet-1')
  await here(one, 'deaf', 'tablet-1')
  const isDeafHere = () => one.told.findLast(({ event }) => event === 'here')?.data.here.length === 2
  const much = Array.from({ length: 15 }, () => 'x'.repeat(60_000))
  for (let n = 0; isDeafHere(); n++) expect((await post(...lines(`d-${n}`, much, '/job/note'))).status).toBe(200)
  deaf.resume()
  await once(deaf, 'close')
  expect((await post(line('tablet-2'))).status).toBe(200)
  await one.next('log', ({ entries }) => entries[0].event.by === 'tablet-2')
})
