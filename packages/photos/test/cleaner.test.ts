import { fileURLToPath } from 'node:url'
import { expect, onTestFinished, test } from 'vitest'
import { type Cleaned, type Cleaner, cleaner, type Limits, type Refused } from '../src/index.ts'

const obedient = fileURLToPath(new URL('obedient.mjs', import.meta.url))

/** Reads with a process that does what the name of each file says. */
function reading(limits: Partial<Limits> = {}, file = obedient): Cleaner {
  const made = cleaner(limits, { file, flags: [] })
  onTestFinished(made.close)
  return made
}
const said = (cleaned: Cleaned | Refused): string =>
  'code' in cleaned ? cleaned.code : `read beside ${(cleaned.large[0] ?? 0) - 1}`
const all = async (made: Cleaner, ...files: readonly string[]) =>
  Promise.all(files.map(async (file) => said(await made.clean(file, file.endsWith('.heic') ? 'heic' : 'jpg'))))

test('photos are read two at a time, and HEIC by itself', async () => {
  const made = reading()
  const many = await all(made, ...Array.from({ length: 9 }, (_, i) => `${i}.jpg`))
  expect(new Set(many)).toEqual(new Set(['read beside 0', 'read beside 1']))
  expect(await all(made, 'a.heic', 'b.heic', 'c.heic')).toEqual(Array(3).fill('read beside 0'))
})

test('what is heavy is read with nothing beside it, whatever comes before and after', async () => {
  const made = reading()
  const [, first, , second] = await all(made, 'a.jpg', 'heavy.jpg', 'b.jpg', 'heavy.webp', 'c.jpg', 'd.jpg')
  expect([first, second]).toEqual(['read beside 0', 'read beside 0'])
  expect(await all(made, 'heavy-1.jpg', 'heavy-2.jpg', 'a.jpg')).toEqual(Array(3).fill('read beside 0'))
})

test('one process reads many photos, and another one comes after a crash', async () => {
  const made = reading()
  const pid = async () => ((await made.clean('a.jpg', 'jpg')) as Cleaned).small[0]
  const first = await pid()
  expect(await pid()).toBe(first)
  expect(await all(made, 'crashes.jpg')).toEqual(['photo/stops-reader'])
  expect(await pid()).not.toBe(first)
})

test.each([
  ['crashes.jpg', 'photo/stops-reader'],
  ['eats.jpg', 'photo/too-much-memory'],
  ['hangs.jpg', 'photo/too-slow'],
])('%s costs nothing but itself, whatever is read beside it', async (bad, code) => {
  const made = reading({ mostMs: 300 })
  expect(await all(made, bad, 'a.jpg', 'b.heic')).toEqual([code, expect.stringMatching('^read beside'), 'read beside 0'])
})

test('a process that cannot be started is told with what it said, and tried again', async () => {
  const made = reading({}, `${obedient}.gone`)
  for (let i = 0; i < 2; i++) await expect(made.clean('a.jpg', 'jpg')).rejects.toThrow('Cannot find module')
})

test('a process without work ends, and another one takes up what comes later', async () => {
  const made = reading({ restMs: 1 })
  const pid = async () => ((await made.clean('a.jpg', 'jpg')) as Cleaned).small[0]
  const first = await pid()
  await expect.poll(pid).not.toBe(first)
})

test('after the end nothing is read, and what was being read is told so', async () => {
  const made = reading()
  const waits = expect(made.clean('hangs.jpg', 'jpg')).rejects.toThrow('was closed')
  made.close()
  await waits
  await expect(made.clean('a.jpg', 'jpg')).rejects.toThrow('was closed')
})
