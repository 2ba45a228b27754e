import type { Page } from 'playwright'
import { describe, expect, test } from 'vitest'
import { desk, example, figures, go, jobOf, phone, tabletFor } from '../browser/tablet.ts'
import { jobOf as manyWindows } from '../tools/jobs.ts'

const using = tabletFor()
const house = (windows: number) => jobOf(JSON.stringify(manyWindows(3, windows, 0)))
const bar = (page: Page) => page.locator('sheet-bar')
const heading = (page: Page) => bar(page).locator('h1').textContent()
const links = (page: Page) => page.locator('room-strip a')
const address = (page: Page) => page.evaluate(() => location.hash)
const button = (page: Page, name: RegExp) => bar(page).getByRole('button', { name })

describe('the house', () => {
  test('shows every window true and how it stands, and what is open leads to its sheet', async () =>
    using({ job: await house(12) }, async ({ page }) => {
      expect(await links(page).count()).toBe(12)
      await page.locator('room-strip svg .glass').nth(11).waitFor({ state: 'attached' })
      const widths = await page
        .locator('room-strip svg.drawing')
        .evaluateAll((all) => all.map((svg) => svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width))
      expect(Math.max(...widths) / Math.min(...widths), 'one scale').toBeCloseTo(1, 1)
      expect(await links(page).first().locator('svg.drawing').getAttribute('aria-label')).toMatch(
        /^Room 0, Window w0: Stop\. \d+ open$/,
      )
      const row = page.locator('open-list a.row').first()
      const title = await row.locator('b').textContent()
      await row.click()
      await page.locator('window-sheet').waitFor()
      expect(await heading(page)).toBe(title)
    }))

  test('lists what to measure next as one walks', () =>
    using({ job: example('not-measured-yet'), address: '#/' }, async ({ page }) => {
      const asks = page.locator('open-list').first()
      expect(await asks.locator('h2').textContent()).toBe('To measure next, in walking order')
      expect(await asks.locator('a').first().textContent()).toContain('casing, width')
      expect(await links(page).first().locator('small').textContent()).toMatch(/^Measure · \d+ readings missing$/)
    }))
})

describe('the address', () => {
  test('of one window’s job is its sheet, with a way to the house; the back key goes back', () =>
    using({}, async ({ page }) => {
      await bar(page).getByRole('link', { name: 'All windows of the house' }).click()
      await page.locator('house-page').waitFor()
      expect(await page.locator('.go a').textContent()).toContain('Go on where you were')
      await page.goBack()
      await page.locator('window-sheet').waitFor()
    }))

  test('says window and view; next and previous keep the view, the first has none before it', async () =>
    using({ job: await house(12), address: '#/room-0/w8/marks' }, async ({ page }) => {
      expect(await heading(page)).toBe('Room 0, Window w8')
      const next = bar(page).getByRole('link', { name: /^Next window/ })
      await next.click()
      await page.getByRole('heading', { name: 'Room 0, Window w9' }).waitFor()
      await next.click()
      await page.getByRole('heading', { name: 'Room 1, Window w0' }).waitFor()
      expect(await address(page)).toBe('#/room-1/w0/marks')
      expect(await page.locator('hole-list').count()).toBe(1)
      await page.goBack()
      await page.getByRole('heading', { name: 'Room 0, Window w9' }).waitFor()
      await page.reload()
      await page.getByRole('heading', { name: 'Room 0, Window w9' }).waitFor()
      expect(await page.locator('hole-list').count()).toBe(1)
      await bar(page).getByRole('button', { name: 'Back' }).click()
      await page.locator('step-panel').waitFor()
    }))

  test('of no window leads to the house', async () =>
    using({ job: await house(3), address: '#/den/w77' }, async ({ page }) => {
      expect(await page.locator('house-page').count()).toBe(1)
    }))
})

describe('the language', () => {
  test('changes at any time, everywhere, and is kept on the tablet', () =>
    using({ job: example('tern-hollow-found') }, async ({ page }) => {
      await page.locator('step-panel').getByRole('button', { name: 'Next' }).click()
      await button(page, /^Language/).click()
      expect(await page.evaluate(() => document.documentElement.lang)).toBe('es')
      expect(await page.locator('step-panel .eyebrow').textContent()).toMatch(/^Paso 2 de/)
      expect(await page.locator('room-drawing svg.drawing').getAttribute('aria-label')).toContain('dibujada a escala')
      expect(await figures(page).first().getAttribute('aria-label')).toMatch(/pulgadas?/)
      await page.reload()
      await page.locator('title-block').getByRole('button', { name: 'Marcas' }).click()
      expect(await page.locator('hole-list th').first().textContent()).toBe('agujero')
      await bar(page).getByRole('button', { name: 'Atrás' }).click()
      await bar(page).getByRole('link', { name: 'Todas las ventanas de la casa' }).click()
      expect(await page.locator('.go a').textContent()).toContain('Siga donde estaba')
      await button(page, /^Idioma/).click()
      expect(await page.locator('.go a').textContent()).toContain('Go on where you were')
    }))

  test('opens from one button on a phone', () =>
    using({ size: phone }, async ({ page }) => {
      await button(page, /^Units, language/).click()
      await button(page, /^Language/).click()
      expect(await page.locator('title-block nav').textContent()).toContain('Dibujo')
    }))
})

describe('from the ladder', () => {
  const told = (page: Page) => page.locator('ladder-view .told').textContent()
  const number = (page: Page) => page.locator('ladder-view .big [role=img]').getAttribute('aria-label')

  test('every number of the marks is read one at a time, by button, key or swipe', () =>
    using({}, async ({ page }) => {
      await go(page, 'Marks')
      await page.locator('hole-list').getByRole('button', { name: 'Ladder view' }).click()
      expect(await told(page)).toContain('Top hole, left side')
      expect([await number(page), await told(page)]).toEqual(['7 inches', expect.stringContaining('to the left of the casing')])
      await page.locator('ladder-view .next').click()
      expect(await number(page)).toBe('90 inches')
      await page.keyboard.press('ArrowRight')
      expect(await told(page)).toContain('Wall angle, left side')
      await page.locator('ladder-view section').evaluate((section) => {
        const at = (type: string, clientX: number) => {
          const touch = new Touch({ identifier: 1, target: section, clientX })
          section.dispatchEvent(new TouchEvent(type, { touches: type === 'touchstart' ? [touch] : [], changedTouches: [touch] }))
        }
        at('touchstart', 100)
        at('touchend', 400)
      })
      expect(await number(page), 'a swipe to the right goes back').toBe('90 inches')
      const cap = await page.locator('ladder-view .big svg').evaluate((svg) => svg.getBoundingClientRect().height)
      expect(cap).toBeGreaterThan(220)
      for (let n = 0; n < 12; n++) await page.keyboard.press('PageDown')
      expect(await page.locator('ladder-view header').textContent()).toContain('12 of 12')
      await page.keyboard.press('Escape')
      await page.locator('hole-list').waitFor()
    }))

  test('nothing is read behind a stop', () =>
    using({ job: example('pin-setting-forgotten'), address: '#/garden-room/w1/ladder' }, async ({ page }) => {
      expect(await told(page)).toContain('Closed until this is settled.')
      expect(await page.locator('ladder-view .big').count()).toBe(0)
    }))
})

describe('numbers', () => {
  test('rounded to the tape say so, on the drawing, in the list and to a screen reader', () =>
    using({}, async ({ page }) => {
      await button(page, /^Units/).click()
      await button(page, /^Units/).click()
      const name = page.locator('room-drawing .figure[aria-label*="about 2245 millimetres"]')
      expect(await name.count(), 'the lower hole at 88 3/8 in').toBeGreaterThan(0)
      expect(await name.first().textContent()).toMatch(/~~.*2245/)
      const exact = page.locator('room-drawing .figure[aria-label*="2286 millimetres"]')
      expect(await exact.first().textContent(), '90 in is a whole number of millimetres').not.toContain('~')
    }))

  test('of the marks keep their words, on the drawing or below it', () =>
    using({ address: '#/garden-room/w1/marks' }, async ({ page }) => {
      const key = await page.locator('room-drawing .key li').allTextContents()
      const bare = await page
        .locator('room-drawing .figure')
        .evaluateAll((all) =>
          all
            .filter((figure) => !figure.querySelector('.caption'))
            .map((figure) => figure.getAttribute('aria-label')?.split(':')[0] ?? ''),
        )
      expect(bare.length).toBeGreaterThan(0)
      expect(bare.filter((what) => !key.some((line) => line.includes(what)))).toEqual([])
    }))
})

test('a sheet prints on one page, in the light of paper, without its buttons', () =>
  using({ light: 'night', size: desk, address: '#/garden-room/w1/marks' }, async ({ page }) => {
    const pdf = (await page.pdf({ format: 'A4', printBackground: true })).toString('latin1')
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(1)
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('title-block').isVisible()).toBe(false)
    expect(await page.locator('hole-list tbody tr').count()).toBe(6)
  }))
