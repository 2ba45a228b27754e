import { expect, test } from 'vitest'
import { jobOf } from '../../../tests/tools/jobs.ts'
import { reportOf, type Said } from '../src/index.ts'
import { example, house, orderOf, outlined, textOf } from './example.ts'

const text = (said: Said = []): string => said.map((part) => (typeof part === 'string' ? part : part.written.text)).join('')
const order = house(['tern-hollow', 'panels-do-not-meet', 'not-measured-yet', 'pair-unlike'])
const outline = outlined(order)
const built = outline.house ?? expect.fail('no house')
const { html } = reportOf(order)

test('the cover counts windows and rooms', () => {
  expect([outline.title, built.lead]).toEqual(['House at Tern Hollow', '4 windows in 2 rooms.'])
  expect(outlined(house(['tern-hollow', 'tern-hollow'], { language: 'es' })).house?.lead).toBe('2 ventanas en 1 habitación.')
})

test('one window is a report by itself, without cover and contents', () => {
  expect(outlined(example('tern-hollow')).house).toBeUndefined()
})

test('the contents name every window by room, and say how it stands', () => {
  expect(
    built.contents.of.map(({ name, windows }) => [name, ...windows.map(({ link, short }) => `${link.text}: ${short}`)]),
  ).toEqual([
    ['Garden room', 'Window 1: Nothing open', 'Window 2: Stops: 1 point; 1 point to look at'],
    ['Study', 'Window 3: 5 places not measured', 'Window 4: Stops: 1 point'],
  ])
})

test('the summary begins with the windows that stop, and says why', () => {
  const [stop] = built.summary.of
  expect(built.summary.of.map(({ says }) => says)).toEqual([
    '2 windows stop',
    '1 window is not measured in full',
    '1 window has nothing open',
  ])
  expect(stop?.windows.map(({ link, points }) => [link.text, ...points.map(({ says }) => text(says))])[0]).toEqual([
    'Garden room, Window 2',
    'The left panel is 3/4 short of its share of the rod, 39; it may be over by 1/2 at most, and never short.',
  ])
})

test('a window that stops or is not measured says so before its drawing', () => {
  expect(outline.windows.map(({ stands }) => stands.says)).toEqual([
    [],
    ['This window stops: the work here goes no further until what is open is settled.'],
    ['This window is not measured in full: what hangs on the missing numbers is not worked out.'],
    ['This window stops: the work here goes no further until what is open is settled.'],
  ])
  expect(html).toMatch(/<div class="stands fail">.*?This window stops:.*?<div class="plate">/s)
})

test('a window that stops has no marks for the wall', () => {
  const [well, stopped] = outline.windows
  expect(well?.marks?.of.map(({ name, says }) => `${text(name)} ${text(says[0])}`)).toEqual([
    'Wall angle, left 88 3/4',
    'Wall angle, right 89 1/8',
    'Top hole, left 90',
    'Lower hole, left 88 3/8',
    'Top hole, right 90 3/8',
    'Lower hole, right 88 3/4',
  ])
  expect([stopped?.marks?.of, stopped?.marks?.instead]).toEqual([[], 'Nothing is marked on the wall while this window stops.'])
})

test('every link leads to a place of the page, and to every window leads one', () => {
  const page = reportOf(orderOf(JSON.stringify(jobOf(3, 23)))).html
  const ids = new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))
  const links = new Set([...page.matchAll(/ href="#([^"]+)"/g)].map(([, id]) => id))
  expect([...links].filter((id) => !ids.has(id))).toEqual([])
  expect(Array.from({ length: 23 }, (_, n) => `window-${n + 1}`).filter((id) => !ids.has(id) || !links.has(id))).toEqual([])
  expect(page.match(/ id="/g)?.length).toBe(ids.size)
})

test('each fabric has its windows, and what the plans say of its care', () => {
  const [fabric] = outline.closing.care.of
  expect([fabric?.name, fabric?.windows.of.length]).toEqual(['Oat linen and cotton', 4])
  expect(fabric?.notes.map((note) => text(note)).join(' ')).toMatch(/^Draw the panels by the leading edge/)
  expect(fabric).not.toHaveProperty('notGiven')
})

test('where no plan says how to care for a fabric there is a place to write it', () => {
  const silent = outlined({
    ...order,
    planner: { ...order.planner, window: (...args) => ({ ...order.planner.window(...args), entries: [] }) },
  })
  expect(silent.closing.care.of[0]?.notGiven).toMatch(/^The order holds no instructions/)
})

test('care of each fabric says what is of it and nothing of another at the same window', () => {
  const { care } = outlined(example('dressed-and-steamed')).closing
  const others = care.of.map(({ name }) => name)
  const strange = care.of.flatMap(({ name, notes }) =>
    notes
      .filter((note) => others.some((other) => other !== name && text(note).startsWith(`${other}:`)))
      .map((note) => `${name}: ${text(note)}`),
  )
  expect(care.of.length).toBeGreaterThan(3)
  expect(strange).toEqual([])
})

test('what hangs without a fabric of the order has its care too', () => {
  const written = JSON.parse(textOf('tern-hollow'))
  const { fabrics: _, ...bare } = written
  delete bare.rooms[0].windows[0].treatments[0].fabric
  const [unnamed, ...more] = outlined(orderOf(JSON.stringify(bare))).closing.care.of
  expect([unnamed?.name, unnamed?.windows.of.length, unnamed?.notes.length, more]).toEqual([
    'What hangs without a fabric named in the order',
    1,
    1,
    [],
  ])
})

test('what holds at every window is said once', () => {
  expect(outline.closing.safety.of.filter(({ where }) => where === 'At every window.').length).toBeLessThanOrEqual(1)
  expect(new Set(outline.closing.safety.of.map(({ says }) => text(says))).size).toBe(outline.closing.safety.of.length)
})

test('contacts say whom to call, with the telephone', () => {
  expect(outline.closing.contacts.of.map(({ name, says }) => [text(name), ...says.map(text)])).toContainEqual([
    'Made by',
    'Workroom at Sandpiper Yard',
    'extension 4 of the yard',
  ])
})

test('all walls of the frieze stand to one scale, also one of which nothing is known', () => {
  const sizes = [...html.matchAll(/<svg width="([\d.]+)mm" height="([\d.]+)mm" viewBox="\S+ \S+ (\d+) (\d+)"/g)]
  const scales = sizes.flatMap(([, w, h, wide, high]) => [Number(w) / Number(wide), Number(h) / Number(high)])
  expect(sizes.length).toBe(4)
  expect(scales.every((scale) => Math.abs(scale - built.frieze.scale) < 1e-5)).toBe(true)
})

test('the page says its language', () => {
  expect(reportOf(house(['tern-hollow', 'rod-too-short'], { language: 'es' })).html).toContain('<html lang="es">')
})

/** Names of elements that are open at the end, or that closed another. */
function misnested(page: string): readonly string[] {
  const open: string[] = []
  for (const [, close, name = '', rest = ''] of page.matchAll(/<(\/?)([a-z][a-z0-9]*)((?:"[^"]*"|[^>"])*)>/g))
    if (close && open.pop() !== name) return [`</${name}>`, ...open]
    else if (!close && !rest.endsWith('/') && name !== 'meta') open.push(name)
  return open
}
test('the page is well formed: every element is closed where it was opened', () => {
  expect(misnested(html.replace(/<style>[\s\S]*<\/style>|<!doctype html>/g, ''))).toEqual([])
  expect(misnested('<p><b></p></b>')).not.toEqual([])
})
