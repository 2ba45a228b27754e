import { readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { expect, test } from 'vitest'
import { example, fileWith, line } from './line.ts'

test('the schema is one document that takes the examples and refuses what is wrong', async () => {
  const { code, out } = await line('schema')
  const takes = new Ajv2020({ strict: false, validateFormats: false }).compile(JSON.parse(out))
  const job = JSON.parse(await readFile(`${example('tern-hollow')}/job.json`, 'utf8'))
  expect([code, takes(job), takes({ ...job, units: 'inch' })]).toEqual([0, true, false])
})

test('the report is one page about the job', async () => {
  const { code, out } = await line('report', example('tern-hollow'))
  expect(code).toBe(0)
  expect(out).toMatch(/^<!doctype html>/)
  expect(out).toContain('House at Tern Hollow')
})

test('the report goes into a file', async () => {
  const file = join(dirname(await fileWith('')), 'report.html')
  expect(await line('report', example('tern-hollow'), '--out', file)).toEqual({ code: 0, out: `${file}\n`, err: '' })
  expect(await readFile(file, 'utf8')).toContain('</html>')
})

test('the report prints on the paper of the job’s country, or on what was asked for', async () => {
  const job = example('tern-hollow')
  expect((await line('report', job)).out).toContain('size:letter')
  expect((await line('report', job, '--paper', 'a4')).out).toContain('size:A4')
})

test('the report is in the language that was asked for', async () => {
  expect((await line('report', example('tern-hollow'), '--lang', 'es')).out).toContain('<html lang="es"')
})
