import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

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

const literal = (value: unknown): string =>
  typeof value === 'string' ? `'${value.replaceAll(/['\\]/g, '\\$&')}'` : JSON.stringify(value)
const capital = (name: string): string => name.replaceAll(/(?:^|-)([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())
const member = (name: string): string => (/^[A-Za-z_$][\w$]*$/.test(name) ? name : literal(name))
const comment = (text: string | undefined, indent: string): string =>
  text ? `${indent}/** ${text.replaceAll('*/', '*\\/')} */\n` : ''

/** TypeScript declarations of a schema and of everything it leads to, in the order in which they are met. */
export function declarations(schema: Schema, name: string): string {
  const made = new Map<string, { readonly of: Schema; text: string }>()
  const documents = new Map([[schema.$id ?? '', schema]])

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

  /** Gives a schema its own declaration, once. */
  const declare = (of: Schema, called: string, write: () => string): string => {
    const before = made.get(called)
    if (before && JSON.stringify(before.of) !== JSON.stringify(of))
      throw new Error(`Two schemas are called ${called}; give one of them another title`)
    if (!before) {
      const entry = { of, text: '' }
      made.set(called, entry)
      entry.text = comment(of.description, '') + write()
    }
    return called
  }

  const members = (of: Schema, document: Schema, called: string): ReadonlyMap<string, string> => {
    const all = new Map<string, string>()
    if (of.$ref) {
      const { to, document: other, key } = follow(of.$ref, document)
      for (const [name, line] of members(to, other, capital(key))) all.set(name, line)
    }
    for (const [name, item] of Object.entries(of.properties ?? {})) {
      const optional = of.required?.includes(name) || (all.has(name) && !all.get(name)?.includes('?:')) ? '' : '?'
      all.set(
        name,
        `${comment(item.description, '  ')}  readonly ${member(name)}${optional}: ${type(item, document, called + capital(name))}\n`,
      )
    }
    return all
  }

  const type = (of: Schema, document: Schema, called: string): string => {
    const strange = Object.keys(of).find((key) => !silent.test(key) && !typed.test(key))
    if (strange)
      throw new Error(`Unexpected keyword ${strange} in ${called}; teach tests/tools/types.ts what it means for a type`)
    if ('const' in of) return literal(of.const)
    if (of.enum) return of.enum.map(literal).join(' | ')
    if (of.properties)
      return declare(
        of,
        of.title ?? called,
        () => `export interface ${of.title ?? called} {\n${[...members(of, document, of.title ?? called).values()].join('')}}\n`,
      )
    if (of.$ref?.endsWith('length.schema.json')) return 'Length'
    if (of.$ref) {
      const { to, document: other, key } = follow(of.$ref, document)
      const named = to.title ?? capital(key)
      const written = type(to, other, named)
      return written === named ? named : declare(to, named, () => `export type ${named} = ${written}\n`)
    }
    if (Array.isArray(of.type)) return of.type.map((one) => type({ ...of, type: one }, document, called)).join(' | ')
    if (of.type === 'array') return `readonly ${grouped(of.items ? type(of.items, document, `${called}Item`) : 'unknown')}[]`
    if (of.type === 'object')
      return typeof of.additionalProperties === 'object'
        ? `{ readonly [name: string]: ${type(of.additionalProperties, document, `${called}Item`)} }`
        : 'object'
    return of.type === 'integer' ? 'number' : typeof of.type === 'string' ? of.type : 'unknown'
  }
  const grouped = (written: string): string => (written.includes('|') ? `(${written})` : written)

  type(schema, schema, schema.title ?? name)
  const text = [...made.values()].map((entry) => entry.text).join('\n')
  return (
    (/\bLength\b/.test(text.replaceAll(/\/\*\*.*\*\//g, '')) ? "import type { Length } from '@evenhem/length'\n\n" : '') + text
  )
}

// Where the format has lists, as patterns of places: /rooms, /rooms/*/windows, … Below hardware and `with`, plugins say.
export function lists(schema: Schema, at = '', of = schema): readonly string[] {
  const to = of.$ref ? (schema.$defs?.[of.$ref.split('/').at(-1) ?? ''] ?? {}) : of
  if (to.type === 'array') return [at, ...(to.items ? lists(schema, `${at}/*`, to.items) : [])]
  return Object.entries(to.properties ?? {}).flatMap(([name, item]) => lists(schema, `${at}/${name}`, item))
}
