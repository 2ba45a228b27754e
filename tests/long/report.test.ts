import { createHash } from 'node:crypto'
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium as browserType } from 'playwright'
import { expect, onTestFinished, test } from 'vitest'
import { lineWith } from '../../packages/cli/test/line.ts'
import { jpeg } from '../../packages/photos/test/drawn.ts'
import { chromium } from '../tools/chromium.ts'
import { jobOf } from '../tools/jobs.ts'
import { effort } from '../tools/long.ts'

const windows = effort === 'all' ? 300 : 30
const times = ['before', 'closed', 'open', 'detail', 'after'] as const

interface Written {
  readonly rooms: readonly { readonly id: string; readonly windows: readonly { readonly id: string }[] }[]
}

/** A house with five photos at each window, each another file: one drawing, with what no reader looks at behind its end. */
async function house(): Promise<{ readonly folder: string; readonly hashes: readonly string[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'evenhem-report-'))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  mkdirSync(join(folder, 'photos/small'), { recursive: true })
  const drawn = await jpeg()
  const job = jobOf(7, windows) as Written
  const photos = job.rooms.flatMap((room) =>
    room.windows.flatMap((window) =>
      times.map((time) => {
        const at = `/rooms/${room.id}/windows/${window.id}/found`
        const bytes = Buffer.concat([drawn, Buffer.from(`${at} ${time}`)])
        return { at, time, bytes, hash: createHash('sha256').update(bytes).digest('hex') }
      }),
    ),
  )
  for (const { hash, bytes } of photos) {
    writeFileSync(join(folder, 'photos', `${hash}.jpg`), bytes)
    copyFileSync(join(folder, 'photos', `${hash}.jpg`), join(folder, 'photos/small', `${hash}-1600.jpg`))
  }
  const found = Object.fromEntries(
    photos.flatMap(({ at, time, hash }) => [
      [`${at}/photos/${hash}`, { value: time }],
      [`${at}/photoOf/${hash}`, { value: time }],
    ]),
  )
  writeFileSync(join(folder, 'job.json'), JSON.stringify({ ...job, found }))
  return { folder, hashes: photos.map(({ hash }) => hash) }
}

test('the report of a large house has every window and every photo to the last, and a browser draws all of them', async () => {
  const { folder, hashes } = await house()
  const out = join(folder, 'report/')
  const { code } = await lineWith({}, 'report', folder, '--out', out)
  expect(code).toBe(0)
  const page = readFileSync(join(out, 'index.html'), 'utf8')
  expect(page.match(/<article class="window"/g)?.length).toBe(windows)
  expect([...page.matchAll(/<img src="photos\/([0-9a-f]{64})\.jpg"/g)].map(([, hash]) => hash)).toEqual(hashes)
  expect(readdirSync(join(out, 'photos')).toSorted()).toEqual(hashes.map((hash) => `${hash}.jpg`).toSorted())
  expect(await drawnBy(join(out, 'index.html'))).toEqual({ drawn: hashes.length, refused: [] })
  console.log(`report: ${windows} windows, ${hashes.length} photos, page of ${Math.round(page.length / 1e5) / 10} MB`)
})

/** How many pictures of a page a browser has drawn once it is loaded, and what its policy refused. */
async function drawnBy(file: string): Promise<{ readonly drawn: number; readonly refused: readonly string[] }> {
  const browser = await browserType.launch(await chromium())
  try {
    const page = await browser.newPage()
    const refused: string[] = []
    page.on('console', (message) => refused.push(message.text()))
    await page.goto(pathToFileURL(file).href, { timeout: 300_000 })
    const drawn = await page.evaluate(
      () => [...document.querySelectorAll('img')].filter(({ complete, naturalWidth }) => complete && naturalWidth > 0).length,
    )
    return { drawn, refused }
  } finally {
    await browser.close()
  }
}
