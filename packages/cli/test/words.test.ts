import { argumentsOf } from '@evenhem/plugin'
import { IntlMessageFormat } from 'intl-messageformat'
import { expect, test } from 'vitest'
import { languageIn, tables, voiceIn } from '../src/voice.ts'
import { type CliCode, english } from '../src/words.ts'
import { example, line } from './line.ts'

const codes = Object.keys(english) as CliCode[]
/** The names in a sentence's gaps. */
const gaps = (text: string): readonly string[] =>
  [...argumentsOf(new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true }).getAst()).keys()].sort()

test('every sentence has the same code and the same values in both languages', () => {
  expect(Object.keys(tables.es).sort()).toEqual([...codes].sort())
  const unlike = codes.filter((code) => gaps(tables.en[code]).join() !== gaps(tables.es[code]).join())
  expect(unlike).toEqual([])
})

test('every sentence is said, none is left as its code', () => {
  for (const language of ['en', 'es'] as const) {
    const voice = voiceIn(language)
    const values = (text: string) => Object.fromEntries(gaps(text).map((name) => [name, name === 'count' ? 2 : 'x']))
    expect(codes.filter((code) => voice(code, values(tables[language][code])).startsWith('['))).toEqual([])
  }
})

test('only a sentence that is all values is the same in both languages', () => {
  const alike = codes.filter((code) => tables.en[code] === tables.es[code])
  expect(alike.sort()).toEqual(['not-a-length'])
})

test('the language is read wherever it stands', async () => {
  expect([languageIn(['plan', '--lang', 'es']), languageIn(['--lang=es']), languageIn(['plan'])]).toEqual(['es', 'es', 'en'])
  expect((await line('--lang', 'es', 'check', example('tern-hollow'))).out).toContain(': bien, ')
})

test('trouble and help are said in Spanish too', async () => {
  expect((await line('plam', '--lang', 'es')).err).toContain('Orden inesperada plam')
  expect((await line('plan', '--lang', 'es', '--help')).out).toContain('evenhem plan <trabajo>')
  expect((await line('check', '/nowhere', '--lang', 'es')).err).toContain('allí no hay nada')
})
