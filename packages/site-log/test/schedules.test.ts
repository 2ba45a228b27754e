import { expect, test } from 'vitest'
import { scheduleOf, wrongIn, wrongInFolders } from './schedules.ts'

/** Seeds that failed once. */
const once: readonly number[] = []
const count = 10_000
const seeds = Array.from({ length: count }, (_, i) => i + 1)

test(`${count} schedules of two to eight tablets fold to what was meant, in any order`, () => {
  expect([...once, ...seeds].map(wrongIn).find((each) => each !== undefined)).toBeUndefined()
})
test('copies of folders, made while they were written, merge to the same bytes in any order', () => {
  expect([...once, ...seeds.slice(0, count / 50)].map(wrongInFolders).find((each) => each !== undefined)).toBeUndefined()
})
test('the schedules hold what they are for', () => {
  const all = seeds.slice(0, 500).map(scheduleOf)
  const events = all.flatMap(({ all: lines }) => lines.map(({ event }) => event))
  expect(events.filter(({ over }) => (over?.length ?? 0) > 1).length).toBeGreaterThan(50)
  expect(events.filter(({ value }) => value === undefined).length).toBeGreaterThan(200)
  expect(new Set(all.map(({ tablets }) => tablets.length)).size).toBe(7)
})
