import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright'
import { describe, expect, test } from 'vitest'
import { crossing, cutOff, tooFine, tooSmall } from './page.ts'
import { desk, example, figures, go, lying, phone, tabletFor, upright } from './tablet.ts'

const found = example('tern-hollow-found')
const lights = ['paper', 'night', 'sun'] as const
const sizes = { upright, lying, phone, desk }

const using = tabletFor()
// axe's package has its own copy of the driver's types.
type AxePage = ConstructorParameters<typeof AxeBuilder>[0]['page']

/** Every view of a sheet, by what leads to it. */
const views: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  drawing: async () => {},
  working: (page) => figures(page).first().dispatchEvent('click'),
  findings: async (page) => {
    const row = page.locator('findings-row button').first()
    if ((await row.count()) > 0) await row.click()
  },
  marks: (page) => go(page, 'Marks'),
  hooks: (page) => go(page, 'Hooks'),
}

const wcag = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']

describe('axe finds nothing', () => {
  test.each(lights)('in %s', (light) =>
    using({ light, job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        const axe = new AxeBuilder({ page: page as unknown as AxePage })
        // Only colours differ between the lights, so all else is asked once.
        const { violations } = await (light === 'paper' ? axe.withTags(wcag) : axe.withRules('color-contrast')).analyze()
        expect(
          violations.map(({ id, nodes }) => `${view}: ${id} ${nodes.map(({ target }) => target.join(' ')).join(', ')}`),
        ).toEqual([])
        await page.keyboard.press('Escape')
      }
    }),
  )
})

describe('in every size, in every view', () => {
  test.each(Object.entries(sizes))('%s: nothing needs sideways scrolling, lies over another or is cut off', (_, size) =>
    using({ size, job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        expect([view, Math.max(0, wider), await page.evaluate(crossing), await page.evaluate(cutOff)]).toEqual([view, 0, [], []])
        await page.keyboard.press('Escape')
      }
    }),
  )

  test.each(Object.entries({ upright, lying }))(
    '%s: a finger finds everything that answers to it, and no letters are smaller than 13.5 pixels but on the tape and its letters',
    (_, size) =>
      using({ size, job: found }, async ({ page }) => {
        for (const [view, lead] of Object.entries(views)) {
          await lead(page)
          expect([view, await page.evaluate(tooSmall), await page.evaluate(tooFine)]).toEqual([view, [], []])
          await page.keyboard.press('Escape')
        }
      }),
  )
})
