import { expect, test } from 'vitest'
import { examples, names } from '../tools/examples.ts'
import { elements } from './elements.ts'
import { galleryPage } from './page.ts'
import { shown } from './scenes.ts'

// Every sixth example; `npm run gallery` and the long tests draw them all.
const some = examples.filter((_, n) => n % 6 === 0)
const page = galleryPage(some)

test('the gallery holds its examples, each of its windows in every view, and lists them', () => {
  for (const { name, places } of some) {
    expect(page).toContain(`<a href="#${name}">`)
    expect(page).toContain(`<section id="${name}">`)
    for (const [n] of places.entries()) for (const [m] of shown.entries()) expect(page).toContain(`id="${name}-${n}-${m}"`)
  }
  expect(names.length).toBeGreaterThan(10)
})
test('every element is drawn, and every drawing again at night', () => {
  for (const { name, scene } of elements) expect(scene.items.length, name).toBeGreaterThan(1)
  expect(page.match(/<use href="#/g)?.length).toBe(page.match(/<svg id="/g)?.length)
})
test('it asks nothing of a network, runs no script, and nothing in it is not a number', () => {
  expect(page).toMatch(/default-src 'none'; style-src 'sha256-[^']+'; font-src data:;/)
  expect(page.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\((?!data:)|<script|\sstyle=|NaN|undefined/)
})
test('an id stands once', () => {
  const ids = [...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id)
  expect(new Set(ids).size).toBe(ids.length)
})
