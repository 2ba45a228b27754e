import { readdir, readFile } from 'node:fs/promises'
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
