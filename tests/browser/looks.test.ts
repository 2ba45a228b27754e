import type { Page } from 'playwright'
import { describe, expect, test } from 'vitest'
import { violations } from '../tools/axe.ts'
import { isLong } from '../tools/long.ts'
import { crossing, cutOff, tooFine, tooSmall } from './page.ts'
import { desk, example, figures, lying, phone, tabletFor, upright } from './tablet.ts'

const found = example('tern-hollow-found')
// Every light and size is looked at by the long tests, and the commonest whenever tests run.
const looks = (
  [
    ['paper', 'en'],
    ['night', 'es'],
    ['sun', 'en'],
  ] as const
).slice(0, isLong ? 3 : 1)
const sizes = isLong ? { upright, lying, phone, desk } : { upright }
/** How a tablet is held. */
const held = new Set([upright, lying])

const using = tabletFor()

/** A sheet of the window by its place in the title block: its name is of the language. */
const leaf = (page: Page, n: number) => page.locator('title-block button').nth(n).click()

/** Every view of the house and a window, by what leads to it. */
const views: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  drawing: async () => {},
  working: (page) => figures(page).first().dispatchEvent('click'),
  findings: async (page) => {
    const row = page.locator('findings-row button').first()
    if ((await row.count()) > 0) await row.click()
  },
  marks: (page) => leaf(page, 1),
  ladder: (page) => page.locator('hole-list .ladder').click(),
  hooks: (page) => leaf(page, 2),
  house: async (page) => {
    await leaf(page, 0)
    await page.locator('sheet-bar a.place').click()
    await page.locator('room-strip svg .glass').first().waitFor()
  },
}

const wcag = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']

describe('axe finds nothing', () => {
  test('on the sheet, where it would', () =>
    using({}, async ({ page }) => {
      await page.locator('window-sheet').evaluate((sheet) => sheet.shadowRoot?.append(document.createElement('button')))
      expect(await violations(page, { runOnly: wcag })).toEqual(['button-name: evenhem-app,window-sheet,button'])
    }))

  test.each(looks)('in %s, %s', (light, language) =>
    using({ light, language, job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        // Only colours differ between the lights, so all else is asked once in each language.
        const rules = light !== 'sun' ? wcag : { type: 'rule' as const, values: ['color-contrast'] }
        expect([view, ...(await violations(page, { runOnly: rules }))]).toEqual([view])
        await page.keyboard.press('Escape')
      }
    }),
  )
})

describe('in every size, in every view', () => {
  test.each(Object.entries(sizes))('%s: nothing needs sideways scrolling, lies over another or is cut off', (_, size) =>
    using({ size, language: 'es', job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        expect([view, Math.max(0, wider), await page.evaluate(crossing), await page.evaluate(cutOff)]).toEqual([view, 0, [], []])
        // A finger finds everything that answers to it, and no letters are smaller than 13.5 pixels but on the tape and its letters.
        if (held.has(size)) expect([view, await page.evaluate(tooSmall), await page.evaluate(tooFine)]).toEqual([view, [], []])
        await page.keyboard.press('Escape')
      }
    }),
  )
})
