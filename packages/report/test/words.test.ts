import { tapes } from '@evenhem/length'
import { argumentsOf, type Values } from '@evenhem/plugin'
import { IntlMessageFormat } from 'intl-messageformat'
import { expect, test } from 'vitest'
import { createVoice, words } from '../src/index.ts'

/** The names that a message uses, and how it uses them. */
const uses = (text: string, language: string) =>
  [...argumentsOf(new IntlMessageFormat(text, language, undefined, { ignoreTag: true }).getAst())]
    .map(([name, how]) => `${name}: ${[...how].sort().join(' ')}`)
    .sort()

test('Spanish says every code with the same values as English', () => {
  const differ = Object.entries(words.en).filter(
    ([code, { says }]) => JSON.stringify(uses(says, 'en')) !== JSON.stringify(uses(words.es[code]?.says ?? '', 'es')),
  )
  expect(differ).toEqual([])
  expect(Object.keys(words.es)).toEqual(Object.keys(words.en))
})

test('no Spanish sentence was left in English', () => {
  const same = Object.keys(words.en).filter((code) => words.en[code]?.says === words.es[code]?.says)
  expect(same).toEqual(['report/title', 'report/window', 'report/mark'])
})

test('a day in a sentence is written as its reader writes it, and a name that holds one stays', () => {
  const says = (language: string, values: Values) => createVoice([], language, tapes.sixteenths).said('report/days', values)
  const values = { first: '2026-12-08', last: 'lot 2026-12-09' }
  expect(says('en', values).join('')).toContain('December 8, 2026')
  expect(says('en', values).join('')).toContain('lot 2026-12-09')
  expect(says('es', values).join('')).toContain('8 de diciembre de 2026')
})
