import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { cp, mkdir, readFile, stat, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { join } from 'node:path'
import { type Desk, devicesIn } from '@evenhem/server'
import { expect, onTestFinished, test } from 'vitest'
import { practiceOn } from '../src/practice.ts'
import { invitation } from '../src/serve.ts'
import { voiceIn } from '../src/voice.ts'
import { command, example, fileWith, folder, line, root, smallJob } from './line.ts'

/** A folder of two jobs, one of which cannot be read. */
async function yard(): Promise<string> {
  const top = await folder()
  for (const [name, text] of [
    ['heron', JSON.stringify(smallJob)],
    ['tern', '{'],
  ] as const) {
    await mkdir(join(top, name))
    await writeFile(join(top, name, 'job.json'), text)
  }
  return top
}
/** A job's folder with tablets that are paired with its server. */
async function withTablets(...names: readonly string[]): Promise<string> {
  const job = await folder()
  await writeFile(join(job, 'job.json'), JSON.stringify(smallJob))
  const devices = devicesIn(join(job, '.evenhem/devices.json'), () => Date.parse('2026-11-25T09:12:00Z'))
  for (const name of names) await devices.add(name)
  return job
}
/** A command line that runs until the test ends, and what it wrote. */
function running(...words: readonly string[]) {
  const child = spawn(process.execPath, [command, ...words], { cwd: root })
  onTestFinished(() => void child.kill('SIGKILL'))
  const written = { out: '', err: '' }
  child.stdout.on('data', (text) => {
    written.out += text
  })
  child.stderr.on('data', (text) => {
    written.err += text
  })
  return { child, written }
}
/** Asks a server on this machine, under the name that its network gives it. */
function ask(port: number, path: string, host: string, body?: object, cookie = '') {
  const headers = { host, cookie, ...(body && { origin: `http://${host}`, 'content-type': 'application/json' }) }
  const sent = request({ host: '127.0.0.1', port, path, method: body ? 'POST' : 'GET', headers, agent: false })
  sent.end(body && JSON.stringify(body))
  return once(sent, 'response').then(([answer]) => {
    answer.resume()
    return { status: answer.statusCode, cookie: String(answer.headers['set-cookie']).split(';')[0] }
  })
}

test('a network is served with many jobs: a tablet is paired by what is printed, is listed, and is out when it is revoked', async () => {
  const top = await yard()
  const { child, written } = running('serve', top, '--network', '--name', 'Studio.test', '--port', '0')
  await expect.poll(() => written.out, { timeout: 20_000 }).toContain('This is plain http')
  const [address = '', named = ''] = written.out.split('\n')
  const { port } = new URL(address)
  expect([address, named]).toEqual([`http://127.0.0.1:${port}`, `http://studio.test:${port}`])
  expect(written.err).toBe(
    `Serving 2 jobs of ${top}.\n${join(top, 'tern/job.json')} has errors; evenhem check ${join(top, 'tern/job.json')} shows them\n`,
  )
  const [, code = ''] = /#pair=(\w{4}-\w{4}) /.exec(written.out) ?? []
  expect(written.out).toContain(`open http://studio.test:${port}/#pair=${code} on it`)
  expect(written.out).toContain('good once, for 10 minutes')
  expect(written.out).not.toMatch(/[█▀▄]/)
  const host = `studio.test:${port}`
  expect((await ask(Number(port), '/jobs', host)).status).toBe(401)
  const { status, cookie } = await ask(Number(port), '/pair', host, { code, name: 'Ana’s tablet' })
  expect(status).toBe(200)
  expect((await ask(Number(port), '/jobs/heron/job', host, undefined, cookie)).status).toBe(200)
  expect((await stat(join(top, '.evenhem/devices.json'))).mode & 0o777).toBe(0o600)
  const listed = /^name +id +since +last seen\nAna’s tablet +[a-z2-9]{8} +\d{4}-.* UTC +\d{4}-.* UTC\n$/
  await expect.poll(async () => (await line('devices', top)).out).toMatch(listed)
  expect((await line('devices', top, '--revoke', 'ana’s tablet')).err).toContain('Ana’s tablet is revoked.')
  expect((await ask(Number(port), '/jobs/heron/job', host, undefined, cookie)).status).toBe(401)
  child.kill('SIGTERM')
  expect(await once(child, 'exit')).toEqual([0, null])
}, 30_000)

const desk: Desk = {
  isOnNetwork: true,
  addresses: () => ['http://studio.test:4170'],
  invite: () => ({ code: 'abcd-efgh', until: new Date(Date.now() + 600_000), link: 'http://studio.test:4170/#pair=abcd-efgh' }),
}
const invited = (isTerminal: boolean, colours: boolean, https = false) => {
  const session = { out: () => {}, err: () => {}, isTerminal, colours, language: 'en', voice: voiceIn('en') } as const
  const network = { names: [], devices: '', ...(https && { https: { cert: '', key: '' } }) }
  return invitation(desk, 'http://127.0.0.1:4170', network, session)
}

test('a terminal draws the link for a camera, dark on light where it has colours', async () => {
  expect(await invited(false, false)).not.toMatch(/[█▀▄]/)
  expect(await invited(true, false)).toMatch(/█▀▀▀▀▀█/)
  expect(await invited(true, false)).not.toContain('\u001b')
  expect(await invited(true, true)).toContain('\u001b[47m\u001b[30m █ ▄▄▄ █')
})

test('what plain http means is said where it is plain', async () => {
  expect(await invited(false, false)).toMatch(
    /others in this network can read what is sent.*needs this server to open the page again/,
  )
  expect(await invited(false, false, true)).not.toContain('plain http')
})

test.each([
  [['--name', 'a.test'], 'Unexpected --name without --network, expected both; write --network too'],
  [['--cert', 'a.pem', '--key', 'b.pem'], 'Unexpected --cert without --network'],
  [['--network', '--cert', 'a.pem'], 'Unexpected --cert without --key, expected both; write --key too'],
  [['--network', '--key', 'a.pem'], 'Unexpected --key without --cert'],
  [
    ['--network', '--cert', '/nowhere/a.pem', '--key', '/nowhere/b.pem'],
    'Unexpected --cert /nowhere/a.pem, expected a file that can be read; nothing is there',
  ],
  [['--network', '--name', 'http://a.test'], 'Unexpected --name http://a.test, expected what this machine is called'],
  [['--network', '--practice'], 'Unexpected --practice beside --network, expected one of them; leave one out'],
])('serve %j is refused', async (words, message) => {
  const { code, out, err } = await line('serve', example('tern-hollow'), ...words)
  expect([code, out, err]).toEqual([2, '', expect.stringContaining(message)])
})

test('a certificate and a key that are none are refused before anything is served', async () => {
  const file = await fileWith('no certificate', 'a.pem')
  const { code, err } = await line('serve', example('tern-hollow'), '--network', '--cert', file, '--key', file)
  expect([code, err]).toEqual([2, expect.stringContaining('expected a certificate and its own key as PEM; the system says')])
})

test('many jobs are not practised on, and a folder without any is none to serve', async () => {
  const top = await yard()
  expect((await line('serve', top, '--practice')).err).toContain(`Unexpected --practice for the jobs of ${top}, expected one job`)
  expect((await line('serve', await folder())).err).toContain('expected a job file or its folder with job.json')
})

test('tablets are listed with when they were paired and seen, for programs too and without what proves them', async () => {
  const job = await withTablets('Ana’s tablet', 'Van')
  const { code, out } = await line('devices', job)
  expect([code, out]).toEqual([0, expect.stringMatching(/Van +[a-z2-9]{8} +2026-11-25 09:12 UTC +never\n$/)])
  const listed = JSON.parse((await line('devices', join(job, 'job.json'), '--json')).out)
  expect(listed).toMatchObject([{ name: 'Ana’s tablet', since: '2026-11-25T09:12:00.000Z' }, { name: 'Van' }])
  expect(JSON.stringify(listed)).not.toContain('hash')
})

test('where no tablet is paired, the list is empty', async () => {
  const job = await withTablets()
  expect(await line('devices', job)).toEqual({ code: 0, out: '', err: expect.stringContaining('No tablet is paired') })
  expect((await line('devices', job, '--json')).out).toBe('[]\n')
})

test('a tablet is revoked by its name or id, and another name says what there is', async () => {
  const job = await withTablets('One', 'Two', 'Three')
  const [one] = JSON.parse((await line('devices', job, '--json')).out)
  expect((await line('devices', job, '--revoke', one.id)).err).toBe('One is revoked.\n')
  expect(JSON.parse((await line('devices', job, '--revoke', 'two', '--json')).out)).toMatchObject([{ name: 'Three' }])
  const { code, err } = await line('devices', job, '--revoke', 'Thre')
  expect([code, err]).toEqual([2, 'Unexpected tablet Thre, expected one of Three; did you mean Three?\n'])
  await line('devices', job, '--revoke', 'Three')
  expect((await line('devices', job, '--revoke', 'One')).err).toContain('expected none: no tablet is paired')
})

test('a file of tablets that is broken is said, stays as it is, and no network is served with it', async () => {
  const job = await withTablets('One')
  const file = join(job, '.evenhem/devices.json')
  await writeFile(file, '[')
  for (const words of [
    ['devices', job],
    ['devices', job, '--revoke', 'One'],
    ['serve', job, '--network', '--port', '0'],
  ])
    expect(await line(...words)).toEqual({ code: 2, out: '', err: expect.stringContaining(`Unexpected content of ${file}`) })
  expect(await readFile(file, 'utf8')).toBe('[')
})

test('a folder that is not there has no tablets', async () => {
  expect((await line('devices', '/nowhere')).err).toContain('nothing is there')
})

test('what a tablet is called is shown and never obeyed by the terminal, and is said in Spanish', async () => {
  const job = await withTablets('Ana')
  const file = join(job, '.evenhem/devices.json')
  await writeFile(file, (await readFile(file, 'utf8')).replace('"Ana"', '"A\\u200fna"'))
  const { out } = await line('devices', job, '--lang', 'es')
  expect(out).toMatch(/^nombre +identificador +desde +vista por última vez\n/)
  expect(out).toMatch(/ nunca\n$/)
  expect(out).not.toContain('\u200f')
})

test('tablets are the business of the server alone: no command reads them, and a practice copy has none', async () => {
  const job = await withTablets('One')
  const { folder: copy, away } = await practiceOn(job)
  await expect(stat(join(copy, '.evenhem'))).rejects.toThrow('ENOENT')
  await away()
  const other = await folder()
  await cp(job, other, { recursive: true })
  expect((await line('check', job)).code).toBe(0)
  expect((await line('merge', other, job)).out).toContain('Nothing new')
})
