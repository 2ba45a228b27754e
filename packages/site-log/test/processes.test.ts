import { rm } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { logFolder, logWriter, readSiteLog } from '../src/folder/index.ts'
import { batchesOf } from './crashes.ts'
import { killedWhileAdding, killedWhileMerging, program, tempFolder, together } from './processes.ts'

// A few of the calls; every one is in the long tests.
let folder = ''
let file = ''
beforeAll(async () => {
  folder = await tempFolder()
  file = await program(folder)
})
afterAll(() => rm(folder, { recursive: true }))

test('a process that is killed while it adds or merges leaves what it confirmed, and the next one goes on', async () => {
  const died = await Promise.all([
    ...[8, 17, 27].map((call) => killedWhileAdding(file, call)),
    ...[9, 20].map((call) => killedWhileMerging(file, call)),
  ])
  expect(died).toEqual([true, true, true, true, true])
}, 60_000)

test('several processes that write one folder lose no line, double none and mix none', async () => {
  expect(await together(file, 6)).toBe(2 * 12)
}, 60_000)

test('a folder of the log that somebody took away is made again', async () => {
  const job = await tempFolder()
  const writer = logWriter(job)
  const batches = batchesOf('tablet-1', 1, 1)
  await writer.add('tablet-1', batches[0] ?? [])
  await rm(logFolder(job), { recursive: true })
  await expect(writer.add('tablet-1', batches.flat())).rejects.toMatchObject({ code: 'ENOENT' })
  expect(await writer.add('tablet-1', batches.flat())).toMatchObject({ is: 'kept', added: 2 })
  expect((await readSiteLog(job)).wrong).toEqual([])
  await rm(job, { recursive: true })
})
