import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parse } from '../src/read/parse.ts'
import { tokensOf } from '../src/read/pointers.ts'
import { child, type Node } from '../src/read/tree.ts'
import { editAt } from '../src/read.ts'

const spread = '{\r\n\t"a" : 1.50,\r\n\t"list": [ { "id": "x" },\t{"id":"y"} ],\r\n\t"empty": {}\r\n}\r\n'

test('a value is replaced and every other byte stays', () => {
  expect(editAt(spread, '/a', 2)).toBe(spread.replace('1.50', '2'))
  expect(editAt(spread, '/list/1/id', 'z')).toBe(spread.replace('"y"', '"z"'))
})

test('a member is put in after the last one, in the layout of the file', () => {
  expect(editAt(spread, '/b', { c: [1] })).toBe(
    spread.replace('"empty": {}', '"empty": {},\r\n\t"b" : {\r\n\t\t"c": [\r\n\t\t\t1\r\n\t\t]\r\n\t}'),
  )
  expect(editAt(spread, '/list/0/n', 1)).toBe(spread.replace('{ "id": "x" }', '{ "id": "x", "n" : 1 }'))
  expect(editAt(spread, '/empty/b', 1)).toBe(spread.replace('{}', '{\r\n\t\t"b" : 1\r\n\t}'))
  expect(editAt('{"a":1}', '/b/c', [1, { d: 2 }])).toBe('{"a":1,"b":{"c":[1,{"d":2}]}}')
})

test('an item is put at the end of a list by its number or by a hyphen', () => {
  expect(editAt(spread, '/list/2', { id: 'z' })).toBe(spread.replace('{"id":"y"}', '{"id":"y"}, { "id": "z" }'))
  expect(editAt('[1]', '/-', 2)).toBe('[1, 2]')
  expect(editAt('[1]', '/5', 2)).toBeUndefined()
})

test('what is taken out takes its comma with it', () => {
  expect(editAt(spread, '/a', undefined)).toBe(spread.replace('"a" : 1.50,\r\n\t', ''))
  expect(editAt(spread, '/empty', undefined)).toBe(spread.replace(',\r\n\t"empty": {}', ''))
  expect(editAt(spread, '/list/0', undefined)).toBe(spread.replace('{ "id": "x" },\t', ''))
  expect(editAt('{ "a": 1 }', '/a', undefined)).toBe('{}')
  expect(editAt(spread, '/nowhere/at/all', undefined)).toBe(spread)
})

test('a byte order mark stays', () => {
  expect(editAt('\uFEFF{"a": 1}', '/a', 2)).toBe('\uFEFF{"a": 2}')
})

test('what can’t be edited surely is not edited', () => {
  expect(editAt('{"a": 1, }', '/a', 2)).toBeUndefined()
  expect(editAt('{"a": 1, "a": 2}', '/a', 3)).toBeUndefined()
  expect(editAt('{"a": 1}', '/a/b', 3)).toBeUndefined()
  expect(editAt('{"a": 1}', 'a', 3)).toBeUndefined()
  expect(editAt('{"a": 1}', '', undefined)).toBeUndefined()
})

type Json = unknown
const json = fc.jsonValue({ maxDepth: 4 }).map((value): Json => JSON.parse(JSON.stringify(value)))
const layouts = fc.constantFrom<(value: Json) => string>(
  (value) => JSON.stringify(value),
  (value) => JSON.stringify(value, null, 2),
  (value) => JSON.stringify(value, null, '\t').replaceAll('\n', '\r\n'),
  (value) => ` ${JSON.stringify(value, null, 1).replaceAll(/\n */g, ' ')} \n`,
)
/** A pointer to something that stands in a value. */
const pointers = (value: Json, at = ''): readonly string[] =>
  value !== null && typeof value === 'object'
    ? [
        at,
        ...Object.entries(value).flatMap(([name, one]) =>
          pointers(one, `${at}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`),
        ),
      ]
    : [at]

test('setting any value anywhere changes that value, and only its bytes', () =>
  fc.assert(
    fc.property(json, layouts, fc.nat(), json, (value, layout, n, put) => {
      const text = layout(value)
      const all = pointers(value)
      const pointer = all[n % all.length] ?? ''
      const edited = editAt(text, pointer, put) ?? ''
      const back = editAt(edited, pointer, undefined)
      expect(JSON.parse(edited)).toEqual(set(value, pointer, put))
      expect(pointer === '' ? back : JSON.parse(back ?? '')).toEqual(pointer === '' ? undefined : set(value, pointer, undefined))
      const { start, end } = nodeAt(text, pointer)
      expect([edited.startsWith(text.slice(0, start)), edited.endsWith(text.slice(end))]).toEqual([true, true])
    }),
  ))

test('a new member of any name is put in, and taken out again leaves the file as it was', () =>
  fc.assert(
    fc.property(fc.dictionary(fc.string(), json, { minKeys: 1 }), layouts, fc.string(), json, (value, layout, name, put) => {
      fc.pre(!Object.hasOwn(value, name))
      const text = layout(value)
      const pointer = `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`
      const edited = editAt(text, pointer, put) ?? ''
      expect(JSON.parse(edited)[name]).toEqual(put)
      expect(editAt(edited, pointer, undefined)).toBe(text)
    }),
  ))

/** Where a value stands in a text. */
const nodeAt = (text: string, pointer: string): Node =>
  tokensOf(pointer).reduce((node, token) => child(node, token)?.node ?? node, parse(text).root)

/** The value with something else at a pointer, worked out without any text. */
function set(value: Json, pointer: string, put: Json): Json {
  const [token, ...rest] = pointer
    .split('/')
    .slice(1)
    .map((one) => one.replaceAll('~1', '/').replaceAll('~0', '~'))
  if (token === undefined) return put
  const tail = rest.map((one) => `/${one.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
  const inside = rest.length > 0 || put !== undefined
  if (Array.isArray(value))
    return value.flatMap((item, index) => (String(index) !== token ? [item] : inside ? [set(item, tail, put)] : []))
  return Object.fromEntries(
    Object.entries(value as object).flatMap(([name, one]) =>
      name !== token ? [[name, one]] : inside ? [[name, set(one, tail, put)]] : [],
    ),
  )
}
