import { type Extensions, withIds } from './extensions.ts'
import { catalogueSchema, jobSchema, lengthSchema } from './schemas.generated.ts'
import type { JsonSchema } from './schemas.ts'

interface Named {
  readonly name: string
  readonly schema: JsonSchema
}
type Change = (schema: JsonSchema) => JsonSchema
const pointerTo = (name: string): JsonSchema => ({ $ref: `#/$defs/${name}` })

/** A schema in which every schema inside, from the innermost out, was changed. */
function changed(schema: unknown, change: Change): unknown {
  if (Array.isArray(schema)) return schema.map((item) => changed(item, change))
  if (schema === null || typeof schema !== 'object') return schema
  return change(Object.fromEntries(Object.entries(schema).map(([key, value]) => [key, changed(value, change)])))
}

/** Leads the references of a document to where its schemas lie in the one document. */
const moved = (document: unknown, names: ReadonlyMap<string, string>): Change => {
  const { $id } = document as { readonly $id: string }
  return (schema) => {
    const { $ref } = schema
    if (typeof $ref !== 'string') return schema
    const { href, hash } = new URL($ref, $id)
    const name = names.get(href.slice(0, href.length - hash.length))
    return name === undefined ? schema : { ...schema, $ref: (name === '' ? '#' : `#/$defs/${name}`) + hash.slice(1) }
  }
}

const withoutNames = ({ $id: _, $schema: __, ...schema }: JsonSchema): JsonSchema => schema

/** Says at an entry of hardware what its kind asks for, and under `with` what each plugin's part is. */
const extended = ({ kinds, additions }: Extensions): Change => {
  const choices = Object.keys(kinds).map((kind) => ({
    // What is taken from a catalogue says nothing of its own.
    if: {
      properties: { kind: { const: kind } },
      required: ['kind'],
      not: {
        properties: { catalogue: { type: 'object', required: ['from'] } },
        required: ['catalogue'],
        propertyNames: { enum: ['id', 'kind', 'name', 'catalogue'] },
      },
    },
    // biome-ignore lint/suspicious/noThenProperty: `then` is a keyword of JSON Schema
    then: pointerTo(`kind-${kind}`),
  }))
  const partsAt = (level: string): JsonSchema => {
    const ofKinds = Object.entries(kinds).flatMap(([kind, { plugin, part }]) =>
      part && level === 'treatment' ? [[plugin, pointerTo(`part-${kind}`)] as const] : [],
    )
    const added = additions.flatMap(({ plugin, to }) => (to === level ? [[plugin, pointerTo(`${plugin}-${to}`)] as const] : []))
    const all = [...ofKinds, ...added]
    const of = (plugin: string) => all.flatMap(([name, part]) => (name === plugin ? [part] : []))
    return Object.fromEntries(all.map(([plugin]) => [plugin, of(plugin).length === 1 ? of(plugin)[0] : { anyOf: of(plugin) }]))
  }
  return (schema) => {
    if (schema['x-evenhem-kind'] === true && choices.length > 0) return { ...schema, allOf: choices }
    const level = schema['x-evenhem-with']
    return typeof level === 'string' ? { ...schema, properties: partsAt(level) } : schema
  }
}

/**
 * One schema for editors, without references to other files: the format, by `if` and `then` what each kind of hardware asks for, and by the
 * plugin's name what stands under `with`. A plugin whose kinds have different parts takes any of them here; the reader knows which.
 */
export const schemaOf = (options: Extensions): JsonSchema => composed(jobSchema, [], options)
/** The same for catalogue files, whose entries are those of a job. */
export const catalogueSchemaOf = (options: Extensions): JsonSchema =>
  composed(catalogueSchema, [{ name: 'job', schema: jobSchema }], options)

function composed(top: JsonSchema, more: readonly Named[], options: Extensions): JsonSchema {
  const extensions = withIds(options)
  const ofKinds = Object.entries(extensions.kinds).flatMap(([kind, { schema, part }]): Named[] => [
    { name: `kind-${kind}`, schema },
    ...(part ? [{ name: `part-${kind}`, schema: part }] : []),
  ])
  const ofAdditions = extensions.additions.map(({ plugin, to, schema }): Named => ({ name: `${plugin}-${to}`, schema }))
  const all: readonly Named[] = [...more, { name: 'length', schema: lengthSchema }, ...ofKinds, ...ofAdditions]
  const names = new Map([{ name: '', schema: top }, ...all].map(({ name, schema }) => [String(schema.$id), name]))
  const inside = (schema: JsonSchema): JsonSchema => changed(schema, moved(schema, names)) as JsonSchema
  const extending = extended(extensions)
  const definitions = all.map(
    ({ name, schema }) =>
      [name, withoutNames((schema === jobSchema ? changed(inside(schema), extending) : inside(schema)) as JsonSchema)] as const,
  )
  const { $defs, ...whole } = withoutNames(changed(inside(top), extending) as JsonSchema)
  return { $schema: top.$schema, ...whole, $defs: { ...($defs as JsonSchema), ...Object.fromEntries(definitions) } }
}
