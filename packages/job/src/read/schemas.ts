import { type Extensions, kindOf, partOf } from './extensions.ts'
import { below as inPath, tokensOf } from './pointers.ts'
import { catalogueSchema, jobSchema, lengthSchema } from './schemas.generated.ts'
import { idOf, isObject, own } from './values.ts'

/** A JSON Schema, draft 2020-12, as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>
/** A schema inside a document: where it is, and itself. */
export interface Located {
  readonly document: string
  readonly path: string
  readonly schema: JsonSchema
}
/** What the format says about one value of a job, and that value, when there is one. */
export interface Described {
  readonly schemas: readonly Located[]
  readonly value: unknown
  /** Whose part it is in; of a kind that nobody here knows, the kind. */
  readonly plugin: string | undefined
}

export const jobDocument = String(jobSchema.$id)
export const catalogueDocument = String(catalogueSchema.$id)

/** The format's own schemas and those of plugins, by their `$id`. Two different ones with the same are refused by a TypeError. */
export function documentsOf({ kinds, additions }: Extensions): ReadonlyMap<string, JsonSchema> {
  const ofKinds = Object.values(kinds).flatMap(({ schema, part }) => (part ? [schema, part] : [schema]))
  const documents = new Map<string, JsonSchema>()
  for (const schema of [jobSchema, catalogueSchema, lengthSchema, ...ofKinds, ...additions.map(({ schema }) => schema)]) {
    const id = String(schema.$id)
    if ((documents.get(id) ?? schema) !== schema)
      throw new TypeError(`Unexpected second schema ${id}, expected one; give each its own $id`)
    documents.set(id, schema)
  }
  return documents
}

/** Tells what the format says about the values of a job. Tokens lead there; a list item is named by its number. */
export interface Describer {
  readonly at: (job: unknown, tokens: readonly string[]) => Described
  /** The members that an object there may have, by name, each with what it is for. */
  readonly members: (described: Pick<Described, 'schemas' | 'value'>) => ReadonlyMap<string, string>
}

/** A describer goes through properties, lists, maps, references, kinds and `with`, of a job or of what another schema says. */
export function describer(extensions: Extensions, top: JsonSchema = jobSchema): Describer {
  const documents = documentsOf(extensions)
  const root = (schema: JsonSchema): Located => ({ document: String(schema.$id), path: '', schema })
  const inside = (from: Located, ...steps: readonly string[]): readonly Located[] => {
    const schema = steps.reduce<unknown>(own, from.schema)
    return isObject(schema) ? [{ document: from.document, path: steps.reduce(inPath, from.path), schema }] : []
  }
  const led = new Map<JsonSchema, readonly Located[]>()
  const follow = ({ document, schema }: Located): readonly Located[] => {
    const { href, hash } = new URL(String(schema.$ref), document)
    const target = documents.get(href.slice(0, href.length - hash.length))
    return target ? inside(root(target), ...tokensOf(decodeURIComponent(hash.slice(1)))) : []
  }
  const followed = (located: Located): readonly Located[] => {
    if (typeof located.schema.$ref !== 'string') return []
    const to = led.get(located.schema) ?? follow(located)
    led.set(located.schema, to)
    return to
  }
  /** A schema with all that it brings along: what it refers to, what it combines, what a kind adds. */
  const whole = (located: Located, value: unknown): readonly Located[] => {
    const { schema } = located
    const kind = schema['x-evenhem-kind'] === true ? kindOf(extensions, own(value, 'kind')) : undefined
    const all = Array.isArray(schema.allOf) ? schema.allOf.flatMap((_, index) => inside(located, 'allOf', String(index))) : []
    return [located, ...[...followed(located), ...all, ...(kind ? [root(kind.schema)] : [])].flatMap((one) => whole(one, value))]
  }
  const below = (located: Located, token: string, value: unknown, owner: unknown, job: unknown): readonly Located[] => {
    const level = located.schema['x-evenhem-with']
    if (typeof level === 'string') {
      const part = partOf(extensions, token, level, kindOf(extensions, own(hardwareOf(job, owner), 'kind')))
      return part ? [root(part)] : []
    }
    if (Array.isArray(value)) return inside(located, 'items')
    const named = inside(located, 'properties', token)
    return named.length > 0 ? named : inside(located, 'additionalProperties')
  }
  const pluginOf = ({ schema }: Located, token: string, value: unknown): string | undefined => {
    if (typeof schema['x-evenhem-with'] === 'string') return token
    const kind = schema['x-evenhem-kind'] === true ? own(value, 'kind') : undefined
    return kindOf(extensions, kind)?.plugin ?? (typeof kind === 'string' ? kind : undefined)
  }
  const at = (job: unknown, tokens: readonly string[]): Described => {
    let described: Described = { schemas: [root(top)], value: job, plugin: undefined }
    let owner: unknown
    for (const token of tokens) {
      const { value, plugin } = described
      const here = described.schemas.flatMap((one) => whole(one, value))
      const next = here.flatMap((one) => below(one, token, value, owner, job))
      const of = here.flatMap((one) => pluginOf(one, token, value) ?? [])[0]
      owner = value
      described = { schemas: next, value: own(value, token), plugin: of ?? plugin }
    }
    return described
  }
  const members = ({ schemas, value }: Pick<Described, 'schemas' | 'value'>): ReadonlyMap<string, string> =>
    new Map(
      schemas
        .flatMap((one) => whole(one, value))
        .flatMap(({ schema }) => Object.entries(isObject(schema.properties) ? schema.properties : {}))
        .map(([name, schema]) => [name, isObject(schema) && typeof schema.description === 'string' ? schema.description : '']),
    )
  return { at, members }
}

/** The entry under `hardware` that a treatment hangs on. */
export function hardwareOf(job: unknown, treatment: unknown): unknown {
  const list = own(job, 'hardware')
  const id = own(treatment, 'hardware')
  return Array.isArray(list) && typeof id === 'string' ? list.find((entry) => idOf(entry) === id) : undefined
}
