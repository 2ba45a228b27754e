import { rm } from 'node:fs/promises'
import { expect, test } from 'vitest'
import {
  crashesOfAdding,
  crashesOfMending,
  crashesOfMerging,
  crashesOfOthers,
  crashesOfOthersAlike,
  everyLeft,
} from '../../packages/site-log/test/crashes.ts'
import {
  killedWhileAdding,
  killedWhileMerging,
  program,
  run,
  tempFolder,
  together,
} from '../../packages/site-log/test/processes.ts'
import { wrongIn, wrongInFolders } from '../../packages/site-log/test/schedules.ts'
import { effort } from '../tools/long.ts'

// A million schedules of tablets when all is asked for, and every crash with forty ways of losing what was not synced; CI takes a fixed slice.
const isAll = effort === 'all'
const merges = isAll ? 1_000_000 : 40_000
const lefts = everyLeft(isAll ? 40 : 10)
/** `npm test` has the seeds below. */
const from = 10_001

test(`${merges} merge schedules fold to what was meant, and every hundredth merges as files`, () => {
  let files = 0
  for (let seed = from; seed < from + merges; seed++) {
    const wrong = wrongIn(seed) ?? (seed % 100 === 0 ? wrongInFolders(seed) : undefined)
    if (wrong !== undefined) expect.fail(wrong)
    if (seed % 100 === 0) files++
  }
  console.log(`merges: ${JSON.stringify({ schedules: merges, from, files })}`)
})

test('a crash at every call of adding, mending and merging loses nothing that was confirmed', async () => {
  const counts = {
    adding: await crashesOfAdding(lefts),
    mending: await crashesOfMending(everyLeft(2), isAll ? 5 : 97),
    merging: await crashesOfMerging(lefts),
    others: (await crashesOfOthers(lefts)) + (await crashesOfOthersAlike(lefts)),
  }
  console.log(`crashes: ${JSON.stringify(counts)}`)
  expect(Object.values(counts).every((count) => count > 100)).toBe(true)
})

test('a real process that is killed at any call of the file system leaves what it confirmed', async () => {
  const folder = await tempFolder()
  const file = await program(folder)
  const counts = { adding: 0, merging: 0 }
  const step = isAll ? 1 : 4
  for (let call = 1; await killedWhileAdding(file, call); call += step) counts.adding++
  for (let call = 1; await killedWhileMerging(file, call); call += step) counts.merging++
  console.log(`killed processes: ${JSON.stringify(counts)}`)
  expect(Math.min(counts.adding, counts.merging)).toBeGreaterThan(20 / step)
  await rm(folder, { recursive: true })
})

test('many processes in one folder, and a lock that a killed one left behind', async () => {
  const folder = await tempFolder()
  const file = await program(folder)
  const batches = isAll ? 200 : 40
  const lines = await together(file, batches)
  const job = await tempFolder()
  const orders = { job, device: 'tablet-1', sizes: [1, 1] }
  // At call 8 it holds the lock.
  expect((await run(file, { ...orders, dies: 8 })).killed).toBe(true)
  const from = Date.now()
  expect((await run(file, orders)).said.at(-1)).toEqual({ n: 2, added: 1 })
  const waited = Date.now() - from
  expect([waited > 8_000, waited < 25_000]).toEqual([true, true])
  console.log(`writers: ${JSON.stringify({ processes: 5, lines, lockTakenOverAfterSeconds: Math.round(waited / 1000) })}`)
  await Promise.all([folder, job].map((each) => rm(each, { recursive: true })))
})
