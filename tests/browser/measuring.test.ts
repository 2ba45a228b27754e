import { fold, type Line, write } from '@evenhem/site-log'
import type { Page } from 'playwright'
import { describe, expect, test } from 'vitest'
import { violations } from '../tools/axe.ts'
import { later } from '../tools/later.ts'
import { tooSmall } from './page.ts'
import { example, phone, tabletFor } from './tablet.ts'

const using = tabletFor()
const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']
const over = '/rooms/garden-room/windows/w1/treatments/over'
const left = `${over}/panels/left/finishedLength`

const origin = (page: Page): string => new URL(page.url()).origin
const kept = async (page: Page) =>
  (await (await fetch(`${origin(page)}/log`)).json()).entries as readonly {
    event: { place: string; value?: unknown; by: string }
    read?: unknown
  }[]
const send = (page: Page, lines: readonly Line[]) =>
  fetch(`${origin(page)}/log`, {
    method: 'POST',
    headers: { origin: origin(page), 'content-type': 'application/json' },
    body: JSON.stringify({ lines: lines.map(({ text }) => text) }),
  })
const panel = (page: Page) => page.locator('step-panel')
const pad = (page: Page) => page.locator('pad-view')

/** To the step at which the panels are measured, and its first capture. */
async function measurePanel(page: Page): Promise<void> {
  while (!(await panel(page).locator('h2').textContent())?.startsWith('Measure each panel'))
    await panel(page).getByRole('button', { name: 'Next' }).click()
  await panel(page).locator('.captures button', { hasText: 'finished length' }).first().click()
}
const keyIn = async (page: Page, ...names: readonly string[]) => {
  for (const name of names) await pad(page).getByRole('button', { name, exact: true }).click()
}

describe('a reading', () => {
  test('is keyed in, shown on tape, told with what it changed, and undone', () =>
    using({}, async ({ page }) => {
      const before = await page.locator('room-drawing').textContent()
      await measurePanel(page)
      expect(await page.evaluate(tooSmall)).toEqual([])
      expect(await violations(page, { runOnly: wcag })).toEqual([])
      await keyIn(page, '8', '9')
      await pad(page).getByRole('img', { name: 'one eighth inch' }).click()
      await pad(page).locator('.said', { hasText: 'Inside the tolerance' }).waitFor()
      await pad(page).locator('.said li').first().waitFor()
      await pad(page).locator('.save').click()
      const changes = page.locator('changes-panel')
      expect(await changes.locator('li').first().textContent()).toMatch(/(1\/8|⅛) more/)
      expect(await violations(page, { runOnly: wcag })).toEqual([])
      expect(await page.locator('room-drawing .figure:is(.measured, .off)').count()).toBeGreaterThan(0)
      await expect
        .poll(() => kept(page))
        .toMatchObject([{ event: { place: left, value: '89 1/8 in' }, read: 89.125 * 25_400_000 }])
      await changes.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(async () => (await kept(page)).length).toBe(2)
      await changes.getByRole('button', { name: 'Go on' }).click()
      expect(await page.locator('room-drawing').textContent()).toBe(before)
    }))

  test('is typed on a keyboard, refused where it cannot be, and left with Escape', () =>
    using({}, async ({ page }) => {
      await measurePanel(page)
      await page.keyboard.type('2260')
      expect(await pad(page).locator('.said').textContent()).toContain('Look at the unit')
      await page.keyboard.press('Enter')
      expect(await kept(page)).toEqual([])
      await page.keyboard.press('Escape')
      await panel(page).waitFor()
      await measurePanel(page)
      await page.keyboard.type('2260 mm')
      await page.keyboard.press('Enter')
      await page.locator('changes-panel').waitFor()
      await expect.poll(() => kept(page)).toMatchObject([{ event: { value: '2260 mm' } }])
    }))
})

later('two values at one place stand side by side until somebody decides', () =>
  using({}, async ({ page }) => {
    const put = (device: string, value: string) =>
      write({ device, last: undefined, clock: '2026-11-25T09:12:00Z', who: device }, [{ place: left, value }], fold([]))
    await send(page, put('tablet-1', '88 7/8 in'))
    await send(page, put('tablet-2', '89 1/8 in'))
    await page.reload()
    await page.locator('findings-row button').first().click()
    const both = page
      .locator('findings-list')
      .getByRole('button', { name: 'Treatment, panel left, finished length: 88 7/8 / 89 1/8' })
    await both.click()
    await page.locator('working-panel').getByText('Two values stand here').waitFor()
    expect(await page.locator('working-panel .history li').count()).toBe(2)
    await page.locator('working-panel .history li', { hasText: 'tablet-1' }).getByRole('button').click()
    await expect.poll(async () => (await kept(page)).length).toBe(3)
    const { conflicts, readings } = fold((await kept(page)) as never)
    expect([conflicts.length, readings[left]?.value]).toEqual([0, 88.875 * 25_400_000])
  }),
)

test('a finding offers what can be done, and a touch does it', () =>
  using({ job: example('panels-came-wrong') }, async ({ page }) => {
    await page.locator('findings-row').getByRole('button', { name: 'See all' }).click()
    expect(await violations(page, { runOnly: wcag })).toEqual([])
    await page.locator('findings-list .ways .best').first().click()
    await expect.poll(async () => (await kept(page)).some(({ event }) => event.place.endsWith('/pin'))).toBe(true)
    await page.locator('findings-list li', { hasText: 'the pins are set for it' }).first().waitFor()
  }))

test('a stop is gone on with for a reason, which stays', () =>
  using({ job: example('rings-missing'), size: phone }, async ({ page }) => {
    await page.locator('findings-row .count').first().click()
    await page.locator('findings-list').getByRole('button', { name: 'Go on with a reason' }).first().click()
    await pad(page).locator('textarea').fill('Two rings come tomorrow.')
    await pad(page).getByRole('button', { name: 'Save' }).click()
    await page.locator('findings-list s').first().waitFor()
    await page.locator('findings-list').getByText('Two rings come tomorrow.').waitFor()
    expect(await page.evaluate(tooSmall)).toEqual([])
  }))

later('the stages say where one is, and lead to their steps', () =>
  using({}, async ({ page }) => {
    await panel(page).locator('.where').click()
    expect(await page.locator('stage-list li').count()).toBeGreaterThan(6)
    expect(await violations(page, { runOnly: wcag })).toEqual([])
    await page.locator('stage-list').getByRole('button', { name: 'Drill' }).first().click()
    expect(await panel(page).locator('h2').textContent()).toMatch(/^Drill/)
  }),
)
