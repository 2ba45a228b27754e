import { expect, test } from 'vitest'
import {
  crashesOfAdding,
  crashesOfMending,
  crashesOfMerging,
  crashesOfOthers,
  crashesOfOthersAlike,
  everyLeft,
} from '../../packages/site-log/test/crashes.ts'
import { wrongIn, wrongInFolders } from '../../packages/site-log/test/schedules.ts'

// A million schedules of tablets when all is asked for, and every crash with forty ways of losing what was not synced; CI takes a fixed slice.
const isAll = process.env.EVENHEM_LONG === 'all'
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
