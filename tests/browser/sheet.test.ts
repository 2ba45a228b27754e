import type { Page } from 'playwright'
import { describe, expect, test } from 'vitest'
import { isLong } from '../tools/long.ts'
import { desk, example, figures, go, named, printedPlan, tabletFor, working } from './tablet.ts'

const found = example('tern-hollow-found')

const using = tabletFor()

const planText = (page: Page) =>
  page.evaluate(() => (document.querySelector('evenhem-app') as unknown as { planText: () => string | undefined }).planText())
const lines = (page: Page) => working(page).locator('.rows li button')
const unit = (page: Page) => page.locator('sheet-bar').getByRole('button', { name: /^Units/ })
/** The name of whatever has the focus, in however many shadow roots. */
const focused = (page: Page) =>
  page.evaluate(() => {
    let element = document.activeElement
    while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement
    return element?.getAttribute('aria-label') ?? element?.textContent?.trim() ?? ''
  })

describe('the plan', () => {
  test.each(isLong ? ['tern-hollow', 'tern-hollow-found'] : ['tern-hollow-found'])(
    'of %s is worked out on the tablet, without a network, byte for byte as the command line prints it',
    (name) =>
      using({ job: example(name) }, async ({ page, cut }) => {
        await cut()
        expect(await planText(page)).toBe(await printedPlan(example(name), 'w1'))
      }),
  )
})

describe('without a network', () => {
  test('units change everywhere and back, a number opens its working down to the order, steps, views and lights go on', () =>
    using({}, async ({ page, cut }) => {
      await cut()
      const before = await figures(page).allTextContents()
      await unit(page).click()
      await unit(page).click()
      expect((await unit(page).textContent())?.trim()).toBe('mm, rounded')
      expect(await figures(page).filter({ hasText: '2286' }).count(), 'the top hole, 90 in, in millimetres').toBeGreaterThan(0)
      await unit(page).click()
      expect(await figures(page).allTextContents()).toEqual(before)

      await named(page, /^top hole/).click()
      expect(await working(page).locator('h2').textContent()).toContain('Top hole, left side')
      await lines(page).filter({ hasText: 'hang line' }).click()
      await lines(page).first().click()
      await lines(page).filter({ hasText: 'finished length' }).click()
      expect(await working(page).textContent()).toContain('Written on the order')
      expect(await working(page).locator('dl').textContent()).toContain(
        'Garden room, Window 1, treatment, panel left, finished length',
      )
      await working(page).locator('nav button').first().click()
      expect(await working(page).locator('h2').textContent()).toContain('Top hole, left side')
      await page.keyboard.press('Escape')

      await page.locator('step-panel .go').click()
      await go(page, 'Marks')
      expect(await page.locator('hole-list tbody tr').count()).toBe(6)
      await go(page, 'Hooks')
      expect(await page.locator('hook-cards li').count()).toBe(13)
      await page
        .locator('sheet-bar')
        .getByRole('button', { name: /^Light/ })
        .click()
      expect(await page.evaluate(() => document.documentElement.dataset.light)).toBe('night')
    }))
})

describe('numbers', () => {
  test.each(isLong ? ['Drawing', 'Marks'] : ['Drawing'])(
    'those on the sheet %s open, and every way down ends at a place, a default or a plain number',
    (leaf) =>
      using({ job: found, size: desk }, async ({ page }) => {
        await go(page, leaf)
        const count = await figures(page).count()
        expect(count).toBeGreaterThan(8)
        // Every third, another one on each sheet: the paths of all reckonings are walked without a browser too.
        for (let n = leaf === 'Marks' ? 1 : 0; n < count; n += 3) {
          await figures(page).nth(n).dispatchEvent('click')
          await working(page).waitFor()
          for (let deep = 1; (await lines(page).count()) > 0; deep++) {
            expect(deep, 'levels').toBeLessThan(12)
            await lines(page).last().dispatchEvent('click')
            await working(page).locator(`nav li:nth-child(${deep})`).waitFor()
          }
          expect(await working(page).locator('.source').count()).toBe(1)
          await page.keyboard.press('Escape')
          await working(page).waitFor({ state: 'detached' })
        }
      }),
  )

  test('one that was measured lies on tape and says by whom and when', () =>
    using({ job: found }, async ({ page }) => {
      await page.locator('room-drawing .figure.measured').first().dispatchEvent('click')
      expect(await working(page).locator('.source').textContent()).toContain('Read from a tape')
      expect(await working(page).locator('dt').allTextContents()).toEqual(['Place', 'By', 'When'])
    }))

  test('the lines of a working come to its total', () =>
    using({}, async ({ page }) => {
      await named(page, /^top hole/).click()
      const read = (name: string | null) => {
        const [, less, minus, whole = '0', over = ''] =
          /(less )?.*, (minus )?(?:(\d+)(?: and )?)?(.*?) inch/.exec(name ?? '') ?? []
        const parts: Record<string, number> = { 'one half': 1 / 2, 'one eighth': 1 / 8, 'five eighths': 5 / 8 }
        return (less ? -1 : 1) * (minus ? -1 : 1) * (Number(whole) + (parts[over.trim()] ?? 0))
      }
      const names = await Promise.all((await working(page).locator('.line').all()).map((line) => line.getAttribute('aria-label')))
      const [total, ...terms] = names.map(read).reverse()
      expect(terms.length).toBeGreaterThan(3)
      expect(terms.reduce((sum, term) => sum + term, 0)).toBe(total)
    }))

  test('those of the step open too', () =>
    using({}, async ({ page }) => {
      const panel = page.locator('step-panel')
      while ((await panel.locator('.numbers').count()) === 0) await panel.getByRole('button', { name: 'Next' }).click()
      await panel.locator('.numbers button').first().click()
      expect(await working(page).locator('h2').textContent()).toContain('hole')
    }))
})

describe('the sheet', () => {
  test('shows the drapery closed and stacked, one touch apart', () =>
    using({}, async ({ page }) => {
      const fabric = () => page.locator('room-drawing .fabric').first().getAttribute('d')
      const closed = await fabric()
      await page.getByRole('button', { name: 'Stacked' }).click()
      expect(await fabric()).not.toBe(closed)
      await page.getByRole('button', { name: 'Closed' }).click()
      expect(await fabric()).toBe(closed)
    }))

  test('a step that is done stays done, and can be taken back', () =>
    using({}, async ({ page }) => {
      const panel = page.locator('step-panel')
      await panel.locator('.go').click()
      await panel.getByText('step 2 of').waitFor()
      await page.reload()
      await panel.getByText('step 2 of').waitFor()
      await panel.getByRole('button', { name: 'Back' }).click()
      expect(await panel.locator('.note').textContent()).toContain('Done')
      await panel.locator('.go').click()
      await panel.locator('.note', { hasText: 'Then:' }).waitFor()
    }))

  test('closes steps behind a stop and says why', () =>
    using({ job: example('rings-missing') }, async ({ page }) => {
      const panel = page.locator('step-panel')
      while ((await panel.locator('.closed').count()) === 0) await panel.getByRole('button', { name: 'Next' }).click()
      expect(await panel.locator('.closed').textContent()).toContain('2 rings are missing')
      const title = await panel.locator('h2').textContent()
      await panel.locator('.go').dispatchEvent('click')
      expect(await panel.locator('h2').textContent()).toBe(title)
    }))
})

describe('by keyboard', () => {
  test('the focus goes from the step to the findings, then through the numbers from the top down', () =>
    using({}, async ({ page }) => {
      const seen: string[] = []
      for (let n = 0; n < 40 && !seen.at(-1)?.startsWith('hem'); n++) {
        await page.keyboard.press('Tab')
        seen.push(await focused(page))
      }
      const at = (start: string) => seen.findIndex((name) => name.startsWith(start))
      expect(at('Everything is here')).toBeGreaterThan(0)
      const passes = seen.findIndex((name) => /^\d+ pass$/.test(name))
      expect(at('drapery covers')).toBeGreaterThan(passes)
      expect(passes).toBeGreaterThan(at('Everything is here'))
      expect(
        [at('drapery covers'), at('top of rod'), at('top hole'), at('hem')].every(
          (place, n, all) => n === 0 || place > (all[n - 1] ?? 0),
        ),
      ).toBe(true)
    }))

  test('Enter opens a number, Escape closes it, and the focus is where it was', () =>
    using({}, async ({ page }) => {
      await named(page, /^hang line/).focus()
      const name = await focused(page)
      await page.keyboard.press('Enter')
      await working(page).waitFor()
      expect(await focused(page)).toBe('Hang line')
      await page.keyboard.press('Tab')
      await page.keyboard.press('Enter')
      await working(page).locator('nav').waitFor()
      await page.keyboard.press('Escape')
      await working(page).waitFor({ state: 'detached' })
      expect(await focused(page)).toBe(name)
    }))

  test('what has the focus has a ring of 3 pixels', () =>
    using({}, async ({ page }) => {
      await page.keyboard.press('Tab')
      const ring = () =>
        page.evaluate(() => {
          let element = document.activeElement
          while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement
          return element ? getComputedStyle(element).outlineWidth : ''
        })
      expect(await ring()).toBe('3px')
    }))
})
