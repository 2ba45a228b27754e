import { mkdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fold, write } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { folder, listening, secret, send, server, smallJob } from './folder.ts'

const named = (name: string, more: object = {}) => ({ ...smallJob, job: { ...smallJob.job, name, ...more } })
const tern = JSON.parse(await readFile(new URL('../../../schema/examples/tern-hollow/job.json', import.meta.url), 'utf8'))

/** A folder of jobs beside a secret, and a server of it. */
async function yard(jobs: Readonly<Record<string, object>>) {
  const { job, viewer } = await folder()
  await rm(join(job, 'job.json'))
  for (const [name, content] of Object.entries(jobs)) {
    await mkdir(join(job, name))
    await writeFile(join(job, name, 'job.json'), JSON.stringify(content))
  }
  return { yard: job, viewer, built: await server({ job, viewer }) }
}
const two = { heron: named('Heron Point'), 'tern hollow': named('Tern Hollow') }

test('each of many jobs has its routes under its folder’s name, and its page', async () => {
  const { built } = await yard(two)
  expect((await built.inject('/jobs/heron/job')).json().ordered.job.name).toBe('Heron Point')
  expect((await built.inject('/jobs/tern%20hollow/job')).json().ordered.job.name).toBe('Tern Hollow')
  expect((await built.inject('/jobs/heron/log')).json()).toEqual({ entries: [], wrong: [] })
  expect((await built.inject('/jobs/heron/report')).body).toContain('Heron Point')
  for (const url of ['/', '/jobs/heron/', '/jobs/tern%20hollow/'])
    expect((await built.inject(url)).body).toBe('<title>Sheet</title>')
})

test('a page without its slash leads to it', async () => {
  const { headers, statusCode } = await (await yard(two)).built.inject('/jobs/tern%20hollow')
  expect([statusCode, headers.location]).toEqual([302, '/jobs/tern%20hollow/'])
})

test('where there are many, none answers for all', async () => {
  const { built } = await yard(two)
  expect((await built.inject('/job')).json()).toMatchObject({ code: 'many-jobs', message: expect.stringMatching(/^Unexpected/) })
  for (const url of ['/job', '/log', '/report', '/live?by=a']) expect((await built.inject(url)).statusCode).toBe(404)
})

test('where there is one, it has no name', async () => {
  for (const url of ['/jobs/job/', '/jobs/job/job', '/jobs//job'])
    expect((await (await server()).inject(url)).statusCode).toBe(404)
})

test('what is entered at one job lies in its folder', async () => {
  const { built, yard: top } = await yard(two)
  const [line] = write(
    { device: 'a', last: undefined, clock: '2026-11-25T09:12:00Z' },
    [{ place: '/rooms/den/ceiling', value: '95' }],
    fold([]),
  )
  const headers = { origin: 'http://localhost', 'content-type': 'application/json' }
  const payload = JSON.stringify({ lines: [line?.text] })
  const answer = await built.inject({ method: 'POST', url: '/jobs/heron/log', headers, payload })
  expect(answer.json()).toMatchObject({ last: { n: 1 } })
  expect(await readFile(join(top, 'heron/log/a.jsonl'), 'utf8')).toBe(`${line?.text}\n`)
  expect((await built.inject('/jobs/tern%20hollow/log')).json().entries).toEqual([])
})

test('the list has what is to know of each, those of the next day first', async () => {
  const { built, yard: top } = await yard({
    last: named('Avocet'),
    second: named('Heron', { install: '2026-12-02' }),
    first: { ...tern, job: { ...named('Tern').job, install: '2026-12-01', customer: { name: 'A. Customer' } } },
    broken: {},
  })
  await mkdir(join(top, 'second/log'))
  const put = (device: string, clock: string) =>
    write({ device, last: undefined, clock }, [{ place: '/job/note', value: 'a' }], fold([]))
  for (const [device, clock] of [
    ['a', '2026-12-02T09:00:00-05:00'],
    ['b', '2026-12-02T13:00:00Z'],
  ] as const)
    await writeFile(join(top, `second/log/${device}.jsonl`), `${put(device, clock)[0]?.text}\n`)
  const empty = { number: '1', windows: 0, entries: 0, state: 'ordered' }
  expect((await built.inject('/jobs')).json().jobs).toEqual([
    { ...empty, at: '/jobs/first/', name: 'Tern', customer: 'A. Customer', install: '2026-12-01', windows: 1 },
    {
      ...empty,
      at: '/jobs/second/',
      name: 'Heron',
      install: '2026-12-02',
      entries: 2,
      last: '2026-12-02T09:00:00-05:00',
      state: 'begun',
    },
    { ...empty, at: '/jobs/last/', name: 'Avocet' },
    { ...empty, at: '/jobs/broken/', name: 'broken', number: '', state: 'broken' },
  ])
})

test('one job is a list of one', async () => {
  expect((await (await server()).inject('/jobs')).json().jobs).toEqual([
    { at: '/', name: 'Heron Lodge', number: '1', windows: 0, entries: 0, state: 'ordered' },
  ])
})

test('a folder that comes is listed, one that goes is not, and hidden ones and those without a job never are', async () => {
  const { built, yard: top } = await yard({ ...two, '.evenhem': named('Hidden') })
  const places = async () => (await built.inject('/jobs')).json().jobs.map(({ at }: { at: string }) => at)
  await mkdir(join(top, 'empty'))
  expect(await places()).toEqual(['/jobs/heron/', '/jobs/tern%20hollow/'])
  await mkdir(join(top, 'new'))
  await writeFile(join(top, 'new/job.json'), JSON.stringify(named('Zebra')))
  await rm(join(top, 'heron'), { recursive: true })
  expect(await places()).toEqual(['/jobs/tern%20hollow/', '/jobs/new/'])
  expect((await built.inject('/jobs/heron/job')).statusCode).toBe(404)
  expect((await built.inject('/jobs/.evenhem/job')).statusCode).toBe(404)
})

test('the latest clock of a job is one that tells a time: the second 60 is passed over', async () => {
  const { built, yard: top } = await yard(two)
  await mkdir(join(top, 'heron/log'))
  const clocks = { a: '2026-11-25T09:12:00Z', b: '2026-12-31T23:59:60Z', c: '2026-11-25T08:00:00Z' }
  for (const [device, clock] of Object.entries(clocks)) {
    const [line] = write({ device, last: undefined, clock }, [{ place: '/rooms/den/ceiling', value: '95' }], fold([]))
    await writeFile(join(top, `heron/log/${device}.jsonl`), `${line?.text}\n`)
  }
  expect((await built.inject('/jobs')).json().jobs[0]).toMatchObject({ entries: 3, last: clocks.a, state: 'begun' })
})

test('a job whose log cannot be read is listed as broken, and the others as they are', async () => {
  const { built, yard: top } = await yard(two)
  await writeFile(join(top, 'heron/log'), 'no folder')
  const { jobs } = (await built.inject('/jobs')).json()
  expect(jobs.map(({ name, state }: { name: string; state: string }) => [name, state])).toEqual([
    ['Tern Hollow', 'ordered'],
    ['heron', 'broken'],
  ])
})

test('a link that leads out is no job: of the folder, of the job file, of the log, of the photos, of who is let in', async () => {
  const { built, yard: top } = await yard({
    ...two,
    file: named('File'),
    log: named('Log'),
    photos: named('Photos'),
    links: named('Links'),
  })
  await mkdir(join(top, '../away/log'), { recursive: true })
  await writeFile(join(top, '../away/job.json'), JSON.stringify(named(secret)))
  await symlink('../away', join(top, 'folder'))
  await rm(join(top, 'file/job.json'))
  await symlink('../../away/job.json', join(top, 'file/job.json'))
  await symlink('../../away/log', join(top, 'log/log'))
  await symlink('../../away/log', join(top, 'photos/photos'))
  await symlink('../../away/log', join(top, 'links/.evenhem'))
  await symlink('heron', join(top, 'within'))
  for (const name of ['folder', 'file', 'log', 'photos', 'links'])
    for (const part of ['', '/', '/job', '/log', '/report', '/live?by=a'])
      expect((await built.inject(`/jobs/${name}${part}`)).statusCode).toBe(404)
  expect((await built.inject('/jobs')).body).not.toContain(secret)
  expect((await built.inject('/jobs/within/job')).json().ordered.job.name).toBe('Heron Point')
})

const up = [
  '..',
  '.',
  '%2e%2e',
  '..%2f',
  '%2e%2e%2f',
  'heron%2f..%2f..',
  '..%5c',
  '%00',
  'heron%00',
  'HERON',
  'heron%2fjob.json',
  '',
  '%ff',
]
test('a name that is none of the folder’s is not found, however it is written', async () => {
  const { yard: job, viewer } = await yard(two)
  await writeFile(join(job, '../job.json'), JSON.stringify(named(secret)))
  const { port } = await listening({ job, viewer })
  for (const name of [...up, 'x'.repeat(800)])
    for (const part of ['', '/', '/job', '/log', '/report', '/live?by=a']) {
      // `/jobs` and a slash is the list and its page; `/jobs/` alone is nothing.
      const { status, text } = await send(port, `/jobs/${name}${part}`)
      expect([400, 404, 414], `${name}${part}`).toContain(status)
      expect(text).not.toContain(secret)
    }
})

test('a name as long as a folder may have is found', async () => {
  const name = 'ñ'.repeat(127)
  const { built } = await yard({ [name]: named('Long') })
  const [job] = (await built.inject('/jobs')).json().jobs
  expect((await built.inject(`${job.at}job`)).json().ordered.job.name).toBe('Long')
})
