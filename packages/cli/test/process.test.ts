import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { copyFile, mkdir } from 'node:fs/promises'
import { type AddressInfo, createServer } from 'node:net'
import { dirname } from 'node:path'
import { expect, test } from 'vitest'
import { command, example, fileWith, line, root, started } from './line.ts'

test('results go to one stream and trouble to the other, with the exit codes', async () => {
  const [good, problems, unread] = await Promise.all([
    started('check', example('tern-hollow')),
    started('plan', example('rings-missing')),
    started('check', await fileWith('no job')),
  ])
  expect([good.code, problems.code, unread.code]).toEqual([0, 1, 2])
  expect([good.err, problems.err, unread.err]).toEqual(['', '', ''])
  expect((await started('plam')).err).toContain('did you mean plan?')
}, 30_000)

test('a plan comes whole through a pipe', async () => {
  const { out } = await started('plan', example('tern-hollow'), '--window', 'w1', '--json')
  expect(out.length).toBeGreaterThan(65_536)
  expect(JSON.parse(out).window).toBe('/rooms/garden-room/windows/w1')
}, 30_000)

test('a reader that has seen enough is no trouble', async () => {
  const child = spawn(process.execPath, [command, 'plan', example('tern-hollow'), '--json'], { cwd: root })
  let err = ''
  child.stderr.on('data', (text) => {
    err += text
  })
  child.stdout.once('data', () => child.stdout.destroy())
  const [code] = await once(child, 'exit')
  expect([code, err]).toEqual([0, ''])
}, 30_000)

test('serve prints its address, serves, and ends when it is told to', async () => {
  const child = spawn(process.execPath, [command, 'serve', example('tern-hollow'), '--port', '0'], { cwd: root })
  const [text] = await once(child.stdout, 'data')
  const address = String(text).trim()
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/)
  expect((await (await fetch(`${address}/job`)).json()).ordered.job.name).toBe('House at Tern Hollow')
  child.kill('SIGTERM')
  expect(await once(child, 'exit')).toEqual([0, null])
}, 30_000)

test('a port that is taken is said', async () => {
  const other = createServer().listen(0, '127.0.0.1')
  await once(other, 'listening')
  const { port } = other.address() as AddressInfo
  expect((await line('serve', example('tern-hollow'), '--port', `${port}`)).err).toBe(
    `Unexpected port ${port}, expected a free one; something listens there already, write --port 0 for any that is free\n`,
  )
  other.close()
})

test('a checkout that is not built says what to do', async () => {
  const folder = dirname(await fileWith(''))
  await mkdir(`${folder}/bin`)
  await copyFile(`${root}packages/cli/bin/evenhem.js`, `${folder}/bin/evenhem.mjs`)
  const child = spawn(process.execPath, [`${folder}/bin/evenhem.mjs`, 'check', '.'])
  const [text] = await once(child.stderr, 'data')
  expect(String(text)).toBe('Evenhem is not built yet; run `npm run build` in its folder.\n')
  expect(await once(child, 'exit')).toEqual([2, null])
})

test('new asks nobody through a pipe: it says which options are missing', async () => {
  const { code, out, err } = await started('new', `${root}nowhere`)
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain('expected --number, --country, --units too')
}, 30_000)
