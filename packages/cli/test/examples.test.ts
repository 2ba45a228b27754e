import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { example, folder, line, root } from './line.ts'

test('every example is listed with what it shows', async () => {
  const { out } = await line('examples')
  const entries = await readdir(`${root}schema/examples`, { withFileTypes: true })
  const names = entries.filter((entry) => entry.isDirectory() && entry.name !== 'not-ok').map((entry) => entry.name)
  expect(
    out
      .trimEnd()
      .split('\n')
      .map((row) => row.split(' ')[0]),
  ).toEqual(names.sort())
  expect(out).toMatch(/^rings-missing +1 window +Two rings too few were packed\.$/m)
  for (const row of out.trimEnd().split('\n')) expect(row).toMatch(/^\S+ +\d+ windows? +\S/)
})

test('a copy is a job with its schema beside it, otherwise byte for byte', async () => {
  const to = join(await folder(), 'mine')
  expect(await line('examples', 'tern-hollow', to)).toEqual({ code: 0, out: `${to}/job.json\n`, err: '' })
  const [copy, original] = await Promise.all([to, example('tern-hollow')].map((at) => readFile(`${at}/job.json`, 'utf8')))
  expect(copy).toBe(original?.replace('"../../job/1/job.schema.json"', '"./job.schema.json"'))
  expect(JSON.parse(await readFile(`${to}/job.schema.json`, 'utf8')).title).toBe('Job')
  expect((await line('check', to)).code).toBe(0)
})

test('a copy of what was signed is what was signed, its report too', async () => {
  const to = join(await folder(), 'mine')
  const { out } = await line('examples', 'heron-point-day', to)
  expect(out).toContain(`${to}/report.seal.json\n`)
  expect(await readFile(`${to}/job.json`)).toEqual(await readFile(`${example('heron-point-day')}/job.json`))
  expect(await line('verify', to)).toMatchObject({ code: 0, out: expect.stringContaining('Everything belongs together.') })
})

test('no log and no report is written over either, and nothing is begun', async () => {
  const to = await folder()
  await mkdir(join(to, 'log'))
  await writeFile(join(to, 'log/tablet-1.jsonl'), 'mine')
  const { code, err } = await line('examples', 'heron-point-day', to)
  expect([code, err]).toEqual([2, expect.stringContaining(`Unexpected ${to}/log/tablet-1.jsonl, expected no job there yet`)])
  expect(await readdir(to)).toEqual(['log'])
  expect(await readFile(join(to, 'log/tablet-1.jsonl'), 'utf8')).toBe('mine')
})

test('nothing is written over', async () => {
  const to = await folder()
  await line('examples', 'tern-hollow', to)
  const { code, err } = await line('examples', 'rings-missing', to)
  expect([code, err]).toEqual([
    2,
    `Unexpected ${to}/job.json, expected no job there yet; nothing was written, name another folder\n`,
  ])
  expect(await readFile(`${to}/job.json`, 'utf8')).not.toContain('Two rings')
})

test('a name that is none, or a copy to nowhere, says what to write', async () => {
  expect((await line('examples', 'ring-missing', 'x')).err).toContain('did you mean rings-missing?')
  expect((await line('examples', '../..', 'x')).err).toContain('Unexpected example ../..')
  expect((await line('examples', 'tern-hollow')).err).toBe(
    'Unexpected end after tern-hollow, expected a folder to copy it into; write evenhem examples tern-hollow <folder>\n',
  )
})
