import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type Browser, chromium as browserType, type Page } from 'playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { violations } from '../../../tests/tools/axe.ts'
import { chromium } from '../../../tests/tools/chromium.ts'
import { isLong } from '../../../tests/tools/long.ts'
import { jpeg } from '../../photos/test/drawn.ts'
import { type ReportOrder, reportOf } from '../src/index.ts'
import { example, handedOver, house, orderOf, textOf, window } from './example.ts'

let browser: Browser
let folder: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'report-'))
  browser = await browserType.launch(await chromium())
}, 60_000)
afterAll(async () => {
  await browser?.close()
  rmSync(folder, { recursive: true })
})

/** Opens a report as a file that came by mail; whatever it asks for beside itself, or its policy refuses, is written down. */
const open = (order: ReportOrder, width = 820) => show(reportOf(order).html, width)
async function show(html: string, width = 820): Promise<{ readonly page: Page; readonly trouble: readonly string[] }> {
  const file = join(folder, `${randomUUID()}.html`)
  writeFileSync(file, html)
  const context = await browser.newContext({ viewport: { width, height: 1180 } })
  const page = await context.newPage()
  const trouble: string[] = []
  page.on('console', (message) => trouble.push(message.text()))
  page.on('request', (request) => /^(data|file):/.test(request.url()) || trouble.push(request.url()))
  await page.goto(pathToFileURL(file).href)
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
  // The headless shell (147) fails to load the fonts of a long page when it is first opened; whole browsers do not.
  if (await page.evaluate(() => [...document.fonts].some((font) => font.status === 'error'))) await page.reload()
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
  return { page, trouble }
}
/** The window that was handed over, with two photos. */
const photographed = (): ReportOrder => {
  const order = handedOver()
  const place = (name: string, hash: string) => `${window}/found/${name}/${hash.repeat(64)}`
  const mark = { kind: 'area', x: 0.1, y: 0.1, toX: 0.4, toY: 0.5, says: 'here' }
  const photos = {
    [place('photos', 'a')]: { value: 'Before' },
    [place('photos', 'b')]: { value: 'Closed' },
    [`${place('photoMarks', 'b')}/m1`]: { value: mark },
  }
  return { ...order, readings: { ...order.readings, ...photos } }
}
const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type ?\/Page\b/g)?.length ?? 0

test('the page shows itself with its fonts and asks for nothing', { timeout: 60_000 }, async () => {
  const { page, trouble } = await open(example('tern-hollow-found'))
  expect(trouble).toEqual([])
  expect(
    await page.evaluate(() => [...document.fonts].map(({ family, status }) => `${family.replaceAll('"', '')} ${status}`)),
  ).toEqual(['Source Sans 3 Variable loaded', 'Source Serif 4 Variable loaded'])
  await page.context().close()
})

test('a style sheet that was changed on the way is not taken', { timeout: 60_000 }, async () => {
  const { page, trouble } = await show(reportOf(example('tern-hollow')).html.replace('<style>', '<style>p{color:red}'))
  expect(trouble[0]).toMatch(/Content Security Policy/)
  await page.context().close()
})

test.each((isLong ? ['a4', 'letter'] : ['a4']) as readonly ('a4' | 'letter')[])(
  'the window fits one page of paper, what stays with the customer another, and what the next installer needs a third: %s',
  { timeout: 60_000 },
  async (paper) => {
    const { page } = await open(example('tern-hollow-found', { paper }))
    const pdf = await page.pdf({ preferCSSPageSize: true, tagged: true })
    expect(pagesOf(pdf)).toBe(3)
    await page.context().close()
  },
)

test.each(isLong ? [820, 390, 320] : [320])(
  'nothing is cut off or needs a sideways scroll at %i px',
  { timeout: 60_000 },
  async (width) => {
    const { page } = await open(example('tern-hollow-found'), width)
    const wide = await page.evaluate(() =>
      [...document.querySelectorAll('main *:not(svg *), .head, .foot')]
        .filter(
          (each) =>
            each.getBoundingClientRect().right > innerWidth + 0.5 ||
            (each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).display === 'block'),
        )
        .map((each) => each.outerHTML.slice(0, 80)),
    )
    expect(wide.filter((each) => !each.includes('visually-hidden'))).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width)
    await page.context().close()
  },
)

test.each(['tern-hollow-found', ...(isLong ? ['panels-do-not-meet', 'not-measured-yet'] : [])])(
  'axe finds nothing: %s',
  { timeout: 60_000 },
  async (name) => {
    const { page } = await open(example(name))
    expect(await violations(page)).toEqual([])
    await page.context().close()
  },
)

test('axe finds nothing in a window that was handed over, signed and photographed, and every photo is drawn', {
  timeout: 60_000,
}, async () => {
  const picture = { src: `data:image/jpeg;base64,${(await jpeg(40, 30)).toString('base64')}`, width: 40, height: 30 }
  const { page, trouble } = await open({ ...photographed(), photos: () => picture })
  expect([await violations(page), trouble]).toEqual([[], []])
  const widths = await page.locator('img').evaluateAll((all) => all.map((one) => (one as HTMLImageElement).naturalWidth))
  expect(widths).toEqual([40, 40])
  await page.context().close()
})

test('a name that wants to be a script is read as a name', { timeout: 60_000 }, async () => {
  const name = '</style></title><script>document.title="taken"</script>'
  const { page, trouble } = await open(
    orderOf(textOf('tern-hollow').replaceAll('House at Tern Hollow', name.replaceAll('"', '\\"'))),
  )
  expect(await page.title()).toBe(`Garden room, Window 1, ${name}`)
  expect(await page.textContent('.head span')).toBe(name)
  expect([await page.locator('script').count(), trouble]).toEqual([0, []])
  await page.context().close()
})

const four = ['tern-hollow', 'panels-do-not-meet', 'not-measured-yet', 'pair-unlike']
const houses = [
  ['es', 'letter', 390, 9],
  ['en', 'a4', 820, 8],
] as const
test.each(isLong ? houses : houses.slice(0, 1))(
  'a house in %s on %s asks for nothing, and axe finds nothing, at %i px',
  { timeout: 60_000 },
  async (language, paper, width, pages) => {
    const { page, trouble } = await open(house(four, { language, paper }), width)
    expect(await violations(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width)
    // Cover, contents and summary, four windows, what stays with the customer, and two for the next installer.
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true, tagged: true }))).toBe(pages)
    expect(trouble).toEqual([])
    await page.context().close()
  },
)
