import { forms } from '@evenhem/plugins/forms'
import { expect, test } from 'vitest'
import { spanish } from '../src/words/choices.ts'
import { deskTables } from '../src/words/desk.ts'
import { handOverTables } from '../src/words/hand-over.ts'
import { photoTables } from '../src/words/photos.ts'
import { type Language, languages, tables } from '../src/words.ts'

/** Every text of a table by its path. */
const texts = (table: object, at = ''): readonly (readonly [string, string])[] =>
  Object.entries(table).flatMap(([key, value]) =>
    typeof value === 'string' ? [[`${at}${key}`, value]] : texts(value, `${at}${key}.`),
  )
const holes = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([hole]) => hole).sort()
const of = (language: Language) =>
  new Map([
    ...texts(tables[language]),
    ...texts(deskTables[language], 'desk.'),
    ...texts(photoTables[language], 'photos.'),
    ...texts(handOverTables[language], 'hand-over.'),
  ])

test.each(languages)('%s says everything with the same values', (language) => {
  const own = of(language)
  expect([...own.keys()].sort()).toEqual([...of('en').keys()].sort())
  const other = [...of('en')].filter(([key, text]) => String(holes(text)) !== String(holes(own.get(key) ?? '')))
  expect(other.map(([key]) => key)).toEqual([])
})

test('no text was left in English, but one that has no words', () => {
  const same = [...of('en')].filter(([key, text]) => text !== '' && of('es').get(key) === text)
  expect(same.map(([key]) => key)).toEqual(['windowPicture'])
})

test('every choice that can be made at a window has a Spanish name of its own', () => {
  const choices = forms.flatMap(([place, takes, of]) =>
    takes === 'choice' && place.startsWith('/rooms/') ? (of as readonly string[]) : [],
  )
  expect([...new Set(choices)].filter((choice) => !(choice in spanish))).toEqual([])
})
