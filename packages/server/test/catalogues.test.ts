import { execFileSync } from 'node:child_process'
import { chmod, mkdir, mkdtemp, rename, rm, symlink, truncate, unlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { UnreadCatalogue } from '@evenhem/job/read'
import { expect, onTestFinished, test } from 'vitest'
import { cataloguesOf } from '../src/index.ts'
import { folder, server, smallJob } from './folder.ts'

const yard = (name = 'Yard') => ({
  format: 'evenhem-catalogue/1',
  name,
  units: 'in',
  fabrics: [{ id: 'sand', name: 'Sand', lining: 'cotton sateen' }],
})
const jobWith = (file: string) => ({
  ...smallJob,
  catalogues: [{ id: 'yard', file }],
  fabrics: [{ id: 'sand', name: 'Sand', catalogue: { from: 'yard' } }],
})
const secret = { ...yard(), fabrics: [{ id: 'sand', name: 'Sand', lining: 'a secret' }] }

/** Two folders of jobs in one that holds a catalogue, and beside that one a secret: `top/yard/{first,second}`, `top/secret.json`. */
async function place(): Promise<{ readonly top: string; readonly first: string; readonly yard: string }> {
  const top = await mkdtemp(join(tmpdir(), 'evenhem-'))
  onTestFinished(() => rm(top, { recursive: true }))
  for (const name of ['yard/first', 'yard/second', 'away']) await mkdir(join(top, name), { recursive: true })
  await writeFile(join(top, 'secret.json'), JSON.stringify(secret))
  await writeFile(join(top, 'away/yard.json'), JSON.stringify(secret))
  await writeFile(join(top, 'yard/catalogue.json'), JSON.stringify(yard()))
  return { top, first: join(top, 'yard/first'), yard: join(top, 'yard') }
}
/** What becomes of a catalogue of that name, for a job in that folder. */
async function found(job: string, file: string): Promise<string | UnreadCatalogue | undefined> {
  const content = (await cataloguesOf(join(job, 'job.json'), Buffer.from(JSON.stringify(jobWith(file))))).get(file)
  return content instanceof Uint8Array ? JSON.parse(Buffer.from(content).toString()).fabrics[0].lining : content
}

test('a catalogue is read in the folder of its job, in the one that holds it, and in folders of these', async () => {
  const { first, yard: above } = await place()
  await mkdir(join(above, 'all/rods'), { recursive: true })
  for (const file of [join(first, 'mine.json'), join(above, 'all/rods/yard.json')]) await writeFile(file, JSON.stringify(yard()))
  for (const file of ['mine.json', '../catalogue.json', '../all/rods/yard.json'])
    expect(await found(first, file)).toBe('cotton sateen')
})

test('a link is followed to where a catalogue may be', async () => {
  const { first, yard: above } = await place()
  await symlink('../catalogue.json', join(first, 'linked.json'))
  await symlink(first, join(above, 'today'))
  expect(await found(first, 'linked.json')).toBe('cotton sateen')
  expect(await found(join(above, 'today'), '../catalogue.json')).toBe('cotton sateen')
})

test('a job folder that is a link has its catalogues where the folder really is', async () => {
  const { top, first } = await place()
  await writeFile(join(top, 'catalogue.json'), JSON.stringify(secret))
  await symlink(first, join(top, 'today'))
  expect(await found(join(top, 'today'), '../catalogue.json')).toBe('cotton sateen')
})

test.each([
  ['to a file', (first: string) => symlink('../../secret.json', join(first, 'it.json')), 'it.json'],
  ['by an absolute path', (first: string) => symlink(join(first, '../../secret.json'), join(first, 'it.json')), 'it.json'],
  ['of a folder', (first: string) => symlink('../../away', join(first, 'all')), 'all/yard.json'],
  ['of a folder beside', (first: string) => symlink('../away', join(first, '../all')), '../all/yard.json'],
  [
    'to a link',
    (first: string) => symlink('../../secret.json', join(first, 'b.json')).then(() => symlink('b.json', join(first, 'a.json'))),
    'a.json',
  ],
])('a link %s that leads out is not followed', async (_, link, file) => {
  const { first } = await place()
  await link(first)
  expect(await found(first, file)).toEqual({ why: 'outside' })
})

test('a link to a file that no name may say is not followed: hidden, or no .json', async () => {
  const { first } = await place()
  for (const [n, hidden] of ['.hidden.json', 'notes.txt'].entries()) {
    await writeFile(join(first, hidden), JSON.stringify(secret))
    await symlink(hidden, join(first, `${n}.json`))
    expect(await found(first, `${n}.json`)).toEqual({ why: 'outside' })
  }
})

test('links that lead round, and links to nothing, end', async () => {
  const { first } = await place()
  await symlink('b.json', join(first, 'a.json'))
  await symlink('a.json', join(first, 'b.json'))
  await symlink('nothing.json', join(first, 'c.json'))
  expect(await found(first, 'a.json')).toEqual({ why: 'unreadable', values: { error: 'ELOOP' } })
  expect(await found(first, 'c.json')).toEqual({ why: 'missing' })
})

test('a folder and a pipe that nobody writes into are no files', async () => {
  const { first } = await place()
  await mkdir(join(first, 'folder.json'))
  execFileSync('mkfifo', [join(first, 'pipe.json')])
  expect(await found(first, 'folder.json')).toEqual({ why: 'no-file' })
  expect(await found(first, 'pipe.json')).toEqual({ why: 'no-file' })
})

test('four megabytes are read and a byte more is not', async () => {
  const { first } = await place()
  const file = join(first, 'large.json')
  await writeFile(file, `${JSON.stringify(yard())}${' '.repeat(4_000_000)}`)
  await truncate(file, 4_000_000)
  expect(await found(first, 'large.json')).toBe('cotton sateen')
  await truncate(file, 4_000_001)
  expect(await found(first, 'large.json')).toEqual({ why: 'too-large', values: { size: 4.1, most: 4 } })
})

test('a file that may not be read says so, but to whom everything is allowed', async () => {
  const { first } = await place()
  await writeFile(join(first, 'shut.json'), JSON.stringify(yard()))
  await chmod(join(first, 'shut.json'), 0o000)
  const mayAll = process.getuid?.() === 0
  expect(await found(first, 'shut.json')).toEqual(mayAll ? 'cotton sateen' : { why: 'unreadable', values: { error: 'EACCES' } })
})

test.each([
  '/etc/passwd.json',
  'C:/yard.json',
  'C:\\yard.json',
  '\\\\host\\yard.json',
  '..\\catalogue.json',
  '../../secret.json',
  'a/../../../secret.json',
  'catalogue.json\0.json',
  '.hidden.json',
])('nothing is looked for at %j', async (file) => {
  const { first } = await place()
  expect((await cataloguesOf(join(first, 'job.json'), Buffer.from(JSON.stringify(jobWith(file))))).size).toBe(0)
})

/** What a server says of a job with one catalogue, after something was done in its folder. */
async function served(file: string, prepare: (job: string) => Promise<unknown>) {
  const { job, viewer } = await folder(jobWith(file))
  await prepare(job)
  const built = await server({ job, viewer })
  return { built, job, text: (await built.inject('/job')).body }
}

test('the server sends the merged job, and again when only the catalogue changed', async () => {
  const { built, job, text } = await served('yard.json', (job) => writeFile(join(job, 'yard.json'), JSON.stringify(yard())))
  expect(JSON.parse(text).ordered.fabrics[0].lining).toBe('cotton sateen')
  await writeFile(join(job, 'new.json'), JSON.stringify(yard()).replace('cotton', 'silk'))
  await rename(join(job, 'new.json'), join(job, 'yard.json'))
  expect((await built.inject('/job')).json().ordered.fabrics[0].lining).toBe('silk sateen')
  await unlink(join(job, 'yard.json'))
  expect((await built.inject('/job')).json().diagnostics.en[0].code).toBe('job/catalogue-missing')
})

test('sheet and report of a frozen copy are made of the copy, of a job without one of the catalogue', async () => {
  for (const [name, drop, top] of [
    ['shared-catalogue', 2.25, '1/4'],
    ['shared-catalogue-frozen', 2.125, '1/8'],
  ] as const) {
    const job = fileURLToPath(new URL(`../../../schema/examples/${name}`, import.meta.url))
    const built = await server({ job, viewer: (await folder()).viewer })
    expect((await built.inject('/job')).json().ordered.hardware[0].ring.eyeDrop).toBe(drop * 25_400_000)
    const report = (await built.inject('/report')).body.replaceAll(/<[^>]*>/g, ' ')
    expect(/Top of rod\s+(\d+\s+\d+\/\d+)/.exec(report)?.[1]?.replaceAll(/\s+/g, ' ')).toBe(`91 ${top}`)
  }
})

test.each([
  ['a text', 'the secret of the house'],
  ['a file of another program', '{ "secret": "the secret of the house" }'],
  ['a job', JSON.stringify({ ...smallJob, job: { ...smallJob.job, note: 'the secret of the house' } })],
])('nothing of %s that is named as a catalogue is sent', async (_, content) => {
  const { text } = await served('yard.json', (job) => writeFile(join(job, 'yard.json'), content))
  expect(text).not.toContain('secret')
  expect(JSON.parse(text).diagnostics.en[0].code).toBe('job/catalogue-broken')
})

test('what could not be opened is said in both languages, with what to do', async () => {
  const { text } = await served('yard.json', (job) => symlink(process.execPath, join(job, 'yard.json')))
  const { en, es } = JSON.parse(text).diagnostics
  expect([en[0].says, es[0].says]).toEqual([
    'Unexpected link “yard.json” to a file elsewhere, expected a .json file that really lies in the folder of this job or in the one that holds it; copy the file there.',
    'Enlace inesperado “yard.json” a un archivo de otro lugar, se esperaba un archivo .json que esté de verdad en la carpeta de este trabajo o en la que la contiene; copie el archivo allí.',
  ])
})

test('nothing but the job is served: no address leads to its catalogue', async () => {
  const { built } = await served('yard.json', (job) => writeFile(join(job, 'yard.json'), JSON.stringify(yard())))
  for (const url of ['/yard.json', '/job/yard.json', '/assets/../yard.json', '/assets/%2e%2e/%2e%2e/job/yard.json'])
    expect([404, 400, 403]).toContain((await built.inject(url)).statusCode)
})
