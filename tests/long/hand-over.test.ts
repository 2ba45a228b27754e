import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { type Entry, isSignature, ownHash } from '@evenhem/site-log'
import type { Page } from 'playwright'
import { expect, test } from 'vitest'
import { deskFor, stands, tabletsIn } from '../browser/away.ts'
import { violations } from '../tools/axe.ts'

const { tablet, open } = tabletsIn()
const wcag = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }

/** Signs with a pen. */
async function draw(page: Page): Promise<void> {
  const field = page.getByRole('img', { name: 'Sign here with a finger or a pen' })
  await field.scrollIntoViewIfNeeded()
  const box = await field.boundingBox()
  if (!box) throw new Error('Unexpected pad that is not seen, expected one to sign on')
  await page.mouse.move(box.x + 60, box.y + 120)
  await page.mouse.down()
  await page.mouse.move(box.x + 160, box.y + 60, { steps: 5 })
  await page.mouse.move(box.x + 260, box.y + 140, { steps: 5 })
  await page.mouse.up()
}

test('a house is handed over without a server: two sign, and the seal is of the order and of all that was entered', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), `${desk.address}/#/`)
  await page.getByRole('link', { name: 'Hand over and sign' }).click()
  const sheet = page.locator('hand-over-page')
  await sheet.getByText('Garden room, Window 1').first().waitFor()
  await desk.stop()
  expect(await violations(page, wcag)).toEqual([])
  await sheet.getByRole('button', { name: 'Signed' }).click()
  await sheet.getByRole('alert').filter({ hasText: 'A name and a signature are wanted' }).waitFor()
  await draw(page)
  await sheet.getByLabel('Name', { exact: true }).fill('Marta Quill')
  await sheet.getByLabel('The name in letters counts').check()
  const form = await sheet.locator('form').elementHandle()
  await sheet.getByRole('button', { name: 'Signed' }).click()
  await sheet.getByText('Installer Marta Quill').waitFor()
  expect(await form?.evaluate((each) => each.isConnected), 'an entry takes away nothing that is being written').toBe(true)
  // Its line alone is left.
  await expect
    .poll(() => sheet.locator('signature-pad path').count(), { message: 'the pad is empty for whoever signs next' })
    .toBe(1)
  await sheet.getByRole('button', { name: 'Customer' }).click()
  // Its steps are not done, so nobody can accept it as finished.
  await sheet.getByText('One window has steps that are not done.').waitFor()
  expect(await sheet.getByRole('button', { name: 'Everything, nothing is left open' }).count()).toBe(0)
  await sheet.getByRole('button', { name: 'With the points that are left open' }).click()
  await sheet.getByLabel('Name', { exact: true }).fill('Household at Tern Hollow')
  await sheet.getByLabel(/^Left with the customer/).fill('two rings')
  await draw(page)
  await sheet.getByRole('button', { name: 'Signed' }).click()
  await sheet.getByText('Customer Household at Tern Hollow').waitFor()

  await desk.start()
  await page.goto(`${desk.address}/#/`)
  await stands(page, 'In contact with the server').waitFor()
  const log = async () => (await (await fetch(`${desk.address}/log`)).json()).entries as readonly Entry[]
  await expect.poll(async () => (await log()).length).toBe(2)
  const entries = await log()
  const hash = createHash('sha256')
    .update(await readFile(join(desk.folder, 'job.json')))
    .digest('hex')
  const signatures = entries.map(({ event }) => event.value).filter(isSignature)
  expect(signatures.map(({ seal }) => seal.job)).toEqual([hash, hash])
  for (const signature of signatures) expect(ownHash(signature)).toBe(signature.seal.signature)
})
