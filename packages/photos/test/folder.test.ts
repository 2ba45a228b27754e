import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { crc32 } from 'node:zlib'
import sharp from 'sharp'
import { afterAll, expect, onTestFinished, test } from 'vitest'
import { type Cleaner, cleaner, type FolderOptions, keptIn, photoFolder, type Taken } from '../src/index.ts'
import { cornersOf, drawn, hashOf, jpeg, upright } from './drawn.ts'

const reader = cleaner()
afterAll(() => reader.close())
const heic = fileURLToPath(new URL('drawn.heic', import.meta.url))

async function folder(options: Partial<FolderOptions> = {}) {
  const path = await mkdtemp(join(tmpdir(), 'evenhem-photos-'))
  onTestFinished(() => rm(path, { recursive: true }))
  return { path, photos: join(path, 'photos'), ...photoFolder(path, { cleaner: reader, ...options }) }
}
const code = (taken: Taken): string => (taken.is === 'refused' ? taken.refused.code : taken.is)

test.each([
  ['jpg', () => jpeg()],
  ['png', () => drawn().png().toBuffer()],
  ['webp', () => drawn().webp().toBuffer()],
  ['heic', () => readFile(heic)],
])('%s is taken in by its content, kept as it is, and its copies show it', async (ending, make) => {
  const { path, photos, takeIn, copy } = await folder()
  const bytes = await make()
  const hash = hashOf(bytes)
  expect(await takeIn(bytes)).toEqual({ is: 'taken', hash, bytes: bytes.length, isNew: true })
  expect(await readFile(join(photos, `${hash}.${ending}`))).toEqual(bytes)
  expect(await takeIn(bytes)).toMatchObject({ is: 'taken', isNew: false })
  expect(await keptIn(path)).toMatchObject([{ hash, ending, bytes: bytes.length }])
  for (const size of [1600, 320] as const) expect(await cornersOf((await copy(hash, size)) as Uint8Array)).toEqual(upright)
})

// How a viewer must turn what is stored for each value of the tag Orientation (Exif 2.3, 4.6.4; from memory): its quarters then, row by row.
test.each([
  [1, 'red green blue white'],
  [2, 'green red white blue'],
  [3, 'white blue green red'],
  [4, 'blue white red green'],
  [5, 'red blue green white'],
  [6, 'blue red white green'],
  [7, 'white green blue red'],
  [8, 'green white red blue'],
])('a photo that says it lies in the way %i comes out upright', async (orientation, shown) => {
  const { takeIn, copy } = await folder()
  const turned = await drawn().withMetadata({ orientation }).jpeg().toBuffer()
  await takeIn(turned)
  for (const size of [1600, 320] as const)
    expect((await cornersOf((await copy(hashOf(turned), size)) as Uint8Array)).join(' ')).toBe(shown)
})

test('a copy holds the picture in sRGB and nothing else', async () => {
  const { takeIn, copy } = await folder()
  const tags = { IFD0: { Artist: 'Ana Roble' }, IFD3: { GPSLatitude: '1/1 2/1 3/1' } }
  const bytes = await drawn(2000, 1500)
    .withIccProfile('p3')
    .withExifMerge(tags)
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"/>')
    .jpeg()
    .toBuffer()
  expect(await sharp(bytes).metadata()).toMatchObject({
    exif: expect.any(Buffer),
    icc: expect.any(Buffer),
    xmp: expect.any(Buffer),
  })
  await takeIn(bytes)
  for (const size of [1600, 320] as const) {
    const copied = (await copy(hashOf(bytes), size)) as Uint8Array
    expect(await sharp(copied).metadata()).toMatchObject({ width: size, hasProfile: false, space: 'srgb' })
    expect(segmentsOf(copied)).toEqual([])
    expect(await cornersOf(copied)).toEqual(upright)
  }
})

/** The segments of a JPEG's head that hold something else than the picture: those of applications, but JFIF, and comments. */
function segmentsOf(bytes: Uint8Array): readonly string[] {
  const found: string[] = []
  for (let at = 2; bytes[at + 1] !== 0xda; at += 2 + ((bytes[at + 2] ?? 0) << 8) + (bytes[at + 3] ?? 0)) {
    const [mark, name] = [bytes[at + 1] ?? 0, String.fromCharCode(...bytes.subarray(at + 4, at + 8))]
    if ((mark >= 0xe0 && mark <= 0xef && name !== 'JFIF') || mark === 0xfe) found.push(`${mark.toString(16)} ${name}`)
  }
  return found
}

test('what is transparent stands on white, and a small photo is not made larger', async () => {
  const { takeIn, copy } = await folder()
  const bytes = await sharp({ create: { width: 9, height: 5, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } })
    .png()
    .toBuffer()
  await takeIn(bytes)
  const { data, info } = await sharp((await copy(hashOf(bytes), 1600)) as Uint8Array)
    .raw()
    .toBuffer({ resolveWithObject: true })
  expect([info.width, info.height, data[0]]).toEqual([9, 5, 255])
})

/** Writes other measures into the head of a PNG. */
function ofManyPixels(png: Buffer): Buffer {
  png.writeUInt32BE(9000, 16)
  png.writeUInt32BE(9000, 20)
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29)
  return png
}
const text = (content: string) => async () => Buffer.from(content)
test.each<[string, string, () => Promise<Buffer>]>([
  ['nothing', 'photo/empty', text('')],
  ['a drawing of lines', 'photo/format', text('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')],
  ['a GIF', 'photo/format', () => drawn(9, 9).gif().toBuffer()],
  ['a TIFF', 'photo/format', () => drawn(9, 9).tiff().toBuffer()],
  ['an AVIF', 'photo/format', () => drawn(64, 64).avif().toBuffer()],
  ['a page', 'photo/format', text('<!doctype html><img src=x>')],
  [
    'the head of a JPEG and a drawing of lines',
    'photo/damaged',
    async () => Buffer.from('ÿØÿ<svg xmlns="http://www.w3.org/2000/svg"/>', 'latin1'),
  ],
  ['a JPEG without its end', 'photo/damaged', async () => (await jpeg()).subarray(0, -200)],
  ['a PNG without its end', 'photo/damaged', async () => (await drawn().png().toBuffer()).subarray(0, -200)],
  ['a WebP without its end', 'photo/damaged', async () => (await drawn().webp().toBuffer()).subarray(0, -200)],
  ['a HEIC without its end', 'photo/damaged', async () => (await readFile(heic)).subarray(0, -200)],
  [
    'a small file that says it has many pixels',
    'photo/too-many-pixels',
    async () => ofManyPixels(await drawn(9, 9).png().toBuffer()),
  ],
])('%s is refused as %s, and leaves nothing behind', async (_, expected, make) => {
  const { photos, takeIn, copy } = await folder()
  const bytes = await make()
  expect(code(await takeIn(bytes))).toBe(expected)
  expect(await copy(hashOf(bytes), 320)).toBeUndefined()
  expect(await readdir(photos).catch(() => [])).toEqual([])
  expect(code(await takeIn(await jpeg()))).toBe('taken')
})

test('decoders that are not needed stay closed, also to whoever says that it is a JPEG', async () => {
  const { path } = await folder()
  const others = [
    await text('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')(),
    await drawn(9, 9).gif().toBuffer(),
    await drawn(9, 9).tiff().toBuffer(),
  ]
  for (const bytes of others) {
    await writeFile(join(path, 'a.jpg'), bytes)
    expect(await reader.clean(join(path, 'a.jpg'), 'jpg')).toEqual({ code: 'photo/damaged', values: {} })
  }
})

test('a file that is too big is refused unread', async () => {
  const { path, takeIn } = await folder({ limits: { mostBytes: 1_000_000 } })
  await writeFile(join(path, 'big.jpg'), new Uint8Array(1_000_001))
  expect(await takeIn(join(path, 'big.jpg'))).toMatchObject({ refused: { code: 'photo/too-big', values: { size: 2, most: 1 } } })
})

test('what is no hash names no photo, though a file lies where it would lead', async () => {
  const { path, photos, takeIn, kept, copy } = await folder()
  const bytes = await jpeg()
  await takeIn(bytes)
  await writeFile(join(path, 'outside.jpg'), bytes)
  for (const name of ['../outside', `small/${hashOf(bytes)}-320`, hashOf(bytes).toUpperCase(), ''])
    expect([await kept(name), await copy(name, 320)]).toEqual([undefined, undefined])
  expect(await readdir(join(photos, 'small'))).toHaveLength(2)
})

test('what was kept and is damaged now is refused where its copy would be made again', async () => {
  const { photos, takeIn, copy } = await folder()
  const bytes = await jpeg()
  await takeIn(bytes)
  await rm(join(photos, 'small'), { recursive: true })
  await writeFile(join(photos, `${hashOf(bytes)}.jpg`), bytes.subarray(0, 2000))
  expect(await copy(hashOf(bytes), 320)).toMatchObject({ code: 'photo/damaged' })
})

test('copies that many ask for at once are made once', async () => {
  let made = 0
  const counting: Cleaner = {
    ...reader,
    clean: (file, format) => {
      made++
      return reader.clean(file, format)
    },
  }
  const { photos, takeIn, copy } = await folder({ cleaner: counting })
  const bytes = await jpeg()
  await takeIn(bytes)
  await rm(join(photos, 'small'), { recursive: true })
  await Promise.all([1600, 320, 1600, 320].map((size) => copy(hashOf(bytes), size as 1600)))
  expect(made).toBe(2)
})
