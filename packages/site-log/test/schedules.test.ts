import { expect, test } from 'vitest'
import { scheduleOf, wrongIn, wrongInFolders } from './schedules.ts'

/** Seeds that failed once. */
const once: readonly number[] = []
const seeds = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i)
const firstWrong = (all: readonly number[], wrong: (seed: number) => string | undefined) =>
  all.map(wrong).find((each) => each !== undefined)

// 10,000 in all.
test.each([1, 2501, 5001, 7501])(
  '2,500 schedules of two to eight tablets from seed %i fold to what was meant, in any order',
  (from) => {
    expect(firstWrong([...once, ...seeds(from, 2500)], wrongIn)).toBeUndefined()
  },
)
test('copies of folders, made while they were written, merge to the same bytes in any order', () => {
  expect(firstWrong([...once, ...seeds(1, 100)], wrongInFolders)).toBeUndefined()
})
test('the schedules hold what they are for', () => {
  const all = seeds(1, 500).map(scheduleOf)
  const events = all.flatMap(({ all: lines }) => lines.map(({ event }) => event))
  expect(events.filter(({ over }) => (over?.length ?? 0) > 1).length).toBeGreaterThan(50)
  expect(events.filter(({ value }) => value === undefined).length).toBeGreaterThan(200)
  expect(new Set(all.map(({ tablets }) => tablets.length)).size).toBe(7)
})
