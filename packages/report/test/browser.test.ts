import { AxeBuilder } from '@axe-core/playwright'
import { type Browser, chromium as browserType, type Page } from 'playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { chromium } from '../../../tests/tools/chromium.ts'
import { type ReportOrder, reportOf } from '../src/index.ts'
import { example, orderOf, textOf } from './example.ts'

let browser: Browser
beforeAll(async () => {
  browser = await browserType.launch(await chromium())
}, 60_000)
afterAll(() => browser?.close())

/** Opens a report as a file that came by mail: no network, and everything that fails or that the policy refuses written down. */
async function open(order: ReportOrder, width = 820): Promise<{ readonly page: Page; readonly trouble: readonly string[] }> {
  const context = await browser.newContext({ viewport: { width, height: 1180 }, offline: true })
  const page = await context.newPage()
  const trouble: string[] = []
  page.on('console', (message) => trouble.push(message.text()))
  page.on('requestfailed', (request) => trouble.push(request.url().slice(0, 60)))
  await page.setContent(reportOf(order).html)
  await page.evaluate(() => Promise.all([...document.fonts].map((face) => face.load())).then(() => undefined))
  return { page, trouble }
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

test.each(['a4', 'letter'] as const)('the window fits one page of paper: %s', { timeout: 60_000 }, async (paper) => {
  const { page } = await open(example('tern-hollow-found', { paper }))
  const pdf = await page.pdf({ preferCSSPageSize: true, tagged: true })
  expect(pagesOf(pdf)).toBe(1)
  await page.context().close()
})

test.each([820, 390, 320])('nothing is cut off or needs a sideways scroll at %i px', { timeout: 60_000 }, async (width) => {
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
})

test.each(['tern-hollow-found', 'panels-do-not-meet', 'not-measured-yet'])(
  'axe finds nothing: %s',
  { timeout: 60_000 },
  async (name) => {
    const { page } = await open(example(name))
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html.slice(0, 120))])).toEqual([])
    await page.context().close()
  },
)

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
