import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type CopySize, cleaner, copySizes, photoFolder, sayRefused, type Taken } from '@evenhem/photos'
import { buildServer } from '@evenhem/server'
import exifr from 'exifr'
import sharp from 'sharp'
import { afterAll, expect, test } from 'vitest'
import { everyCase, stringsOf } from './corpora.ts'

const folder = `${process.env.EVENHEM_CORPORA}/photos/`
const top = mkdtempSync(join(tmpdir(), 'evenhem-photos-'))
const reader = cleaner()
const photos = photoFolder(top, { cleaner: reader })
afterAll(() => {
  reader.close()
  rmSync(top, { recursive: true })
})

interface Case {
  readonly name: string
  readonly taken: Taken
}
const filesIn = (collection: string): readonly string[] => readdirSync(folder + collection).filter((name) => name !== 'LICENSE')
/** Takes in all of a collection, two at a time, and prints how it went. */
async function takenIn(collection: string): Promise<readonly Case[]> {
  const names = filesIn(collection)
  const cases = await Promise.all(
    names.map(async (name) => ({ name, taken: await photos.takeIn(`${folder}${collection}/${name}`) })),
  )
  const ends = cases.map(({ taken }) => (taken.is === 'taken' ? 'taken in' : taken.refused.code))
  const counts = [...new Set(ends)].map((end) => `${ends.filter((each) => each === end).length} ${end}`)
  console.log(`${collection}: ${counts.join(', ')}`)
  expect(cases.length).toBeGreaterThan(0)
  return cases
}
async function copyOf({ taken }: Case, size: CopySize): Promise<Uint8Array> {
  const copy = await photos.copy(taken.hash, size)
  if (copy instanceof Uint8Array) return copy
  throw new Error(`there is no copy of ${taken.hash}`)
}
// What took the process with it, or too long, or too much memory, is not refused clearly.
const clear: readonly string[] = ['photo/damaged', 'photo/format', 'photo/empty', 'photo/too-many-pixels']
/** What is wrong with a refusal. */
const unclear = ({ name, taken }: Case): string | undefined =>
  taken.is === 'taken' || (clear.includes(taken.refused.code) && sayRefused(taken.refused).en.startsWith('Unexpected '))
    ? undefined
    : `${name}: ${taken.refused.code}`

/** How far two pictures of one size are apart, from 0 to 255; infinitely where their sizes differ. */
async function apart(one: Uint8Array, other: Uint8Array): Promise<number> {
  const [a, b] = await Promise.all([one, other].map((bytes) => sharp(bytes).raw().toBuffer({ resolveWithObject: true })))
  if (!a || !b || a.info.width !== b.info.width || a.info.height !== b.info.height) return Number.POSITIVE_INFINITY
  return a.data.reduce((sum, value, at) => sum + Math.abs(value - (b.data[at] ?? 0)), 0) / a.data.length
}
// They were turned before they were saved as JPEG, so they differ a little: by about 2; mirrored, by more than 70.
const near = 5

test('a picture comes out upright whichever way it lies', async () => {
  const cases = await takenIn('orientation')
  const upright = new Map(cases.filter(({ name }) => name.endsWith('_1.jpg')).map((each) => [each.name.split('_')[0], each]))
  expect(upright.size).toBeGreaterThan(0)
  await everyCase('orientations', cases, async (each) => {
    const model = upright.get(each.name.split('_')[0])
    if (!model) return `${each.name} has no upright picture beside it`
    for (const size of copySizes) {
      const far = await apart(await copyOf(each, size), await copyOf(model, size))
      if (far > near) return `${each.name} at ${size}: ${far} away from ${model.name}`
    }
  })
})

/** The tags that exiftool finds in each file, by its groups; those of the file itself left out. Undefined where this machine has no exiftool. */
function tagsIn(paths: readonly string[]): ReadonlyMap<string, readonly string[]> | undefined {
  const { stdout, error } = spawnSync('exiftool', ['-json', '-a', '-u', '-G1', ...paths], { encoding: 'utf8', maxBuffer: 1e9 })
  if (error) return undefined
  const own = /^(SourceFile|(ExifTool|System|JFIF):.*|File:(?!Comment).*|Composite:(ImageSize|Megapixels))$/
  const read: readonly Readonly<Record<string, string>>[] = JSON.parse(stdout)
  return new Map(read.map((tags) => [String(tags.SourceFile), Object.keys(tags).filter((name) => !own.test(name))]))
}

test('no copy of a camera’s photo holds a tag', async () => {
  const cases = await takenIn('exif')
  const taken = cases.filter((each) => each.taken.is === 'taken')
  await everyCase('refusals', cases, unclear)
  const copies = taken.flatMap(({ taken: { hash } }) => copySizes.map((size) => join(top, 'photos/small', `${hash}-${size}.jpg`)))
  const everything = {
    tiff: true,
    exif: true,
    gps: true,
    xmp: true,
    icc: true,
    iptc: true,
    ihdr: true,
    makerNote: true,
    userComment: true,
  }
  const told = (path: string) => exifr.parse(readFileSync(path), everything).catch(() => undefined)
  const originals = taken.map(({ name }) => `${folder}exif/${name}`)
  expect(
    (await Promise.all(originals.map(told))).filter((tags) => tags !== undefined).length,
    'originals with tags',
  ).toBeGreaterThan(0)
  await everyCase('copies, read by exifr', copies, async (path) => {
    const tags = await told(path)
    return tags === undefined ? undefined : `${path}: ${Object.keys(tags)}`
  })
  const found = tagsIn([...originals, ...copies])
  if (!found) return console.log('copies, read by exiftool: not run, since this machine has none')
  expect(originals.filter((path) => found.get(path)?.some((name) => /^(GPS|IFD|ExifIFD)/.test(name))).length).toBeGreaterThan(0)
  await everyCase('copies, read by exiftool', copies, (path) => {
    const tags = found.get(path)
    return tags?.length === 0 ? undefined : `${path}: ${tags}`
  })
})

test('PNG files are taken in, those that are damaged on purpose are refused', async () => {
  const cases = await takenIn('png')
  await everyCase('PNG', cases, async (each) => {
    const isGood = !each.name.startsWith('x')
    if (isGood !== (each.taken.is === 'taken')) return `${each.name} was ${each.taken.is}`
    if (isGood && (await sharp(await copyOf(each, 320)).stats()).channels.length === 0) return `${each.name} shows nothing`
    return unclear(each)
  })
})

test('damaged JPEG files are refused and cost nothing else; what is taken in of them is a whole picture', async () => {
  const cases = await takenIn('broken')
  expect(cases.filter(({ taken }) => taken.is === 'refused').length).toBeGreaterThan(cases.length / 2)
  await everyCase('damaged', cases, async (each) => {
    if (each.taken.is === 'taken') await sharp(await copyOf(each, 320)).stats()
    return unclear(each)
  })
})

test('no text is the name of a photo, and none becomes a path', async () => {
  writeFileSync(join(top, 'job.json'), '{"format":"evenhem-job/1"}')
  const server = buildServer({ job: top, photos: { cleaner: reader } })
  const headers = { origin: 'http://localhost', 'content-type': 'application/octet-stream' }
  const texts = [...stringsOf('strings/naughty.json'), ...stringsOf('web/traversal.json'), ...stringsOf('web/script.json')]
  const names = texts.filter((text) => text !== '' && !/\p{Surrogate}/u.test(text)).map(encodeURIComponent)
  const cases = names.flatMap((name) => [`/photos/${name}`, `/photos/${name}/320`, `/photos/${name}?from=0&size=1`])
  const before = readdirSync(top)
  await everyCase('names of photos', cases, async (url) => {
    const answer = await (url.includes('?from=')
      ? server.inject({ method: 'PUT', url, headers, payload: 'x' })
      : server.inject(url))
    return [400, 404, 414].includes(answer.statusCode) && answer.json().message.startsWith('Unexpected ')
      ? undefined
      : `${url}: ${answer.statusCode} ${answer.body.slice(0, 80)}`
  })
  await server.close()
  expect(readdirSync(top)).toEqual(before)
})
