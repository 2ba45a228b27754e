import { inch, type Length, readLength } from '@evenhem/length'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { rawLength } from '../src/data/raw.ts'

test.each([
  [84.75 * inch, '84 3/4 in'],
  [-0.625 * inch, '-5/8 in'],
  [0, '0 in'],
  [2_153_000_000, '2153 mm'],
  [100_000, '0.1 mm'],
  [-36 * inch, '-36 in'],
])('%i nanometres are written as %s', (length, written) => {
  expect(rawLength(length as Length)).toBe(written)
})

test('what is written reads back as the same length', () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e12, max: 1e12 }), (length) => {
      expect(readLength(rawLength(length as Length), 'cm')).toMatchObject({ ok: true, value: length === 0 ? 0 : length })
    }),
  )
})
