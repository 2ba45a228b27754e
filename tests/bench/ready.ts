import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildServer, listen } from '@evenhem/server'
import { fastifyStatic } from '@fastify/static'
import { build } from 'esbuild'
import fastify from 'fastify'
import { type Browser, chromium as browserType } from 'playwright'
import { chromium } from '../tools/chromium.ts'
import { jobOf } from '../tools/jobs.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const pages = 7

/** Median of so many fresh pages, in ms from navigation to what `ready` waits for, by the page's own clock; what the driver adds, it adds to both. */
async function readyIn(browser: Browser, address: string, ready: string): Promise<number> {
  const times: number[] = []
  for (let n = 0; n < pages; n++) {
    const context = await browser.newContext({ viewport: { width: 820, height: 1180 } })
    const page = await context.newPage()
    await page.goto(address, { waitUntil: 'commit' })
    await page.locator(ready).first().waitFor({ state: 'attached' })
    times.push(await page.evaluate('performance.now()'))
    await context.close()
  }
  return times.sort((a, b) => a - b)[Math.floor(pages / 2)] ?? Number.NaN
}

const empty = `import { html, LitElement } from 'lit'
customElements.define('empty-page', class extends LitElement { render() { return html\`<p class="ready">empty</p>\` } })`

/** How long the sheet takes to be drawn, for each number of windows, and an empty page of the same framework. */
export async function readyTimes(
  sizes: readonly number[],
): Promise<{ readonly empty: number; readonly sheet: ReadonlyMap<number, number> }> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-bench-'))
  const browser = await browserType.launch(await chromium())
  const plain = fastify()
  try {
    await build({
      stdin: { contents: empty, resolveDir: `${root}viewer` },
      bundle: true,
      minify: true,
      format: 'esm',
      outfile: join(folder, 'empty.js'),
    })
    await writeFile(
      join(folder, 'index.html'),
      '<!doctype html><meta charset="utf-8"><title>empty</title><script type="module" src="empty.js"></script><empty-page></empty-page>',
    )
    plain.register(fastifyStatic, { root: folder })
    const beside = await readyIn(browser, await plain.listen({ host: '127.0.0.1', port: 0 }), '.ready')
    const sheet = new Map<number, number>()
    for (const windows of sizes) {
      await writeFile(join(folder, 'job.json'), JSON.stringify(jobOf(7, windows, 0)))
      const server = buildServer({ job: folder })
      sheet.set(windows, await readyIn(browser, await listen(server, 0), 'room-drawing svg .figure'))
      await server.close()
    }
    return { empty: beside, sheet }
  } finally {
    await Promise.all([browser.close(), plain.close()])
    await rm(folder, { recursive: true, force: true })
  }
}
