import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { jobOf } from '../../../tests/tools/jobs.ts'
import { reportOf } from '../src/index.ts'
import { example, orderOf, textOf } from './example.ts'

const page = reportOf(example('tern-hollow-found'))
const styleIn = (html: string): string => /<style>([\s\S]*?)<\/style>/.exec(html)?.[1] ?? ''

test('the policy allows the one style sheet by its sum, fonts and pictures in the page, and nothing else', () => {
  const sum = createHash('sha256').update(styleIn(page.html)).digest('base64')
  expect(page.policy).toBe(
    `default-src 'none'; style-src 'sha256-${sum}'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'`,
  )
  expect(page.html).toContain(`<meta http-equiv="Content-Security-Policy" content="${page.policy.replaceAll("'", '&#39;')}">`)
})

test('the page loads nothing and runs nothing', () => {
  const bare = page.html.replaceAll(/base64,[A-Za-z0-9+/=]+/g, '')
  expect(bare).not.toMatch(/<(script|link|iframe|object|embed|base|form|img)\b|\son\w+=|\sstyle=|javascript:|@import/i)
  expect([...bare.matchAll(/url\(([^)]*)\)|(?:href|src)="([^#][^"]*)"/g)].map(([, url]) => url?.slice(0, 15))).toEqual(
    ['data:font/woff2;', 'data:font/woff2;'].map((url) => url.slice(0, 15)),
  )
  expect(bare.replaceAll('http://www.w3.org/2000/svg', '')).not.toContain('//')
})

test('language, title and headings are there, in order', () => {
  expect(page.html).toMatch(/^<!doctype html>\n<html lang="en">/)
  expect(page.html).toContain('<title>Garden room, Window 1, House at Tern Hollow</title>')
  expect([...page.html.matchAll(/<h(\d)(?: [^>]*)?>([^<]*)</g)].map(([, level, text]) => `${level} ${text}`)).toEqual([
    '1 Garden room, Window 1',
    '2 What hangs here',
    '2 Planned, above the floor',
    '2 Still open',
    '2 23 checks pass',
    '2 What is still open',
    '2 What was shown',
    '2 Care of the fabrics',
    '3 Oat linen and cotton',
    '2 Safety',
    '2 Contacts',
    '2 For the next installer',
    '3 Garden room, Window 1',
    '4 Marks on the wall, above the floor',
    '4 Hooks, from the leading edge',
    '4 Pins, from the top of the pin up to the top of the drapery',
  ])
})

test('each paper has its size in the style sheet', () => {
  expect(styleIn(page.html)).toContain('@page{size:A4;')
  expect(styleIn(reportOf(example('tern-hollow', { paper: 'letter' })).html)).toContain('@page{size:letter;')
})

test('Draft stands in the head of every printed page', () => {
  expect(styleIn(page.html)).toContain('@top-right{content:"Draft \\b7  Completion report"')
  expect(page.html).toContain(
    '<header class="head"><span>House at Tern Hollow</span><span>Draft · Completion report</span></header>',
  )
})

test('letters beyond Latin 1 bring their font along, and only they', () => {
  const faces = (html: string) => html.match(/@font-face/g)?.length
  expect(faces(page.html)).toBe(2)
  expect(faces(reportOf(orderOf(textOf('tern-hollow').replace('House at Tern Hollow', 'Dom przy Łące'))).html)).toBe(4)
})

test('the same order gives the same bytes', () => {
  expect(reportOf(example('tern-hollow-found')).html).toBe(page.html)
})

test('every window of a job has its own article and heading', () => {
  const { html } = reportOf(orderOf(JSON.stringify(jobOf(7, 12))))
  expect(html.match(/<article class="window" id="window-\d+">\n<h2 class="title">/g)?.length).toBe(12)
  expect(html.match(/<h1/g)?.length).toBe(1)
  expect(html).toContain('<title>House 7</title>')
})

// Nothing here may become markup, a style or the end of one, wherever a job has room for text.
const hostile = [
  '</style><script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '"><svg onload=alert(1)>',
  "' onmouseover='alert(1)",
  '-->]]><!--',
  '&lt;b&gt; &amp;amp;',
  '{count, plural, one {',
  '"}body{display:none}/*',
  '\\22 }*{display:none}',
  '\u202eright to left\u202c',
  'שלום, עולם',
  '👩‍👧 🪟',
  'a\u0000b\u0007c',
  '\ufdd00\ufdd1',
  '$& $1 $`',
  'two\nlines\ttab',
]
const filled = (text: string): string => {
  const written = JSON.stringify(text).slice(1, -1)
  return textOf('tern-hollow')
    .replaceAll(/("(?:name|address|lining)": )"[^"]*"/g, (_, member: string) => `${member}"${written}"`)
    .replace('"number": "26-117"', () => `"number": "${written}"`)
}
const unwritable = ['\u0000', '\u0007', '\ufdd0', '\ufdd1']
const shown = (text: string): string =>
  unwritable
    .reduce((shown, one) => shown.replaceAll(one, '\ufffd'), text)
    .replace(/[&<>"']/g, (one) => `&#${one.codePointAt(0)};`)
const plain = (html: string): string =>
  html.replaceAll('&amp;', '&#38;').replaceAll('&lt;', '&#60;').replaceAll('&gt;', '&#62;').replaceAll('&quot;', '&#34;')

test.each(hostile)('text from a job is text everywhere: %j', (text) => {
  const { html } = reportOf(orderOf(filled(text)))
  const tags = (page: string) => page.replace(/<style>[\s\S]*<\/style>/, '').match(/<\/?[a-z0-9]+/g)
  expect(tags(html)).toEqual(tags(reportOf(orderOf(filled('x'))).html))
  expect(html.match(/<\/style/g)?.length).toBe(1)
  expect(plain(html)).toContain(`<h1 class="title">${shown(text)}, ${shown(text)}</h1>`)
  expect(plain(html)).toContain(`<dd>${shown(text)}</dd>`)
})

test.each(hostile)('text from a job stays inside its string of the style sheet: %j', (text) => {
  const heads = styleIn(reportOf(orderOf(filled(text))).html).match(
    /@(?:top|bottom)-left\{content:"(?:[A-Za-z0-9 ]|\\[0-9a-f]+ )*";text-align/g,
  )
  expect(heads?.length).toBe(2)
})
