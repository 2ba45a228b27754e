import { cp, mkdir, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { reportLooked } from '../src/verify-files.ts'
import { example, folder, line } from './line.ts'
import { shaOf } from './signed.ts'

/** The day at Heron Point, with a small JPEG of 4 by 3 in place of each copy of a photo: nothing is decoded here. */
async function heronPoint(): Promise<{ readonly job: string; readonly hashes: readonly string[] }> {
  const job = await folder()
  await cp(example('heron-point-day'), job, { recursive: true })
  const names = (await readdir(join(job, 'photos'))).filter((name) => name.endsWith('.jpg'))
  const hashes = names.map((name) => name.replace('.jpg', ''))
  await mkdir(join(job, 'photos/small'), { recursive: true })
  for (const hash of hashes) await writeFile(join(job, 'photos/small', `${hash}-1600.jpg`), jpeg)
  return { job, hashes }
}
const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0, 3, 0, 4, 1, 1, 0x11, 0, 0xff, 0xd9])

test('the report of a folder holds its photos in the page', async () => {
  const { job, hashes } = await heronPoint()
  const { code, out } = await line('report', job)
  expect(code).toBe(0)
  const held = `<img src="data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}"`
  expect(out.split(held).length - 1).toBeGreaterThanOrEqual(hashes.length)
  expect(out).not.toContain('Photo not here yet')
})

test('photos that come to more than a page may hold are refused, and a folder takes them', async () => {
  const { job, hashes } = await heronPoint()
  await truncate(join(job, 'photos/small', `${hashes[0]}-1600.jpg`), 40_000_000)
  const refused = await line('report', job)
  expect([refused.code, refused.out]).toEqual([2, ''])
  expect(refused.err).toContain('Unexpected 41 MB of photos, expected at most 30 MB in one page; write a folder: --out report/')
  const into = `${job}/report/`
  expect(await line('report', job, '--out', into)).toMatchObject({ code: 0, out: `${into}index.html\n` })
  const page = await readFile(`${into}index.html`, 'utf8')
  expect(page).toContain('img-src data: &#39;self&#39;;')
  expect((await readdir(`${into}photos`)).toSorted()).toEqual(hashes.map((hash) => `${hash}.jpg`).toSorted())
  for (const hash of hashes) expect(page).toContain(`<img src="photos/${hash}.jpg"`)
})

test('a report beside the job file is put under its seal, each by its bytes, and one that lies elsewhere is not', async () => {
  const { job } = await heronPoint()
  const seal = join(job, 'report.seal.json')
  await rm(seal)
  await line('report', job, '--out', `${await folder()}/report.html`)
  expect(await readdir(job)).not.toContain('report.seal.json')
  const [page, other] = [join(job, 'report.html'), join(job, 'informe.html')]
  expect((await line('report', job, '--out', page)).out).toBe(`${page}\n${seal}\n`)
  expect(JSON.parse(await readFile(seal, 'utf8'))).toEqual({ file: 'report.html', sha256: shaOf(await readFile(page)) })
  await line('report', job, '--out', other, '--lang', 'es')
  await line('report', job, '--out', page)
  expect(await reportLooked(job)).toEqual([])
  for (const [file, name] of [
    [page, 'report.html'],
    [other, 'informe.html'],
  ] as const) {
    const before = await readFile(file)
    await writeFile(file, before.subarray(1))
    expect(await reportLooked(job)).toEqual([{ code: 'verify-report-changed', file: name, values: {} }])
    await writeFile(file, before)
  }
})
