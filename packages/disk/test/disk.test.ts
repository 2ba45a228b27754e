import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { crashAt, strikes, until } from '../../site-log/test/crashes.ts'
import { type Left, SimulatedDisk } from '../../site-log/test/simulated-disk.ts'
import { disk, replaceFile, writeSynced } from '../src/index.ts'

const [old, fresh] = ['the old one', 'a new one that is longer'].map((text) => new TextEncoder().encode(text)) as [
  Uint8Array,
  Uint8Array,
]
const sure = (): void => undefined
async function folder(): Promise<string> {
  const path = await mkdtemp(join(tmpdir(), 'evenhem-disk-'))
  onTestFinished(() => rm(path, { recursive: true }))
  return path
}
/** A disk on which the old one is. */
async function begin(): Promise<SimulatedDisk> {
  const on = new SimulatedDisk('/job')
  await replaceFile(on.disk, '/job/list', old, sure)
  return on
}
const replace = ({ disk: on }: SimulatedDisk): Promise<void> => replaceFile(on, '/job/list', fresh, sure)
const textOf = async ({ disk: on }: SimulatedDisk): Promise<string> => new TextDecoder().decode(await on.read('/job/list'))

test('wherever replacing is cut off, the old file is there or the new one, whole, and doing it again ends well', async () => {
  const lefts: readonly Left[] = ['kill', 'nothing', 'everything', 'data', 'names', 1, 2, 3]
  const all = await strikes(replace, begin)
  for (const strike of all)
    for (const left of lefts) {
      const on = await begin()
      on.mishap = crashAt(strike)
      await until(replace(on))
      on.reboot(left)
      on.mishap = () => undefined
      expect(['the old one', 'a new one that is longer'], JSON.stringify([strike, left])).toContain(await textOf(on))
      await replace(on)
      on.reboot('nothing')
      expect(await textOf(on)).toBe('a new one that is longer')
    }
  expect(all.length).toBeGreaterThan(12)
})

test('a disk that is full, or a file that is no longer ours, leaves the old one and nothing beside it', async () => {
  const on = await begin()
  on.room = 30
  await expect(replace(on)).rejects.toThrow('ENOSPC')
  on.room = 1_000
  const lost = () => {
    throw new Error('lost')
  }
  await expect(replaceFile(on.disk, '/job/list', fresh, lost)).rejects.toThrow('lost')
  expect([await textOf(on), await on.disk.list('/job')]).toEqual(['the old one', ['list']])
})

test('what is written little by little is written to its end', async () => {
  const on = await begin()
  on.mishap = () => ({ is: 'short' })
  await writeSynced(on.disk, '/job/more', 'wx', fresh)
  expect(await on.disk.read('/job/more')).toEqual(fresh)
})

test('on this machine a file is put in the place of another, of which half lay beside it, for its owner alone', async () => {
  const file = join(await folder(), 'list')
  await writeFile(file, old)
  await writeFile(`${file}.new`, 'half')
  await replaceFile(disk, file, fresh, sure, 0o600)
  expect(new Uint8Array(await readFile(file))).toEqual(fresh)
  expect((await stat(file)).mode & 0o777).toBe(0o600)
  expect(await readdir(join(file, '..'))).toEqual(['list'])
})

test('a folder that is not there lists nothing, and a file that is not there has no size', async () => {
  const nowhere = join(await folder(), 'none')
  expect([await disk.list(nowhere), await disk.size(nowhere)]).toEqual([[], undefined])
})
