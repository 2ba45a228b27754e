import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { compile, type JSONSchema } from 'json-schema-to-typescript'

/** A schema as parsed; only this file and generate.ts look inside one so freely. */
export interface Schema {
  readonly $id?: string
  readonly $ref?: string
  readonly $defs?: Readonly<Record<string, Schema>>
  readonly title?: string
  readonly description?: string
  readonly type?: string | readonly string[]
  readonly const?: unknown
  readonly enum?: readonly unknown[]
  readonly properties?: Readonly<Record<string, Schema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: boolean | Schema
  readonly unevaluatedProperties?: boolean
  readonly items?: Schema
}

const base = 'https://evenhem.example/job/1/'
const folder = fileURLToPath(new URL('../../schema/job/1/', import.meta.url))
export const schemaFile = (name: string): Schema => JSON.parse(readFileSync(folder + name, 'utf8'))

// What says nothing about the type. A keyword that is in neither list is refused, so that no type is wrong in silence.
const silent =
  /^(\$schema|\$id|\$defs|title|description|default|examples|pattern|format|(min|max)(Length|Items)|uniqueItems|minimum|maximum|exclusive(Minimum|Maximum)|multipleOf|x-evenhem-.+)$/
const typed = /^(\$ref|type|const|enum|properties|required|additionalProperties|unevaluatedProperties|items)$/

const capital = (name: string): string => name.replaceAll(/(?:^|-)([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())

/** What the writer of types understands: it knows nothing of what stands beside a `$ref`, of `unevaluatedProperties` and of other files. */
function lowered(schema: Schema, name: string): JSONSchema {
  const documents = new Map([[schema.$id ?? '', schema]])
  const named = new Map<string, { readonly of: Schema; readonly plain: JSONSchema }>()

  const follow = ($ref: string, from: Schema): { readonly to: Schema; readonly document: Schema; readonly key: string } => {
    const [file = '', path = ''] = $ref.startsWith('#') ? ['', $ref.slice(1)] : $ref.split('#')
    const id = new URL(file, from.$id ?? base).href
    const document = file === '' ? from : (documents.get(id) ?? documents.set(id, schemaFile(id.slice(base.length))).get(id))
    if (!document) throw new Error(`${$ref} leads nowhere`)
    const steps = path.split('/').slice(1)
    const to = steps.reduce<unknown>((at, step) => (at as Readonly<Record<string, unknown>> | undefined)?.[step], document)
    if (!to) throw new Error(`${$ref} leads nowhere`)
    return { to: to as Schema, document, key: steps.at(-1) ?? '' }
  }

  // A title is the name of one type. The writer would number a second one.
  const lower = (of: Schema, document: Schema, title = of.title): JSONSchema => {
    const before = named.get(title ?? '')
    if (before && JSON.stringify(before.of) !== JSON.stringify(of))
      throw new Error(`Two schemas are called ${title}; give one of them another title`)
    if (before) return before.plain
    const plain: JSONSchema = {}
    if (title) named.set(title, { of, plain })
    return Object.assign(plain, title && { title }, of.description && { description: of.description }, shape(of, document))
  }

  const shape = (of: Schema, document: Schema): JSONSchema => {
    const said = Object.keys(of).filter((key) => !silent.test(key))
    const strange = said.find((key) => !typed.test(key))
    if (strange)
      throw new Error(`Unexpected keyword ${strange} beside ${said}; teach tests/tools/types.ts what it means for a type`)
    if (of.$ref?.endsWith('length.schema.json')) return { tsType: 'Length' }
    if (of.$ref) return referred(of.$ref, said.length > 1 ? of : undefined, document)
    if (said.length === 0) return { tsType: 'unknown' }
    return of.type === 'object' && !of.properties && !of.required && typeof of.additionalProperties !== 'object'
      ? { tsType: 'object' }
      : members(of, document)
  }

  // What says nothing of its own is the type referred to; what does has its members, and its own instead where both have one.
  const referred = ($ref: string, beside: Schema | undefined, document: Schema): JSONSchema => {
    const { to, document: other, key } = follow($ref, document)
    const referredTo = lower(to, other, to.title ?? capital(key))
    if (!beside) return { allOf: [referredTo] }
    const { title, description, ...inherited } = referredTo
    const own = members(beside, document)
    const required = [inherited.required, own.required].flatMap((names) => (Array.isArray(names) ? names : []))
    return { ...inherited, ...own, properties: { ...inherited.properties, ...own.properties }, required }
  }

  // The writer leaves the description of a type with a name away where the type is used.
  const member = (of: Schema, document: Schema): JSONSchema => {
    const plain = lower(of, document)
    return of.title && of.description ? { description: of.description, allOf: [plain] } : plain
  }

  const members = (of: Schema, document: Schema): JSONSchema => {
    const { type, enum: choices, required, properties, items, additionalProperties: more = of.unevaluatedProperties } = of
    const each = Object.entries(properties ?? {}).map(([key, item]) => [key, member(item, document)] as const)
    return {
      ...(type && { type }),
      ...('const' in of && { const: of.const }),
      ...(choices && { enum: choices }),
      ...(required && { required }),
      ...(properties && { properties: Object.fromEntries(each) }),
      ...(items && { items: lower(items, document) }),
      ...(more !== undefined && { additionalProperties: typeof more === 'object' ? lower(more, document) : more }),
    } as JSONSchema
  }

  return lower(schema, schema, schema.title ?? name)
}

// The writer knows no readonly. A list that this does not reach is refused.
function unchangeable(text: string): string {
  const list = /(?<=[:=] )(\w+|\([^()]*\))\[\]$/gm
  const missed = /^.*\[\]/m.exec(text.replaceAll(/\/\*\*.*?\*\//gs, '').replaceAll(list, ''))
  if (missed) throw new Error(`Unexpected "${missed[0].trim()}", expected a list of a type with a name; give its items a title`)
  return text
    .replaceAll(/\/\*\*\n *\* (.*)\n *\*\//g, '/** $1 */')
    .replaceAll(/}\n(?=\/\*\*|export)/g, '}\n\n')
    .replaceAll(/^ +(?=([\w$]+|'[^']+'|\[k: string\])\??:)/gm, '$&readonly ')
    .replaceAll(list, 'readonly $&')
}

const style = { semi: false, singleQuote: true, printWidth: 130 }

/** TypeScript declarations of a schema and of everything it leads to. A keyword that might change a type unseen is refused. */
export async function declarations(schema: Schema, name: string): Promise<string> {
  const written = await compile(lowered(schema, name), name, { additionalProperties: false, bannerComment: '', style })
  const text = unchangeable(written)
  return (/^( +readonly|export type) .*\bLength\b/m.test(text) ? "import type { Length } from '@evenhem/length'\n\n" : '') + text
}

// Where the format has lists, as patterns of places: /rooms, /rooms/*/windows, … Below hardware and `with`, plugins say.
export function lists(schema: Schema, at = '', of = schema): readonly string[] {
  const to = of.$ref ? (schema.$defs?.[of.$ref.split('/').at(-1) ?? ''] ?? {}) : of
  if (to.type === 'array') return [at, ...(to.items ? lists(schema, `${at}/*`, to.items) : [])]
  return Object.entries(to.properties ?? {}).flatMap(([name, item]) => lists(schema, `${at}/${name}`, item))
}
