import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { noise } from '../../packages/photos/test/drawn.ts'
import { type ReadPdf, readPdf } from '../../packages/report/test/pdf-reader.ts'
import { jobOf } from '../tools/jobs.ts'
import { effort } from '../tools/long.ts'

const windows = effort === 'all' ? 300 : 40
const photosEach = 5
const photos = windows * photosEach

/** A small copy as large as one of a photo is, some 16 kB. */
const photo = async (seed: number): Promise<Buffer> =>
  sharp(await noise(56, 42, seed))
    .resize(320, 240)
    .jpeg({ quality: 80 })
    .toBuffer()

type Written = { rooms: { id: string; windows: { id: string; name: string }[] }[] }
const top = mkdtempSync(join(tmpdir(), 'evenhem-pdf-'))
const [folder, file] = [join(top, 'job'), join(top, 'report.pdf')]
const hashOf = (n: number): string => n.toString(16).padStart(64, '0')

/** A job with five photos at each window, in copies as the tablet sends them: so many of the large ones that the small ones are printed. */
async function write(): Promise<readonly string[]> {
  const job = jobOf(7, windows, 60, true) as Written
  const all = job.rooms.flatMap((room) => room.windows.map((window) => ({ room, window })))
  const found = all.flatMap(({ room, window }, w) =>
    Array.from({ length: photosEach }, (_, n) => [
      `/rooms/${room.id}/windows/${window.id}/found/photos/${hashOf(w * photosEach + n)}`,
      { value: `Photo ${n} of window ${w}` },
    ]),
  )
  mkdirSync(join(folder, 'photos/small'), { recursive: true })
  writeFileSync(join(folder, 'job.json'), JSON.stringify({ ...job, found: Object.fromEntries(found) }))
  const large = join(top, 'large.jpg')
  writeFileSync(large, await noise(700, 525))
  for (let n = 0; n < photos; n++) {
    writeFileSync(join(folder, 'photos', `${hashOf(n)}.jpg`), '')
    copyFileSync(large, join(folder, 'photos/small', `${hashOf(n)}-1600.jpg`))
    writeFileSync(join(folder, 'photos/small', `${hashOf(n)}-320.jpg`), await photo(n + 1))
  }
  return all.map(({ window }) => window.name)
}

/** What the system tells of a process; nothing of one that has ended meanwhile, or where it tells nothing. */
const toldOf = (file: string): string => {
  try {
    return readFileSync(`/proc/${file}`, 'utf8')
  } catch {
    return ''
  }
}
/** A process with all that it started, and so on. */
const family = (id: number): readonly number[] => [
  id,
  ...toldOf(`${id}/task/${id}/children`)
    .split(' ')
    .filter(Boolean)
    .flatMap((child) => family(Number(child))),
]
/** What a process has in memory, in kB; what several of them share counts for each. */
const held = (id: number): number => Number(/VmRSS:\s*(\d+)/.exec(toldOf(`${id}/status`))?.[1] ?? 0)

/** The most memory that a process and all that it started had at once, in MB; looked up twenty times a second. */
async function peakOf(process: ReturnType<typeof spawn>): Promise<number> {
  let most = 0
  const look = setInterval(() => {
    most = Math.max(
      most,
      family(process.pid as number).reduce((sum, id) => sum + held(id), 0),
    )
  }, 50)
  const [code] = await once(process, 'exit')
  clearInterval(look)
  expect(code).toBe(0)
  return Math.round((most * 1024) / 1e6)
}

let read: ReadPdf
let peak: number
let took: number
let names: readonly string[]
beforeAll(async () => {
  names = await write()
  const start = performance.now()
  peak = await peakOf(spawn(process.execPath, [inject('command'), 'report', folder, '--pdf', file], { stdio: 'ignore' }))
  took = Math.round(performance.now() - start)
  const bytes = readFileSync(file)
  console.log(`${windows} windows, ${photos} photos: ${took} ms, at most ${peak} MB, ${bytes.length} bytes`)
  read = await readPdf(bytes)
})
afterAll(() => rmSync(top, { recursive: true }))

test('a large house is one PDF with a bookmark for each window, and all links lead somewhere', () => {
  expect(names.length).toBe(windows)
  expect(read.bookmarks.length).toBeGreaterThan(windows + 5)
  expect(read.lost).toEqual([])
  expect(read.pages.at(-1)?.text).toContain(`${read.pages.length} of ${read.pages.length}`)
})

test('it is complete to the last photo, each with its words', () => {
  const said = read.pages.flatMap(({ figures }) => figures).filter((alt) => alt?.includes('of window'))
  expect(said.length).toBe(photos)
  expect(said.at(-1)).toContain(`Photo ${photosEach - 1} of window ${windows - 1}`)
})

test('it takes at most 1 GB, all its processes together', () => {
  if (process.platform !== 'linux') return console.log('not looked at: memory, which only Linux tells')
  expect(peak).toBeGreaterThan(0)
  expect(peak).toBeLessThan(1000)
})

test('it is there within a minute', () => {
  expect(took).toBeLessThan(60_000)
})

/** What a tool that others wrote says of the PDF; undefined, and said so, where it is not here. */
function told(tool: string, ...words: readonly string[]): { readonly status: number | null; readonly out: string } | undefined {
  const { error, status, stdout, stderr } = spawnSync(tool, words, { encoding: 'utf8', maxBuffer: 100_000_000 })
  if (error) console.log(`not run: ${tool}, which is not here`)
  return error ? undefined : { status, out: stdout + stderr }
}

test('qpdf finds nothing wrong', () => {
  const said = told('qpdf', '--check', file)
  if (said) expect([said.status, said.out]).toEqual([0, expect.stringContaining('No syntax or stream encoding errors found')])
})

test('every font is in the file, and only ours are', () => {
  const said = told('pdffonts', file)
  if (!said) return
  const fonts = said.out.split('\n').slice(2).filter(Boolean)
  expect(fonts.length).toBeGreaterThan(2)
  expect(fonts.filter((line) => !/^[A-Z]{6}\+Source(Sans3|Serif4)-\w+ .* yes yes yes /.test(line))).toEqual([])
})

test('pdfimages counts every photo', () => {
  const said = told('pdfimages', '-list', file)
  if (said) expect(said.out.match(/ image .* jpeg /g)?.length).toBe(photos)
})
