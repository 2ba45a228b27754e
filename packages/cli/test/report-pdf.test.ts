import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { command, example, line } from './line.ts'

async function folder(): Promise<string> {
  const made = await mkdtemp(join(tmpdir(), 'evenhem-pdf-'))
  onTestFinished(() => rm(made, { recursive: true }))
  return made
}

test('the report goes into a PDF, and into a page as well when both are asked for', async () => {
  const [pdf, page] = [join(await folder(), 'report.pdf'), join(await folder(), 'report.html')]
  const asked = ['report', example('tern-hollow'), '--pdf', pdf]
  expect(await line(...asked)).toEqual({ code: 0, out: `${pdf}\n`, err: '' })
  expect((await readFile(pdf, 'latin1')).slice(0, 8)).toBe('%PDF-1.7')
  expect((await line(...asked, '--out', page)).out).toBe(`${pdf}\n${page}\n`)
  expect(await readFile(page, 'utf8')).toMatch(/^<!doctype html>/)
})

test('a PDF that cannot be written is said to be so', async () => {
  const pdf = join(await folder(), 'none', 'report.pdf')
  const { code, err } = await line('report', example('tern-hollow'), '--pdf', pdf)
  expect([code, err]).toEqual([
    2,
    expect.stringContaining(`Unexpected --pdf ${pdf}, expected a file that can be written; the system says ENOENT`),
  ])
})

test('of a PDF that somebody stops nothing is left', async () => {
  const temporary = await folder()
  const asked = [command, 'report', example('heron-point'), '--pdf', join(temporary, 'report.pdf')]
  const child = spawn(process.execPath, asked, { env: { ...process.env, TMPDIR: temporary }, stdio: 'ignore' })
  await expect.poll(() => readdir(temporary), { timeout: 30_000 }).toEqual([expect.stringMatching(/^evenhem-typeset-/)])
  child.kill('SIGTERM')
  expect(await once(child, 'exit')).toEqual([143, null])
  expect(await readdir(temporary)).toEqual([])
})
