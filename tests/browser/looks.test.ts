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

describe('axe finds nothing', () => {
  test.each(lights)('in %s', (light) =>
    using({ light, job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        const { violations } = await new AxeBuilder({ page: page as unknown as AxePage })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
          .analyze()
        expect(
          violations.map(({ id, nodes }) => `${view}: ${id} ${nodes.map(({ target }) => target.join(' ')).join(', ')}`),
        ).toEqual([])
        await page.keyboard.press('Escape')
      }
    }),
  )
})

describe('in every size', () => {
  test.each(Object.entries(sizes))('%s: nothing needs sideways scrolling, nothing lies over another', (_, size) =>
    using({ size, job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
          `${view} is as wide as the page`,
        ).toBeLessThanOrEqual(0)
        expect(await page.evaluate(crossing), `${view}: parts of the page`).toEqual([])
        expect(await page.evaluate(cutOff), `${view}: words`).toEqual([])
        await page.keyboard.press('Escape')
      }
    }),
  )

  test.each([
    ['upright', upright],
    ['lying', lying],
  ] as const)('%s: a finger finds everything that answers to it', (_, size) =>
    using({ size, job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        expect(await page.evaluate(tooSmall), view).toEqual([])
        await page.keyboard.press('Escape')
      }
    }),
  )

  test('text on a tablet is never smaller than 13.5 pixels, but for the tape’s own numbers', () =>
    using({ job: found }, async ({ page }) => {
      for (const [view, lead] of Object.entries(views)) {
        await lead(page)
        expect(await page.evaluate(tooFine), view).toEqual([])
        await page.keyboard.press('Escape')
      }
    }))
})
