import { createHash } from 'node:crypto'
import { lay, windowsOf } from '@evenhem/job'
import { expect, test } from 'vitest'
import { type ListedPoint, pointsOfJob, pointsOfWindow, punchListOf, words as sentences } from '../src/index.ts'
import { example } from './example.ts'
import { compare, withoutFonts } from './golden.ts'

const { ordered, readings, planner, words } = example('left-to-mend')
const { job: found } = lay(ordered, readings)
const points: readonly ListedPoint[] = [
  ...windowsOf(found).flatMap((window) => pointsOfWindow(window, planner.window(found, ordered, window.place))),
  ...pointsOfJob(planner.job(found, ordered)),
]
const page = (more: Partial<Parameters<typeof punchListOf>[0]> = {}) =>
  punchListOf({ found, points, photos: new Map(), words, language: 'en', paper: 'letter', ...more })
/** What stands in the page, without its style sheet, whose words would be found too. */
const body = (html: string): string => html.slice(html.indexOf('<body>'))

test('the punch list of the example, on Letter', () => {
  compare('punch-list-letter.txt', body(withoutFonts(page().html)))
})

test('the same in Spanish', () => {
  compare('punch-list-es.txt', body(withoutFonts(page({ language: 'es', paper: 'a4' }).html)))
})

test('each owner and each trade has a page of its own, and what is settled is on none', () => {
  const titles = [...page().html.matchAll(/<h2 class="title">(.*?)<\/h2>/g)].map(([, title]) => title)
  expect(titles).toEqual(['For: workroom', 'For: installer', 'For: painter', 'For: customer'])
  expect(page().html).not.toContain('One pleat is a little wider')
})

test('a photo that is here stands in the page with its spot, one that is not is said to be missing', () => {
  const hash = 'a'.repeat(64)
  const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xd9])
  const { html } = page({ photos: new Map([[hash, bytes]]) })
  expect(html).toContain(`<img src="data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}" alt="Photo of it. `)
  expect(html.match(/<path class="over" d="M/g)?.length).toBe(1)
  expect(html).not.toContain('Photo not here yet')
  expect(page().html).toContain('Photo not here yet (aaaaaaaa…)')
})

test('a photo that is both the photo of a point and one before it stands once', () => {
  expect(page().html.match(/Photo not here yet/g)).toHaveLength(1)
})

test('text from a job stays text, and no style or script is allowed but the one style sheet', () => {
  const [first] = points as readonly [ListedPoint]
  const hostile = {
    ...first,
    what: '<script>alert(1)</script>',
    who: '"><img src=x onerror=alert(1)>',
    note: '</section><style>',
  }
  const { html, policy } = page({ points: [hostile] })
  expect(body(html)).not.toMatch(/<script|<img|<style|onerror=alert\(1\)>(?!&)/)
  expect(body(html)).not.toMatch(/ style="/)
  const [, style = ''] = /<style>([\s\S]*?)<\/style>/.exec(html) ?? []
  expect(policy).toContain(`style-src 'sha256-${createHash('sha256').update(style).digest('base64')}'`)
  expect(policy).toMatch(/^default-src 'none'; .*img-src data:/)
})

test('every sentence of the punch list is said somewhere', () => {
  const codes = Object.keys(sentences.en).filter((code) => /^report\/(punch-(?!owner)|photo-(of-it|before|after|not))/.test(code))
  const own = { en: Object.fromEntries(codes.map((code) => [code, { says: `«${code}» ${sentences.en[code]?.says}` }])) }
  const [first] = points as readonly [ListedPoint]
  const { what: _what, owner: _owner, ...unsaid } = first
  const before = ['b'.repeat(64)]
  const more = [...points, { ...unsaid, before, after: ['c'.repeat(64)] }]
  const all = [more, []].map((some) => page({ points: some, words: [own, ...words] }).html).join('')
  expect(codes.filter((code) => !all.includes(`«${code}»`))).toEqual([])
  expect(codes.length).toBeGreaterThan(15)
})

test('a house with nothing left says so', () => {
  const { html } = page({ points: points.map((point) => ({ ...point, state: 'looked at' })) })
  expect(html).toContain('<p class="lead">Nothing is left to mend.</p>')
  expect(html).toContain('Nothing to mend · Punch list')
})
