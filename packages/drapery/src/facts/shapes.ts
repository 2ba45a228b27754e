import type { Fact, JsonSchema } from '@evenhem/plugin'

type Of = 'job' | 'window' | 'treatment'

/** A fact that one rule gives for a subject. */
export const one = <T, L extends Of>(id: `drapery/${string}@1`, of: L, schema: JsonSchema) =>
  ({ id, of, many: false, schema }) as const as Fact<T, L> & { readonly many: false }

/** A fact that several rules add to. */
export const list = <T, L extends Of>(id: `drapery/${string}@1`, of: L, schema: JsonSchema) =>
  ({ id, of, many: true, schema }) as const as Fact<T, L> & { readonly many: true }

// Schemas of what facts are made of.
export const length = { type: 'integer' }
export const text = { type: 'string' }
export const count = { type: 'integer', minimum: 0 }
export const side = { enum: ['left', 'right'] }
export const reckoning = {
  type: 'object',
  required: ['name', 'what', 'value', 'unit', 'how', 'terms'],
  properties: { name: text, value: { type: 'number' }, terms: { type: 'array' } },
}
export const known = { type: 'object', required: ['value'], properties: { value: length } }
export const object = (properties: Readonly<Record<string, JsonSchema>>, required = Object.keys(properties)): JsonSchema => ({
  type: 'object',
  properties,
  required,
  additionalProperties: false,
})
export const array = (items: JsonSchema): JsonSchema => ({ type: 'array', items })

/** A hook of a panel, counted from the leading edge. */
export const hook = object({ n: count, on: { enum: ['leading-edge', 'pleat', 'outer-edge'] }, pleat: count, across: length }, [
  'n',
  'on',
  'across',
])
