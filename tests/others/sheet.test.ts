import { rm } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { example, phone, printedPlan, upright } from '../browser/tablet.ts'
import { asked, type BrowserName } from './browsers.ts'
import type { Driven, Running } from './driven.ts'
import { startFirefox } from './firefox.ts'
import { figures, keeping, named, planText, settled, textIn, widths } from './in-page.ts'
import { type Served, serve, telling } from './served.ts'
import { startWebkit } from './webkit.ts'

interface Other {
  readonly name: string
  readonly start: () => Promise<Running>
  /** The built viewer as this browser gets it. */
  readonly viewer: (built: string) => Promise<string>
  /** What does not go in it, and why; it is shown whenever this runs. */
  readonly limits: readonly string[]
}

const others: Readonly<Record<BrowserName, Other>> = {
  firefox: {
    name: 'Firefox',
    start: startFirefox,
    viewer: async (built) => built,
    limits: [],
  },
  webkit: {
    name: 'WebKitGTK',
    start: startWebkit,
    viewer: telling,
    limits: [
      'its driver does not tell what a page complains of; a script put first into the page does, but for workers and while there is no server',
    ],
  },
}
const left = '/rooms/garden-room/windows/w1/treatments/over/panels/left/finishedLength'
/** What browsers say of a server that does not answer. */
const ofNetwork = /connect|network|load failed|failed to load|could not be loaded|interrupted/i

const touch = (page: Driven, ...which: Parameters<typeof named>) =>
  expect.poll(() => page.touch(named, ...which), { message: `${which.join(' ')}, to be touched` }).toBe(true)
const read = async (page: Driven) => (await page.run(figures)).all
const plan = (page: Driven) => page.run(planText)

/** Waits until the drawing has its numbers, where they stay. Returns how it went with the fonts. */
async function ready(page: Driven): Promise<readonly string[]> {
  await expect.poll(async () => (await read(page)).length, { message: 'numbers in the drawing' }).toBeGreaterThan(5)
  return page.run(settled)
}

/** To the step at which the panels are measured, and its first capture. */
async function measurePanel(page: Driven): Promise<void> {
  for (let n = 2; !(await page.run(textIn, 'step-panel', 'h2')).startsWith('Measure each panel'); n++) {
    await touch(page, 'button', '^Next$', 'step-panel')
    await expect.poll(() => page.run(textIn, 'step-panel', 'section')).toMatch(new RegExp(`^step ${n} of`, 'i'))
  }
  await touch(page, 'button', 'finished length', 'step-panel')
}

/** Enters 89 1/8 in on the pad; returns the plan that follows from it. */
async function enter(page: Driven): Promise<string | undefined> {
  const before = await plan(page)
  await measurePanel(page)
  for (const digit of ['^8$', '^9$']) await touch(page, 'button', digit, 'pad-view')
  await touch(page, 'img', '^one eighth inch$', 'pad-view')
  await touch(page, 'button', '^Save.+', 'pad-view')
  await expect.poll(() => plan(page)).not.toBe(before)
  return plan(page)
}

describe.each(asked(process.env.EVENHEM_OTHERS ?? '').map((name) => others[name]))('in $name', (other) => {
  let running: Running
  let viewer: string
  beforeAll(async () => {
    viewer = await other.viewer(inject('viewer'))
    running = await other.start()
    for (const says of other.limits) console.log(`${other.name}: ${says}.`)
  })
  afterAll(async () => {
    await running?.close()
    if (viewer !== inject('viewer')) await rm(viewer, { recursive: true })
  })

  /** Opens the sheet of an example on a tablet held upright, and closes it; nothing may complain meanwhile. */
  async function using(name: string, work: (page: Driven, served: Served) => Promise<void>): Promise<void> {
    const served = await serve(example(name), viewer)
    const page = await running.open()
    try {
      await page.become(upright)
      await page.go(served.address)
      await ready(page)
      await work(page, served)
      expect(await page.faults()).toEqual([])
    } finally {
      await page.close()
      await served.away()
    }
  }

  test('the sheet is drawn, every number between the sides of the drawing, in the font that came with it', () =>
    using('tern-hollow', async (page) => {
      const came = await ready(page)
      const { all, drawn } = await page.run(figures)
      expect(drawn).toEqual(all)
      expect(came.length).toBeGreaterThan(0)
      expect(new Set(came)).toEqual(new Set(['loaded']))
    }))

  test.each(['tern-hollow', 'tern-hollow-found'])('the plan of %s is byte for byte what the command line prints', (name) =>
    using(name, async (page) => expect(await plan(page)).toBe(await printedPlan(example(name), 'w1'))),
  )

  test('a number that is touched opens its working', () =>
    using('tern-hollow', async (page) => {
      await touch(page, 'button', '^top hole', 'room-drawing')
      await expect.poll(() => page.run(textIn, 'working-panel', 'h2')).toContain('Top hole')
    }))

  test('the units change everywhere, and back', () =>
    using('tern-hollow', async (page) => {
      const before = await read(page)
      for (const unit of ['in', 'ft']) await touch(page, 'button', `^Units: .*${unit}`)
      await expect
        .poll(() => read(page), { message: 'the top hole, 90 in, in millimetres' })
        .toContainEqual(expect.stringContaining('2286'))
      await touch(page, 'button', '^Units: mm')
      await expect.poll(() => read(page)).toEqual(before)
    }))

  test('the language changes, and back', () =>
    using('tern-hollow', async (page) => {
      const title = await page.run(textIn, 'step-panel', 'h2')
      await touch(page, 'button', '^Language: English')
      await touch(page, 'button', '^Siguiente$', 'step-panel')
      await touch(page, 'button', '^Atrás$', 'step-panel')
      await touch(page, 'button', '^Idioma: español')
      await expect.poll(() => page.run(textIn, 'step-panel', 'h2')).toBe(title)
    }))

  test('nothing needs sideways scrolling on a tablet and on a phone', () =>
    using('tern-hollow', async (page) => {
      for (const size of [upright, phone]) {
        await page.become(size)
        await expect.poll(() => page.run(widths)).toEqual({ shown: size.width, needed: size.width })
        await ready(page)
        const { all, drawn } = await page.run(figures)
        expect(drawn).toEqual(all)
      }
    }))

  test('the sheet says that it opens without the server', () =>
    using('tern-hollow', (page) =>
      expect
        .poll(() => page.run(textIn, 'contact-chip', '[popover]'), { timeout: 5_000 })
        .toContain('It opens without the server'),
    ))

  test('without a server the sheet opens and a reading that is keyed in is kept; later it arrives once', () =>
    using('tern-hollow', async (page, served) => {
      expect(await page.run(keeping)).toBe('activated')
      expect(await page.faults()).toEqual([])
      await served.stop()
      const entered = await enter(page)
      // Whatever the page itself remembers goes with it.
      await page.go('about:blank')
      await page.go(served.address)
      await ready(page)
      expect(await plan(page), 'when it is opened without a server').toBe(entered)
      await page.go('about:blank')
      expect((await page.faults()).filter((fault) => !ofNetwork.test(fault))).toEqual([])
      expect(await served.log()).toEqual([])
      await served.start()
      for (const time of ['first', 'second']) {
        await page.go(served.address)
        await ready(page)
        expect(await plan(page), `when it is opened for the ${time} time`).toBe(entered)
        await expect.poll(() => served.log()).toMatchObject([{ place: left, value: '89 1/8 in' }])
      }
    }))
})
