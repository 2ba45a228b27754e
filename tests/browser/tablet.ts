import { execFile } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { buildServer, listen } from '@evenhem/server'
import type { FastifyInstance } from 'fastify'
import { type Browser, type BrowserContext, chromium as browserType, type Page } from 'playwright'
import { chromium } from '../tools/chromium.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const run = promisify(execFile)

/** The example of this name, as a folder. */
export const example = (name: string): string => `${root}schema/examples/${name}`

/** Builds the viewer into a folder of its own, so that tests see what is in the checkout now. */
export async function builtViewer(): Promise<{ readonly folder: string; readonly remove: () => Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-viewer-'))
  await run(process.execPath, [`${root}viewer/build.js`, folder], { cwd: root })
  return { folder, remove: () => rm(folder, { recursive: true, force: true }) }
}

/** A browser that stands for a tablet, and servers of jobs on this machine. */
export interface Tablet {
  readonly open: (job: string, size: Size, light?: string) => Promise<Sheet>
  readonly close: () => Promise<void>
}
export interface Size {
  readonly width: number
  readonly height: number
}
/** A sheet that is open; `faults` collects what the page complained about. */
export interface Sheet {
  readonly page: Page
  readonly faults: readonly string[]
  /** Cuts the network for good: the tablet is offline and the server is gone. */
  readonly cut: () => Promise<void>
  readonly close: () => Promise<void>
}

export const upright: Size = { width: 820, height: 1180 }
export const lying: Size = { width: 1180, height: 820 }
export const phone: Size = { width: 390, height: 844 }
export const desk: Size = { width: 1440, height: 900 }

export async function startTablet(): Promise<Tablet> {
  const [browser, viewer] = await Promise.all([chromium().then((options) => browserType.launch(options)), builtViewer()])
  return {
    open: (job, size, light) => openSheet(browser, viewer.folder, job, size, light),
    close: async () => {
      await browser.close()
      await viewer.remove()
    },
  }
}

async function openSheet(browser: Browser, viewer: string, job: string, viewport: Size, light?: string): Promise<Sheet> {
  const server = buildServer({ job, viewer })
  const address = await listen(server, 0)
  const context = await browser.newContext({ viewport, hasTouch: true, reducedMotion: 'reduce' })
  if (light) await context.addInitScript((name) => localStorage.setItem('evenhem/light', name), light)
  const page = await context.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()))
  await page.goto(address)
  await page.locator('window-sheet, state-page main h1').first().waitFor()
  await page.evaluate(() => document.fonts.ready)
  return sheetOf(page, context, server, faults)
}

function sheetOf(page: Page, context: BrowserContext, server: FastifyInstance, faults: readonly string[]): Sheet {
  const cut = async () => {
    await context.setOffline(true)
    server.server.closeAllConnections()
    await server.close()
  }
  return { page, faults, cut, close: () => context.close().then(() => server.close()) }
}

/** What the command line prints: the plan of a window, as text. */
export async function printedPlan(job: string, window: string): Promise<string> {
  const entry = `${root}packages/cli/src/index.ts`
  const { stdout } = await run(
    process.execPath,
    ['--conditions=source', '--import', 'tsx', entry, 'plan', job, '--window', window, '--json'],
    { cwd: root, maxBuffer: 64 * 1024 * 1024 },
  )
  return stdout
}
