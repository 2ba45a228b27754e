import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { deskFor, drawn, logOf, measure, stands, tabletsIn } from '../browser/away.ts'
import { example, jobOf, tabletFor } from '../browser/tablet.ts'
import { violations } from '../tools/axe.ts'
import { jobOf as manyWindows } from '../tools/jobs.ts'

const { tablet, open } = tabletsIn()
const using = tabletFor()
const wcag = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }
const measured = '.figure:is(.measured, .off)'

test('two tabs of one tablet write one log, and each shows what the other was told', async () => {
  const desk = await deskFor()
  const device = await tablet()
  const [one, two] = [await open(device, desk.address), await open(device, desk.address)]
  await Promise.all([drawn(one), drawn(two)])
  await stands(one, 'In contact with the server').waitFor()
  await desk.stop()
  await measure(one, '89')
  await two.locator(`room-drawing ${measured}`).first().waitFor()
  await one.locator('changes-panel').getByRole('button', { name: 'Undo' }).click()
  await stands(two, '2 waiting').waitFor()
  await desk.start()
  await Promise.all([one, two].map((page) => stands(page, 'In contact with the server').waitFor()))
  expect(await logOf(desk)).toEqual(['89 in', undefined])
})

test('a newer viewer changes nothing about entries that wait', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), desk.address)
  await drawn(page)
  await stands(page, 'In contact with the server').click()
  await page.getByText('Everything for this job is on this tablet.').waitFor()
  await page.keyboard.press('Escape')
  await desk.stop()
  await measure(page, '89')
  await stands(page, '1 waiting').waitFor()
  const worker = join(desk.viewer, 'sw.js')
  await writeFile(worker, (await readFile(worker, 'utf8')).replace(/evenhem-[0-9a-f]{16}/, 'evenhem-newer'))
  await writeFile(
    join(desk.viewer, 'index.html'),
    (await readFile(join(desk.viewer, 'index.html'), 'utf8')).replace('<title>', '<title>Newer '),
  )
  await desk.start()
  await page.reload()
  await drawn(page)
  await stands(page, 'In contact with the server').waitFor()
  await expect.poll(() => page.evaluate(() => caches.keys()), { timeout: 10_000 }).toEqual(['evenhem-newer'])
  await page.reload()
  await drawn(page)
  expect(await page.evaluate(async () => (await (await fetch('/')).text()).includes('Newer'))).toBe(true)
  expect(await logOf(desk)).toEqual(['89 in'])
})

test('a clock that was set back keeps the order in which things were entered', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), desk.address)
  await drawn(page)
  await measure(page, '89')
  await page.clock.setSystemTime(new Date('2001-02-03T04:05:06Z'))
  await page.locator('changes-panel').getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => logOf(desk)).toEqual(['89 in', undefined])
  await page.reload()
  await drawn(page)
  expect(await page.locator(`room-drawing ${measured}`).count()).toBe(0)
})

test('of many jobs one is chosen from a list, by touch or by its squares, and leads back', async () => {
  const top = await mkdtemp(join(tmpdir(), 'evenhem-'))
  onTestFinished(() => rm(top, { recursive: true }))
  for (const name of ['tern-hollow', 'heron-point']) {
    await mkdir(join(top, name))
    await cp(join(example(name), 'job.json'), join(top, name, 'job.json'))
  }
  const desk = await deskFor(top)
  const page = await open(await tablet(), desk.address)
  await page.getByRole('button', { name: 'Squares for a camera that lead to House at Tern Hollow' }).click()
  const squares = page.getByRole('img', { name: /^Squares for a camera/ })
  await expect.poll(() => squares.evaluate((img) => (img as HTMLImageElement).naturalWidth)).toBeGreaterThan(0)
  expect(await violations(page, wcag)).toEqual([])
  await page.getByRole('link', { name: 'House at Heron Point' }).click()
  await page.getByRole('link', { name: 'All jobs' }).click()
  await page.getByRole('link', { name: 'House at Tern Hollow' }).click()
  await drawn(page)
  await measure(page, '89')
  await expect.poll(() => logOf({ address: `${desk.address}/jobs/tern-hollow` })).toEqual(['89 in'])
  await desk.stop()
  await page.reload()
  await drawn(page)
})

test('draws only the rooms that come near, of three hundred windows too', async () =>
  using({ job: await jobOf(JSON.stringify(manyWindows(3, 300, 0))) }, async ({ page }) => {
    expect(await page.locator('room-strip').count()).toBe(30)
    expect(await page.locator('room-strip a').count()).toBeLessThan(100)
    await page.locator('room-strip').nth(26).scrollIntoViewIfNeeded()
    await page.locator('room-strip').nth(26).locator('svg .glass').first().waitFor({ state: 'attached' })
    expect(await page.locator('open-list li').count()).toBeLessThan(20)
  }))
