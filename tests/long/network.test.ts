import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { deskFor, drawn, logOf, measure, stands, tabletsIn } from '../browser/away.ts'
import { tooSmall } from '../browser/page.ts'
import { example } from '../browser/tablet.ts'
import { violations } from '../tools/axe.ts'

// A name that is not this machine's own: plain http there is insecure, as in a house's network.
const { tablet, open } = tabletsIn(['--host-resolver-rules=MAP tablet.test 127.0.0.1'])
const wcag = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }

async function folder(): Promise<string> {
  const path = await mkdtemp(join(tmpdir(), 'evenhem-'))
  onTestFinished(() => rm(path, { recursive: true }))
  return path
}

test('a tablet in a plain network is paired at the desk, needs the server to open, loses nothing, and is sent away', async () => {
  const devices = join(await folder(), 'devices.json')
  const desk = await deskFor(example('tern-hollow'), { network: { names: ['tablet.test'], devices } })
  const inside = await open(await tablet(), `${desk.address}/#tablets`)
  await inside.getByRole('button', { name: 'Let a tablet in' }).click()
  const link = (await inside.getByText(/^http:\/\/tablet\.test/).textContent()) ?? ''
  expect(await violations(inside, wcag)).toEqual([])

  const page = await open(await tablet(), `http://tablet.test:${desk.port}/`)
  await page.getByRole('heading', { name: 'Pair this tablet' }).waitFor()
  expect(await violations(page, wcag)).toEqual([])
  await page.getByLabel('Code').fill('nnnn-nnnn')
  await page.getByLabel(/^Name/).fill('Ladder tablet')
  await page.getByRole('button', { name: 'This tablet is paired' }).click()
  await page.getByRole('alert').filter({ hasText: 'Unexpected code' }).waitFor()
  await page.goto(link)
  await page.getByLabel(/^Name/).fill('Ladder tablet')
  await page.getByRole('button', { name: 'This tablet is paired' }).click()
  await drawn(page)
  expect(await page.evaluate(() => [isSecureContext, document.cookie])).toEqual([false, ''])
  await page.getByRole('status').getByText('This page needs the server to open again').waitFor()
  await page.getByRole('button', { name: 'Close', exact: true }).click()

  await desk.stop()
  await measure(page, '89')
  await stands(page, '1 waiting').waitFor()
  await desk.start()
  await stands(page, 'In contact with the server').waitFor()
  expect(await logOf(desk)).toEqual(['89 in'])

  await inside.reload()
  await inside.getByRole('button', { name: 'Send Ladder tablet away' }).click()
  await inside.getByText('No tablet yet.').waitFor()
  await stands(page, /^No contact/).waitFor()
  await page.locator('changes-panel').getByRole('button', { name: 'Undo' }).click()
  await stands(page, '1 waiting').click()
  await page.getByRole('link', { name: 'Pair this tablet again' }).waitFor()
})

test('at the desk a link to the report is made for a customer, opens it in any browser, and opens nothing once it is taken back', async () => {
  const devices = join(await folder(), 'devices.json')
  const desk = await deskFor(example('tern-hollow'), { network: { names: ['tablet.test'], devices } })
  const inside = await open(await tablet(), `${desk.address}/#tablets`)
  await inside.getByLabel('For whom').fill('The household')
  await inside.getByRole('button', { name: 'Make a link' }).click()
  const link = inside.getByText(/^http:\/\/tablet\.test/)
  const address = (await link.textContent()) ?? ''
  expect(await inside.getByLabel('For whom').inputValue()).toBe('')
  expect(await violations(inside, wcag)).toEqual([])
  expect([
    await inside.evaluate(tooSmall),
    await inside.evaluate(() => document.documentElement.scrollWidth - innerWidth),
  ]).toEqual([[], 0])

  const outside = await open(await tablet(), address)
  // As in the tests of the report: the headless shell fails to load the fonts of a long page when it is first opened.
  await outside.evaluate(() => document.fonts.ready.then(() => undefined))
  await outside.reload()
  await outside.getByRole('heading', { name: 'Garden room, Window 1', level: 1 }).waitFor()
  expect(await violations(outside, wcag)).toEqual([])

  await inside.getByRole('button', { name: 'Take back the link for The household' }).click()
  await inside.getByText('No link yet.').waitFor()
  expect(await link.count()).toBe(0)
  expect((await outside.reload())?.status()).toBe(404)
  // The browser from npm has no typeface for plain text, so it is in the page and not to be seen.
  expect(await outside.locator('body').textContent()).toMatch(
    /^Unexpected link, expected one that is still good;.*\n\nEnlace inesperado/,
  )
})
