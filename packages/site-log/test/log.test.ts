import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import {
  type Entry,
  type Event,
  fold,
  foundWith,
  hashOf,
  isWrong,
  type Line,
  logWords,
  readEvent,
  readLogFile,
  spanishLogWords,
  write,
  writeEvent,
} from '../src/index.ts'

const at = '/rooms/den/windows/w1/treatments/over/panels/left/finishedLength'
const clock = '2026-11-25T09:12:00Z'
const read = (text: string): Event => {
  const event = readEvent(text)
  if (isWrong(event)) throw new Error(event.code)
  return event
}
const entry = (event: Partial<Event> & Pick<Event, 'by' | 'n'>): Entry => {
  const whole: Event = { count: event.n, clock, place: at, ...event }
  return { event: whole, read: whole.value }
}
const values = (...entries: readonly Entry[]) =>
  fold(entries)
    .places.get(at)
    ?.live.map((each) => each.read)
const encoded = (...rows: readonly string[]) => new TextEncoder().encode(rows.join('\n'))
const nobody = fold([])
const lines = (): readonly Line[] =>
  write(
    { device: 'tablet-1', last: undefined, clock },
    [
      { place: at, value: '84 in' },
      { place: at, value: '85 in' },
    ],
    nobody,
  )

test('an event is one line that reads back as it was written', () => {
  const [first, second] = lines()
  expect(first?.text).toBe(`{"by":"tablet-1","n":1,"count":1,"clock":"${clock}","place":"${at}","value":"84 in"}`)
  expect(second?.event).toMatchObject({ n: 2, count: 2, over: ['tablet-1:1'], before: hashOf(first?.text ?? '') })
  expect(read(second?.text ?? '')).toEqual(second?.event)
})

test.each([
  ['{"by":"tablet-1"', 'log/no-json'],
  ['[]', 'log/no-event'],
  [`{"by":"a","n":1,"count":1,"clock":"${clock}","place":"/a","value":1e2}`, 'log/odd-json'],
  [`{"by":"a","n":1,"n":2,"count":1,"clock":"${clock}","place":"/a"}`, 'log/odd-json'],
  [`{"by":"../a","n":1,"count":1,"clock":"${clock}","place":"/a"}`, 'log/member-by'],
  [`{"by":"a","n":0,"count":1,"clock":"${clock}","place":"/a"}`, 'log/member-n'],
  [`{"by":"a","n":1,"count":1,"clock":"25 November","place":"/a"}`, 'log/member-clock'],
  [`{"by":"a","n":1,"count":1,"clock":"${clock}","place":"a"}`, 'log/member-place'],
  [`{"by":"a","n":1,"count":1,"clock":"${clock}","place":"/a","value":null}`, 'log/member-value'],
  [`{"by":"a","n":1,"count":1,"clock":"${clock}","place":"/a","over":["b"]}`, 'log/member-over'],
  [`{"by":"a","n":1,"count":1,"clock":"${clock}","place":"/a","colour":"red"}`, 'log/strange-member'],
  [`{"by":"a","n":2,"count":1,"clock":"${clock}","place":"/a"}`, 'log/before'],
  [`{"by":"a","n":1,"count":1,"clock":"${clock}","place":"/a","value":"\ud800"}`, 'log/odd-json'],
  [JSON.stringify({ by: 'a', n: 1, count: 1, clock, place: '/a', value: 'x'.repeat(70_000) }), 'log/long-line'],
])('a line that is no event is refused: %s', (line, code) => {
  expect(readEvent(line)).toMatchObject({ code })
})

test('everything that may be wrong with a line has its words, in both languages', () => {
  const source = ['event', 'log-file', 'merge', 'folder/writing', 'folder/reading'].map((name) =>
    readFileSync(new URL(`../src/${name}.ts`, import.meta.url), 'utf8'),
  )
  const said = source.join().match(/(?<=wrong\(.*)(?<=')log\/[a-z0-9-]+/g) ?? []
  const all = [
    ...said,
    ...['by', 'n', 'count', 'clock', 'who', 'before', 'place', 'value', 'over'].map((name) => `log/member-${name}`),
  ]
  expect([...new Set(all)].sort()).toEqual(Object.keys(logWords).sort())
  expect(Object.keys(spanishLogWords).sort()).toEqual(Object.keys(logWords).sort())
})

test('what nobody put anything over stands, and two that differ are a conflict', () => {
  const [a, b] = [entry({ by: 'a', n: 1, value: 84 }), entry({ by: 'b', n: 1, value: 85 })]
  expect(values(a, b)).toEqual([84, 85])
  expect(fold([a, b]).conflicts).toHaveLength(1)
  expect(values(a, b, entry({ by: 'a', n: 2, value: 85, over: ['a:1', 'b:1'] }))).toEqual([85])
})

test('the same value twice is no conflict, and a conflict reads as its latest value', () => {
  expect(fold([entry({ by: 'a', n: 1, value: 84 }), entry({ by: 'b', n: 1, value: 84 })]).conflicts).toEqual([])
  const site = fold([entry({ by: 'b', n: 1, count: 9, value: 85 }), entry({ by: 'a', n: 1, count: 3, value: 84 })])
  expect(site.readings[at]).toMatchObject({ value: 85, by: 'b' })
})

test('a value that was withdrawn is gone, from the order’s own readings too', () => {
  const gone = fold([entry({ by: 'a', n: 1, value: 84 }), entry({ by: 'a', n: 2, over: ['a:1'] })])
  expect(gone.readings).toEqual({})
  expect(foundWith({ [at]: { value: 83 } }, gone)).toEqual({})
  expect(foundWith({ [at]: { value: 83 } }, nobody)).toEqual({ [at]: { value: 83 } })
})

test('a withdrawal that did not know of another value leaves it', () => {
  expect(
    values(entry({ by: 'a', n: 1, value: 84 }), entry({ by: 'b', n: 1, over: ['a:1'] }), entry({ by: 'c', n: 1, value: 85 })),
  ).toEqual([85])
})

test('only an event at the same place is put over another', () => {
  const other = { ...entry({ by: 'b', n: 1, value: 1, over: ['a:1'] }) }
  expect(values(entry({ by: 'a', n: 1, value: 84 }), { ...other, event: { ...other.event, place: '/else' } })).toEqual([84])
})

test('a value that its place refuses is left out and reported', () => {
  const refused = { ...entry({ by: 'b', n: 1, value: 'red' }), read: undefined, refused: { code: 'job/x', values: {} } }
  const site = fold([entry({ by: 'a', n: 1, value: 84 }), refused])
  expect([site.readings[at]?.value, site.conflicts.length, site.refused]).toEqual([84, 0, [refused]])
})

test('a refused value that was put over a good one leaves the good one standing', () => {
  const good = entry({ by: 'a', n: 1, value: 84 })
  const refused = {
    ...entry({ by: 'a', n: 2, value: 'red', over: ['a:1'] }),
    read: undefined,
    refused: { code: 'job/x', values: {} },
  }
  expect(values(good, refused)).toEqual([84])
})

test('a torn last line costs that line', () => {
  const [first, second] = lines() as [Line, Line]
  const file = readLogFile('tablet-1', encoded(first.text, second.text.slice(0, 40)))
  expect(file.lines).toEqual([first])
  expect(file.wrong).toEqual([{ code: 'log/torn', values: { bytes: 40 }, line: 2 }])
})

test('a whole last line without its end was not confirmed, and counts as torn', () => {
  const [first] = lines() as [Line]
  expect(readLogFile('tablet-1', encoded(first.text))).toMatchObject({ lines: [], whole: 0 })
})

test('a changed line breaks the chain behind it, and what stands there counts', () => {
  const [first, second] = lines() as [Line, Line]
  const changed = writeEvent({ ...first.event, value: '80 in' })
  const file = readLogFile('tablet-1', encoded(changed, second.text, ''))
  expect(file.lines.map(({ event }) => event.value)).toEqual(['80 in', '85 in'])
  expect(file.wrong).toMatchObject([{ code: 'log/chain', line: 2 }])
})

test('lines of another device, lines again and lines that say another thing are left out', () => {
  const [first, second] = lines() as [Line, Line]
  const clash = writeEvent({ ...first.event, value: '80 in' })
  const strange = writeEvent({ ...first.event, by: 'tablet-2' })
  const file = readLogFile('tablet-1', encoded(first.text, first.text, clash, strange, '{', second.text, ''))
  expect(file.lines).toEqual([first, second])
  expect(file.wrong.map(({ code }) => code)).toEqual(['log/twice', 'log/clash', 'log/other-device', 'log/no-json'])
})
