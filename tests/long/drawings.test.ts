import { expect, test } from 'vitest'
import { galleryPage } from '../gallery/page.ts'
import { markedSheets, scenesOf, wrong, wrongMarks } from '../gallery/sheets.ts'
import { examples } from '../tools/examples.ts'

test('every window of every example is drawn true on tablet, phone and paper, without a label on another', () => {
  let scenes = 0
  for (const example of examples)
    for (const each of scenesOf(example)) {
      expect(wrong(each), `${example.name} ${each.of}`).toEqual([])
      scenes++
    }
  console.log(`${scenes} drawings of ${examples.length} examples`)
})

test.each(['en', 'es'] as const)(
  'no hole that is pencilled is left out on tablet or paper, and its caption is whole everywhere (%s)',
  (language) => {
    const all = examples.flatMap((example) => markedSheets(example, language))
    for (const each of all) expect(wrongMarks(each), each.of).toEqual([])
    expect(all.length).toBeGreaterThan(300)
  },
)

test('the gallery holds every example', () => {
  const page = galleryPage(examples)
  expect(examples.filter(({ name }) => !page.includes(`<section id="${name}">`)).map(({ name }) => name)).toEqual([])
})
