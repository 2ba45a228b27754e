import { type BrowserContext, firefox } from 'playwright'
import { programs } from './browsers.ts'
import type { Driven, Running } from './driven.ts'

/** Firefox, by playwright: it speaks to the browser as it is installed, over the protocol that both know. */
export async function startFirefox(): Promise<Running> {
  const browser = await firefox.launch({ channel: 'moz-firefox', executablePath: programs.firefox })
  return { open: async () => driven(await browser.newContext()), close: () => browser.close() }
}

async function driven(context: BrowserContext): Promise<Driven> {
  const page = await context.newPage()
  let faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()))
  return {
    go: async (address) => {
      await page.goto(address)
    },
    run: (work, ...given) => page.evaluate(calling(work, given)),
    touch: async (find, ...given) => {
      const found = (await page.evaluateHandle<Element | undefined>(calling(find, given))).asElement()
      await found?.click()
      return found !== null
    },
    become: (size) => page.setViewportSize(size),
    faults: async () => {
      const told = faults
      faults = []
      return told
    },
    close: () => context.close(),
  }
}

/** The call as text: playwright hands over one argument, and these functions take several. */
const calling = (work: (...given: never[]) => unknown, given: readonly unknown[]): string =>
  `(${work})(...${JSON.stringify(given)})`
