import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { questions } from '../src/questions.ts'
import { folder, line, lineWith } from './line.ts'

const least = ['--number', '26-200', '--country', 'US', '--units', 'in'] as const
const window = ['--room', 'Garden room', '--window', 'Wide window'] as const
const jobIn = async (at: string) => JSON.parse(await readFile(`${at}/job.json`, 'utf8'))

test('options make a job that reads, with what was left open as places to measure', async () => {
  const at = join(await folder(), 'new')
  const more = [
    '--opening',
    '62 x 86 1/4',
    '--rod-diameter',
    '1 3/8',
    '--rod',
    '78',
    '--top',
    '91',
    '--length',
    '89',
    '--pleats',
    '11',
  ]
  expect(await line('new', at, ...least, ...window, ...more)).toEqual({
    code: 0,
    out: `${at}/job.json\n`,
    err: `Look at what is still open: evenhem check ${at}\n`,
  })
  const { code, out } = await line('check', at)
  expect([code, out]).toEqual([0, expect.stringContaining('Rod with rings, ring, eye drop')])
  expect(out).not.toMatch(/error|warning/)
})

test('the least that is said is a job, named by its number', async () => {
  const at = await folder()
  await line('new', at, ...least)
  expect(await jobIn(at)).toEqual({
    $schema: './job.schema.json',
    format: 'evenhem-job/1',
    units: 'in',
    job: { number: '26-200', name: '26-200', country: 'US' },
    rooms: [],
  })
  expect((await line('check', at)).out).toBe(`${at}/job.json: good\n`)
})

test('without a terminal it says which options are missing and writes nothing', async () => {
  const at = join(await folder(), 'new')
  const { code, err } = await line('new', at, '--number', '1')
  expect([code, err]).toEqual([
    2,
    `Unexpected end of what is known and no terminal to ask on, expected --country, --units too; write evenhem new ${at} --country US --units in|mm|cm\n`,
  ])
  expect(existsSync(at)).toBe(false)
})

test('a job that is there is left as it is', async () => {
  const at = await folder()
  await line('new', at, ...least)
  const before = await readFile(`${at}/job.json`, 'utf8')
  const { code, err } = await line('new', at, ...least, '--customer', 'Somebody')
  expect([code, err]).toEqual([2, expect.stringContaining('expected no job there yet')])
  expect(await readFile(`${at}/job.json`, 'utf8')).toBe(before)
})

test.each([
  [['--country', 'usa'], 'Unexpected --country usa, expected a country’s two letters; write it like US'],
  [[...window, '--opening', '62'], 'Unexpected --opening 62, expected a width and a height; write it like "62 x 86 1/4"'],
  [
    [...window, '--rod-diameter', '1 3/8', '--pleats', '0'],
    'Unexpected --pleats 0, expected a whole number from 1 to 200; write it like 11',
  ],
  [[...window, '--rod-diameter', '1,5'], '--rod-diameter: Unexpected comma in 1,5'],
  [['--window', 'Bay'], 'Unexpected --window without --room, expected where it belongs; write --room too'],
  [[...window, '--opening', '2000 x 2100'], 'job/absurd-length-unit'],
])('%j is refused and nothing is written', async (words, said) => {
  const at = join(await folder(), 'new')
  const { code, err } = await line('new', at, ...least, ...words)
  expect([code, err]).toEqual([2, expect.stringContaining(said)])
  expect(existsSync(at)).toBe(false)
})

test('on a terminal it asks for what no option says, again until it can be meant', async () => {
  const at = await folder()
  const asked: string[] = []
  const answers = ['26-9', '', 'usa', 'DE', 'mm', '', 'Küche', '']
  const ask = async (question: string) => {
    asked.push(question)
    return answers.shift()
  }
  const { code, err } = await lineWith({ ask }, 'new', at)
  expect(code).toBe(0)
  expect(asked.slice(1, 4)).toEqual([
    'Name of the job [26-9]: ',
    'Country of the site, two letters: ',
    'Country of the site, two letters: ',
  ])
  expect(err).toContain('Unexpected --country usa')
  expect((await jobIn(at)).rooms).toEqual([{ id: 'kuche', name: 'Küche', windows: [] }])
})

test('who stops answering has written nothing', async () => {
  const at = join(await folder(), 'new')
  const { code, err } = await lineWith({ ask: async () => undefined }, 'new', at)
  expect([code, err]).toEqual([2, expect.stringContaining('nothing was written')])
  expect(existsSync(at)).toBe(false)
})

test.each(['pair', 'one-way left', 'one-way right', 'stationary'])('a %s reads', async (draw) => {
  const at = await folder()
  await line('new', at, ...least, ...window, '--rod-diameter', '1 3/8', '--draw', draw)
  expect((await line('check', at)).out).not.toMatch(/error/)
  expect((await jobIn(at)).rooms[0].windows[0].treatments[0].panels).toHaveLength(draw.startsWith('one-way') ? 1 : 2)
})

test('every question can be answered by an option', async () => {
  const { out } = await line('new', '--help')
  for (const { flag } of questions) expect(out).toContain(`--${flag} `)
})
