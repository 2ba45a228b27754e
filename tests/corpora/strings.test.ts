import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readJob } from '@evenhem/job/read'
import { plugins } from '@evenhem/plugins'
import { reporter } from '@evenhem/server'
import { type Browser, chromium as browserType, type Page } from 'playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { run } from '../../packages/cli/src/run.ts'
import { jobOf, tabletFor } from '../browser/tablet.ts'
import { chromium } from '../tools/chromium.ts'
import { extensions } from '../tools/examples.ts'
import { everyCase, stringsOf } from './corpora.ts'

const example = readFileSync(fileURLToPath(new URL('../../schema/examples/tern-hollow/job.json', import.meta.url)), 'utf8')
const report = reporter(plugins)
const folder = mkdtempSync(join(tmpdir(), 'evenhem-'))

/** How many texts a person writes into the job below. */
const fields = 10
/** The example with these texts in every place where a person writes one; fewer texts come round again. */
function jobWith(texts: readonly string[]): string {
  let n = 0
  const next = () => texts[n++ % texts.length] as string
  const job = JSON.parse(example)
  const [window] = job.rooms[0].windows
  Object.assign(job.job, { name: next(), note: next(), customer: { name: next() }, site: { address: next(), access: next() } })
  for (const named of [job.rooms[0], window, job.fabrics[0], job.hardware[0]]) named.name = next()
  window.treatments[0].panels[0].bag = next()
  expect(n).toBe(fields)
  return JSON.stringify(job)
}

const chunks = (texts: readonly string[]): readonly (readonly string[])[] =>
  Array.from({ length: Math.ceil(texts.length / fields) }, (_, n) => texts.slice(n * fields, (n + 1) * fields))
const naughty = stringsOf('strings/naughty.json')
const scripts = stringsOf('web/script.json')
/** Ten texts to a job; those that are refused never come this far. */
const jobs = chunks([...naughty, ...scripts].filter((text) => readJob(jobWith([text]), extensions).job)).map(jobWith)

/** What a command line writes about a job. */
async function written(text: string, ...words: readonly string[]): Promise<string> {
  writeFileSync(join(folder, 'job.json'), text)
  let out = ''
  const take = (more: string) => {
    out += more
  }
  const [command = '', ...options] = words
  await run([command, folder, ...options], { out: take, err: take, colours: false })
  return out
}

let browser: Browser
let page: Page
const ran: string[] = []
beforeAll(async () => {
  browser = await browserType.launch(await chromium())
  page = await browser.newPage()
  page.on('dialog', (dialog) => {
    ran.push(dialog.message())
    return dialog.dismiss()
  })
  page.on('request', (request) => request.url().startsWith('data:') || request.url() === 'about:blank' || ran.push(request.url()))
}, 60_000)
afterAll(() => {
  rmSync(folder, { recursive: true })
  return browser.close()
})

/** Runs in the page: what a document of ours never holds. */
function strangers(): readonly string[] {
  const strange = 'script,iframe,object,embed,form,input,img,video,audio,a,base,link,body body,[style],[href],[src]'
  const handlers = [...document.querySelectorAll('*')].filter((element) =>
    [...element.attributes].some(({ name }) => name.startsWith('on')),
  )
  // The contents lead to the windows on the same page, by their numbers.
  const isOurs = (element: Element): boolean =>
    element.matches('a') && element.attributes.length === 1 && /^#[a-z]+(-\d+)?$/.test(element.getAttribute('href') ?? '')
  return [...document.querySelectorAll(strange), ...handlers]
    .filter((element) => !isOurs(element))
    .map((element) => element.outerHTML.slice(0, 200))
}

const shown = async (html: string): Promise<string | undefined> => {
  await page.setContent(html, { waitUntil: 'load' })
  const found = [...(await page.evaluate(strangers)), ...ran.splice(0)]
  return found.length > 0 ? found.join(' · ') : undefined
}

test('a text is read as it was written, or refused with a reason', () =>
  everyCase('texts read', [...naughty, ...scripts], (text) => {
    const { job, diagnostics } = readJob(jobWith([text]), extensions)
    if (!job) return diagnostics.some(({ severity }) => severity === 'error') ? undefined : `${JSON.stringify(text)} is lost`
    return job.job.name === text && job.rooms[0]?.name === text
      ? undefined
      : `${JSON.stringify(text)} became ${JSON.stringify(job.job.name)}`
  }))

test('what must not be there would be seen', async () => {
  expect(await shown('<p onclick="x">p</p>')).toContain('onclick')
  expect(await shown('<p>p</p><script>alert("it ran")</script>')).toContain('it ran')
})

test('in a report it is text: nothing runs, nothing is asked for', () =>
  everyCase('texts in reports', jobs, (text) => {
    const { job, readings } = readJob(text, extensions)
    return job ? shown(report(job, readings).html) : 'refused'
  }))

test('in a drawing it is text', () =>
  everyCase('texts in drawings', jobs, async (text) =>
    shown(await written(text, 'draw', '--window', 'w1', '--view', 'elevation')),
  ))

test('on a terminal it is text', () =>
  everyCase('texts on terminals', jobs, async (text) => {
    const out = `${await written(text, 'check')}${await written(text, 'plan')}`
    return [...out].some((letter) => letter !== '\n' && /[\p{Control}\u202a-\u202e\u2066-\u2069]/u.test(letter))
      ? JSON.stringify(out.slice(0, 300))
      : undefined
  }))

/** Runs in the page: scripts and handlers anywhere on the sheet, in however many shadow roots. Lit's own listeners are no attributes. */
function onTheSheet(): readonly string[] {
  const within = (node: ParentNode): Element[] =>
    [...node.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  const isStrange = (element: Element) =>
    element.matches('script:not([src^="/assets/"]), iframe, object, embed, form, img, video, audio, base') ||
    [...element.attributes].some(({ name }) => name.startsWith('on'))
  return within(document)
    .filter(isStrange)
    .map((element) => element.outerHTML.slice(0, 200))
}

const using = tabletFor()
test('on the tablet it is text', () =>
  everyCase(
    'texts on the tablet',
    jobs.filter((_, n) => n % 12 === 0),
    async (text) => {
      const found: string[] = []
      await using({ job: await jobOf(text) }, async ({ page }) => void found.push(...(await page.evaluate(onTheSheet))))
      return found.length > 0 ? found.join(' · ') : undefined
    },
  ))
