import { lengthWords, spanishLengthWords } from '@evenhem/length'
import { expect, test } from 'vitest'
import { jobWords, saySpanish, spanishJobWords } from '../src/read.ts'

type Table = Readonly<Record<string, { readonly says: string; readonly help?: string }>>
const english: Table = { ...lengthWords, ...jobWords }
const spanish: Table = { ...spanishLengthWords, ...spanishJobWords }
const gaps = (text = ''): readonly string[] => [...text.matchAll(/\{(\w+)\}/g)].map(([gap]) => gap).sort()

test('Spanish says what English says, and fills the same gaps', () => {
  expect(Object.keys(spanish)).toEqual(Object.keys(english))
  const shape = ({ says, help }: Table[string]) => [gaps(says), help === undefined ? 'no help' : gaps(help)]
  for (const [code, said] of Object.entries(spanish)) expect([code, shape(said)]).toEqual([code, shape(english[code] ?? said)])
})

test('every Spanish sentence says what is unexpected, what is expected, and what to do', () => {
  const form = /[Ii]nesperad[oa]s?\b.*, (no )?se esperaban?\b.+[;,] .+[.?…:}]$/
  expect(Object.entries(spanish).filter(([, { says }]) => !form.test(says))).toEqual([])
})

test('a refusal is said in Spanish with its values', () => {
  expect(saySpanish('length/improper-fraction', { got: '3/2', meant: '87 1/2' }).says).toBe(
    '3/2 inesperado, se esperaba una fracción menor que uno; escriba 87 1/2 si eso es lo que quiso decir.',
  )
})
