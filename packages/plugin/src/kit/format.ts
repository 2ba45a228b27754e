import type { JsonSchema, Plugin } from '../contract.ts'

const hardware = 'https://evenhem.example/job/1/job.schema.json#/$defs/hardware'
const words = /^[a-z][a-z0-9-]*$/
const code = /^[a-z][a-z0-9-]*\/[a-z0-9.-]+$/

/** Names that a job file, a place or a sentence could not hold, and rules on hardware that the plugin does not bring. */
export function wrongNames(plugin: Plugin): readonly string[] {
  const names = [
    ['id', plugin.id],
    ...plugin.kinds.map(({ kind }) => ['kind', kind]),
    ...plugin.rules.map(({ id }) => ['id of a rule', id]),
  ]
  const codes = plugin.rules.flatMap((rule) => (rule.codes ?? []).map((each) => [rule.id, each] as const))
  const strange = plugin.rules.flatMap(({ id, on }) =>
    typeof on !== 'string' && 'kind' in on && !plugin.kinds.some(({ kind }) => kind === on.kind) ? [[id, on.kind] as const] : [],
  )
  return [
    ...names
      .filter(([, name]) => !words.test(name ?? ''))
      .map(([what, name]) => `Unexpected ${what} "${name}", expected small letters, digits and hyphens; rename it`),
    ...codes
      .filter(([, each]) => !code.test(each))
      .map(([id, each]) => `Unexpected code "${each}" of ${id}, expected one like "${plugin.id}/long-enough"; rename it`),
    ...strange.map(([id, kind]) => `${id} is on the kind "${kind}", which the plugin does not list; add it to \`kinds\``),
  ]
}

/** A number of the format that no job can name, and upgrades that are not one for each number up to it. */
export function wrongFormat({ format, upgrades }: Plugin): readonly string[] {
  if (!Number.isInteger(format) || format < 1)
    return [`Unexpected format ${format}, expected a whole number from 1 up; begin with 1`]
  const steps = Array.from({ length: format - 1 }, (_, at) => at + 2)
  const lacking = steps.filter((to) => !upgrades.some((upgrade) => upgrade.to === to))
  const beyond = upgrades.filter(({ to }) => !steps.includes(to))
  return [
    ...lacking.map(
      (to) => `Unexpected format ${format} without an upgrade to ${to}; add { to: ${to}, because, up } to \`upgrades\``,
    ),
    ...beyond.map(
      ({ to }) => `Unexpected upgrade to ${to}, expected 2 to ${format} as \`format\` says; raise it or leave the upgrade out`,
    ),
  ]
}

/** What is wrong with the schemas of kinds, parts and additions: open ones, members that do not say what they are for, references to nothing. */
export const wrongSchemas = ({ kinds, additions }: Plugin): readonly string[] => [
  ...kinds.flatMap(({ kind, schema, part }) => [
    ...(schema.$ref === hardware ? [] : [`The schema of the kind "${kind}" does not begin with "$ref": "${hardware}"; add it`]),
    ...wrongIn(schema, `The schema of the kind "${kind}"`),
    ...(part ? wrongIn(part, `The schema of the part of the kind "${kind}"`) : []),
  ]),
  ...additions.flatMap(({ to, schema }) => wrongIn(schema, `The schema of the addition to ${to}`)),
]

function wrongIn(schema: JsonSchema, name: string): readonly string[] {
  const isClosed = [schema.unevaluatedProperties, schema.additionalProperties].some((each) => each === false || isSchema(each))
  const members = Object.entries(isSchema(schema.properties) ? schema.properties : {})
  const defs = Object.entries(isSchema(schema.$defs) ? schema.$defs : {})
  return [
    ...(isClosed || !('properties' in schema || schema.type === 'object')
      ? []
      : [`${name} is open; close it with "unevaluatedProperties": false, so that a slip of the pen is told`]),
    ...members
      .filter(([, member]) => !isSchema(member) || typeof member.description !== 'string')
      .map(([member]) => `${name} does not say what "${member}" is for; give it a description`),
    ...members.flatMap(([member, inner]) => (isSchema(inner) ? wrongIn(inner, `${name} at "${member}"`) : [])),
    ...defs.flatMap(([def, inner]) => (isSchema(inner) ? wrongIn(inner, `${name} at "$defs/${def}"`) : [])),
    ...(isSchema(schema.items) ? wrongIn(schema.items, `${name} at "items"`) : []),
    ...wrongReference(schema.$ref, name),
  ]
}
function wrongReference(reference: unknown, name: string): readonly string[] {
  const isKnown =
    reference === undefined || /^(#|https:\/\/evenhem\.example\/job\/1\/(length|job)\.schema\.json(#|$))/.test(String(reference))
  return isKnown
    ? []
    : [
        `${name} refers to ${reference}, which nobody here holds; refer to job.schema.json, length.schema.json or its own "#/$defs/…"`,
      ]
}
const isSchema = (value: unknown): value is JsonSchema => typeof value === 'object' && value !== null && !Array.isArray(value)
