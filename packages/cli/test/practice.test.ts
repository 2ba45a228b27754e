import { access, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { practiceOn } from '../src/practice.ts'

const example = (name: string) => fileURLToPath(new URL(`../../../schema/examples/${name}`, import.meta.url))
const isThere = (file: string) =>
  access(file).then(
    () => true,
    () => false,
  )

test('a practice copy has the job and its catalogues, changes nothing in the job, and goes away', async () => {
  const { folder, away } = await practiceOn(example('shared-catalogue'))
  expect(await readFile(join(folder, 'job.json'), 'utf8')).toBe(
    await readFile(join(example('shared-catalogue'), 'job.json'), 'utf8'),
  )
  expect(await isThere(join(folder, '../catalogue.json'))).toBe(true)
  await writeFile(join(folder, 'note.txt'), 'tried')
  expect(await isThere(join(example('shared-catalogue'), 'note.txt'))).toBe(false)
  await away()
  expect(await isThere(folder)).toBe(false)
})
