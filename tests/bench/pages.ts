import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { fastifyStatic } from '@fastify/static'
import { build } from 'esbuild'
import fastify from 'fastify'
import { type Browser, chromium as browserType } from 'playwright'
import { chromium } from '../tools/chromium.ts'

/** Fresh pages of a real browser. */
export interface Pages {
  /** Milliseconds from navigation to the frame in which `ready`, an expression, holds, by the page's own clock: the driver is not in it. */
  readonly visit: (address: string, ready: string) => Promise<number>
  /** The same of an empty page of the viewer's framework. */
  readonly empty: () => Promise<number>
}

/** Opens a browser, and a server of an empty page that is built into the folder; closes both afterwards. */
export async function withPages(folder: string, work: (pages: Pages) => Promise<void>): Promise<void> {
  await buildEmpty(folder)
  const browser = await browserType.launch(await chromium())
  const plain = fastify()
  try {
    plain.register(fastifyStatic, { root: folder })
    const address = await plain.listen({ host: '127.0.0.1', port: 0 })
    const visit = (where: string, ready: string) => readyIn(browser, where, ready)
    await work({ visit, empty: () => visit(address, emptyIsReady) })
  } finally {
    await Promise.all([browser.close(), plain.close()])
  }
}

const patienceMs = 20_000

async function readyIn(browser: Browser, address: string, ready: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 820, height: 1180 } })
  try {
    await context.addInitScript(`globalThis.readyAt = new Promise((resolve, reject) => {
      setTimeout(() => reject(new Error('not ready in ${patienceMs} ms')), ${patienceMs})
      const look = () => (${ready}) ? resolve(performance.now()) : requestAnimationFrame(look)
      look()
    })`)
    const page = await context.newPage()
    await page.goto(address, { waitUntil: 'commit' })
    return await page.evaluate<number>('readyAt')
  } finally {
    await context.close()
  }
}

const emptyIsReady = `document.querySelector('empty-page')?.shadowRoot?.querySelector('p') != null`
const script = `import { html, LitElement } from 'lit'
customElements.define('empty-page', class extends LitElement { render() { return html\`<p>empty</p>\` } })`
const page = `<!doctype html><html lang="en"><meta charset="utf-8"><title>empty</title><link rel="icon" href="data:,">
<script type="module" src="empty.js"></script><empty-page></empty-page></html>`

async function buildEmpty(folder: string): Promise<void> {
  await mkdir(folder)
  await writeFile(join(folder, 'index.html'), page)
  await build({
    stdin: { contents: script, resolveDir: fileURLToPath(new URL('../../viewer', import.meta.url)) },
    bundle: true,
    minify: true,
    format: 'esm',
    outfile: join(folder, 'empty.js'),
  })
}
