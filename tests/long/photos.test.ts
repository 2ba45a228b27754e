import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { crc32, deflateSync } from 'node:zlib'
import { type Cleaned, cleaner, photoFolder, type Refused } from '@evenhem/photos'
import { expect, inject, onTestFinished, test } from 'vitest'
import { crashesOfTakingIn, failuresOfTakingIn } from '../../packages/photos/test/crashes.ts'
import { cornersOf, drawn, hashOf, jpeg, noise, upright } from '../../packages/photos/test/drawn.ts'
import { everyLeft } from '../../packages/site-log/test/crashes.ts'
import { effort } from '../tools/long.ts'

const [seeds, kills] = effort === 'all' ? [60, 60] : [4, 4]
const tern = fileURLToPath(new URL('../../schema/examples/tern-hollow/job.json', import.meta.url))

function folder(): string {
  const path = mkdtempSync(join(tmpdir(), 'evenhem-photos-'))
  onTestFinished(() => rmSync(path, { recursive: true }))
  return path
}
const code = (cleaned: Cleaned | Refused): string => ('code' in cleaned ? cleaned.code : 'cleaned')

test('wherever taking in is cut off on a simulated disk, a photo is there whole or not at all', async () => {
  const crashes = (await crashesOfTakingIn(everyLeft(seeds), 'pieces')) + (await crashesOfTakingIn(everyLeft(seeds), 'whole'))
  const failures = (await failuresOfTakingIn('EIO')) + (await failuresOfTakingIn('ENOSPC'))
  console.log(`taking in: ${crashes} crashes, ${failures} failures`)
  expect(Math.min(crashes, failures)).toBeGreaterThan(100)
})

/** A job with photos beside it, more than are taken in while it is waited for. */
async function site() {
  const top = folder()
  mkdirSync(join(top, 'job'))
  copyFileSync(tern, join(top, 'job/job.json'))
  const photos = await Promise.all(Array.from({ length: 12 }, (_, seed) => noise(1800, 1400, seed + 1)))
  const files = photos.map((bytes, i) => {
    writeFileSync(join(top, `${i}.jpg`), bytes)
    return join(top, `${i}.jpg`)
  })
  return { job: join(top, 'job'), files, photos }
}
const namesIn = (job: string): readonly string[] => {
  const at = join(job, 'photos')
  return existsSync(at) ? readdirSync(at).filter((name) => /^[0-9a-f]{64}\./.test(name)) : []
}
/** Everything in the folder of photos, what is only on its way too. */
const entriesOf = (job: string): number => (existsSync(join(job, 'photos')) ? readdirSync(join(job, 'photos')).length : 0)
/** The processes that a process has started; none where the system does not say so. */
const childrenOf = (pid: number): readonly number[] => {
  const file = `/proc/${pid}/task/${pid}/children`
  return existsSync(file) ? readFileSync(file, 'utf8').trim().split(' ').filter(Boolean).map(Number) : []
}

test('killed at any moment every photo is there whole or not at all, the reader goes too, and adding again brings all', async () => {
  const { job, files, photos } = await site()
  const hashes = new Set(photos.map(hashOf))
  // Without a window: a log's lock that a killed process leaves is waited for.
  const add = (...more: readonly string[]) =>
    spawn(process.execPath, [inject('command'), 'photos', 'add', job, ...files, ...more], { stdio: 'ignore' })
  let [struck, seen] = [0, 0]
  for (let i = 0; i < kills; i++) {
    rmSync(join(job, 'photos'), { recursive: true, force: true })
    const child = add()
    await expect.poll(() => entriesOf(job), { interval: 2, timeout: 30_000 }).toBeGreaterThan(i % 10)
    const readers = childrenOf(child.pid ?? 0)
    if (child.exitCode === null) struck++
    child.kill('SIGKILL')
    if (child.exitCode === null && child.signalCode === null) await once(child, 'exit')
    for (const name of namesIn(job)) expect(`${hashOf(readFileSync(join(job, 'photos', name)))}.jpg`).toBe(name)
    seen += namesIn(job).length
    for (const reader of readers) await expect.poll(() => existsSync(`/proc/${reader}`), { timeout: 10_000 }).toBe(false)
  }
  const last = add('--window', 'w1')
  expect(await once(last, 'exit')).toEqual([0, null])
  expect(
    namesIn(job)
      .map((name) => name.slice(0, 64))
      .sort(),
  ).toEqual([...hashes].sort())
  expect(
    spawnSync(process.execPath, [inject('command'), 'photos', job], { encoding: 'utf8' }).stdout.match(/Window 1/g),
  ).toHaveLength(photos.length)
  console.log(`killed while adding photos: ${struck} times, ${seen} photos were there`)
  expect(struck).toBe(kills)
})

/** An interlaced PNG of nothing, small as a file and large in memory. */
function large(side: number): Buffer {
  const chunk = (name: string, content: Uint8Array): Buffer => {
    const body = Buffer.concat([Buffer.from(name), content])
    const [length, checksum] = [Buffer.alloc(4), Buffer.alloc(4)]
    length.writeUInt32BE(content.length)
    checksum.writeUInt32BE(crc32(body))
    return Buffer.concat([length, body, checksum])
  }
  const head = Buffer.alloc(13)
  head.writeUInt32BE(side)
  head.writeUInt32BE(side, 4)
  head.set([8, 6, 0, 0, 1], 8)
  const content = deflateSync(Buffer.alloc((side * 4 + 1) * side + 16 * side), { level: 1 })
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
  return Buffer.concat([start, chunk('IHDR', head), chunk('IDAT', content), chunk('IEND', new Uint8Array())])
}

test.each([
  ['photo/too-much-memory', { mostMemory: 200_000_000 }],
  ['photo/too-slow', { mostMs: 150 }],
])('a photo that is refused as %s by a real process costs nothing but itself', async (expected, limits) => {
  const top = folder()
  const [bad, good] = [join(top, 'bad.png'), join(top, 'good.jpg')]
  writeFileSync(bad, large(7_000))
  writeFileSync(good, await jpeg())
  const reader = cleaner(limits)
  onTestFinished(reader.close)
  const cleaned = await Promise.all([
    reader.clean(bad, 'png'),
    reader.clean(good, 'jpg'),
    reader.clean(bad, 'png'),
    reader.clean(good, 'jpg'),
  ])
  expect(cleaned.map(code)).toEqual([expected, 'cleaned', expected, 'cleaned'])
})

test('photos of 48 megapixels and interlaced ones stay below 600 MB', async () => {
  const top = folder()
  const reader = cleaner()
  onTestFinished(reader.close)
  const photos = photoFolder(top, { cleaner: reader })
  const all = [
    await noise(8_000, 6_000),
    await noise(8_000, 6_000, 2),
    large(7_500),
    await drawn(6_000, 4_000).withMetadata({ orientation: 8 }).jpeg().toBuffer(),
  ]
  expect((await Promise.all(all.map(photos.takeIn))).map(({ is }) => is)).toEqual(all.map(() => 'taken'))
  console.log(`the process of the decoders held at most ${Math.round(reader.peak() / 1e6)} MB`)
  expect(reader.peak()).toBeLessThan(600e6)
})

test('two photos that are held whole are not held at once', async () => {
  const file = join(folder(), 'large.png')
  const picture = 5_500 * 5_500 * 4
  writeFileSync(file, large(5_500))
  const peakOf = async (readAll: (read: () => Promise<string>) => Promise<readonly string[]>): Promise<number> => {
    const reader = cleaner()
    onTestFinished(reader.close)
    expect(await readAll(async () => code(await reader.clean(file, 'png')))).toEqual(['cleaned', 'cleaned', 'cleaned'])
    return reader.peak()
  }
  const inTurn = await peakOf(async (read) => [await read(), await read(), await read()])
  const together = await peakOf((read) => Promise.all([read(), read(), read()]))
  console.log(`large photos in turn took ${Math.round(inTurn / 1e6)} MB, sent together ${Math.round(together / 1e6)} MB`)
  expect(inTurn).toBeGreaterThan(picture)
  expect(together - inTurn).toBeLessThan(picture / 3)
})

test('HEIC of an encoder that others wrote decodes, in its colours and whatever its size', async () => {
  if (spawnSync('heif-enc', ['--version']).error)
    return console.log('HEIC from heif-enc: not run, since this machine has none; the one in packages/photos/test was made by it')
  const top = folder()
  const reader = cleaner()
  onTestFinished(reader.close)
  const photos = photoFolder(top, { cleaner: reader })
  const sizes = [
    [64, 64],
    [161, 97],
    [1_601, 900],
    [4_032, 3_024],
  ] as const
  for (const profile of ['srgb', 'p3'])
    for (const [width, height] of sizes) {
      const [png, heic] = [join(top, 'drawn.png'), join(top, 'drawn.heic')]
      await drawn(width, height)
        .withIccProfile(profile)
        .withExif({ IFD0: { Artist: 'Ana Roble' } })
        .png()
        .toFile(png)
      expect(spawnSync('heif-enc', ['-q', '70', png, '-o', heic]).status).toBe(0)
      const taken = await photos.takeIn(heic)
      const copy = (await photos.copy(taken.hash, 1600)) as Uint8Array
      expect([taken.is, await cornersOf(copy)], `${width} × ${height}, ${profile}`).toEqual(['taken', upright])
    }
  console.log(`HEIC from heif-enc: ${2 * sizes.length} files`)
})
