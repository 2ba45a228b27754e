import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { deskFor, drawn, logOf, measure, stands, tabletsIn } from '../browser/away.ts'

const { tablet, open } = tabletsIn()
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
