import { expect, test } from 'vitest'
import { type Photos, photoHashes, type ReportOrder, reportOf, sizeOfJpeg } from '../src/index.ts'
import { example, orderOf, outlined, textOf, window } from './example.ts'

const hash = (letter: string): string => letter.repeat(64)
const [closed, before, detail, gone] = ['a', 'b', 'c', 'd'].map(hash) as [string, string, string, string]
const found = (member: string, name: string): string => `${window}/found/${member}/${name}`
const arrow = { kind: 'arrow', x: 0.75, y: 0.5, toX: 0.9, toY: 0.9, says: 'chipped' }
const readings = {
  [found('photos', closed)]: { value: 'The pair, closed', when: '2026-12-08T09:08:00Z' },
  [found('photoOf', closed)]: { value: 'closed' },
  [found('photos', before)]: { value: 'The wall' },
  [found('photoOf', before)]: { value: 'before' },
  [found('photos', detail)]: { value: 'Paint beside the casing' },
  [found('photoOf', detail)]: { value: 'detail' },
  [`${found('photoMarks', detail)}/m1`]: { value: arrow },
  [found('photos', gone)]: { value: 'Taken on the other tablet' },
}
const photos: Photos = (one) =>
  one === gone ? undefined : { src: `data:image/jpeg;base64,${one.slice(0, 4)}`, width: 1600, height: 1200 }
const written = (all: object, more: Partial<ReportOrder> = {}): ReportOrder =>
  orderOf(JSON.stringify({ ...JSON.parse(textOf('tern-hollow')), found: all }), { photos, ...more })
const order = written(readings)
const shown = (of: ReportOrder) => outlined(of).windows[0]?.photos?.of ?? []
const bodyOf = (html: string): string => html.slice(html.indexOf('<body>'))
const body = bodyOf(reportOf(order).html)

test('photos stand as the work went: before, closed, open, details, and what nobody said the time of', () => {
  expect(shown(order).map(({ name, says }) => `${name}: ${says}`)).toEqual([
    'Before the work: The wall',
    'Closed: The pair, closed',
    'Detail: Paint beside the casing',
    'Photo: Taken on the other tablet',
  ])
})

test('a caption says what is shown and the day on which the photo was taken in', () => {
  expect(body).toContain('<figcaption><b>Closed</b> December 8, 2026<span>The pair, closed</span></figcaption>')
})

test('who cannot see a photo is told what it shows and what is marked on it', () => {
  expect(shown(order)[2]?.alternative).toBe('Detail. Paint beside the casing. Marked: chipped')
  expect(body).toContain('alt="Detail. Paint beside the casing. Marked: chipped" width="1600" height="1200"')
})

test('a mark lies over the photo, in its pixels', () => {
  const [, over] = /<path class="over" d="(M1440 1080L1200 600[^"]*)"/.exec(body) ?? []
  expect(over).toMatch(/^M1440 1080L1200 600L[\d. ]+M1200 600L[\d. ]+$/)
  expect(body.match(/<svg viewBox="0 0 1600 1200"/g)?.length).toBe(1)
})

test('a photo that is not here is said to be missing, and no picture stands for it', () => {
  expect(body).toContain('Photo not here yet (dddddddd…)')
  expect(body.match(/<img /g)?.length).toBe(3)
})

test('what is no hash is no photo', () => {
  const job = { found: { photos: { '../../secret': 'x', [closed]: 'y' } } } as unknown as Parameters<typeof photoHashes>[0]
  expect(photoHashes(job)).toEqual([closed])
})

test('a window without photos has no place for them', () => {
  expect(reportOf(example('tern-hollow')).html).not.toContain('class="photos"')
})

test('pictures come out of the page, unless it is said that they lie beside it', () => {
  expect(reportOf(order).policy).toContain('img-src data:;')
  expect(reportOf({ ...order, pictures: "'self'" }).policy).toContain("img-src data: 'self';")
})

test.each(['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '</text></svg><style>'])(
  'what is said of a photo stays text: %s',
  (text) => {
    const marks = { ...arrow, says: text }
    const page = bodyOf(
      reportOf(
        written({
          ...readings,
          [found('photos', detail)]: { value: text },
          [`${found('photoMarks', detail)}/m1`]: { value: marks },
        }),
      ).html,
    )
    const tags = (html: string) => html.match(/<\/?[a-z0-9]+/g)
    expect(tags(page)).toEqual(tags(body))
  },
)

test('every size of a JPEG stands in the head of its frame', () => {
  const frame = [0xff, 0xc0, 0, 11, 8, 0x04, 0xb0, 0x06, 0x40, 1, 1, 0x11, 0]
  const before = [0xff, 0xd8, 0xff, 0xdb, 0, 4, 1, 2]
  expect(sizeOfJpeg(Uint8Array.from([...before, ...frame]))).toEqual({ width: 1600, height: 1200 })
  expect(sizeOfJpeg(Uint8Array.from(before))).toBeUndefined()
  expect(sizeOfJpeg(Uint8Array.from([0x89, 0x50, ...frame]))).toBeUndefined()
})
