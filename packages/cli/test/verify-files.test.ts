import { mkdir, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { photosLooked, reportLooked } from '../src/verify-files.ts'
import { folder } from './line.ts'
import { shaOf } from './signed.ts'

const codes = (odd: readonly { readonly code: string; readonly file: string }[]) => odd.map(({ code, file }) => [code, file])

test('a photo is good by its bytes, whatever its format; every file of that name must be', async () => {
  const job = await folder()
  await mkdir(join(job, 'photos', 'small'), { recursive: true })
  const [good, other] = [shaOf('a photo'), shaOf('another')]
  const put = (name: string, text: string) => writeFile(join(job, 'photos', name), text)
  await put(`${good}.jpg`, 'a photo')
  await put(`${good}.heic`, 'a photo')
  await put(`${other}.webp`, 'anothes')
  await put('notes.txt', 'nobody’s business')
  await put(`small/${good}-320.jpg`, 'a copy')
  expect(await photosLooked(job)).toMatchObject({ good: new Set([good]), there: new Set([good, other]) })
  expect(codes((await photosLooked(job)).odd)).toEqual([['verify-photo-changed', `photos/${other}.webp`]])
  await put(`${good}.jpg`, 'a phota')
  expect((await photosLooked(job)).good).toEqual(new Set())
})

test('of a photo that was kept cleaned nothing proves the bytes: it is there, and that is noted', async () => {
  const job = await folder()
  await mkdir(join(job, 'photos'))
  await writeFile(join(job, 'photos', `${shaOf('a photo')}.clean.jpg`), 'cleaned')
  const { good, odd } = await photosLooked(job)
  expect([good, odd]).toEqual([
    new Set([shaOf('a photo')]),
    [expect.objectContaining({ code: 'verify-photo-cleaned', isNote: true })],
  ])
  expect((await photosLooked(join(job, 'photos'))).odd).toEqual([])
})

test('a report belongs to its folder by the seal beside it; one without a seal is not looked at', async () => {
  const job = await folder()
  const seal = (value: unknown) => writeFile(join(job, 'report.seal.json'), JSON.stringify(value))
  await writeFile(join(job, 'report.html'), 'The report')
  expect(await reportLooked(job)).toEqual([])
  await seal({ file: 'report.html', sha256: shaOf('The report') })
  expect(await reportLooked(job)).toEqual([])
  await writeFile(join(job, 'report.html'), 'The Report')
  expect(codes(await reportLooked(job))).toEqual([['verify-report-changed', 'report.html']])
  await rm(join(job, 'report.html'))
  expect(codes(await reportLooked(job))).toEqual([['verify-report-lacks', 'report.seal.json']])
})

test('a seal of a report leads nowhere but to a report beside it', async () => {
  const job = await folder()
  const sha256 = shaOf('')
  const odd = [
    { file: '../report.html', sha256 },
    { file: '/report.pdf', sha256 },
    { file: 'job.json', sha256 },
    { file: 'report.html' },
    null,
    7,
    [],
    [
      { file: 'report.html', sha256 },
      { file: '../report.html', sha256 },
    ],
  ]
  for (const value of odd) {
    await writeFile(join(job, 'report.seal.json'), JSON.stringify(value))
    expect(codes(await reportLooked(job))).toEqual([['verify-report-seal', 'report.seal.json']])
  }
  await writeFile(join(job, 'report.seal.json'), '{')
  expect(codes(await reportLooked(job))).toEqual([['verify-report-seal', 'report.seal.json']])
})
