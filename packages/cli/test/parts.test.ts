import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { csvOf } from '../src/csv.ts'
import { example, fileWith, line, smallJob } from './line.ts'

const job = example('tern-hollow')
/** Two windows alike, and a word about spares. */
async function twice(): Promise<string> {
  const order = JSON.parse(await readFile(`${job}/job.json`, 'utf8'))
  const [w1] = order.rooms[0].windows
  order.rooms[0].windows.push({ ...w1, id: 'w2', name: '=1+1' })
  order.job.handOver = { spares: ['two rings'] }
  return fileWith(JSON.stringify(order))
}

test('parts stand by window and once for the whole job', async () => {
  const { code, out } = await line('parts', await twice())
  const [, first, second, all] = out.split('\n\n')
  expect(code).toBe(0)
  expect(first).toMatch(/^Garden room, Window 1\n[\s\S]* 24 {2}ring .* Ash rod with rings/)
  expect(second).toMatch(/ 4 {2}screw/)
  expect(all).toMatch(/^In all\n[\s\S]* 48 {2}ring [\s\S]* 2 {2}rod .* 78 1\/4 in[\s\S]* 8 {2}screw/)
  expect(out).toMatch(/\nLeft as spares: two rings\n$/)
})

test('as JSON lengths are exact, and the sums are those of the windows', async () => {
  const { windows, job: all } = JSON.parse((await line('parts', await twice(), '--json')).out)
  const count = (lines: readonly { what: string; count: number }[]) => lines.find(({ what }) => what.endsWith('ring'))?.count
  expect([count(windows[0].lines), count(windows[1].lines), count(all)]).toEqual([24, 24, 48])
  expect(all.find((each: { what: string }) => each.what === 'rod-and-ring/part-rod').length).toBe(78.25 * 25_400_000)
})

test('a spreadsheet takes no cell for a formula', async () => {
  const { out } = await line('parts', await twice(), '--csv')
  expect(out).toMatch(/^room,window,count,part,length,hardware,spares\r\n/)
  expect(out).toContain("Garden room,'=1+1,24,ring,,Ash rod with rings,2\r\n")
})

test.each([
  ['=1', "'=1"],
  ['+1', "'+1"],
  ['-1', "'-1"],
  ['@x', "'@x"],
  ['\t=1', "'\t=1"],
  [' =1', "' =1"],
  ['a,"b"', '"a,""b"""'],
  ['a\nb', '"a\nb"'],
  ['1', '1'],
])('the cell %j is written as %j', (cell, written) => {
  expect(csvOf([[cell]])).toBe(`${written}\r\n`)
})

test('a list that is not whole says which window must be measured first', async () => {
  const { out, err } = await line('parts', example('not-measured-yet'))
  expect(out).toContain('panel')
  expect(err).toBe('Not complete: 1 window has places to measure first: garden-room/w1\n')
})

test('a job without windows has nothing to pack', async () => {
  const { out, err } = await line('parts', await fileWith(JSON.stringify(smallJob)))
  expect([out, err]).toEqual(['', 'There is no window in this job, so there is nothing to pack.\n'])
})

test('parts of one window alone have no sum', async () => {
  expect((await line('parts', await twice(), '--window', 'w2')).out).not.toContain('In all')
})
