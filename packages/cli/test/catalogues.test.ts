import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, readFile, rename, rm, symlink, unlink, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { expect, onTestFinished, test } from 'vitest'
import { command, example, folder, line, root, smallJob } from './line.ts'

const catalogue = await readFile(example('catalogue.json'), 'utf8')
const [live, frozen] = [example('shared-catalogue'), example('shared-catalogue-frozen')]

test('of two jobs that share a catalogue the one without members of its own is what the catalogue says', async () => {
  expect((await line('check', live)).out).toMatch(/^\S+shared-catalogue\/job\.json: good, \d+ pass\n$/)
  const heights = async (job: string) => /top of rod.*/i.exec((await line('plan', job)).out)?.[0]
  expect([await heights(live), await heights(frozen)]).toEqual(['top of rod      91 1/4 in', 'top of rod      91 1/8 in'])
})

test('the one with a frozen copy is warned of what the catalogue says now, with both values', async () => {
  const { code, out } = await line('check', frozen)
  expect(code).toBe(0)
  expect(out.replaceAll(frozen, '…').replace(/\d+ pass/, 'n pass')).toBe(`…/job.json:25:28 warning job/catalogue-changed
  Unexpected "2 1/8" in this frozen copy, expected "2 1/4", which the catalogue says now; take the new value, or leave it: the copy wins.
   |
25 |       "ring": { "eyeDrop": "2 1/8", "width": "1/4", "room": "1" },
   |                            ^^^^^^^
…/job.json: 1 warning, n pass
`)
  expect((await line('check', frozen, '--lang', 'es')).out).toContain(
    '"2 1/8" inesperado en esta copia fija, se esperaba "2 1/4", que es lo que dice ahora el catálogo; tome el valor nuevo, o déjelo: vale la copia.',
  )
})

test('the schema of catalogues takes those of the examples and refuses what is wrong', async () => {
  const { out } = await line('schema', '--catalogue')
  const takes = new Ajv2020({ strict: false, validateFormats: false }).compile(JSON.parse(out))
  const good = JSON.parse(catalogue)
  const tried = [good, { ...good, units: 'mm' }, { ...good, rooms: [] }, { ...good, name: 7 }]
  expect(tried.map((each) => takes(each))).toEqual([true, true, false, false])
  expect(takes({ ...good, hardware: [{ ...good.hardware[0], rod: {} }] })).toBe(false)
})

test('copies of both examples share one catalogue beside them, with its schema', async () => {
  const to = await folder()
  const [first, second] = [join(to, 'first'), join(to, 'second')]
  expect((await line('examples', 'shared-catalogue', first)).out).toBe(`${first}/job.json\n${to}/catalogue.json\n`)
  expect((await line('examples', 'shared-catalogue-frozen', second)).code).toBe(0)
  expect(await readFile(`${to}/catalogue.json`, 'utf8')).toBe(
    catalogue.replace('../catalogue/1/catalogue.schema.json', './catalogue.schema.json'),
  )
  expect(JSON.parse(await readFile(`${to}/catalogue.schema.json`, 'utf8')).title).toBe('SharedCatalogue')
  for (const copy of [first, second, join(to, 'catalogue.json')]) expect((await line('check', copy)).code).toBe(0)
})

test('a copy never writes over another catalogue', async () => {
  const to = await folder()
  await writeFile(join(to, 'catalogue.json'), 'mine')
  expect(await line('examples', 'shared-catalogue', join(to, 'first'))).toEqual({
    code: 2,
    out: '',
    err: `Unexpected ${to}/catalogue.json, expected no other catalogue there; nothing was written, name another folder\n`,
  })
  expect(await readFile(join(to, 'catalogue.json'), 'utf8')).toBe('mine')
})

test('a catalogue is checked by itself, in its own lines', async () => {
  const file = join(await folder(), 'yard.json')
  await writeFile(file, catalogue.replace('"2 1/4"', '"two"'))
  const { code, out } = await line('check', file)
  expect(code).toBe(1)
  expect(out).toMatch(/yard\.json:\d+:\d+ error length\/number-expected\n {2}Unexpected two, expected a number/)
})

const yard = (lining: string) =>
  JSON.stringify({ format: 'evenhem-catalogue/1', name: 'Yard', units: 'in', fabrics: [{ id: 'sand', name: 'Sand', lining }] })
const jobWith = (file: string) =>
  JSON.stringify({
    ...smallJob,
    catalogues: [{ id: 'yard', file }],
    fabrics: [{ id: 'sand', name: 'Sand', lining: 'cotton', catalogue: { from: 'yard' } }],
  })

/** A check that watches: does something, and returns what is said next, up to the counts. */
async function watching(job: string) {
  const child = spawn(process.execPath, [command, 'check', job, '--watch'], { cwd: root })
  onTestFinished(() => void child.kill())
  const said = { out: '', err: '' }
  child.stderr.on('data', (text) => {
    said.err += text
  })
  const next = new Set<() => void>()
  child.stdout.on('data', (text) => {
    said.out += text
    if (/: (good|\d+ (error|warning)).*\n$/.test(said.out)) for (const done of next) done()
  })
  const after = async (act: () => Promise<unknown>): Promise<string> => {
    said.out = ''
    const heard = new Promise<void>((done) => next.add(done))
    await act()
    await heard
    next.clear()
    return /catalogue-[a-z-]+/.exec(said.out)?.[0] ?? 'good'
  }
  const end = async () => {
    child.kill('SIGINT')
    return [(await once(child, 'exit'))[0], said.err] as const
  }
  return { after, end }
}

test('watching, a check runs again when a catalogue in another folder comes, changes, is replaced, goes, or is another one', async () => {
  const top = await folder()
  const [job, other] = [join(top, 'first/job.json'), join(top, 'all/yard.json')]
  await mkdir(dirname(job))
  await writeFile(job, jobWith('../catalogue.json'))
  const { after, end } = await watching(job)
  expect(await after(async () => {})).toBe('catalogue-missing')
  const file = join(top, 'catalogue.json')
  expect(await after(() => writeFile(file, yard('cotton')))).toBe('good')
  expect(await after(() => writeFile(file, yard('silk')))).toBe('catalogue-changed')
  await writeFile(`${file}.new`, yard('cotton'))
  expect(await after(() => rename(`${file}.new`, file))).toBe('good')
  expect(await after(() => unlink(file))).toBe('catalogue-missing')
  await writeFile(join(top, 'target.json'), yard('silk'))
  expect(await after(() => symlink('target.json', file))).toBe('catalogue-changed')
  expect(await after(() => writeFile(join(top, 'target.json'), yard('cotton')))).toBe('good')
  expect(await after(() => writeFile(job, jobWith('../all/yard.json')))).toBe('catalogue-missing')
  expect(await after(() => mkdir(dirname(other)).then(() => writeFile(other, yard('silk'))))).toBe('catalogue-changed')
  expect(await after(() => rm(dirname(other), { recursive: true }))).toBe('catalogue-missing')
  expect(await after(() => mkdir(dirname(other)).then(() => writeFile(other, yard('cotton'))))).toBe('good')
  const [code, err] = await end()
  expect(code).toBe(0)
  expect(err.match(/(?<=\/)\w+\/\w+\.json changed|(?<=\/)catalogue\.json changed/g)?.length).toBe(10)
}, 30_000)
