import { mkdir, mkdtemp, readdir, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { crashAt, strikes, until } from '../../site-log/test/crashes.ts'
import { type Left, SimulatedDisk } from '../../site-log/test/simulated-disk.ts'
import { carryPhotos, keptIn } from '../src/index.ts'
import { hashOf, jpeg } from './drawn.ts'

type Photos = Readonly<Record<string, Uint8Array>>
async function folder(photos: Photos): Promise<string> {
  const path = await mkdtemp(join(tmpdir(), 'evenhem-photos-'))
  onTestFinished(() => rm(path, { recursive: true }))
  await mkdir(join(path, 'photos'))
  for (const [name, bytes] of Object.entries(photos)) await writeFile(join(path, 'photos', name), bytes)
  return path
}
const namesIn = (path: string): Promise<string[]> => readdir(join(path, 'photos'))
const codesOf = async (ours: string, theirs: string) =>
  (await carryPhotos(ours, theirs)).leftOut.map(({ refused }) => refused.code)
const [one, two] = [await jpeg(40, 30), await jpeg(30, 40)]
const hash = hashOf(one)

test('a photo that is here in any shape stays as it is, and what is no photo stays there', async () => {
  const ours = await folder({ [`${hash}.clean.jpg`]: two })
  const theirs = await folder({ [`${hash}.jpg`]: one, [`${hashOf(two)}.jpg`]: two, 'notes.txt': one, [`.${hash}-1.new`]: one })
  expect(await carryPhotos(ours, theirs)).toEqual({ hashes: [hashOf(two)], leftOut: [] })
  expect((await namesIn(ours)).sort()).toEqual([`${hash}.clean.jpg`, `${hashOf(two)}.jpg`].sort())
  expect(await carryPhotos(ours, theirs)).toEqual({ hashes: [], leftOut: [] })
})

test('a cleaned copy comes as it is, and an original before it', async () => {
  const ours = await folder({})
  const cleaned = await folder({ [`${hash}.clean.jpg`]: two })
  const both = await folder({ [`${hash}.clean.jpg`]: two, [`${hash}.jpg`]: one })
  expect(await keptIn(both)).toMatchObject([{ ending: 'jpg' }])
  expect((await carryPhotos(ours, cleaned)).hashes).toEqual([hash])
  expect(await readFile(join(ours, 'photos', `${hash}.clean.jpg`))).toEqual(two)
  const other = await folder({})
  await carryPhotos(other, both)
  expect(await namesIn(other)).toEqual([`${hash}.jpg`])
})

test.each<[string, string, string, Uint8Array]>([
  ['other content', 'photo/other-name', 'jpg', two],
  ['a photo under the ending of another format', 'photo/other-name', 'png', one],
  ['a cleaned copy that is no picture', 'photo/other-name', 'clean.jpg', Buffer.from('<svg/>')],
  ['nothing', 'photo/empty', 'jpg', new Uint8Array()],
  ['more than a photo may have', 'photo/too-big', 'jpg', new Uint8Array(40_000_001)],
])('%s is left out as %s', async (_, code, ending, bytes) => {
  const [ours, theirs] = [await folder({}), await folder({ [`${hash}.${ending}`]: bytes })]
  expect(await codesOf(ours, theirs)).toEqual([code])
  expect(await namesIn(ours)).toEqual([])
})

test('no link leads out of the other folder: of a photo, of all of them, to itself', async () => {
  const elsewhere = await folder({ [`${hash}.jpg`]: one })
  const [ours, theirs, linked] = [await folder({}), await folder({}), await folder({})]
  await symlink(join(elsewhere, 'photos', `${hash}.jpg`), join(theirs, 'photos', `${hash}.jpg`))
  await symlink(`${hashOf(two)}.jpg`, join(theirs, 'photos', `${hashOf(two)}.jpg`))
  expect((await codesOf(ours, theirs)).sort()).toEqual(['photo/elsewhere', 'photo/unreadable'])
  await rm(join(linked, 'photos'), { recursive: true })
  await symlink(join(elsewhere, 'photos'), join(linked, 'photos'))
  expect(await codesOf(ours, linked)).toEqual(['photo/elsewhere'])
  await mkdir(join(theirs, 'photos', `${'0'.repeat(64)}.jpg`))
  expect(await codesOf(ours, theirs)).toContain('photo/unreadable')
  expect(await namesIn(ours)).toEqual([])
})

test('a folder that was reached by a link itself is read, and one without photos has none', async () => {
  const [ours, theirs] = [await folder({}), await folder({ [`${hash}.jpg`]: one })]
  await symlink(theirs, join(ours, 'stick'))
  expect((await carryPhotos(ours, join(ours, 'stick'))).hashes).toEqual([hash])
  await rename(join(theirs, 'photos'), join(theirs, 'else'))
  expect(await carryPhotos(ours, theirs)).toEqual({ hashes: [], leftOut: [] })
})

const bytes = [1, 2].map((seed) => Uint8Array.from({ length: 200 }, (_, at) => [0xff, 0xd8, 0xff][at] ?? (at * seed) % 251)) as [
  Uint8Array,
  Uint8Array,
]
/** Two folders, of which the other one has two photos on the disk. */
async function begin(): Promise<SimulatedDisk> {
  const on = new SimulatedDisk('/job', '/other', '/other/photos')
  for (const each of bytes) {
    const handle = await on.disk.open(`/other/photos/${hashOf(each)}.jpg`, 'wx')
    await handle.write(each)
    await handle.sync()
  }
  const photos = await on.disk.open('/other/photos', 'r')
  await photos.sync()
  return on
}
const carry = async ({ disk: on }: SimulatedDisk): Promise<void> => {
  await carryPhotos('/job', '/other', on)
}

/** Whatever has a name is whole; of what else lies there nothing counts. Answers how many have one. */
async function whole({ disk: on }: SimulatedDisk, where: string): Promise<number> {
  const names = (await on.list('/job/photos')).filter((name) => name.endsWith('.jpg'))
  for (const name of names)
    if (`${hashOf(await on.read(`/job/photos/${name}`))}.jpg` !== name) throw new Error(`${where}: ${name} is not whole`)
  return names.length
}
async function mustEndWell(on: SimulatedDisk, where: string): Promise<void> {
  on.mishap = () => undefined
  await whole(on, where)
  await carry(on)
  on.reboot('nothing')
  if ((await whole(on, where)) !== 2) throw new Error(`${where}: not all of them are there`)
}

test('wherever carrying is cut off, a photo is here whole or not at all, and carrying again ends well', async () => {
  const all = await strikes(carry, begin)
  const lefts: readonly Left[] = ['kill', 'nothing', 'names', 'data', 1, 2]
  for (const strike of all)
    for (const left of lefts) {
      const on = await begin()
      on.mishap = crashAt(strike)
      await until(carry(on))
      on.reboot(left)
      await mustEndWell(on, JSON.stringify([strike, left]))
    }
  expect(all.length).toBeGreaterThan(40)
})

test.each(['EIO', 'ENOSPC'])('a call that fails with %s leaves nothing half, and carrying again ends well', async (code) => {
  const calls = (await strikes(carry, begin)).filter(({ when }) => when === 'before').map(({ at }) => at)
  for (const at of calls) {
    const on = await begin()
    on.mishap = ({ number }) => (number === at ? { is: 'fails', code, half: true } : undefined)
    await carry(on).catch((error) => expect(error).toMatchObject({ code }))
    on.mishap = () => undefined
    expect((await on.disk.list('/job/photos')).filter((name) => name.endsWith('.new'))).toEqual([])
    await mustEndWell(on, JSON.stringify([at, code]))
  }
  expect(calls.length).toBeGreaterThan(20)
})
test('a photo that the other disk cannot read is named, and the next one comes', async () => {
  const on = await begin()
  const bad = `${hashOf(bytes[0])}.jpg`
  on.mishap = ({ does, path }) => (does === 'read' && path.endsWith(bad) ? { is: 'fails', code: 'EIO' } : undefined)
  expect(await carryPhotos('/job', '/other', on.disk)).toEqual({
    hashes: [hashOf(bytes[1])],
    leftOut: [{ name: bad, refused: { code: 'photo/unreadable', values: { code: 'EIO' } } }],
  })
})
