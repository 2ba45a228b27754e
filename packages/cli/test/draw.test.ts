import { readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { example, fileWith, line } from './line.ts'

const job = example('tern-hollow')
const draw = (...words: readonly string[]) => line('draw', job, '--window', 'w1', ...words)

test.each(['elevation', 'plan', 'marks', 'level'])('the %s is one SVG with its own colours and letters', async (view) => {
  const { code, out, err } = await draw('--view', view)
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^<svg [\s\S]*<\/svg>\n$/)
  expect(out.match(/<svg [^>]*class="drawing on-paper"[^>]*><style>/g)).toHaveLength(1)
  expect(out).toContain('@font-face')
})

test('it asks no network for anything', async () => {
  const { out } = await draw('--view', 'elevation')
  expect(out.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\((?!data:)|href=|<script/)
})

test('it says which window it is and what its numbers are in', async () => {
  expect((await draw('--view', 'marks')).out).toContain('House at Tern Hollow, Garden room, Window 1. Lengths in inches.')
  expect((await draw('--view', 'marks', '--units', 'mm')).out).toContain('Lengths in millimetres, rounded to the tape.')
})

test('open and closed draperies are drawn differently', async () => {
  const [drawn, stacked] = await Promise.all([
    draw('--view', 'elevation', '--state', 'drawn'),
    draw('--view', 'elevation', '--state', 'stacked'),
  ])
  expect(drawn.out).not.toBe(stacked.out)
  expect(drawn.out).toBe((await draw('--view', 'elevation')).out)
})

test('a number that was read lies on tape', async () => {
  const words = ['--window', 'w1', '--view', 'elevation']
  expect((await line('draw', example('tern-hollow-found'), ...words)).out).toContain('figure measured')
  expect((await line('draw', job, ...words)).out).not.toContain('figure measured')
})

test('seen from above, it shows projection and returns, and says what each kind of number looks like', async () => {
  const { out } = await draw('--view', 'plan')
  expect(out).toContain('The left panel returns to the wall.')
  expect(out).toContain('projection: 3 1/2 in, ordered')
  for (const says of ['ordered', 'worked out']) expect(out).toContain(`>${says}</text>`)
})

test('it goes into a file, whose name is said', async () => {
  const file = join(dirname(await fileWith('')), 'w1.svg')
  expect(await draw('--view', 'marks', '--out', file)).toEqual({ code: 0, out: `${file}\n`, err: '' })
  expect(await readFile(file, 'utf8')).toBe((await draw('--view', 'marks')).out)
})

test('a file that cannot be written is said', async () => {
  const { code, err } = await draw('--view', 'marks', '--out', '/nowhere/w1.svg')
  expect([code, err]).toEqual([
    2,
    'Unexpected --out /nowhere/w1.svg, expected a file that can be written; the system says ENOENT\n',
  ])
})

test('a name in a job is text in the drawing', async () => {
  const text = (await readFile(`${job}/job.json`, 'utf8')).replace('House at Tern Hollow', '<script>alert(1)</script>')
  const { out } = await line('draw', await fileWith(text), '--window', 'w1', '--view', 'marks')
  expect(out).not.toContain('<script')
  expect(out).toContain('&lt;script')
})
