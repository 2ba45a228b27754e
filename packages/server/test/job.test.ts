import { createHash } from 'node:crypto'
import { readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { diagnosticsJson, extensionsOf, readJob } from '@evenhem/job/read'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { folder, server, smallJob } from './folder.ts'

test('the read job is served, with its readings and what is to say about it', async () => {
  const { job, readings, diagnostics } = readJob(Buffer.from(JSON.stringify(smallJob)), extensionsOf(plugins))
  const answer = await (await server()).inject('/job')
  const { hash } = answer.json()
  expect(answer.headers['content-type']).toBe('application/json; charset=utf-8')
  expect(answer.json()).toEqual(
    JSON.parse(JSON.stringify({ hash, ordered: job, readings, diagnostics: { en: diagnosticsJson(diagnostics), es: [] } })),
  )
  expect(answer.json().ordered.rooms[0].ceiling).toBe(96 * 25_400_000)
})

test('the hash of the job file’s bytes is served with it: what a signature is put under, also of a file that cannot be read', async () => {
  const { job, viewer } = await folder()
  const built = await server({ job, viewer })
  const file = join(job, 'job.json')
  const hashOfFile = async () =>
    createHash('sha256')
      .update(await readFile(file))
      .digest('hex')
  expect((await built.inject('/job')).json().hash).toBe(await hashOfFile())
  await writeFile(file, '{ "format": ')
  expect((await built.inject('/job')).json().hash).toBe(await hashOfFile())
})

test('a file is a job too', async () => {
  const { job, viewer } = await folder()
  const answer = await (await server({ job: join(job, 'job.json'), viewer })).inject('/job')
  expect(answer.json().ordered.job.name).toBe('Heron Lodge')
})

test('a job that did not change is not sent again', async () => {
  const built = await server()
  const { etag } = (await built.inject('/job')).headers
  const again = await built.inject({ url: '/job', headers: { 'if-none-match': String(etag) } })
  expect([again.statusCode, again.body]).toEqual([304, ''])
})

test('a job that changed is read again, even when its file looks the same', async () => {
  const { job, viewer } = await folder()
  const built = await server({ job, viewer })
  const file = join(job, 'job.json')
  const before = await built.inject('/job')
  const { atime, mtime } = await stat(file)
  await writeFile(file, JSON.stringify(smallJob).replace('Heron', 'Egret'))
  await utimes(file, atime, mtime)
  const after = await built.inject('/job')
  expect(after.json().ordered.job.name).toBe('Egret Lodge')
  expect(after.headers.etag).not.toBe(before.headers.etag)
})

test('a file written again with the same content keeps its tag', async () => {
  const { job, viewer } = await folder()
  const built = await server({ job, viewer })
  const before = await built.inject('/job')
  await writeFile(join(job, 'job.json'), JSON.stringify(smallJob))
  expect((await built.inject('/job')).headers.etag).toBe(before.headers.etag)
})

test('a folder without a job says what is missing', async () => {
  const { job, viewer } = await folder()
  await rm(join(job, 'job.json'))
  const answer = await (await server({ job, viewer })).inject('/job')
  expect([answer.statusCode, answer.json()]).toEqual([
    404,
    { code: 'no-job', message: 'Unexpected folder without job.json, expected one; put the job file back.' },
  ])
})

test('a job that cannot be read is served as what is wrong with it', async () => {
  const { job, viewer } = await folder()
  await writeFile(join(job, 'job.json'), '{ "format": ')
  const answer = await (await server({ job, viewer })).inject('/job')
  expect(answer.statusCode).toBe(200)
  const { en, es } = answer.json().diagnostics
  expect(en[0]).toMatchObject({ severity: 'error', line: 1, says: expect.stringContaining('Unexpected end') })
  expect(es[0]).toMatchObject({ severity: 'error', line: 1, code: en[0].code, says: expect.stringContaining('Final inesperado') })
})
