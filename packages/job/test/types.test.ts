import { expect, test } from 'vitest'
import { declarations, lists, schemaFile } from '../../../tests/tools/types.ts'

const length = { $ref: 'https://evenhem.example/job/1/length.schema.json' }

test('a length is a Length, whatever else its place says of it', async () => {
  const schema = {
    type: 'object',
    required: ['pin'],
    properties: { pin: { ...length, description: 'The pin.', 'x-evenhem-plausible': {} } },
  }
  expect(await declarations(schema, 'Part')).toBe(
    "import type { Length } from '@evenhem/length'\n\nexport interface Part {\n  /** The pin. */\n  readonly pin: Length\n}\n",
  )
})

test('a kind of hardware has the members of every hardware, its own instead where it says more', async () => {
  const schema = {
    $ref: 'https://evenhem.example/job/1/job.schema.json#/$defs/hardware',
    properties: { kind: { const: 'pulley' }, turns: { type: 'integer' } },
  }
  const text = await declarations(schema, 'Pulley')
  expect(text).toContain("readonly kind: 'pulley'\n")
  expect(text).toContain('readonly id: Id\n')
  expect(text).toContain('readonly turns?: number\n')
})

test('lists, maps, choices and what may be either are written as such, and nothing of it can be changed', async () => {
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
  const text = await declarations(schema, 'Part')
  for (const line of [
    'holes?: readonly Hole[]',
    "tags?: readonly ('a' | 1)[]",
    '[k: string]: Length',
    'rest?: unknown',
    'at?: string | number',
  ])
    expect(text).toContain(`readonly ${line}\n`)
})

test('two schemas of one name, an unknown keyword and a reference to nowhere are refused', async () => {
  const named = (type: string) => ({ title: 'Same', type: 'object', properties: { x: { type } } })
  await expect(declarations({ properties: { a: named('string'), b: named('number') } }, 'Part')).rejects.toThrow(/called Same/)
  await expect(declarations({ properties: { a: { oneOf: [] } as object } }, 'Part')).rejects.toThrow(/keyword oneOf/)
  await expect(declarations({ properties: { a: { $ref: '#/$defs/gone' } } }, 'Part')).rejects.toThrow(/leads nowhere/)
})

test('a list whose items have no name cannot be made readonly and is refused', async () => {
  const items = { type: 'object', properties: { x: { type: 'number' } } }
  const schema = { properties: { points: { type: 'array', items } } }
  await expect(declarations(schema, 'Part')).rejects.toThrow(/give its items a title/)
})

test('a description beside a reference is the one of its place, and the type is written once', async () => {
  const end = { type: 'object', title: 'End', description: 'An end.', properties: {}, unevaluatedProperties: false }
  const place = (description: string) => ({ $ref: '#/$defs/end', description })
  const text = await declarations({ properties: { a: place('The left.'), b: place('The right.') }, $defs: { end } }, 'Part')
  expect(text).toContain('  /** The left. */\n  readonly a?: End\n  /** The right. */\n  readonly b?: End\n')
  expect(text.match(/interface End/g)).toHaveLength(1)
})

test('the lists of the format are named as patterns of places', () => {
  expect(lists(schemaFile('job.schema.json'))).toContain('/rooms/*/windows/*/treatments/*/panels')
})
