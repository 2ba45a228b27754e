import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { copyFile, readFile, rename, writeFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { command, example, fileWith, root } from './line.ts'

/** Waits until a stream has said something, from the time this is called on. */
const said = (stream: NodeJS.ReadableStream, what: RegExp): Promise<string> =>
  new Promise((done) => {
    let text = ''
    const hear = (more: Buffer): void => {
      text += more
      if (!what.test(text)) return
      stream.off('data', hear)
      done(text)
    }
    stream.on('data', hear)
  })

test('watching, a check runs again when the file is written or replaced, and ends with the last exit code', async () => {
  const good = await readFile(`${example('tern-hollow')}/job.json`, 'utf8')
  const file = await fileWith(good)
  const child = spawn(process.execPath, [command, 'check', file, '--watch'], { cwd: root })
  const [first] = await Promise.all([said(child.stdout, /good, \d+ pass\n/), said(child.stderr, /Watching .*Ctrl\+C ends/)])
  expect(first).not.toContain('\u001b')
  const broken = said(child.stdout, /1 error\n/)
  await writeFile(file, good.replace('"units": "in"', '"units": "inch"'))
  expect(await broken).toContain('job/choice')
  const replaced = said(child.stdout, /1 check fails/)
  await copyFile(`${example('rings-missing')}/job.json`, `${file}.new`)
  await rename(`${file}.new`, file)
  await replaced
  child.kill('SIGINT')
  expect(await once(child, 'exit')).toEqual([1, null])
}, 30_000)

test('watching goes on while the file is away', async () => {
  const file = await fileWith(await readFile(`${example('rings-missing')}/job.json`, 'utf8'))
  const child = spawn(process.execPath, [command, 'plan', file, '--watch'], { cwd: root })
  await Promise.all([said(child.stdout, /2 rings are missing/), said(child.stderr, /Watching/)])
  await rename(file, `${file}.old`)
  const again = said(child.stdout, /Garden room/)
  await copyFile(`${example('tern-hollow')}/job.json`, file)
  expect(await again).not.toContain('missing')
  child.kill('SIGINT')
  expect(await once(child, 'exit')).toEqual([0, null])
}, 30_000)
