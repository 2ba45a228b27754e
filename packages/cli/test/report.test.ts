import { cp, mkdir, readdir, readFile, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { example, folder, line } from './line.ts'

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
