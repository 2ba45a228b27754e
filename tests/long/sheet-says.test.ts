import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { example, figures, go, jobOf, tabletFor, working } from '../browser/tablet.ts'

// What the sheet says when something is wrong or missing, and where it leads.

const using = tabletFor()

test('says on the marks too that nothing is marked behind a stop', () =>
  using({ job: example('pin-setting-forgotten') }, async ({ page }) => {
    await go(page, 'Marks')
    expect(await page.locator('hole-list .closed').textContent()).toContain('The panels put the top of the rod at 90 1/2')
  }))

test('says what to measure when too little is known to draw', () =>
  using({ job: example('not-measured-yet') }, async ({ page }) => {
    await page.locator('findings-row button', { hasText: 'pass' }).click()
    expect(await page.locator('findings-list').getByText('To measure next').count()).toBe(1)
    expect(await page.locator('findings-list .plain').first().textContent()).toContain('casing, width')
  }))

test('names the places of a job that cannot be read, and what else helps', async () => {
  const folder = await jobOf('{ "format": "evenhem-job/1", "units": "in",')
  await using({ job: folder }, async ({ page }) => {
    expect(await page.locator('state-page h1').textContent()).toBe('This job could not be read')
    expect(await page.locator('state-page li').first().textContent()).toMatch(/Unexpected .*Line 1, column \d+/s)
  })
})

test('names the rule that failed, and the rest of it stands', () =>
  using({}, async ({ page }) => {
    const before = await figures(page).count()
    await page.evaluate(() => {
      const app = document.querySelector('evenhem-app') as unknown as { planned: { plan: object; words: unknown } }
      const at = '/rooms/garden-room/windows/w1/treatments/over'
      const fault = { plugin: 'stranger', rule: 'weight', at, what: 'threw', message: 'no number came' }
      app.planned = { ...app.planned, plan: { ...app.planned.plan, faults: [fault] } }
    })
    await page.locator('findings-row .faulty').click()
    const list = await page.locator('findings-list section').textContent()
    expect(list).toContain('Could not work this out')
    expect(list).toContain('Rule weight of the plugin stranger')
    expect(await figures(page).count()).toBe(before)
  }))

test('says what stands in the job that nobody here reads', async () => {
  const text = await readFile(`${example('tern-hollow')}/job.json`, 'utf8')
  const folder = await jobOf(text.replace('"with": {', '"with": { "stranger": { "any": "thing" },'))
  await using({ job: folder }, async ({ page }) => {
    await page.locator('findings-row button').first().click()
    expect(await page.locator('findings-list section').textContent()).toContain('stranger')
  })
})

test('leads to the report in the reader’s unit', () =>
  using({}, async ({ page }) => {
    const report = page.locator('title-block').getByRole('link', { name: /^Report/ })
    expect(await report.getAttribute('href')).toBe('report?units=in&lang=en')
    const opened = page.context().waitForEvent('page')
    await report.click()
    expect(await (await opened).locator('h1').first().textContent()).toBeTruthy()
  }))

test('goes back with the browser’s own back key', () =>
  using({}, async ({ page }) => {
    await go(page, 'Marks')
    await figures(page).first().dispatchEvent('click')
    await working(page).waitFor()
    await page.goBack()
    await working(page).waitFor({ state: 'detached' })
    await page.goBack()
    await page.locator('step-panel').waitFor()
  }))
