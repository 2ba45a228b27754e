import { IntlMessageFormat } from 'intl-messageformat'
import { expect, test } from 'vitest'
import { argumentsOf } from '../src/index.ts'

const uses = (text: string) =>
  Object.fromEntries([...argumentsOf(new IntlMessageFormat(text, 'en').getAst())].map(([name, use]) => [name, [...use]]))

test('arguments are found wherever they stand, with how they are used', () => {
  expect(uses('{a} is {b, number, percent} of {c, plural, one {# {d}} other {{a}}}{e, select, x {{f}} other {}}')).toEqual({
    a: ['text'],
    b: ['number'],
    c: ['number'],
    d: ['text'],
    e: ['choice'],
    f: ['text'],
  })
})

test('an argument may be used in two ways', () => {
  expect(uses('{n}: {n, plural, other {#}}')).toEqual({ n: ['text', 'number'] })
})
