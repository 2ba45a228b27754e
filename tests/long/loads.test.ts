import { expect, test } from 'vitest'
import { crossing, cutOff, tooFine, tooSmall } from '../browser/page.ts'
import { example, lying, named, phone, tabletFor, upright, working } from '../browser/tablet.ts'
import { violations } from '../tools/axe.ts'

const using = tabletFor()
const job = example('will-it-hold')
const address = '#/barn/rating/loads'
const wcag = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']

test('loads have a leaf: the drawing, what was checked, every bracket, what is taken for granted, and that it is an estimate', () =>
  using({ job, address: '#/barn/rating' }, async ({ page }) => {
    await page.locator('title-block').getByRole('button', { name: 'Loads stops' }).click()
    await page.locator('load-list').waitFor()
    expect(await page.locator('room-drawing .figure .line.load').count()).toBe(3)
    expect(await page.locator('findings-list section').textContent()).toContain('193 % of what its maker allows')
    const list = await page.locator('load-list section').textContent()
    expect(list).toContain('193 % of what its maker allows')
    expect(list).toContain('In wood, with No. 10 × 3 wood screw')
    expect(list).toContain('weights in hems')
    expect(list).toContain('An estimate, not an engineer’s certificate')
  }))

test('the load of a bracket leads to its working by keyboard, told as what weighs as much', () =>
  using({ job, address }, async ({ page }) => {
    const load = named(page, /^support: 23.1 lb, worked out$/)
    await load.focus()
    await page.keyboard.press('Enter')
    await working(page).waitFor()
    expect(await working(page).textContent()).toContain('All that hangs on the bracket')
    expect(await working(page).locator('[aria-label="23.1 lb"]').count()).toBeGreaterThan(0)
  }))

test.each([
  ['upright', upright, 'en', 'paper'],
  ['lying', lying, 'es', 'night'],
  ['phone', phone, 'es', 'sun'],
] as const)('%s: axe finds nothing, and nothing lies over another, is cut off or too small', (_, size, language, light) =>
  using({ job, address, size, language, light }, async ({ page }) => {
    await page.locator('load-list').waitFor()
    expect(await violations(page, { runOnly: wcag })).toEqual([])
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect([Math.max(0, wider), await page.evaluate(crossing), await page.evaluate(cutOff)]).toEqual([0, [], []])
    if (size !== phone) expect([await page.evaluate(tooSmall), await page.evaluate(tooFine)]).toEqual([[], []])
  }),
)

test('on paper the drawing and the list stand below one another, in full', () =>
  using({ job, address }, async ({ page }) => {
    await page.emulateMedia({ media: 'print' })
    const [drawing, list] = [await page.locator('room-drawing').boundingBox(), await page.locator('load-list').boundingBox()]
    expect(drawing && list && [drawing.y + drawing.height <= list.y + 1, drawing, list]).toEqual([true, drawing, list])
    const [shown, whole] = await page
      .locator('.findings')
      .evaluate((findings) => [findings.clientHeight, findings.scrollHeight] as const)
    expect(shown).toBe(whole)
  }))
