import { mkdir, mkdtemp, readdir, rm, utimes, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { type Cleaner, incoming, photoFolder } from '../src/index.ts'
import { hashOf } from './drawn.ts'

const copies = { large: new Uint8Array([1]), small: new Uint8Array([2]) }
const cleaner: Cleaner = { clean: async () => copies, peak: () => 0, close: () => undefined }
async function folder(mostWaiting?: number) {
  const path = await mkdtemp(join(tmpdir(), 'evenhem-incoming-'))
  onTestFinished(() => rm(path, { recursive: true }))
  const photos = photoFolder(path, { cleaner })
  return { path, photos: join(path, 'photos'), ...incoming(path, photos, mostWaiting === undefined ? {} : { mostWaiting }) }
}
const photo = Uint8Array.from({ length: 300 }, (_, at) => [0xff, 0xd8, 0xff][at] ?? at % 251)
const piece = (from: number, to: number, size = photo.length) => ({ from, size, bytes: photo.subarray(from, to) })

test('pieces that arrive at once are kept one after the other, and each only where the last one ended', async () => {
  const { add } = await folder()
  const hash = hashOf(photo)
  const arrived = await Promise.all(
    [piece(0, 100), piece(100, 200), piece(0, 100), piece(200, 300)].map((sent) => add(hash, sent)),
  )
  expect(arrived).toEqual([
    { is: 'here', state: { have: 100, done: false } },
    { is: 'here', state: { have: 200, done: false } },
    { is: 'elsewhere', have: 200 },
    { is: 'here', state: { have: 300, done: true } },
  ])
})

test('content that is not what its name says is refused, and forgotten when it is sent again', async () => {
  const { add, state } = await folder()
  const hash = hashOf(new Uint8Array([1]))
  expect(await add(hash, piece(0, 300))).toMatchObject({ state: { have: 0, refused: { code: 'photo/other-content' } } })
  expect(await state(hash)).toMatchObject({ have: 0, refused: { code: 'photo/other-content' } })
  expect(await add(hash, piece(0, 100))).toEqual({ is: 'here', state: { have: 100, done: false } })
  expect(await state(hash)).toEqual({ have: 100, done: false })
})

test('photos on their way have only so much room together, a file of one byte as much as the disk gives it', async () => {
  const { add } = await folder(4_500)
  const [one, other] = ['a', 'b'].map((name) => hashOf(Buffer.from(name))) as [string, string]
  expect(await add(one, piece(0, 1))).toMatchObject({ is: 'here' })
  expect(await add(other, piece(0, 1, 405))).toEqual({ is: 'full' })
  expect(await add(other, piece(0, 1, 404))).toMatchObject({ is: 'here' })
})

test('what lay for more than a month is swept up, and neither younger pieces nor photos are', async () => {
  const { photos, sweep, add } = await folder()
  await add(hashOf(photo), piece(0, 300))
  const now = Date.now()
  const day = 86_400_000
  const at = async (name: string, days: number) => {
    await writeFile(join(photos, name), 'x')
    await utimes(join(photos, name), (now - days * day) / 1000, (now - days * day) / 1000)
  }
  await mkdir(join(photos, '.incoming'), { recursive: true })
  for (const name of ['.incoming/a.part', '.b.new', 'small/c.jpg.new', `${'d'.repeat(64)}.jpg`]) await at(name, 31)
  for (const name of ['.incoming/e.part', '.f.new', 'small/g.jpg.new']) await at(name, 29)
  await sweep(now)
  const left = [await readdir(photos), await readdir(join(photos, '.incoming')), await readdir(join(photos, 'small'))]
  const hash = hashOf(photo)
  expect(left.map((names) => names.sort())).toEqual([
    ['.f.new', '.incoming', `${'d'.repeat(64)}.jpg`, `${hash}.jpg`, 'small'].sort(),
    ['e.part'],
    [`${hash}-1600.jpg`, `${hash}-320.jpg`, 'g.jpg.new'],
  ])
})

test('a name that is no hash is no way to anything', async () => {
  const { state, add } = await folder()
  for (const name of ['../job', hashOf(photo).toUpperCase(), '']) {
    expect(() => state(name)).toThrow(TypeError)
    expect(() => add(name, piece(0, 1))).toThrow(TypeError)
  }
})
