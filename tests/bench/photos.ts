import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Cleaner, cleaner, photoFolder } from '@evenhem/photos'
import sharp from 'sharp'
import { drawn } from '../../packages/photos/test/drawn.ts'
import { tell } from './measure.ts'

const count = 16
const rounds = 4
const atOnce = 2

/** Photos of 12 megapixels, taken in with all that belongs to it, against the library alone, which makes the same two copies of each. */
export async function photos(): Promise<void> {
  console.log(
    `\nphotos, ${count} of 12 megapixels taken in, against sharp alone making the same two copies, ${atOnce} at a time both`,
  )
  const top = await mkdtemp(join(tmpdir(), 'evenhem-bench-'))
  const reader = cleaner()
  try {
    const files = await written(top)
    let best: readonly [number, number] = [0, 0]
    for (let round = 0; round < rounds; round++)
      best = [
        Math.max(best[0], await rate(files, await takingIn(top, `ours-${round}`, reader))),
        Math.max(best[1], await rate(files, await bare(top, `bare-${round}`))),
      ]
    const [ours, theirs] = best
    const note = `(${ours.toFixed(1)} against ${theirs.toFixed(1)} a second)`
    tell({ what: 'photos a second', is: (100 * ours) / theirs, unit: '%', limit: 85, way: 'least', note })
    tell({ what: 'memory of the process that decodes, at most', is: reader.peak() / 1e6, unit: 'MB', limit: 600 })
  } finally {
    reader.close()
    await rm(top, { recursive: true, force: true })
  }
}

/** One drawn picture, each time with a comment of its own, so that no two photos are the same. */
async function written(top: string): Promise<readonly string[]> {
  const tags = { IFD0: { Artist: 'Ana Roble' }, IFD3: { GPSLatitude: '1/1 2/1 3/1' } }
  const grain = await sharp({
    create: { width: 4032, height: 3024, channels: 3, background: '#888', noise: { type: 'gaussian', mean: 128, sigma: 12 } },
  })
    .png({ compressionLevel: 0 })
    .toBuffer()
  const picture = await sharp(await drawn(4032, 3024).png({ compressionLevel: 0 }).toBuffer())
    .composite([{ input: grain, blend: 'soft-light' }])
    .withExif(tags)
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 90 })
    .toBuffer()
  return Promise.all(
    Array.from({ length: count }, async (_, i) => {
      const file = join(top, `${i}.jpg`)
      await writeFile(file, Buffer.concat([picture.subarray(0, 2), Buffer.from([0xff, 0xfe, 0, 3, i]), picture.subarray(2)]))
      return file
    }),
  )
}

type Work = (file: string) => Promise<unknown>

async function takingIn(top: string, name: string, reader: Cleaner): Promise<Work> {
  await mkdir(join(top, name))
  const folder = photoFolder(join(top, name), { cleaner: reader })
  return async (file) => {
    const taken = await folder.takeIn(file)
    if (taken.is !== 'taken') throw new Error(taken.refused.code)
  }
}

async function bare(top: string, name: string): Promise<Work> {
  await mkdir(join(top, name))
  let made = 0
  const copy = (file: string, size: number) =>
    sharp(file)
      .autoOrient()
      .resize({ width: size, height: size, fit: 'inside' })
      .jpeg({ quality: 80 })
      .toFile(join(top, name, `${made++}.jpg`))
  return (file) => Promise.all([copy(file, 1600), copy(file, 320)])
}

/** How many a second. */
async function rate(files: readonly string[], work: Work): Promise<number> {
  const waiting = [...files]
  const from = performance.now()
  const one = async (): Promise<void> => {
    for (let file = waiting.shift(); file; file = waiting.shift()) await work(file)
  }
  await Promise.all(Array.from({ length: atOnce }, one))
  return (1000 * files.length) / (performance.now() - from)
}
