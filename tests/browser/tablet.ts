import { execFile } from 'node:child_process'
import { existsSync } from 'node:fs'
import { cp, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { basename, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { buildServer, listen } from '@evenhem/server'
import { type Browser, type BrowserContext, chromium as browserType, type Page } from 'playwright'
import { afterAll, beforeAll, expect, inject, onTestFinished } from 'vitest'
import { chromium } from '../tools/chromium.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const run = promisify(execFile)

/** The example of this name, as a folder. */
export const example = (name: string): string => `${root}schema/examples/${name}`

export interface Size {
  readonly width: number
  readonly height: number
}
export const upright: Size = { width: 820, height: 1180 }
export const lying: Size = { width: 1180, height: 820 }
export const phone: Size = { width: 390, height: 844 }
export const desk: Size = { width: 1440, height: 900 }

/** A sheet that is open. */
export interface Sheet {
  readonly page: Page
  /** Cuts the network for good: the tablet is offline and the server is gone. */
  readonly cut: () => Promise<void>
  /** From now on requests may find no answer, and the browser may say so. */
  readonly mayMiss: () => void
}
/** What is opened: the example “tern-hollow” on a tablet held upright, unless said otherwise. */
export interface Where {
  readonly job?: string
  readonly size?: Size
  readonly light?: string
  readonly language?: string
  /** What stands behind the page's name: `#/garden-room/w1/marks`. */
  readonly address?: string
}

/** Gives a test file a browser. What is returned opens a sheet, does something with it and closes it; nothing may complain meanwhile. */
export function tabletFor(): (where: Where, work: (sheet: Sheet) => Promise<void>) => Promise<void> {
  let browser: Browser
  const servers = serversFor()
  beforeAll(async () => {
    browser = await browserType.launch(await chromium())
  })
  afterAll(() => browser.close())
  return async (where, work) => {
    const server = await servers(where.job ?? example('tern-hollow'))
    const context = await contextFor(browser, where)
    try {
      await visit(`${server.address}/${where.address ?? ''}`, context, server, work)
    } finally {
      await context.close()
      // What one test entered is not there for the next, even what is still being written.
      if (existsSync(join(server.folder, 'log'))) await server.close()
    }
  }
}

interface Served {
  readonly address: string
  readonly folder: string
  readonly close: () => Promise<void>
}

/** A job's folder in a folder of its own, and catalogues beside it. */
async function copyOf(job: string): Promise<{ readonly copy: string; readonly away: () => Promise<void> }> {
  const top = await mkdtemp(join(tmpdir(), 'evenhem-job-'))
  const copy = join(top, basename(job))
  await cp(job, copy, { recursive: true })
  const beside = (await readdir(dirname(job))).filter((name) => name.endsWith('.json') && name !== basename(job))
  for (const name of beside) await cp(join(dirname(job), name), join(top, name))
  return { copy, away: () => rm(top, { recursive: true, maxRetries: 10 }) }
}

/** A server for each job, made when it is first asked for, and anew after it was closed. What a tablet enters goes into a copy of the job's folder. */
function serversFor(): (job: string) => Promise<Served> {
  const running = new Map<string, Served>()
  afterAll(() => Promise.all([...running.values()].map(({ close }) => close())))
  return async (job) => {
    const known = running.get(job)
    if (known) return known
    const { copy, away } = await copyOf(job)
    const server = buildServer({ job: copy, viewer: inject('viewer') })
    const close = async () => {
      running.delete(job)
      server.server.closeAllConnections()
      await server.close()
      await away()
    }
    const served = { address: await listen(server, 0), folder: copy, close }
    running.set(job, served)
    return served
  }
}

async function contextFor(browser: Browser, { size = upright, light, language }: Where): Promise<BrowserContext> {
  // Whether the page itself is kept on the tablet is tried by a test of its own.
  const context = await browser.newContext({ viewport: size, hasTouch: true, reducedMotion: 'reduce', serviceWorkers: 'block' })
  await context.addInitScript(() => localStorage.setItem('evenhem/needs-server-read', 'read'))
  if (light) await context.addInitScript((name) => localStorage.setItem('evenhem/light', name), light)
  if (language) await context.addInitScript((name) => localStorage.setItem('evenhem/language', name), language)
  return context
}

/** Runs in the page: what the sheet draws is in it, or it says why there is none. */
function isDrawn(): boolean {
  const app = document.querySelector('evenhem-app')?.shadowRoot
  const sheet = app?.querySelector('window-sheet')?.shadowRoot
  const drawing = sheet?.querySelector('room-drawing')
  const house = app?.querySelector('house-page')?.shadowRoot
  // The house is there when its first room is drawn and its list was made.
  if (house)
    return (
      house.querySelector('open-list') != null &&
      house.querySelector('room-strip')?.shadowRoot?.querySelector('svg.drawing') != null
    )
  if (!sheet) return app?.querySelector('state-page')?.shadowRoot?.querySelector('h1') != null
  if (sheet.querySelector('ladder-view')) return true
  return sheet.querySelector('main') != null && (drawing == null || drawing.shadowRoot?.querySelector('svg, section') != null)
}

async function visit(
  address: string,
  context: BrowserContext,
  server: Served,
  work: (sheet: Sheet) => Promise<void>,
): Promise<void> {
  const page = await context.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  let isCut = false
  // The browser itself complains of every request that found no network; the page keeps what it wanted to send.
  const isOfNetwork = (text: string): boolean => isCut && /^Failed to load resource: net::ERR_/.test(text)
  page.on('console', (message) => message.type() === 'error' && !isOfNetwork(message.text()) && faults.push(message.text()))
  await page.goto(address)
  await page.locator('window-sheet, house-page, state-page main h1').first().waitFor()
  await page.waitForFunction(isDrawn)
  await page.evaluate(() => document.fonts.ready)
  const cut = async () => {
    isCut = true
    await context.setOffline(true)
    await server.close()
  }
  const mayMiss = () => {
    isCut = true
  }
  await work({ page, cut, mayMiss })
  expect(faults).toEqual([])
}

/** A folder with this text as its job file. */
export async function jobOf(text: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-job-'))
  onTestFinished(() => rm(folder, { recursive: true, force: true }))
  await writeFile(join(folder, 'job.json'), text)
  return folder
}

export const figures = (page: Page) => page.locator('room-drawing .figure')
export const named = (page: Page, name: RegExp) => page.locator('room-drawing').getByRole('button', { name }).first()
export const working = (page: Page) => page.locator('working-panel section')
export const go = (page: Page, leaf: string) => page.locator('title-block').getByRole('button', { name: leaf }).click()

/** What the command line prints: the plan of a window, as text. A check that fails makes its exit code 1. */
export async function printedPlan(job: string, window: string): Promise<string> {
  const words = [inject('command'), 'plan', job, '--window', window, '--json']
  const { stdout } = await run(process.execPath, words, { cwd: root, maxBuffer: 64 * 1024 * 1024 }).catch((failed) => {
    if (failed.code === 1 && failed.stderr === '') return failed
    throw failed
  })
  return stdout
}
