import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Schema, Validator } from '@cfworker/json-schema'
import { isWrong, readEvent } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { random } from '../tools/jobs.ts'

// The published schema of a log's line, read by a validator that has nothing to do with ours, and `readEvent` must refuse the same. What a schema
// cannot say is told apart and listed below.

const file = fileURLToPath(new URL('../../schema/log/1/event.schema.json', import.meta.url))
const schema = JSON.parse(readFileSync(file, 'utf8')) as Schema
const validator = new Validator(schema, '2020-12', false)
const takes = (line: string): boolean => validator.validate(JSON.parse(line)).valid
const codeOf = (line: string): string | undefined => {
  const read = readEvent(line)
  return isWrong(read) ? read.code : undefined
}

const hash = 'a1'.repeat(32)
const first = { by: 'tablet-1', n: 1, count: 1, clock: '2026-11-25T09:12:00Z', place: '/rooms/den/ceiling', value: '96 in' }
const later = { ...first, n: 2, count: 7, who: 'Ana', before: hash, over: ['tablet-1:1', 'b:12'] }
type Event = Record<string, unknown>

const junk: readonly unknown[] = [
  ...[
    null,
    true,
    false,
    0,
    1,
    -1,
    1.5,
    2 ** 53,
    2 ** 53 - 1,
    '',
    'a',
    'é',
    '😀',
    [],
    {},
    ['b:1'],
    ['b:1', 'b:1'],
    ['b'],
    ['b:0'],
    ['b:01'],
  ],
  ...[
    '/',
    '/a',
    '/a~',
    '/a~0',
    '/a~2',
    'a/b',
    '/\n',
    '~1',
    '/a/~01',
    'Tablet',
    '-a',
    'a_b',
    'a.b',
    'a'.repeat(40),
    'a'.repeat(41),
  ],
  ...[
    hash,
    hash.toUpperCase(),
    `${hash}0`,
    '😀'.repeat(200),
    '😀'.repeat(201),
    'x'.repeat(1000),
    `/${'x'.repeat(999)}`,
    `/${'x'.repeat(1000)}`,
  ],
  ...[
    '2026-11-25T09:12:00Z',
    '2026-11-25t09:12:00z',
    '2026-11-25T09:12:00.123-05:00',
    '2024-02-29T00:00:00Z',
    '2026-02-29T00:00:00Z',
  ],
  ...[
    '2026-11-25 09:12:00Z',
    '2026-11-25T09:12Z',
    '2026-11-25',
    '2026-13-01T00:00:00Z',
    '2026-11-25T25:00:00Z',
    '2026-11-25T09:60:00Z',
  ],
  ...['2016-12-31T23:59:60Z', '2026-11-25T09:12:00+24:00', '2026-11-25T09:12:00', 'today'],
  ...[
    ['b:999999999999999'],
    ['b:9999999999999999'],
    [1],
    [['b:1']],
    { a: { b: 1 } },
    Array.from({ length: 1000 }, (_, i) => `b:${i + 1}`),
  ],
  ...[Array.from({ length: 1001 }, (_, i) => `b:${i + 1}`), { a: null }, 1e300, 'b:1', '__proto__'],
]
const strange = ['colour', 'By', 'values', '', 'n ', 'toString', 'constructor']
const pick = <T>(list: readonly T[], next: () => number): T => list[Math.floor(next() * list.length)] as T

/** A good entry in which up to three things were spoilt, or not. */
function spoilt(seed: number): string {
  const next = random(seed)
  const event: Event = { ...pick([first, later], next) }
  for (let times = Math.floor(next() * 3); times >= 0; times--) {
    const name = pick([...Object.keys(later), ...Object.keys(later), pick(strange, next)], next)
    if (next() < 0.2) delete event[name]
    else event[name] = pick(junk, next)
  }
  return JSON.stringify(event)
}

test('the schema and the reader take and refuse the same of 4,000 entries', () => {
  const lines = Array.from({ length: 4000 }, (_, i) => spoilt(i + 1))
  const unlike = lines.filter((line) => takes(line) !== (codeOf(line) === undefined))
  expect([...new Set(unlike)].slice(0, 5)).toEqual([])
  const good = lines.filter((line) => codeOf(line) === undefined).length
  expect([good > 200, good < 3800, new Set(lines.map(codeOf)).size]).toEqual([true, true, 12])
})

test('both take an entry with every member, and each member with every piece of junk that is right for it', () => {
  for (const event of [first, later])
    expect([takes(JSON.stringify(event)), codeOf(JSON.stringify(event))]).toEqual([true, undefined])
  const lines = Object.keys(later).flatMap((name) => junk.map((value) => JSON.stringify({ ...later, [name]: value })))
  expect(lines.filter((line) => takes(line) !== (codeOf(line) === undefined))).toEqual([])
})

const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)])
test.each([
  ['spaces', '{ "by":"a","n":1,"count":1,"clock":"2026-11-25T09:12:00Z","place":"/a"}', 'log/odd-json'],
  ['a name twice', '{"by":"b","by":"a","n":1,"count":1,"clock":"2026-11-25T09:12:00Z","place":"/a"}', 'log/odd-json'],
  ['a number in another form', '{"by":"a","n":1.0,"count":1,"clock":"2026-11-25T09:12:00Z","place":"/a"}', 'log/odd-json'],
  [
    'an escape that is not needed',
    '{"by":"\\u0061","n":1,"count":1,"clock":"2026-11-25T09:12:00Z","place":"/a"}',
    'log/odd-json',
  ],
  ['half of a character', JSON.stringify({ ...first, value: '\ud800' }), 'log/odd-json'],
  ['names that are numbers, the wrong way round', JSON.stringify(first).replace('"96 in"', '{"2":1,"1":1}'), 'log/odd-json'],
  ['a line that is too long', JSON.stringify({ ...first, value: 'x'.repeat(70_000) }), 'log/long-line'],
  ['a value that nests too deep', JSON.stringify({ ...first, value: nested(17) }), 'log/member-value'],
])('what a schema cannot say is refused by the reader alone: %s', (_, line, code) => {
  expect([takes(line), codeOf(line)]).toEqual([true, code])
})

test('a value may nest sixteen deep, and a backslash before what looks like half a character is none', () => {
  for (const value of [nested(16), '\\ud800', '\\\\ud800', '😀'])
    expect(codeOf(JSON.stringify({ ...first, value }))).toBeUndefined()
  expect(codeOf(JSON.stringify({ ...first, value: '\\\ud800' }))).toBe('log/odd-json')
})
