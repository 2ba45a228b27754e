import { copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { drawn, hashOf, jpeg } from '../../photos/test/drawn.ts'
import { example, folder, line, lineWith, started } from './line.ts'

const window = '/rooms/garden-room/windows/w1'

/** A job's folder, and beside it photos of these names. */
async function site(files: Readonly<Record<string, Uint8Array>>) {
  const top = await folder()
  const job = join(top, 'job')
  await mkdir(job)
  await copyFile(join(example('tern-hollow'), 'job.json'), join(job, 'job.json'))
  for (const [name, bytes] of Object.entries(files)) await writeFile(join(top, name), bytes)
  return { job, at: (name: string) => join(top, name) }
}
const kept = async (job: string) => (await readdir(join(job, 'photos'))).filter((name) => /^[0-9a-f]{64}/.test(name))
const logOf = async (job: string) =>
  (await readFile(join(job, 'log/desk.jsonl'), 'utf8'))
    .trimEnd()
    .split('\n')
    .map((text) => JSON.parse(text))

test('photos are taken in, refused or unreadable, each with a line of its own', async () => {
  const good = await jpeg(300, 200)
  const { job, at } = await site({ 'sill.jpg': good, 'torn.jpg': good.subarray(0, 600), 'list.jpg': Buffer.from('1, 2') })
  const { code, out, err } = await line('photos', 'add', job, ...['sill.jpg', 'torn.jpg', 'list.jpg', 'gone.jpg'].map(at))
  expect(out).toBe(`${at('sill.jpg')}  ${hashOf(good).slice(0, 8)}  ${Math.ceil(good.length / 1000)} kB  taken in\n`)
  expect(err.split('\n')).toEqual([
    `${at('torn.jpg')}: Unexpected damage in the photo or an end before its time, expected a whole one; copy it again or take another.`,
    `${at('list.jpg')}: Unexpected content, expected a photo as JPEG, PNG, WebP or HEIC; save it as one of these.`,
    `${at('gone.jpg')}: Unexpected file, expected one that can be read; nothing is there`,
    '',
  ])
  expect([code, await kept(job)]).toEqual([2, [`${hashOf(good)}.jpg`]])
  const again = await line('photos', 'add', job, at('sill.jpg'), at('list.jpg'), '--lang', 'es')
  expect([again.code, again.out, again.err]).toEqual([
    1,
    expect.stringContaining('ya estaba'),
    expect.stringContaining('guárdela en uno'),
  ])
})

test('with a window they are recorded there by the names of their files, once, and listed with it', async () => {
  const [sill, rod] = [await jpeg(300, 200), await drawn(200, 300).png().toBuffer()]
  const { job, at } = await site({ 'Left sill.jpg': sill, 'rod.png': rod })
  for (let i = 0; i < 2; i++)
    expect((await started('photos', 'add', job, at('Left sill.jpg'), at('rod.png'), '--window', 'w1')).code).toBe(0)
  expect(await logOf(job)).toMatchObject([
    { by: 'desk', n: 1, place: `${window}/found/photos/${hashOf(sill)}`, value: 'Left sill' },
    { by: 'desk', n: 2, place: `${window}/found/photos/${hashOf(rod)}`, value: 'rod' },
  ])
  const { code, out } = await line('photos', job)
  expect([code, out.split('\n').length]).toEqual([0, 3])
  expect(out).toMatch(new RegExp(`^${hashOf(sill).slice(0, 8)}  \\d+ kB  Garden room, Window 1  Left sill$`, 'm'))
  expect(JSON.parse((await line('photos', job, '--json')).out)).toContainEqual({
    hash: hashOf(rod),
    bytes: rod.length,
    file: `photos/${hashOf(rod)}.png`,
    windows: [{ window, shows: 'rod' }],
  })
  const [{ place }] = await logOf(job)
  await rm(join(job, 'photos', `${hashOf(sill)}.jpg`))
  expect((await line('photos', job)).out).toContain(
    `${place.slice(-64).slice(0, 8)}  not here yet  Garden room, Window 1  Left sill`,
  )
  expect((await line('log', job)).out).toMatch(/desk {2}Garden room, Window 1.*Left sill/)
})

test('the same photo under two names is recorded once, and nothing stands against it', async () => {
  const bytes = await jpeg(20, 10)
  const { job, at } = await site({ 'a.jpg': bytes, 'b.jpg': bytes })
  expect((await line('photos', 'add', job, at('a.jpg'), at('b.jpg'), '--window', 'w1')).code).toBe(0)
  expect(await logOf(job)).toMatchObject([{ n: 1, value: 'a' }])
})

test('the page of what is left to mend shows photos whose copies were deleted', async () => {
  const photo = await jpeg(300, 200)
  const { job, at } = await site({ 'spot.jpg': photo })
  const order = await readFile(join(example('left-to-mend'), 'job.json'), 'utf8')
  await writeFile(join(job, 'job.json'), order.replaceAll('a'.repeat(64), hashOf(photo)))
  await line('photos', 'add', job, at('spot.jpg'))
  await rm(join(job, 'photos/small'), { recursive: true })
  expect((await line('punch-list', job, '--html', at('page.html'))).code).toBe(0)
  const copy = await readFile(join(job, 'photos/small', `${hashOf(photo)}-1600.jpg`), 'base64')
  expect(await readFile(at('page.html'), 'utf8')).toContain(`src="data:image/jpeg;base64,${copy}"`)
})

test('on a terminal it is told how far it is, and only what was cleaned is kept where that is asked for', async () => {
  const { job, at } = await site({ 'a.jpg': await jpeg(20, 10), 'b.jpg': await jpeg(10, 20) })
  const { err } = await lineWith({ progress: true }, 'photos', 'add', job, at('a.jpg'), at('b.jpg'), '--cleaned')
  expect(err).toBe('0 of 2 photos\r\u001b[K1 of 2 photos\r\u001b[K')
  expect((await kept(job)).map((name) => name.slice(64))).toEqual(['.clean.jpg', '.clean.jpg'])
})

test('what cannot be meant is said before anything is taken in', async () => {
  const { job, at } = await site({ 'a.jpg': await jpeg(20, 10) })
  expect(await line('photos', 'add', job)).toMatchObject({ code: 2, err: expect.stringContaining('expected one file or more') })
  expect(await line('photos', 'add', job, at('a.jpg'), '--window', 'w9')).toMatchObject({
    code: 2,
    err: expect.stringContaining('w9'),
  })
  expect(await line('photos', 'add', join(job, 'none'), at('a.jpg'))).toMatchObject({ code: 2 })
  await copyFile(join(job, 'job.json'), join(job, 'tern.json'))
  expect((await line('photos', join(job, 'tern.json'))).err).toContain('expected a folder with job.json')
  expect((await line('photos', job)).err).toContain('No photo is in')
  expect(await readdir(job)).toEqual(['job.json', 'tern.json'])
})
