import { type JsonSchema, stages } from './contract.ts'

// Schemas of what the host collects. The kit checks every value against them; the types in contract.ts say the same to the compiler.
const text = { type: 'string', minLength: 1 }
const place = { type: 'string', pattern: '^(/|$)' }
const code = { type: 'string', pattern: '^[a-z][a-z0-9-]*/[a-z0-9.-]+$' }
const length = { type: 'integer' }
const number = { type: 'number' }
const list = (items: JsonSchema): JsonSchema => ({ type: 'array', items })
const object = (
  required: Readonly<Record<string, JsonSchema>>,
  optional: Readonly<Record<string, JsonSchema>> = {},
): JsonSchema => ({
  type: 'object',
  required: Object.keys(required),
  properties: { ...required, ...optional },
  additionalProperties: false,
})

const quantity: JsonSchema = {
  type: 'object',
  minProperties: 1,
  maxProperties: 1,
  properties: { length, count: { type: 'integer' }, mass: number, force: number, angle: number, ratio: number, code },
  additionalProperties: false,
}
const values: JsonSchema = { type: 'object', additionalProperties: { if: { type: 'string' }, else: quantity } }
const stage = { enum: stages }

const wayOut = object({
  code,
  values,
  put: list(object({ at: place, value: { if: { type: ['string', 'boolean'] }, else: quantity } })),
})
export const checkShape = object(
  { code, verdict: { enum: ['pass', 'warn', 'fail', 'unknown'] }, at: place, values },
  {
    says: code,
    about: text,
    stops: stage,
    isFirm: { const: true },
    put: list(object({ at: place, value: quantity })),
    ways: list(wayOut),
  },
)
const capture = object(
  { at: place, as: { enum: ['length', 'count', 'tick', 'choice', 'photo', 'note'] } },
  { expected: quantity, tolerance: quantity, choices: list(text) },
)
export const stepShape = object(
  { id: { type: 'string', pattern: '^[a-z0-9][a-z0-9-]*$' }, stage, code },
  {
    after: list(text),
    values,
    numbers: list(object({ what: code, value: length, of: text })),
    cautions: list(code),
    tools: list(code),
    captures: list(capture),
  },
)
export const partShape = object(
  { what: code, count: { type: 'integer', minimum: 0 } },
  { length, hardware: place, of: text, spares: { type: 'integer', minimum: 0 } },
)
export const layerShape = object(
  {
    view: { enum: ['elevation', 'plan', 'marks', 'hooks', 'level', 'hem', 'pins', 'loads'] },
    depth: number,
    marks: list({ type: 'object', required: ['kind'] }),
  },
  { state: { enum: ['drawn', 'stacked'] }, stretch: number, bends: list(object({ x: number, degrees: number })) },
)
const term = object({ what: code, sign: { enum: [1, -1] }, value: number, from: text })
export const reckoningShape = object(
  {
    name: { type: 'string', pattern: '#' },
    what: code,
    value: number,
    unit: { enum: ['length', 'count', 'ratio', 'mass', 'force', 'angle'] },
    how: { enum: ['given', 'sum', 'times', 'divided', 'least', 'most', 'formula'] },
    terms: list(term),
  },
  { source: text },
)
export const entryShape = object({
  section: { enum: ['lead', 'what-hangs-here', 'set-on-the-day', 'care', 'safe-use'] },
  code,
  values,
})
