import { mkdir, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { cleaner } from '@evenhem/photos'
import sharp from 'sharp'
import { afterAll, expect, test } from 'vitest'
import { drawn, hashOf, jpeg, noise } from '../../photos/test/drawn.ts'
import type { ServerOptions } from '../src/index.ts'
import { folder, server } from './folder.ts'

const headers = { origin: 'http://localhost', 'content-type': 'application/octet-stream' }

// One process for all of these: starting one takes longer than what it does here.
const reader = cleaner()
afterAll(() => reader.close())

async function site(photos: ServerOptions['photos'] = {}) {
  const at = await folder()
  const built = await server({ ...at, photos: { cleaner: reader, ...photos } })
  const get = (path: string) => built.inject(`/photos/${path}`)
  const put = (hash: string, from: number, size: number, payload: Uint8Array, more: object = {}) =>
    built.inject({
      method: 'PUT',
      url: `/photos/${hash}?from=${from}&size=${size}`,
      headers: { ...headers, ...more },
      payload: Buffer.from(payload),
    })
  const state = async (hash: string) => (await get(hash)).json()
  return { ...at, built, get, put, state, photos: join(at.job, 'photos') }
}
type Site = Awaited<ReturnType<typeof site>>
const sendAll = ({ put }: Pick<Site, 'put'>, bytes: Uint8Array, hash = hashOf(bytes)) => put(hash, 0, bytes.length, bytes)

test('a photo that comes in pieces is there when the last one is answered, and its copies are served as they never change', async () => {
  const { put, state, get, photos } = await site()
  const bytes = await noise(500, 400)
  const [hash, half] = [hashOf(bytes), bytes.length >> 1]
  expect(await state(hash)).toEqual({ have: 0, done: false })
  expect((await put(hash, 0, bytes.length, bytes.subarray(0, half))).json()).toEqual({ have: half, done: false })
  expect(await state(hash)).toEqual({ have: half, done: false })
  expect((await put(hash, half, bytes.length, bytes.subarray(half))).json()).toEqual({ have: bytes.length, done: true })
  expect(await readFile(join(photos, `${hash}.jpg`))).toEqual(bytes)
  expect(await readdir(join(photos, '.incoming'))).toEqual([])
  const copy = await get(`${hash}/320`)
  expect(copy.headers).toMatchObject({ 'content-type': 'image/jpeg', 'cache-control': 'private, max-age=31536000, immutable' })
  expect(await sharp(copy.rawPayload).metadata()).toMatchObject({ width: 320, height: 256, format: 'jpeg' })
})

test('the same photo again is done without being sent, and a copy that was deleted is made again', async () => {
  const all = await site()
  const bytes = await jpeg()
  await sendAll(all, bytes)
  expect((await all.put(hashOf(bytes), 0, bytes.length, new Uint8Array())).json()).toEqual({ have: bytes.length, done: true })
  await rm(join(all.photos, 'small'), { recursive: true })
  const copy = await all.get(`${hashOf(bytes)}/1600`)
  expect(await sharp(copy.rawPayload).metadata()).toMatchObject({ width: 400, height: 300 })
})

test('a piece that does not begin where the last one ended is told what is there', async () => {
  const { put } = await site()
  const bytes = await jpeg()
  const hash = hashOf(bytes)
  await put(hash, 0, bytes.length, bytes.subarray(0, 100))
  for (const from of [0, 99, 101])
    expect(
      await put(hash, from, bytes.length, bytes.subarray(from, 200)).then((answer) => [answer.statusCode, answer.json()]),
    ).toEqual([409, expect.objectContaining({ code: 'elsewhere', have: 100 })])
  expect((await put(hash, 100, bytes.length, bytes.subarray(100))).json()).toMatchObject({ done: true })
})

test('whoever was not answered after the last piece sends nothing more and it is taken in', async () => {
  const { put, state, photos } = await site()
  const bytes = await jpeg()
  const hash = hashOf(bytes)
  await mkdir(join(photos, '.incoming'), { recursive: true })
  await writeFile(join(photos, '.incoming', `${hash}.part`), bytes)
  expect(await state(hash)).toEqual({ have: bytes.length, done: false })
  expect((await put(hash, bytes.length, bytes.length, new Uint8Array())).json()).toEqual({ have: bytes.length, done: true })
})

test('other content than was announced, and what is no photo, is away again and said in both languages', async () => {
  const all = await site()
  const bytes = await jpeg()
  const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')
  for (const [sent, hash, code] of [
    [bytes, hashOf(svg), 'photo/other-content'],
    [svg, hashOf(svg), 'photo/format'],
    [bytes.subarray(0, 900), hashOf(bytes.subarray(0, 900)), 'photo/damaged'],
  ] as const) {
    const answer = await sendAll(all, sent, hash)
    expect([answer.statusCode, answer.json()]).toEqual([422, expect.objectContaining({ code, have: 0, done: false })])
    const { refused } = await all.state(hash)
    expect([refused.code, refused.says.en, refused.says.es]).toEqual([
      code,
      expect.stringMatching(/^Unexpected /),
      expect.any(String),
    ])
    expect(await all.get(`${hash}/320`)).toMatchObject({ statusCode: 404 })
  }
  expect(await readdir(join(all.photos, '.incoming'))).toEqual([])
  expect((await sendAll(all, bytes)).json()).toMatchObject({ done: true })
})

test.each(['0', 'A'.repeat(64), `${'a'.repeat(63)}g`, `${'a'.repeat(64)}.jpg`, '..%2f..%2fjob.json', '.incoming', 'small'])(
  'the name %s is no photo, whatever is asked of it',
  async (name) => {
    const { get, put } = await site()
    const answers = [
      await get(name),
      await get(`${name}/320`),
      await get(`${name}/1600`),
      await put(name, 0, 1, new Uint8Array(1)),
    ]
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([404, 404, 404, 404])
  },
)

test('an original is served under no address', async () => {
  const all = await site()
  const bytes = await jpeg()
  await sendAll(all, bytes)
  const hash = hashOf(bytes)
  const paths = [`${hash}.jpg`, `${hash}/original`, `${hash}/0`, `small/${hash}-320.jpg`, `${hash}/1600.jpg`]
  for (const path of paths) expect((await all.get(path)).statusCode, path).toBe(404)
})

test.each(['', '?from=0', '?from=0&size=0', '?from=-1&size=9', '?from=0&size=1e3', '?from=5&size=9', '?from=1&from=0&size=9'])(
  'a piece with %j is none',
  async (query) => {
    const { built } = await site()
    const answer = await built.inject({ method: 'PUT', url: `/photos/${'a'.repeat(64)}${query}`, headers, payload: 'fünf' })
    expect([answer.statusCode, answer.json().code]).toEqual([400, 'piece'])
  },
)

test('bytes are taken nowhere else, and here nothing else, and no piece is over 1 MiB', async () => {
  const { built, put } = await site()
  const hash = 'a'.repeat(64)
  const log = await built.inject({ method: 'POST', url: '/log', headers, payload: 'x' })
  const json = await put(hash, 0, 9, new Uint8Array(9), { 'content-type': 'application/json' })
  const long = await put(hash, 0, 2_000_000, new Uint8Array(1024 * 1024 + 1))
  expect([log.statusCode, json.statusCode, long.statusCode]).toEqual([415, 415, 413])
  expect(json.json().message).toContain('send them as application/octet-stream')
})

test('a photo that is announced as too big is refused before it is sent', async () => {
  const { put } = await site({ limits: { mostBytes: 5_000_000 } })
  const answer = await put('a'.repeat(64), 0, 5_000_001, new Uint8Array(9))
  expect([answer.statusCode, answer.json().refused.says.en]).toEqual([
    422,
    'Unexpected size of 6 MB, expected at most 5 MB; send a smaller copy.',
  ])
})

test('too many photos on their way are told to wait, and what lay for a month is away', async () => {
  const first = await site({ mostWaiting: 20_000 })
  await first.put('a'.repeat(64), 0, 15_000, new Uint8Array(12_000))
  expect((await first.put('b'.repeat(64), 0, 15_000, new Uint8Array(9))).json().code).toBe('photos-full')
  const before = new Date(Date.now() - 31 * 86_400_000)
  await utimes(join(first.photos, '.incoming', `${'a'.repeat(64)}.part`), before, before)
  const built = await server({ job: first.job })
  await expect.poll(async () => (await built.inject(`/photos/${'a'.repeat(64)}`)).json().have).toBe(0)
})

test('a workroom that keeps no originals keeps what was cleaned, and only that', async () => {
  const all = await site({ original: 'drop' })
  const bytes = await drawn(2000, 1000)
    .withExif({ IFD0: { Artist: 'Ana Roble' } })
    .jpeg()
    .toBuffer()
  const hash = hashOf(bytes)
  expect((await sendAll(all, bytes)).json()).toMatchObject({ done: true })
  expect((await readdir(all.photos)).sort()).toEqual(['.incoming', `${hash}.clean.jpg`, 'small'])
  const kept = await readFile(join(all.photos, `${hash}.clean.jpg`))
  expect(await sharp(kept).metadata()).toMatchObject({ width: 1600, height: 800 })
  expect(await sharp(kept).metadata()).not.toHaveProperty('exif')
  await rm(join(all.photos, 'small'), { recursive: true })
  expect((await all.get(`${hash}/1600`)).rawPayload).toEqual(kept)
  expect(await all.state(hash)).toMatchObject({ done: true })
})

test('a job file by its own name has no room for photos', async () => {
  const { job } = await folder()
  await writeFile(join(job, 'lodge.json'), await readFile(join(job, 'job.json')))
  const built = await server({ job: join(job, 'lodge.json') })
  expect((await built.inject(`/photos/${'a'.repeat(64)}`)).json().code).toBe('no-folder')
})
