import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { reportInView } from '../src/report-progress.ts'
import { voiceIn } from '../src/voice.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

/** What is written while a report is made: 900 photos copied, two windows planned and drawn, and type set for three seconds. */
async function written(progress: boolean): Promise<string> {
  let all = ''
  const err = (text: string) => {
    all += text
  }
  await reportInView({ err, voice: voiceIn('en'), progress }, async ({ copied, told }) => {
    await vi.advanceTimersByTimeAsync(1000)
    copied(412, 900)
    for (const is of ['planned', 'drawn'] as const) {
      await vi.advanceTimersByTimeAsync(1000)
      told({ is, done: 1, total: 2 })
      told({ is, done: 2, total: 2 })
    }
    await vi.advanceTimersByTimeAsync(1000)
    told({ is: 'setting' })
    await vi.advanceTimersByTimeAsync(3000)
  })
  await vi.advanceTimersByTimeAsync(3000)
  return all
}

test('a report says how far it is, stage by stage, and while type is set the seconds', async () => {
  const line = (await written(true)).split('\r\u001b[K')
  expect(line).toEqual([
    '',
    'Copied 412 of 900 photos',
    'Planned 1 of 2 windows',
    'Drawn 1 of 2 windows',
    ...['Setting type, 0 s', 'Setting type, 1 s', 'Setting type, 2 s', 'Setting type, 3 s'],
    '',
  ])
})

test('nothing is said where nobody looks', async () => {
  expect(await written(false)).toBe('')
})
