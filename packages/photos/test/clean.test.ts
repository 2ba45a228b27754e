import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { crc32 } from 'node:zlib'
import { afterAll, expect, test } from 'vitest'
import { entry } from '../src/entry.ts'
import { type Format, usualLimits } from '../src/index.ts'
import { startReader } from '../src/reader.ts'
import { heldOf } from '../src/weight.ts'
import { drawn, jpeg } from './drawn.ts'

const top = mkdtempSync(join(tmpdir(), 'evenhem-clean-'))
const ends: string[] = []
const reader = startReader(entry(), usualLimits, ({ is }) => ends.push(is))
afterAll(() => {
  reader.end()
  rmSync(top, { recursive: true })
})

/** What the process that decodes says of a photo. */
async function said(format: Format, bytes: Uint8Array, isAlone: boolean): Promise<string> {
  const file = join(top, `photo.${format}`)
  writeFileSync(file, bytes)
  const { cleaned } = (await reader.read({ file, format, isAlone })) ?? {}
  if (cleaned === undefined) return `ended: ${ends.join()}`
  return cleaned === 'heavy' ? cleaned : 'code' in cleaned ? cleaned.code : 'cleaned'
}

// Heads that say other measures than the picture has: they weigh what they say, and nothing has to be large for it.
const wide = [6000, 5000] as const
function largeJpeg(photo: Buffer): Buffer {
  const at = photo.findIndex((byte, i) => byte === 0xff && (photo[i + 1] === 0xc0 || photo[i + 1] === 0xc2))
  photo.writeUInt16BE(wide[1], at + 5)
  photo.writeUInt16BE(wide[0], at + 7)
  return photo
}
function largePng(photo: Buffer): Buffer {
  photo.writeUInt32BE(wide[0], 16)
  photo.writeUInt32BE(wide[1], 20)
  photo.writeUInt32BE(crc32(photo.subarray(12, 29)), 29)
  return photo
}
function largeWebp(photo: Buffer): Buffer {
  photo.writeUInt16LE(wide[0], 26)
  photo.writeUInt16LE(wide[1], 28)
  return photo
}

const small = () => drawn(64, 48)
test.each<[string, Format, () => Promise<Buffer>]>([
  ['a JPEG in several scans', 'jpg', async () => largeJpeg(await small().jpeg({ progressive: true }).toBuffer())],
  ['an interlaced PNG', 'png', async () => largePng(await small().ensureAlpha().png({ progressive: true }).toBuffer())],
  ['a WebP', 'webp', async () => largeWebp(await small().webp().toBuffer())],
])('%s of 30 megapixels is heavy by its head, and read only by itself', async (_, format, make) => {
  const photo = await make()
  expect([await said(format, photo, false), await said(format, photo, true)]).toEqual(['heavy', 'photo/damaged'])
})

test.each<[string, Format, () => Promise<Buffer>]>([
  ['a JPEG in one scan', 'jpg', async () => largeJpeg(await jpeg(64, 48))],
  ['a PNG row by row', 'png', async () => largePng(await small().png().toBuffer())],
])('%s of 30 megapixels is read beside others', async (_, format, make) => {
  expect(await said(format, await make(), false)).toBe('photo/damaged')
})

test('a small photo is read beside others in every format but HEIC', async () => {
  const heic = readFileSync(fileURLToPath(new URL('drawn.heic', import.meta.url)))
  const photos: readonly (readonly [Format, Uint8Array])[] = [
    ['jpg', await small().jpeg({ progressive: true }).toBuffer()],
    ['png', await small().png({ progressive: true }).toBuffer()],
    ['webp', await small().webp().toBuffer()],
    ['heic', heic],
  ]
  const answers: string[] = []
  for (const [format, bytes] of photos) answers.push(await said(format, bytes, false))
  expect(answers).toEqual(['cleaned', 'cleaned', 'cleaned', 'heavy'])
})

test('an interlaced PNG of two bytes for each number weighs twice as much', () => {
  const head = { width: 10, height: 10, channels: 4, isProgressive: true } as const
  expect(heldOf('png', { ...head, depth: 'uchar' })).toBe(400)
  expect(heldOf('png', { ...head, depth: 'ushort' })).toBe(800)
})

/** The numbers in the head of the scan that decoders of sequential pictures do not use, as some phones write them. */
function withOddScan(photo: Buffer): Buffer {
  const at = photo.indexOf(Buffer.from([0xff, 0xda]))
  photo[at + 6 + 2 * (photo[at + 4] ?? 0)] = 0
  return photo
}
test('numbers of a scan that nobody uses are no damage; an end before its time is, beside them too', async () => {
  const odd = withOddScan(await jpeg())
  expect(await said('jpg', odd, false)).toBe('cleaned')
  expect(await said('jpg', odd.subarray(0, -200), false)).toBe('photo/damaged')
})
