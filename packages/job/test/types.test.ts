import { expect, test } from 'vitest'
import { declarations, lists, schemaFile } from '../../../tests/tools/types.ts'

const length = { $ref: 'https://evenhem.example/job/1/length.schema.json' }

test('a length is a Length, whatever else its place says of it', () => {
  const schema = {
    type: 'object',
    required: ['pin'],
    properties: { pin: { ...length, description: 'The pin.', 'x-evenhem-plausible': {} } },
  }
  expect(declarations(schema, 'Part')).toBe(
    "import type { Length } from '@evenhem/length'\n\nexport interface Part {\n  /** The pin. */\n  readonly pin: Length\n}\n",
  )
})

test('a kind of hardware has the members of every hardware, its own instead where it says more', () => {
  const schema = {
    $ref: 'https://evenhem.example/job/1/job.schema.json#/$defs/hardware',
    properties: { kind: { const: 'pulley' }, turns: { type: 'integer' } },
  }
  const text = declarations(schema, 'Pulley')
  expect(text).toContain("readonly kind: 'pulley'\n")
  expect(text).toContain('readonly id: Id\n')
  expect(text).toContain('readonly turns?: number\n')
})

test('lists, maps, choices and what may be either are written as such, and nothing of it can be changed', () => {
  const item = { title: 'Hole', type: 'object', properties: { at: { type: ['string', 'number'] } } }
  const schema = {
    type: 'object',
    properties: {
      holes: { type: 'array', items: item },
      tags: { type: 'array', items: { enum: ['a', 1] } },
      found: { type: 'object', additionalProperties: length },
      rest: {},
    },
  }
  const text = declarations(schema, 'Part')
  for (const line of [
    'holes?: readonly Hole[]',
    "tags?: readonly ('a' | 1)[]",
    'found?: { readonly [name: string]: Length }',
    'rest?: unknown',
    'at?: string | number',
  ])
    expect(text).toContain(`readonly ${line}\n`)
})

test('two schemas of one name, an unknown keyword and a reference to nowhere are refused', () => {
  const named = (type: string) => ({ title: 'Same', type: 'object', properties: { x: { type } } })
  expect(() => declarations({ properties: { a: named('string'), b: named('number') } }, 'Part')).toThrow(/called Same/)
  expect(() => declarations({ properties: { a: { oneOf: [] } as object } }, 'Part')).toThrow(/keyword oneOf/)
  expect(() => declarations({ properties: { a: { $ref: '#/$defs/gone' } } }, 'Part')).toThrow(/leads nowhere/)
})

test('the lists of the format are named as patterns of places', () => {
  expect(lists(schemaFile('job.schema.json'))).toContain('/rooms/*/windows/*/treatments/*/panels')
})
