import { expect, test } from 'vitest'
import { fingerprintOf, fingerprintWords, reportOf, type Said } from '../src/index.ts'
import { example, handedOver, outlined, window } from './example.ts'

const text = (said: Said = []): string => said.map((part) => (typeof part === 'string' ? part : part.written.text)).join('')
const outline = outlined(handedOver())
const [page] = outline.windows
const { html } = reportOf(handedOver())
const line = ({ name, says }: { readonly name?: Said; readonly says: readonly Said[] }) =>
  `${text(name)}: ${says.map(text).join('; ')}`

test('what was done otherwise than ordered is said, in the reader’s unit', () => {
  expect(page?.corrections?.of.map(line)).toEqual([
    'Pins, panel left: hooks 3 to 4: 3/8; hook 7: 5/8; the workroom had set 1/2',
    'Hems: went on with it as it is',
    'Panels: the workroom was called',
    'Panel left, finished length: the brackets follow it; 88 5/8 measured, 89 ordered',
    'Panel right, pin: the pins take it up; 3/4 measured, 1/2 ordered',
    'Finial: the workroom was called; 1 came of 2',
    'Panel left: pins set anew to even the hem',
    'Panel right: the panel goes back to the workroom',
    'Hem-other: brackets moved to even the hem',
    'Hem-third: brackets moved and pins set anew to even the hem',
    'Hem-last: the hem was read again',
    'Bracket left: moved up by 3/8, its top hole now 90 3/8 above the floor',
    'The ladder: left <b>outside</b>',
  ])
})

test('a window as ordered has no corrections', () => {
  expect(outlined(example('tern-hollow')).windows[0]).not.toHaveProperty('corrections')
})

test('the days of hanging and of coming back stand at the window and on the cover', () => {
  const days = ['Hung: December 8, 2026', 'Hem looked at again: December 22, 2026']
  expect(page?.days?.of.map(line)).toEqual(days)
  expect(outline.about.slice(-2).map(line)).toEqual(days)
})

test('what is open stands with its owner and the day', () => {
  const [point, ...more] = outline.closing.open.of
  expect([point?.title, point?.what, more]).toEqual(['Garden room, Window 1, point 1', 'Paint chipped', []])
  expect(point?.facts.map(line)).toEqual(['Mended by: customer', 'To mend by: no day agreed yet'])
})

test('the photo of a point has the marks that were put on it at its window', () => {
  const hash = 'a'.repeat(64)
  const order = handedOver()
  const marks = { [`${window}/found/photoMarks/${hash}/m1`]: { value: { kind: 'point', x: 0.2, y: 0.3, says: 'here' } } }
  const photo = { [`${window}/with/punch-list/points/p001/photo`]: { value: hash } }
  const [point] = outlined({ ...order, readings: { ...order.readings, ...marks, ...photo } }).closing.open.of
  expect(point?.photos.map(({ alternative, marks: on }) => [alternative, on.length])).toEqual([
    ['Photo of it. Paint chipped. Marked: here', 1],
  ])
})

test('what was shown at the hand-over is said, and that nothing was', () => {
  expect(outline.closing.shown.of.map(({ says }) => text(says))[0]).toMatch(/^Draw the pair five times with the customer/)
  expect(outlined(example('tern-hollow')).closing.shown.instead).toBe('Nothing is recorded as shown yet.')
})

test('signatures stand in the order of their time, with what was accepted and left', () => {
  expect(outline.closing.signed.of.map(({ name, as, says }) => [name, as, ...says])).toEqual([
    ['The household', 'Installer, December 8, 2026', 'Signed by typing the name.'],
    [
      'The household',
      'Customer, December 8, 2026',
      'Accepted with the points that are open.',
      'Left with the customer: two rings',
    ],
  ])
})

test('signatures on clocks of two zones stand in the order of their time', () => {
  const order = handedOver()
  const at = (id: string, when: string) => {
    const place = `/job/found/signatures/${id}`
    return { [place]: { ...order.readings[place], value: order.readings[place]?.value, when } }
  }
  // The customer's 16:30 is 21:30 in the zone of the installer's clock, who signed at 20:00 there.
  const readings = { ...order.readings, ...at('s2', '2026-12-08T16:30:00-05:00'), ...at('s9', '2026-12-08T20:00:00Z') }
  expect(outlined({ ...order, readings }).closing.signed.of.map(({ id }) => id)).toEqual(['s9', 's2'])
})

test('nothing is threaded where no ring is', () => {
  const threaded = outlined(example('heron-point-day')).closing.technical.of.flatMap(({ hooks }) =>
    hooks.of.filter(({ name }) => text(name).startsWith('On the rod')).map(line),
  )
  expect(threaded.length).toBeGreaterThan(5)
  expect(threaded.filter((rod) => / 0 /.test(rod))).toEqual([])
})

test('strokes are drawn as they were, and a typed name is set as a name', () => {
  expect(html).toContain('aria-label="Signature of The household" viewBox="0 0 300 100"><path d="M0 0L150 100 300 25M30 10h.1"/>')
  expect(html).toContain('<p class="typed">The household</p>')
})

test('every page says Draft until a customer has signed', () => {
  expect([outline.head.state, outlined(example('tern-hollow')).head.state]).toEqual(['Signed', 'Draft'])
  expect(html).not.toContain('Draft')
  const { ordered, readings, ...rest } = handedOver()
  const { '/job/found/signatures/s2': _, ...without } = readings
  expect(outlined({ ...rest, ordered, readings: without }).head.state).toBe('Draft')
})

test('a fingerprint is eight words beside the whole hash, and the order of members says nothing', () => {
  const of = fingerprintOf({ job: 'a', devices: { one: 1, two: 2 } })
  expect(of.words.map((word) => fingerprintWords.indexOf(word))).toEqual([...Buffer.from(of.hash, 'hex').subarray(0, 8)])
  expect(fingerprintOf({ devices: { two: 2, one: 1 }, job: 'a' })).toEqual(of)
  expect(fingerprintOf({ devices: { two: 2, one: 1 }, job: 'b' }).words).not.toEqual(of.words)
})

test('each word of fingerprints stands in the list once', () => {
  expect([fingerprintWords.length, new Set(fingerprintWords).size]).toEqual([256, 256])
})

test('the next installer finds which hook goes where, and the pins as they hang', () => {
  const [window] = outline.closing.technical.of
  expect(window?.pins.of.map(line)).toEqual([
    'Panel left: hooks 1 to 2: 1/2; hooks 3 to 4: 3/8; hooks 5 to 6: 1/2; hook 7: 5/8; hooks 8 to 13: 1/2',
    'Panel right: hooks 1 to 13: 1/2',
  ])
  expect(window?.hooks.of.map(({ name }) => text(name))).toEqual(['Panel left', 'Panel right', 'On the rod, from the left'])
  expect(text(window?.hooks.of[0]?.says[0])).toMatch(/^1 to \d+: ring 1–\d+$/)
})

test('words that somebody wrote stay text', () => {
  expect(html).toContain('left &lt;b&gt;outside&lt;/b&gt;')
})

test.each(['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', "' onmouseover='alert(1)"])(
  'a name under a signature and a point stay text: %s',
  (hostile) => {
    const order = handedOver()
    const signature = order.readings['/job/found/signatures/s2']?.value as object
    const readings = {
      ...order.readings,
      '/job/found/signatures/s2': { value: { ...signature, name: hostile, left: hostile } },
      [`${window}/with/punch-list/points/p001/what`]: { value: hostile },
      [`${window}/treatments/over/found/decided/${hostile.replaceAll('/', '~1')}`]: { value: hostile },
    }
    const tags = (page: string) => new Set(page.slice(page.indexOf('<body>')).match(/<\/?[a-z0-9]+/g))
    const written = reportOf({ ...order, readings }).html
    expect(tags(written)).toEqual(tags(html))
    expect(
      written.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&#39;', "'").split(hostile)
        .length,
    ).toBeGreaterThan(4)
  },
)
