import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { buildServer, listen } from '@evenhem/server'
import { test } from 'vitest'
import { everyCase, stringsOf } from './corpora.ts'

const secret = 'nobody outside may read this'

/** A viewer and a job with secrets around them, under the names that the paths look for. */
function site(): { readonly job: string; readonly viewer: string } {
  const top = mkdtempSync(join(tmpdir(), 'evenhem-'))
  const put = (path: string, text: string) => {
    mkdirSync(dirname(join(top, path)), { recursive: true })
    writeFileSync(join(top, path), text)
  }
  for (const at of ['', 'viewer/', 'job/'])
    for (const name of ['secret.txt', 'boot.ini', 'etc/passwd', 'windows/win.ini']) put(at + name, secret)
  put('job/job.json', '{')
  put('viewer/index.html', '<title>Sheet</title>')
  put('viewer/assets/app.js', 'export {}')
  return { job: join(top, 'job'), viewer: join(top, 'viewer') }
}

/** Asks for a path, byte for byte, and gives back all that comes. */
const ask = (port: number, path: string): Promise<string> =>
  new Promise((done, fail) => {
    const socket = connect(port, '127.0.0.1')
    let text = ''
    socket.setEncoding('utf8').on('data', (part) => {
      text += part
    })
    socket.on('close', () => done(text)).on('error', fail)
    socket.write(`GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`)
  })

test('nothing outside is served, whatever the path', async () => {
  const { job, viewer } = site()
  const server = buildServer({ job, viewer })
  const port = Number(new URL(await listen(server, 0)).port)
  const written = stringsOf('web/traversal.json').map((path) =>
    path.replaceAll('{FILE}', 'secret.txt').replaceAll(/[\r\n ]/g, '%20'),
  )
  const paths = written.flatMap((path) => [`/${path}`, `/assets/${path}`])
  await everyCase('paths', paths, async (path) => {
    const answer = await ask(port, path)
    if (answer.includes(secret) || answer.includes('root:')) return `${path} gives it away`
    // What follows a question mark asks for the page itself.
    const isPage = path.startsWith('/?') && answer.endsWith('<title>Sheet</title>')
    return isPage || /^HTTP\/1\.1 (400|403|404) /.test(answer) ? undefined : `${path}: ${answer.slice(0, 40)}`
  })
  await server.close()
  rmSync(dirname(job), { recursive: true })
})

test('nothing but the jobs of a folder is served by their names, whatever the name', async () => {
  const { job, viewer } = site()
  rmSync(join(job, 'job.json'))
  for (const name of ['heron', 'tern hollow']) {
    mkdirSync(join(job, name))
    writeFileSync(join(job, name, 'job.json'), '{')
    writeFileSync(join(job, name, 'secret.txt'), secret)
  }
  const server = buildServer({ job, viewer })
  const port = Number(new URL(await listen(server, 0)).port)
  const names = stringsOf('web/traversal.json').map((path) =>
    path.replaceAll('{FILE}', 'secret.txt').replaceAll(/[\r\n ]/g, '%20'),
  )
  const paths = names.flatMap((name) => [
    `/jobs/${name}`,
    `/jobs/${name}/job`,
    `/jobs/heron/${name}`,
    `/jobs/${encodeURIComponent(name)}/`,
  ])
  await everyCase('names of jobs', paths, async (path) => {
    const answer = await ask(port, path)
    if (answer.includes(secret) || answer.includes('root:')) return `${path} gives it away`
    // What follows a question mark or a number sign asks for what stands before it.
    const isKnown = /^\/jobs\/heron\/?[?#]/.test(path)
    return isKnown || /^HTTP\/1\.1 (400|403|404|414) /.test(answer) ? undefined : `${path}: ${answer.slice(0, 40)}`
  })
  await server.close()
  rmSync(dirname(job), { recursive: true })
})
