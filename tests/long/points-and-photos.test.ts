import { createHash } from 'node:crypto'
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright'
import { expect, test } from 'vitest'
import { deskFor, drawn, stands, tabletsIn } from '../browser/away.ts'
import { violations } from '../tools/axe.ts'

const { tablet, open } = tabletsIn()
const wcag = { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }

/** Runs in the page: a picture drawn by program, as a camera would hand it over. */
const picture = (page: Page, seed: number): Promise<readonly number[]> =>
  page.evaluate(async (seed) => {
    const canvas = document.createElement('canvas')
    canvas.width = 1200
    canvas.height = 900
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D
    pen.fillStyle = '#e6eeee'
    pen.fillRect(0, 0, 1200, 900)
    pen.fillStyle = '#ece4d3'
    for (let x = 100; x < 1100; x += 40) pen.fillRect(x, 120, 24, 600 + ((x * seed) % 60))
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.9))
    return [...new Uint8Array(await (blob as Blob).arrayBuffer())]
  }, seed)

test('photos are taken without a server, marked, named, and arrive as they were taken', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), desk.address)
  await drawn(page)
  await page.locator('contact-chip').getByText('It opens without the server').waitFor({ state: 'attached' })
  await page.locator('title-block').getByRole('button', { name: 'Photos' }).click()
  await desk.stop()
  const bytes = Buffer.from(await picture(page, 7))
  const name = createHash('sha256').update(bytes).digest('hex')
  await page.getByLabel('Take a photo').setInputFiles({ name: 'IMG 1.jpg', mimeType: 'image/jpeg', buffer: bytes })

  const photo = page.locator('photo-view')
  await photo.getByLabel('What it shows').fill('Left bracket, plate on the casing')
  await photo.getByRole('button', { name: 'Save' }).click()
  await photo.getByRole('button', { name: 'before the work' }).click()
  await photo.getByRole('button', { name: 'Arrow' }).click()
  await photo.locator('.frame').click({ position: { x: 200, y: 150 } })
  await photo.getByRole('button', { name: 'Words' }).click()
  await photo.locator('.frame').press('ArrowRight')
  await photo.locator('.frame').press('Enter')
  await photo.getByLabel('What the words say').fill('chipped')
  await photo.getByRole('button', { name: 'Put there' }).click()
  await expect.poll(() => photo.locator('ul li').count()).toBe(2)
  expect(await violations(page, wcag)).toEqual([])
  await page.keyboard.press('Escape')
  await page.locator('photos-view').getByText('waits on this tablet').waitFor()
  expect(await violations(page, wcag)).toEqual([])

  await page.reload()
  await page.getByRole('button', { name: /Left bracket, plate on the casing/ }).waitFor()
  await desk.start()
  await stands(page, 'In contact with the server').waitFor()
  await expect
    .poll(async () => readdir(join(desk.folder, 'photos')).catch(() => []), { timeout: 10_000 })
    .toContain(`${name}.jpg`)
  await page.locator('photos-view').getByText('waits on this tablet').waitFor({ state: 'detached' })
  // Of several that are taken while one is on its way, all arrive.
  const more = [Buffer.from(await picture(page, 11)), Buffer.from(await picture(page, 13)), Buffer.from(await picture(page, 17))]
  await page
    .getByLabel('Choose pictures')
    .setInputFiles(more.map((buffer, n) => ({ name: `${n}.jpg`, mimeType: 'image/jpeg', buffer })))
  const names = more.map((buffer) => `${createHash('sha256').update(buffer).digest('hex')}.jpg`)
  await expect.poll(() => readdir(join(desk.folder, 'photos')), { timeout: 10_000 }).toEqual(expect.arrayContaining(names))
  await stands(page, 'In contact with the server').waitFor()
  const small = await fetch(`${desk.address}/photos/${name}/320`)
  expect([small.status, small.headers.get('content-type')]).toEqual([200, 'image/jpeg'])
})

test('what is left to mend is put a word at a time, holds up the hand-over while somebody can be hurt, and is settled', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), desk.address)
  await drawn(page)
  await page.locator('title-block').getByRole('button', { name: 'Photos' }).click()
  await page.getByRole('button', { name: 'New point' }).click()
  const point = page.locator('point-view')
  await point.getByLabel('What is wrong').fill('Left bracket is loose')
  await page.keyboard.press('Enter')
  await point.getByRole('heading', { name: 'Left bracket is loose' }).waitFor()
  await point.getByRole('button', { name: 'Somebody can be hurt by it' }).click()
  await point.getByRole('button', { name: 'Bracket left', exact: true }).click()
  await point.getByRole('button', { name: 'Installer', exact: true }).click()
  await point.getByLabel('By when').fill('2026-12-01')
  await point.getByLabel('By when').press('Enter')
  expect(await violations(page, wcag)).toEqual([])
  await page.keyboard.press('Escape')
  const row = page.locator('photos-view').getByRole('button', { name: /Left bracket is loose/ })
  expect(await row.textContent()).toMatch(/open · installer · by 2026-12-01\s*Somebody can be hurt by it/)
  await page.locator('title-block').getByRole('button', { name: 'Drawing' }).click()
  await page
    .locator('room-drawing')
    .getByRole('img', { name: /oint 1/ })
    .first()
    .waitFor({ state: 'attached' })
  await page.locator('findings-row button').first().click()
  await page.locator('findings-list li', { hasText: 'Left bracket is loose' }).first().waitFor()
  await page.keyboard.press('Escape')
  await page.locator('title-block').getByRole('button', { name: 'Photos' }).click()
  await row.click()
  await point.getByRole('button', { name: 'Mended', exact: true }).click()
  await point.getByRole('button', { name: 'Looked at', exact: true }).click()
  await page.keyboard.press('Escape')
  await expect.poll(() => row.textContent()).toMatch(/looked at/)
  await row.click()
  await point.getByRole('button', { name: 'Leave this point out' }).click()
  await row.waitFor({ state: 'detached' })
  // One that was only looked at leaves nothing behind.
  await page.getByRole('button', { name: 'New point' }).click()
  await point.getByLabel('What is wrong').waitFor()
  await page.keyboard.press('Escape')
  await page.getByText('Nothing is left to mend here.').waitFor()
})
