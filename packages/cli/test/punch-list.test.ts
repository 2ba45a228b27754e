import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fold, type Put, write } from '@evenhem/site-log'
import ICAL from 'ical.js'
import { expect, test } from 'vitest'
import { folded } from '../src/calendar.ts'
import { csvOf } from '../src/csv.ts'
import { example, fileWith, folder, line } from './line.ts'

const job = example('left-to-mend')
const at = '/rooms/garden-room/windows/w1/with/punch-list/points/t1'
/** A job without any points, and what a tablet put into its log. */
async function jobWith(...puts: readonly Put[]): Promise<string> {
  const to = await folder()
  await copyFile(join(example('tern-hollow'), 'job.json'), join(to, 'job.json'))
  await mkdir(join(to, 'log'))
  const lines = write({ device: 'tablet-1', last: undefined, clock: '2026-11-30T16:05:00-05:00' }, puts, fold([]))
  await writeFile(join(to, 'log', 'tablet-1.jsonl'), lines.map(({ text }) => `${text}\n`).join(''))
  return to
}
/** The example with something else in its first point. */
async function changed(point: object): Promise<string> {
  const order = JSON.parse(await readFile(`${job}/job.json`, 'utf8'))
  Object.assign(order.rooms[0].windows[0].with['punch-list'].points.p1, point)
  return fileWith(JSON.stringify(order))
}
const events = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each))

test('what is left stands by window, then by owner and day; what is settled is left out', async () => {
  const { code, out } = await line('punch-list', job)
  expect(code).toBe(0)
  expect(out).toBe(`House at Tern Hollow

Garden room, Window 1
   1  workroom (The table by the door)  2026-12-04  open  Water spot at the hem
   4  workroom                          no day      open  The last hook slips out of the wall angle
   2  installer                         2026-12-01  open  UNSAFE: The right bracket can be moved by hand
   3  painter                           2026-12-10  open  Paint chipped beside the casing

Garden room, Window 2
   2  workroom    2026-12-04  mended             A finial is scratched
   4  workroom    2026-12-04  accepted as it is  UNSAFE: The wand is unsafe: its end is sharp
   5  workroom    2026-12-04  open               The label on the bag says window 1
   3  nobody yet  no day      mended             UNSAFE: A screw stood out of the sill

The whole job
   1  customer  2026-12-01  open  The front door closes on the ladder
`)
})

test('owner, window and day choose among them, --all shows what is settled too', async () => {
  const numbers = async (...more: readonly string[]) =>
    JSON.parse((await line('punch-list', job, '--json', ...more)).out).points.map(
      (point: { name?: string; id: string }) => `${point.name?.slice(-1) ?? 'job'} ${point.id}`,
    )
  expect(await numbers('--owner', 'other-trade')).toEqual(['1 p3'])
  expect(await numbers('--by', '2026-12-01')).toEqual(['1 p2', 'job p1'])
  expect(await numbers('--window', 'w2')).toEqual(['2 p2', '2 p3', '2 p4', '2 p10'])
  expect(await numbers('--window', 'w2', '--all')).toEqual(['2 p1', '2 p2', '2 p3', '2 p4', '2 p10'])
})

test('a point that a tablet put is on the list, though the order knows nothing of it', async () => {
  const to = await jobWith(
    { place: `${at}/what`, value: 'Hem not level' },
    { place: `${at}/owner`, value: 'workroom' },
    { place: `${at}/unsafe`, value: true },
  )
  const { out, err } = await line('punch-list', to)
  expect([out.split('\n')[3], err]).toEqual(['   1  workroom  no day  open  UNSAFE: Hem not level', ''])
  expect((await line('check', to)).out).toMatch(/fail +Point 1 is unsafe: Hem not level/)
})

test('nothing left is said, and a list of nothing is written all the same', async () => {
  expect(await line('punch-list', example('tern-hollow'))).toEqual({
    code: 0,
    out: '',
    err: 'Nothing is left to mend of what was asked for.\n',
  })
  expect(events((await line('punch-list', example('tern-hollow'), '--ics')).out)).toEqual([])
})

test('a cell starts no formula, whatever a point says', async () => {
  const hostile = { what: '=HYPERLINK("a")', who: '+1', trade: '@x', note: '-2+3', owner: 'other trade' }
  const { out } = await line('punch-list', await changed(hostile), '--csv', '--owner', 'other-trade')
  const [head, row] = out.split('\r\n')
  expect(head).toBe('room,window,point,what,where,unsafe,cause,owner,trade,who,by,state,note,photos')
  expect(row).toBe(
    `Garden room,Window 1,1,"'=HYPERLINK(""a"")","treatment, panel left",,damaged on the way,another trade,'@x,'+1,2026-12-04,open,'-2+3,${'a'.repeat(64)}`,
  )
  // What a spreadsheet trims away before it looks hides nothing.
  for (const start of ['=', '+', '-', '@', '\t=', '\r=', '\r\n@']) expect(csvOf([[`${start}1`]])).toMatch(/^"?'/)
})

test('another program reads the calendar: a day for each owner and date', async () => {
  const { out } = await line('punch-list', job, '--ics')
  expect(events(out).map(({ summary, startDate, endDate }) => [summary, String(startDate), String(endDate)])).toEqual([
    ['workroom: 3 points to mend, House at Tern Hollow', '2026-12-04', '2026-12-05'],
    ['installer: 1 point to mend, House at Tern Hollow', '2026-12-01', '2026-12-02'],
    ['painter: 1 point to mend, House at Tern Hollow', '2026-12-10', '2026-12-11'],
    ['customer: 1 point to mend, House at Tern Hollow', '2026-12-01', '2026-12-02'],
  ])
  expect(events(out)[0]?.location).toBe('Tern Hollow, the last house on the lane')
  expect(new Set(events(out).map(({ uid }) => uid)).size).toBe(4)
  expect((await line('punch-list', job, '--ics')).out).toBe(out)
})

test('whatever a point says comes back from the calendar, in lines of 75 octets at most', async () => {
  const what = `Ärmel; a,b\\c\nBEGIN:VEVENT\r\nñ🪡${'é'.repeat(120)}\u0007 end`
  const { out } = await line('punch-list', await changed({ what }), '--ics')
  const [first] = events(out)
  expect(events(out)).toHaveLength(4)
  expect(first?.description).toContain(what.replace('\r\n', '\n').replace('\u0007', ''))
  expect(out.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  expect(out.split('\r\n').filter((each) => Buffer.byteLength(each) > 75)).toEqual([])
})

test.each([
  [75, 1],
  [76, 2],
  [149, 2],
  [150, 3],
])('a line of %i octets is folded into %i', (octets, pieces) => {
  expect(folded('x'.repeat(octets)).split('\r\n ')).toHaveLength(pieces)
})

test('a visit is stamped by the clock of what was put last about it, and keeps its name when that changes', async () => {
  const puts: readonly Put[] = [
    { place: `${at}/what`, value: 'Hem not level' },
    { place: `${at}/owner`, value: 'workroom' },
    { place: `${at}/by`, value: '2026-12-04' },
  ]
  const [visit] = events((await line('punch-list', await jobWith(...puts), '--ics')).out)
  expect(String(visit?.component.getFirstPropertyValue('dtstamp'))).toBe('2026-11-30T21:05:00Z')
  const [again] = events(
    (await line('punch-list', await jobWith(...puts, { place: `${at}/note`, value: 'Bring pins.' }), '--ics')).out,
  )
  expect(again?.uid).toBe(visit?.uid)
})

test('a clock that says the second 60 breaks no calendar', async () => {
  const to = await jobWith(
    { place: `${at}/what`, value: 'Hem not level' },
    { place: `${at}/owner`, value: 'workroom' },
    { place: `${at}/by`, value: '2026-12-04' },
  )
  const log = join(to, 'log', 'tablet-1.jsonl')
  await writeFile(log, (await readFile(log, 'utf8')).replaceAll('2026-11-30T16:05:00-05:00', '2026-12-31T23:59:60Z'))
  const [visit] = events((await line('punch-list', to, '--ics')).out)
  expect(String(visit?.component.getFirstPropertyValue('dtstamp'))).toBe('2026-12-04T00:00:00Z')
})

test('the page to print holds the photos that are here, the larger copy first', async () => {
  const to = await folder()
  await copyFile(join(job, 'job.json'), join(to, 'job.json'))
  const small = join(to, 'photos', 'small')
  await mkdir(small, { recursive: true })
  const copies = { 1600: [0xff, 0xd8, 0xff, 1], 320: [0xff, 0xd8, 0xff, 2] }
  const photo = async (bytes?: readonly number[]) => {
    const { code } = await line('punch-list', to, '--html', join(to, 'page.html'))
    const page = await readFile(join(to, 'page.html'), 'utf8')
    expect(code).toBe(0)
    return bytes
      ? page.includes(`src="data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}"`)
      : /Photo not here yet/.test(page)
  }
  const hash = 'a'.repeat(64)
  expect(await photo()).toBe(true)
  await writeFile(join(small, `${hash}-320.jpg`), Buffer.from(copies[320]))
  expect(await photo(copies[320])).toBe(true)
  await writeFile(join(small, `${hash}-1600.jpg`), Buffer.from(copies[1600]))
  expect(await photo(copies[1600])).toBe(true)
  await writeFile(join(small, `${hash}-1600.jpg`), 'no picture')
  expect(await photo(copies[320])).toBe(true)
})

test('a photo by a name that is no hash is no path', async () => {
  const order = JSON.parse(await readFile(`${job}/job.json`, 'utf8'))
  order.rooms[0].windows[0].with['punch-list'].points.p1.before = { '../../secret': true }
  const file = await fileWith(JSON.stringify(order))
  const { code } = await line('punch-list', file, '--html', `${file}.html`)
  expect(code).toBe(0)
  expect(await readFile(`${file}.html`, 'utf8')).toContain('Photo not here yet (../../se…)')
})

test('what makes no sense is refused', async () => {
  expect((await line('punch-list', job, '--by', '2026-02-30')).err).toBe(
    'Unexpected --by 2026-02-30, expected a day of the calendar; write it like 2026-12-04\n',
  )
  expect((await line('punch-list', job, '--csv', '--html', 'x')).err).toMatch(/--csv beside --html/)
  expect((await line('punch-list', job, '--owner', 'painter')).code).toBe(2)
})

test('it speaks Spanish', async () => {
  const { out } = await line('punch-list', job, '--lang', 'es')
  expect(out).toContain(
    '   2  instalador                      2026-12-01  abierto  PELIGRO: The right bracket can be moved by hand\n',
  )
  expect((await line('punch-list', job, '--ics', '--lang', 'es')).out).toContain(
    'SUMMARY:taller: 3 pendientes por corregir\\, House at Tern Hollow',
  )
})
