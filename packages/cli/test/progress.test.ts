import { expect, test } from 'vitest'
import { eachInView } from '../src/progress.ts'
import { voiceIn } from '../src/voice.ts'
import { example, lineWith } from './line.ts'

/** Twelve windows that take so many milliseconds each, and what was written meanwhile. */
function twelve(each: number, progress: boolean): string {
  let written = ''
  let now = 0
  const err = (text: string) => {
    written += text
  }
  const work = (n: number) => {
    now += each
    return n
  }
  const numbers = Array.from({ length: 12 }, (_, n) => n)
  expect(eachInView(numbers, work, { err, voice: voiceIn('en'), progress }, () => now)).toEqual(numbers)
  return written
}

test('long work says how far it is, not too often, and takes its line away', () => {
  const written = twelve(60, true)
  expect(written.match(/Planned \d+ of 12 windows/g)).toEqual([
    'Planned 5 of 12 windows',
    'Planned 7 of 12 windows',
    'Planned 9 of 12 windows',
    'Planned 11 of 12 windows',
  ])
  expect(written.endsWith('\r\u001b[K')).toBe(true)
  expect(written).not.toContain('\n')
})

test('nothing is said where nobody looks, or when it is soon done', async () => {
  expect([twelve(1000, false), twelve(10, true)]).toEqual(['', ''])
  expect((await lineWith({ progress: true }, 'plan', example('tern-hollow'))).err).toBe('')
})
