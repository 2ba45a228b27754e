import axeCore, { type RunOptions } from 'axe-core'
import type { Page } from 'playwright'

/** What axe finds wrong on a page as it stands, each with its elements: `color-contrast: main > p`. */
export async function violations(page: Page, options: RunOptions = {}): Promise<readonly string[]> {
  // Once into each page as it was loaded.
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeCore.source)
  // Left to itself axe writes a selector for every element that is well, which takes longer than looking.
  const found = await page.evaluate((asked) => globalThis.axe.run(document, { ...asked, resultTypes: ['violations'] }), options)
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

declare global {
  var axe: typeof axeCore
}
