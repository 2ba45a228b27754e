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
