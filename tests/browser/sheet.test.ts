import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { desk, example, lying, phone, printedPlan, type Sheet, type Size, startTablet, type Tablet, upright } from './tablet.ts'

const job = example('tern-hollow')
const found = example('tern-hollow-found')
const lights = ['paper', 'night', 'sun'] as const

let tablet: Tablet
beforeAll(async () => {
  tablet = await startTablet()
})
afterAll(() => tablet.close())

/** Opens a sheet, does something with it, and closes it whatever happened. Nothing may complain meanwhile. */
async function using(where: { readonly job?: string; readonly size?: Size; readonly light?: string }, work: (sheet: Sheet) => Promise<void>): Promise<void> {
  const sheet = await tablet.open(where.job ?? job, where.size ?? upright, where.light)
  try {
    await work(sheet)
    expect(sheet.faults).toEqual([])
  } finally {
    await sheet.close()
  }
}

const planText = (page: Page) => page.evaluate(() => (document.querySelector('evenhem-app') as unknown as { planText: () => string | undefined }).planText())
const figures = (page: Page) => page.locator('room-drawing .figure')
const named = (page: Page, name: RegExp) => page.locator('room-drawing').getByRole('button', { name })
const ledgerLines = (page: Page) => page.locator('working-panel li button')
const go = (page: Page, leaf: string) => page.locator('title-block').getByRole('button', { name: leaf }).click()

test('the tablet plans by itself: its plan is the one that the command line prints, byte for byte', () =>
  using({}, async ({ page, cut }) => {
    await cut()
    expect(await planText(page)).toBe(await printedPlan(job, 'w1'))
  }))

test('with readings too, the tablet’s plan is the one that the command line prints', () =>
  using({ job: found }, async ({ page }) => expect(await planText(page)).toBe(await printedPlan(found, 'w1'))))

test('without a network the units change everywhere, and back', () =>
  using({}, async ({ page, cut }) => {
    await cut()
    const before = await figures(page).allInnerTexts()
    const unit = page.locator('sheet-bar').getByRole('button', { name: /^Units/ })
    await unit.click()
    await unit.click()
    expect(await unit.innerText()).toBe('mm, rounded')
    expect(await page.locator('room-drawing').getByRole('button', { name: /millimetres/ }).count()).toBeGreaterThan(5)
    await unit.click()
    expect(await figures(page).allInnerTexts()).toEqual(before)
  }))

test('without a network a number opens its working, down to what the order says', () =>
  using({}, async ({ page, cut }) => {
    await cut()
    await named(page, /^top hole/).first().click()
    expect(await page.locator('working-panel h2').innerText()).toMatch(/hole/)
    expect(await ledgerLines(page).count()).toBeGreaterThan(3)
    await ledgerLines(page).filter({ hasText: 'finished length' }).first().click()
    expect(await page.locator('working-panel').innerText()).toContain('Written on the order')
    await page.locator('working-panel nav button').first().click()
    expect(await ledgerLines(page).count()).toBeGreaterThan(3)
  }))

test('every number of every drawing opens something, and every way down ends at a place or a default', () =>
  using({ job: found, size: desk }, async ({ page }) => {
    for (const leaf of ['Drawing', 'Marks']) {
      await go(page, leaf)
      const count = await figures(page).count()
      expect(count).toBeGreaterThan(4)
      for (let n = 0; n < count; n++) {
        await figures(page).nth(n).dispatchEvent('click')
        await page.locator('working-panel h2').waitFor()
        for (let deep = 0; (await ledgerLines(page).count()) > 0; deep++) {
          expect(deep).toBeLessThan(12)
          await ledgerLines(page).last().dispatchEvent('click')
          await page.waitForTimeout(0)
        }
        expect(await page.locator('working-panel .source').count()).toBe(1)
        await page.keyboard.press('Escape')
        await page.locator('working-panel').waitFor({ state: 'detached' })
      }
    }
  }))

test('a number that was measured says by whom and when', () =>
  using({ job: found }, async ({ page }) => {
    await page.locator('room-drawing .figure:is(.measured, .off)').first().dispatchEvent('click')
    const text = await page.locator('working-panel').innerText()
    expect(text).toContain('Read from a tape')
    expect(text).toMatch(/By\s+\S/)
  }))

test('drawn and stacked are one touch apart', () =>
  using({}, async ({ page }) => {
    const fabric = () => page.locator('room-drawing .fabric').first().getAttribute('d')
    const closed = await fabric()
    await page.getByRole('button', { name: 'Stacked' }).click()
    expect(await fabric()).not.toBe(closed)
    await page.getByRole('button', { name: 'Closed' }).click()
    expect(await fabric()).toBe(closed)
  }))

test('a step is ticked on this tablet, which says that it is no record', () =>
  using({}, async ({ page }) => {
    const panel = page.locator('step-panel')
    const first = await panel.locator('h2').innerText()
    await panel.locator('.go').click()
    expect(await panel.locator('h2').innerText()).not.toBe(first)
    await page.reload()
    expect(await panel.locator('.eyebrow').innerText()).toMatch(/step 2 of/)
    await panel.getByRole('button', { name: 'Back' }).click()
    expect(await panel.innerText()).toContain('Not in the record yet')
  }))

test('the whole sheet can be worked by keyboard', () =>
  using({}, async ({ page }) => {
    await figures(page).first().focus()
    await page.keyboard.press('Enter')
    await page.locator('working-panel h2').waitFor()
    expect(await page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.shadowRoot?.activeElement?.shadowRoot?.activeElement?.localName ?? deepest()).catch(() => 'h2')).toBe('h2')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Escape')
    await page.locator('working-panel').waitFor({ state: 'detached' })
    expect(await figures(page).first().evaluate((figure) => figure === (figure.getRootNode() as ShadowRoot).activeElement)).toBe(true)
  }))
