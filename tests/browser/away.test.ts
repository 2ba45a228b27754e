import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fold, write } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { later } from '../tools/later.ts'
import { deskFor, drawn, logOf, measure, stands, tabletsIn } from './away.ts'

const { tablet, open } = tabletsIn()
const left = '/rooms/garden-room/windows/w1/treatments/over/panels/left/finishedLength'
const measured = '.figure:is(.measured, .off)'

test('a sheet opens without the server after it was opened once; what is entered waits over reloads and arrives once, in order', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), desk.address)
  await drawn(page)
  await stands(page, 'In contact with the server').click()
  await page.getByText('Everything for this job is on this tablet.').waitFor()
  await page.keyboard.press('Escape')
  await desk.stop()
  await stands(page, /^No contact with the server since/).waitFor()
  await page.reload()
  await drawn(page)
  await measure(page, '88 7/8')
  await page.locator('changes-panel').getByRole('button', { name: 'Undo' }).click()
  await stands(page, '2 waiting').waitFor()
  await page.reload()
  await drawn(page)
  await stands(page, '2 waiting').waitFor()
  await desk.start()
  await stands(page, 'In contact with the server').waitFor()
  expect(await logOf(desk)).toEqual(['88 7/8 in', undefined])
})

test('two tablets see each other live; apart they differ, and together a person decides', async () => {
  const desk = await deskFor()
  const [one, two] = await Promise.all([await open(await tablet(), desk.address), await open(await tablet(), desk.address)])
  await Promise.all([drawn(one), drawn(two)])
  await stands(one, 'In contact with the server').filter({ hasText: 'is here too' }).waitFor()
  await measure(one, '89')
  await two.locator(`room-drawing ${measured}`).first().waitFor()
  await desk.stop()
  await Promise.all([one, two].map((page) => stands(page, /^No contact/).waitFor()))
  await one.locator('changes-panel').getByRole('button', { name: 'Go on' }).click()
  await measure(one, '88 7/8')
  await measure(two, '89 1/8')
  await Promise.all([one, two].map((page) => stands(page, '1 waiting').waitFor()))
  await desk.start()
  await Promise.all([one, two].map((page) => stands(page, 'In contact with the server').waitFor()))
  // Neither was entered before the other, so either may stand first.
  const conflict = { name: /^Treatment, panel left, finished length: (88 7.8 . 89 1.8|89 1.8 . 88 7.8)$/ }
  await one.locator('findings-row button').first().click()
  await two.locator('findings-row button').first().click()
  await two.locator('findings-list').getByRole('button', conflict).waitFor()
  await one.locator('findings-list').getByRole('button', conflict).click()
  await one.locator('working-panel .history li', { hasText: '88' }).getByRole('button').first().click()
  await expect.poll(() => two.locator('findings-list').getByRole('button', conflict).count()).toBe(0)
  expect((await logOf(desk)).length).toBe(4)
})

later('what an older viewer kept is sent by this one', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), `${desk.address}/manifest.webmanifest`)
  const [line] = write(
    { device: 'tablet-old', last: undefined, clock: '2026-11-25T09:12:00Z' },
    [{ place: left, value: '89 in' }],
    fold([]),
  )
  await page.evaluate(keptByVersionOne, {
    job: '26-117',
    by: 'tablet-old',
    n: 1,
    text: line?.text,
    place: left,
    read: 89 * 25_400_000,
    sent: false,
  })
  const { number } = JSON.parse(await readFile(join(desk.folder, 'job.json'), 'utf8')).job
  expect(number).toBe('26-117')
  await page.goto(desk.address)
  await page.locator(`room-drawing ${measured}`).first().waitFor()
  await stands(page, 'In contact with the server').waitFor()
  expect(await logOf(desk)).toEqual(['89 in'])
})

test('a tablet without room says so, keeps what was entered on the pad, and saves it when there is room', async () => {
  const desk = await deskFor()
  const page = await open(await tablet(), desk.address)
  await drawn(page)
  await page.evaluate(fillUp)
  await measure(page, '89')
  await page.getByText('There was no room to keep this on the tablet').waitFor()
  expect(await page.locator('pad-view .big').textContent()).toContain('89')
  expect(await logOf(desk)).toEqual([])
  await page.evaluate(() => dispatchEvent(new Event('room')))
  await page.keyboard.press('Enter')
  await page.locator('changes-panel').waitFor()
  await expect.poll(() => logOf(desk)).toEqual(['89 in'])
})

/** Runs in the page: the database takes nothing more, as where a tablet is full, until there is `room`. A quota set from outside is heeded too late by the browser. */
function fillUp(): void {
  const { add } = IDBObjectStore.prototype
  IDBObjectStore.prototype.add = () => {
    throw new DOMException('The quota has been exceeded.', 'QuotaExceededError')
  }
  addEventListener('room', () => {
    IDBObjectStore.prototype.add = add
  })
}

/** Runs in the page: the database as the first viewer made it. */
function keptByVersionOne(line: object): Promise<void> {
  return new Promise((done, fail) => {
    const asked = indexedDB.open('evenhem', 1)
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore('lines', { keyPath: ['job', 'by', 'n'] }).createIndex('job', 'job')
      asked.result.createObjectStore('device')
    }
    asked.onerror = () => fail(asked.error)
    asked.onsuccess = () => {
      const tx = asked.result.transaction(['lines', 'device'], 'readwrite')
      tx.objectStore('lines').add(line)
      tx.objectStore('device').put('tablet-old', 'me')
      tx.oncomplete = () => {
        asked.result.close()
        done()
      }
    }
  })
}
