import { once } from 'node:events'
import { access, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { type AddressInfo, createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, onTestFinished, test, vi } from 'vitest'
import { practiceOn } from '../src/practice.ts'
import { line } from './line.ts'

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

test('a practice copy goes away as well where the port is taken', async () => {
  const temporary = await mkdtemp(join(tmpdir(), 'evenhem-'))
  onTestFinished(() => rm(temporary, { recursive: true }))
  const other = createServer().listen(0, '127.0.0.1')
  onTestFinished(() => void other.close())
  await once(other, 'listening')
  const port = String((other.address() as AddressInfo).port)
  vi.stubEnv('TMPDIR', temporary)
  const { code, err } = await line('serve', example('tern-hollow'), '--practice', '--port', port)
  vi.unstubAllEnvs()
  expect([code, err]).toEqual([2, expect.stringContaining(`Unexpected port ${port}, expected a free one`)])
  expect(await readdir(temporary)).toEqual([])
})
