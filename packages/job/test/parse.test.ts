import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parse } from '../src/read/parse.ts'
import { scan } from '../src/read/scan.ts'
import { toValue } from '../src/read/tree.ts'
import { readJob } from '../src/read.ts'
import { bare, jobText } from './job.ts'

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}
/** What a slip of the keyboard makes of a text: some characters taken out, others put in. */
const slips = fc
  .tuple(
    fc.array(
      fc.tuple(
        fc.nat(2000),
        fc.nat(6),
        fc.constantFrom(
          '',
          ',',
          '"',
          '{',
          '}',
          '[',
          ']',
          ':',
          "'",
          '\\',
          '/',
          '//',
          '1',
          '-',
          '.',
          'e',
          'true',
          'x',
          '\n',
          '\t',
          '\u00a0',
          '\ud800',
          '“',
          ' 1/2',
        ),
      ),
      { minLength: 1, maxLength: 4 },
    ),
    fc.boolean(),
  )
  .map(([edits, small]) =>
    edits.reduce(
      (text, [at, cut, put]) => text.slice(0, at % text.length) + put + text.slice((at % text.length) + cut),
      small ? '{"a": [1, -2.5e3, "x\\u0041", {}], "b": null}' : jobText(),
    ),
  )
const codes = (text: string) => parse(text).faults.map(({ code }) => code)
const value = (text: string) => toValue(parse(text).root)

test('a text is free of faults if and only if JSON.parse takes it', () =>
  fc.assert(
    fc.property(fc.oneof(slips, fc.string(), fc.json()), (text) => void expect(codes(text).length === 0).toBe(isJson(text))),
    { numRuns: 3000 },
  ))

test('of a text without faults the tree has the value that JSON.parse gives', () =>
  fc.assert(fc.property(fc.json(), (text) => void expect(value(text)).toEqual(JSON.parse(text)))))

test('the quick scan counts the names and the depth of any value', () =>
  fc.assert(
    fc.property(fc.json({ maxDepth: 6 }), (text) => {
      const names = (read: unknown): number =>
        read !== null && typeof read === 'object'
          ? (Array.isArray(read) ? 0 : Object.keys(read).length) +
            Object.values(read).reduce((sum: number, one) => sum + names(one), 0)
          : 0
      expect(scan(text)).toMatchObject({ names: names(JSON.parse(text)) })
    }),
  ))

test('reading goes on behind a fault, and every fault is said', () => {
  expect(codes('{ // note\n \'a\': 1,, "b" 2 "c": [1, 2,] }')).toEqual([
    'job/comment',
    'job/quotes',
    'job/extra-comma',
    'job/missing-colon',
    'job/missing-comma',
    'job/trailing-comma',
  ])
  expect(value('{ // note\n \'a\': 1,, "b" 2 "c": [1, 2,] }')).toEqual({ a: 1, b: 2, c: [1, 2] })
})

test('a bracket that does not close is closed where the one around it does', () => {
  expect(value('{"a": [1, {"b": 2], "c": 3}')).toEqual({ a: [1, { b: 2 }], c: 3 })
  expect(codes('{"a": [1, {"b": 2], "c": 3}')).toEqual(['job/unclosed'])
})

test('a quote that does not close ends with its line', () => {
  expect(value('{"a": "x,\n"b": 1}')).toEqual({ a: 'x', b: 1 })
})

test('a length without quotes is taken for the text that it is', () => {
  for (const length of ['86 1/2', '86-1/2', '1/2', '-5/8', '2197 mm', '86.5in', '86"', '86½']) {
    expect([length, value(`[${length}, 1]`), codes(`[${length}, 1]`)]).toEqual([length, [length, 1], ['job/bare-length']])
  }
})

test('numbers of other notations are read as what they mean, when they mean one', () => {
  expect(value('[+1, .5, 5., 007, -.5]')).toEqual([1, 0.5, 5, 7, -0.5])
  expect([value('[0x1F, 1.2.3]'), codes('[0x1F, 1.2.3]')]).toEqual([[], ['job/no-number', 'job/no-number']])
})

test('a file that is no JSON at all has no more than a hundred faults', () => {
  expect(codes(','.repeat(5000).replaceAll(',', ';,')).length).toBeLessThanOrEqual(100)
})

test('sixty-four levels are read, one more is not', () => {
  const nested = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`
  expect(readJob(nested(64), bare).diagnostics.map(({ code }) => code)).toEqual(['job/no-object'])
  expect(readJob(nested(65), bare).diagnostics.map(({ code, column }) => [code, column])).toEqual([['job/too-deep', 65]])
  expect(readJob(nested(1_000_000), bare).diagnostics).toHaveLength(1)
})
