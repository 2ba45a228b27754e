import { cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildServer, listen, type ServerOptions } from '@evenhem/server'
import { type Browser, type BrowserContext, chromium as browserType, type Page } from 'playwright'
import { afterAll, beforeAll, inject, onTestFinished } from 'vitest'
import { chromium } from '../tools/chromium.ts'
import { example, upright } from './tablet.ts'

/** A server that is stopped and started again at the same address, and what it serves. */
export interface Desk {
  readonly address: string
  readonly port: number
  /** The folder of the job, or of the jobs. */
  readonly folder: string
  /** A copy of the built viewer, which may be changed. */
  readonly viewer: string
  readonly server: () => ReturnType<typeof buildServer>
  readonly stop: () => Promise<void>
  readonly start: () => Promise<void>
}

/** A desk that serves a copy of a folder, for as long as the test runs. */
export async function deskFor(job = example('tern-hollow'), more: Partial<ServerOptions> = {}): Promise<Desk> {
  const top = await mkdtemp(join(tmpdir(), 'evenhem-desk-'))
  const [folder, viewer] = [join(top, 'job'), join(top, 'viewer')]
  await cp(job, folder, { recursive: true })
  await cp(inject('viewer'), viewer, { recursive: true })
  let [port, server] = [0, buildServer({ job: folder, viewer, ...more })]
  const open = async () => {
    port = Number(new URL(await listen(server, port)).port)
  }
  const stop = async () => {
    server.server.closeAllConnections()
    await server.close()
  }
  await open()
  onTestFinished(async () => {
    await stop()
    await rm(top, { recursive: true, maxRetries: 10 })
  })
  const start = async () => {
    server = buildServer({ job: folder, viewer, ...more })
    await open()
  }
  return { address: `http://127.0.0.1:${port}`, port, folder, viewer, server: () => server, stop, start }
}

/** Tablets of one browser: each keeps its own things. Nothing on their pages may fail but what the network does. */
export function tabletsIn(extra: readonly string[] = []): {
  readonly tablet: () => Promise<BrowserContext>
  readonly open: (tablet: BrowserContext, address: string) => Promise<Page>
} {
  let browser: Browser
  beforeAll(async () => {
    const options = await chromium()
    browser = await browserType.launch({ ...options, args: [...(options.args ?? []), ...extra] })
  })
  afterAll(() => browser.close())
  return {
    tablet: async () => {
      const context = await browser.newContext({ viewport: upright, hasTouch: true, reducedMotion: 'reduce' })
      onTestFinished(() => context.close())
      return context
    },
    open: async (tablet, address) => {
      const page = await tablet.newPage()
      page.on('pageerror', (error) => {
        throw error
      })
      // What the network does is said as an error too; that a policy was broken is one.
      page.on('console', (message) => {
        if (/Content Security Policy/.test(message.text())) throw new Error(message.text())
      })
      await page.goto(address)
      return page
    },
  }
}

export const drawn = (page: Page): Promise<void> => page.locator('room-drawing .figure').first().waitFor()
/** The chip that says how the tablet stands, by what it says. */
export const stands = (page: Page, name: string | RegExp) => page.locator('contact-chip').getByRole('button', { name })
/** Values in the log of a server, in the order of its devices' files. */
export const logOf = async ({ address }: Pick<Desk, 'address'>): Promise<readonly unknown[]> =>
  ((await (await fetch(`${address}/log`)).json()).entries as readonly { event: { value?: unknown } }[]).map(
    ({ event }) => event.value,
  )

const panel = (page: Page) => page.locator('step-panel')
/** Types the finished length of the left panel and saves it. */
export async function measure(page: Page, written: string): Promise<void> {
  while (!(await panel(page).locator('h2').textContent())?.startsWith('Measure each panel'))
    await panel(page).getByRole('button', { name: 'Next' }).click()
  await panel(page).locator('.captures button', { hasText: 'finished length' }).first().click()
  await page.locator('pad-view').waitFor()
  await page.keyboard.type(written)
  await page.keyboard.press('Enter')
}
