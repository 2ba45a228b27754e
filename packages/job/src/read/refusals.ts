import type { ErrorObject } from 'ajv'
import { error, type Finding, type Spot, short, type Values } from './finding.ts'
import { nearest } from './near.ts'
import { below } from './pointers.ts'

/** What the format knows of a value: what its place is for, and the members of an object with what they are for. */
export interface Known {
  readonly description: string
  readonly members: ReadonlyMap<string, string>
}

type Refusal = (error: ErrorObject, known: () => Known) => Finding | undefined

/** A value as a sentence shows it. */
export function shown(value: unknown): string {
  if (value !== null && typeof value === 'object') return Array.isArray(value) ? '[…]' : '{…}'
  return short(JSON.stringify(value) ?? '')
}

const here = ({ instancePath }: ErrorObject): Spot => ({ value: instancePath })
const simple =
  (code: string, values: (error: ErrorObject) => Values): Refusal =>
  (refused) =>
    error(code, here(refused), values(refused))

function unknownMember(refused: ErrorObject, name: string, known: () => Known): Finding {
  const members = [...known().members.keys()]
  const near = nearest(name, members)
  const spot = { name: below(refused.instancePath, name) }
  const list = members.slice(0, 16).join(', ') + (members.length > 16 ? ', …' : '')
  if (near) return error('job/unknown-member-near', spot, { name: short(name), near, members: list })
  return error(list === '' ? 'job/no-members' : 'job/unknown-member', spot, { name: short(name), members: list })
}

function choice(refused: ErrorObject, allowed: readonly unknown[]): Finding {
  const values = { got: shown(refused.data), allowed: allowed.map(shown).join(', ') }
  const near =
    typeof refused.data === 'string'
      ? nearest(
          refused.data,
          allowed.filter((one) => typeof one === 'string'),
        )
      : undefined
  return near
    ? error('job/choice-near', here(refused), { ...values, near: shown(near) })
    : error('job/choice', here(refused), values)
}

const idForm = '^[a-z0-9][a-z0-9-]{0,39}$'
const asId = (text: string): string =>
  text
    .normalize('NFD')
    .toLowerCase()
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replaceAll(/^-+|-+$/g, '')

function pattern(refused: ErrorObject, known: () => Known): Finding {
  const got = shown(refused.data)
  const meant = asId(String(refused.data))
  if (refused.params.pattern !== idForm)
    return error('job/pattern', here(refused), { got, pattern: String(refused.params.pattern), what: known().description })
  return meant === ''
    ? error('job/id', here(refused), { got })
    : error('job/id-near', here(refused), { got, meant: shown(meant) })
}

// What is expected has a sentence of its own, with the usual slip: quotes around a number, none around text.
const typeCodes: Readonly<Record<string, string>> = {
  string: 'job/type-text',
  number: 'job/type-number',
  integer: 'job/type-whole-number',
  boolean: 'job/type-truth',
  object: 'job/type-object',
  array: 'job/type-list',
  'string number': 'job/type-length',
}

function missing(refused: ErrorObject, name: string, known: () => Known): Finding {
  const what = known().members.get(name)
  return error(what ? 'job/missing' : 'job/missing-plain', here(refused), { name, what: what ?? '' })
}

const number = (code: string): Refusal => simple(code, ({ data, params }) => ({ got: shown(data), limit: Number(params.limit) }))
const size = (code: string): Refusal =>
  simple(code, ({ data, params }) => ({ got: Array.isArray(data) ? data.length : shown(data), limit: Number(params.limit) }))

// What a keyword of JSON Schema refuses, said for people. Keywords that only pass on what others said are left out.
const refusals: Readonly<Record<string, Refusal>> = {
  type: (refused) =>
    error(typeCodes[[refused.params.type].flat().join(' ')] ?? 'job/type', here(refused), {
      got: shown(refused.data),
      expected: String(refused.params.type),
      meant: JSON.stringify(shown(refused.data)),
    }),
  required: (refused, known) => missing(refused, String(refused.params.missingProperty), known),
  unevaluatedProperties: (refused, known) => unknownMember(refused, String(refused.params.unevaluatedProperty), known),
  additionalProperties: (refused, known) => unknownMember(refused, String(refused.params.additionalProperty), known),
  enum: (refused) => choice(refused, refused.params.allowedValues),
  const: (refused) => choice(refused, [refused.params.allowedValue]),
  pattern,
  format: (refused) => error(`job/${refused.params.format}`, here(refused), { got: shown(refused.data) }),
  minLength: (refused) =>
    refused.data === '' ? error('job/empty-text', here(refused)) : size('job/text-too-short')(refused, noMembers),
  maxLength: size('job/text-too-long'),
  minimum: number('job/too-small'),
  exclusiveMinimum: number('job/too-small-or-equal'),
  maximum: number('job/too-large'),
  exclusiveMaximum: number('job/too-large-or-equal'),
  multipleOf: simple('job/step', ({ data, params }) => ({ got: shown(data), step: Number(params.multipleOf) })),
  minItems: size('job/too-few'),
  maxItems: size('job/too-many'),
  if: () => undefined,
}
const noMembers = (): Known => ({ members: new Map(), description: '' })
const other = simple('job/refused', ({ data, keyword, message }) => ({ got: shown(data), keyword, message: message ?? '' }))

/** What is said about what a validator refused. `known` is asked for the value at the error's own place. */
export function refusal(refused: ErrorObject, known: () => Known): Finding | undefined {
  return (Object.hasOwn(refusals, refused.keyword) ? (refusals[refused.keyword] as Refusal) : other)(refused, known)
}
