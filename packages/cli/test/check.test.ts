import { readFile } from 'node:fs/promises'
import { dirname } from 'node:path'
import { expect, test } from 'vitest'
import { example, fileWith, line, smallJob } from './line.ts'

test('a good job is said to be good', async () => {
  const file = await fileWith(JSON.stringify(smallJob))
  expect(await line('check', file)).toEqual({ code: 0, out: `${file}: good\n`, err: '' })
})

test('a folder is the job in it', async () => {
  const file = await fileWith(JSON.stringify(smallJob))
  expect((await line('check', dirname(file))).out).toBe(`${file}: good\n`)
})

test('an error is shown with its place and the line that it is about, and counted', async () => {
  const file = await fileWith(JSON.stringify({ ...smallJob, units: 'inch' }, null, 2))
  const { code, out } = await line('check', file)
  expect(code).toBe(1)
  expect(out).toContain(`${file}:3:12 error job/choice`)
  expect(out).toContain('3 |   "units": "inch",')
  expect(out).toContain('^^^^^^')
  expect(out).toMatch(/: 1 error\n$/)
})

test('as JSON each has its code, place, line and sentence', async () => {
  const file = await fileWith(JSON.stringify({ ...smallJob, units: 'inch' }, null, 2))
  const { code, out } = await line('check', file, '--json')
  expect(code).toBe(1)
  expect(JSON.parse(out)).toMatchObject({
    file,
    diagnostics: [
      {
        code: 'job/choice',
        severity: 'error',
        place: '/units',
        line: 3,
        column: 12,
        says: expect.stringContaining('Unexpected "inch"'),
      },
    ],
  })
})

test('a warning is no problem', async () => {
  const { code, out } = await line('check', await fileWith(`\ufeff${JSON.stringify(smallJob)}`))
  expect(code).toBe(0)
  expect(out).toMatch(/: 1 (warning|note)\n$/)
})

test.each(['', '{ "format": ', '[]', '"job"', '{"format":"evenhem-job/9","units":"in","job":{},"rooms":[]}'])(
  '%j could not be read',
  async (text) => {
    const { code, out } = await line('check', await fileWith(text))
    expect(code).toBe(2)
    expect(out).toMatch(/: \d+ errors?\n$/)
  },
)

test('a path where nothing is could not be read', async () => {
  const path = `${example('tern-hollow')}/nothing`
  expect(await line('check', path)).toEqual({
    code: 2,
    out: '',
    err: `Unexpected path ${path}, expected a job file or its folder with job.json; nothing is there\n`,
  })
})

test('a folder without a job could not be read', async () => {
  const folder = dirname(await fileWith('', 'other.json'))
  expect((await line('check', folder)).err).toContain('expected a job file or its folder with job.json; nothing is there')
})

test('a good read is followed by what each window’s plan found, and the counts', async () => {
  const { code, out } = await line('check', example('rings-missing'))
  expect(code).toBe(1)
  expect(out).toMatch(/^Garden room, Window 1\n {2}fail {5}2 rings are missing: 22 packed, 24 needed for 26 hooks\.\n/)
  expect(out).toContain('Stops everything from mount on.')
  expect(out).toMatch(/\n\n\S+job\.json: 1 check fails, \d+ pass\n$/)
})

test('checks that pass are shown when they are asked for', async () => {
  const [few, all] = [await line('check', example('tern-hollow')), await line('check', example('tern-hollow'), '--all')]
  expect(few.out).toMatch(/^\S+job\.json: good, \d+ pass\n$/)
  expect(all.out.match(/^ {2}pass /gm)?.length).toBe(Number(/good, (\d+) pass/.exec(few.out)?.[1]))
})

test('what is to be measured stands in plain places, with how many rules wait', async () => {
  const { code, out } = await line('check', example('not-measured-yet'))
  expect(code).toBe(0)
  expect(out).toMatch(/ {2}measure {2}wall, opening, casing, width \(\d+ rules wait for it\)\n/)
  expect(out).not.toContain('/rooms/')
  expect(out).toMatch(/: \d+ are not known yet,.* 5 places to measure, \d+ rules wait\n$/)
})

test('as JSON the findings stand beside the diagnostics', async () => {
  const { out } = await line('check', example('rings-missing'), '--json')
  const { findings, asks, counts } = JSON.parse(out)
  expect(findings.filter((each: { verdict: string }) => each.verdict === 'fail')).toEqual([
    expect.objectContaining({
      in: '/rooms/garden-room/windows/w1',
      names: ['Garden room', 'Window 1'],
      code: 'rod-and-ring/rings',
      says: expect.stringContaining('2 rings are missing'),
      stops: 'mount',
    }),
  ])
  expect([asks, counts.fails]).toEqual([[], 1])
})

test('lengths in findings are in the units that were asked for', async () => {
  const job = example('rod-too-short')
  expect((await line('check', job)).out).toContain(' in')
  expect((await line('check', job, '--units', 'mm')).out).toMatch(/\d mm/)
})

test('a name in a job is shown and never obeyed by the terminal', async () => {
  const text = await readFile(`${example('rings-missing')}/job.json`, 'utf8')
  const { out } = await line('check', await fileWith(text.replace('"Garden room"', '"Garden\\u001b[2Jroom"')))
  expect(out).toContain('fail')
  expect(out).not.toContain('\u001b')
})
