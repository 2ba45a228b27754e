import type { Schema as Typed } from './types.ts'

/** A schema as the manual reads it: all that may stand in one. */
type Schema = Omit<Typed, 'properties' | 'items' | 'additionalProperties' | '$defs'> & {
  readonly $defs?: Readonly<Record<string, Schema>>
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
  readonly additionalProperties?: boolean | Schema
  readonly default?: unknown
  readonly pattern?: string
  readonly format?: string
  readonly uniqueItems?: boolean
  readonly 'x-evenhem-names'?: string
  readonly 'x-evenhem-with'?: string
  readonly 'x-evenhem-plausible'?: { readonly least: string; readonly most: string }
} & Readonly<Partial<Record<(typeof numbers)[number], number>>>

const numbers = ['minimum', 'maximum', 'exclusiveMinimum', 'minItems', 'maxItems', 'minLength', 'maxLength'] as const
// A keyword that the manual has no words for is refused, so that no table leaves anything out in silence.
const known = new Set<string>([
  ...['$schema', '$id', '$ref', '$defs', 'title', 'description', 'type', 'const', 'enum', 'properties', 'required', 'items'],
  ...['additionalProperties', 'unevaluatedProperties', 'default', 'pattern', 'format', 'uniqueItems', ...numbers],
  ...['x-evenhem-names', 'x-evenhem-plausible', 'x-evenhem-length', 'x-evenhem-kind', 'x-evenhem-with'],
])

/** A schema file, and what its objects are called: those of the format by their title alone, those of a plugin with its name. */
export interface Chapter {
  readonly schema: Typed
  readonly title: string
  /** Where in a job it stands: `/hardware/…`. */
  readonly at: string
  readonly of?: string
  /** The chapter of the job, for one that takes members of it. */
  readonly job?: Chapter
}

const words = (title: string): string => title.replaceAll(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
/** What a heading is linked by. */
const slug = (heading: string): string =>
  heading
    .toLowerCase()
    .replaceAll(/[^\w -]/g, '')
    .replaceAll(' ', '-')
const link = (heading: string): string => `[${heading.toLowerCase()}](#${slug(heading)})`
const code = (value: unknown): string => `\`${typeof value === 'string' ? value : JSON.stringify(value)}\``
const cell = (text: string): string => text.replaceAll('|', '\\|')
const isObject = (schema: Schema): boolean => schema.type === 'object' && schema.properties !== undefined

function headingOf(schema: Schema, { of }: Chapter): string {
  if (!schema.title) throw new Error(`Unexpected object without a title, expected one: ${schema.description}; give it one`)
  return of ? `${words(schema.title)} of ${of}` : words(schema.title)
}

/** What a reference leads to, and how that is called where it is used. */
function followed($ref: string, chapter: Chapter): { readonly to: Schema; readonly shown: string } {
  if ($ref.endsWith('length.schema.json')) return { to: {}, shown: '[length](#how-it-is-written)' }
  const [, member] = $ref.split('job.schema.json#/properties/')
  if (member) return { to: {}, shown: memberOfJob(member, chapter) }
  const [file, name = ''] = $ref.split('#/$defs/')
  // Plugins refer to nothing of the format but to its hardware.
  if (file) return { to: {}, shown: link(words(name)) }
  const to = (chapter.schema as Schema).$defs?.[name]
  if (!to) throw new Error(`${$ref} leads nowhere`)
  return { to, shown: isObject(to) ? link(headingOf(to, chapter)) : words(to.title ?? name).toLowerCase() }
}

function memberOfJob(name: string, { job }: Chapter): string {
  const member = (job?.schema as Schema | undefined)?.properties?.[name]
  if (!job || !member) throw new Error(`Unexpected member ${name}, expected one of the job; look at the schema that refers to it`)
  return kindOf(member, job)
}

const simple: Readonly<Record<string, string>> = {
  string: 'text',
  integer: 'whole number',
  number: 'number',
  boolean: 'true or false',
  object: 'object',
  date: 'day',
  'date-time': 'day and time',
}

/** The kind of value: `list of room`, `id under hardware`, `day`. */
function kindOf(schema: Schema, chapter: Chapter): string {
  const strange = Object.keys(schema).find((key) => !known.has(key))
  if (strange)
    throw new Error(`Unexpected keyword ${strange}, expected one that the manual has words for; teach tests/tools/manual.ts`)
  if (schema['x-evenhem-names']) return `id under ${code(schema['x-evenhem-names'])}`
  if (schema['x-evenhem-with']) return '[parts of plugins](#how-it-is-written)'
  if (schema.$ref) return followed(schema.$ref, chapter).shown
  if (schema.enum) return schema.enum.map(code).join(', ')
  if ('const' in schema) return code(schema.const)
  if (schema.type === 'array') return `list of ${kindOf(schema.items ?? {}, chapter)}`
  if (isObject(schema)) return link(headingOf(schema, chapter))
  if (typeof schema.additionalProperties === 'object') return `by name: ${kindOf(schema.additionalProperties, chapter)}`
  return simple[schema.format ?? String(schema.type)] ?? 'as its place asks'
}

/** `2 to 40`, `2 or more`, `40 or less`; nothing when neither end is given. */
function between(least: unknown, most: unknown): string | undefined {
  if (least !== undefined && most !== undefined) return least === most ? `${least}` : `${least} to ${most}`
  if (least !== undefined) return `${least} or more`
  return most === undefined ? undefined : `${most} or less`
}

function limitsOf(schema: Schema): readonly string[] {
  const { minLength, maxLength, pattern, uniqueItems, exclusiveMinimum, 'x-evenhem-plausible': plausible } = schema
  const items = between(schema.minItems || undefined, schema.maxItems)
  const length = minLength === 1 && maxLength === undefined ? 'not empty' : between(minLength, maxLength)
  return [
    plausible && `${plausible.least} to ${plausible.most}`,
    exclusiveMinimum !== undefined && `more than ${exclusiveMinimum}`,
    between(schema.minimum, schema.maximum),
    items && (items === '1' ? '1 item' : `${items} items`),
    uniqueItems && 'each once',
    length && (length === 'not empty' ? length : `${length} characters`),
    pattern && code(pattern),
  ].filter((limit) => typeof limit === 'string')
}

/** A description without the default that it ends with, and that default. */
function described({ description = '', default: value }: Schema): readonly [string, string | undefined] {
  const [, text = description, said] = /^(.*?) ?Default (.+)\.$/s.exec(description) ?? []
  return [text, value === undefined ? said && `default ${said}` : `default ${code(value)}`]
}

/** What a value in a list or a map is, where it says so and has no table of its own. */
function eachOf({ items, additionalProperties: more }: Schema): string {
  const each = items ?? (typeof more === 'object' ? more : undefined)
  if (!each) return ''
  const said = each.description && !isObject(each) ? ` Each: ${each.description}` : ''
  return said + eachOf(each)
}

/** The limits of a value, and of each in it. */
const allLimits = (schema: Schema): readonly string[] => {
  const each = schema.items ?? (typeof schema.additionalProperties === 'object' ? schema.additionalProperties : undefined)
  return [...limitsOf(schema), ...(each && !isObject(each) ? allLimits(each).map((limit) => `each ${limit}`) : [])]
}

function row(name: string, member: Schema, isRequired: boolean, chapter: Chapter): string {
  const [text, standard] = described(member)
  const limits = [...allLimits(member), standard].filter((part) => part !== undefined)
  const cells = [code(name), text + eachOf(member), kindOf(member, chapter), isRequired ? 'yes' : '', limits.join('; ')]
  return `| ${cells.map(cell).join(' | ')} |`
}

/** The objects that stand inside a schema without a name of their own, in the order of the file. */
const inside = (schema: Schema): readonly Schema[] =>
  [...Object.values(schema.properties ?? {}), schema.items, schema.additionalProperties].flatMap((each) =>
    typeof each === 'object' && !each.$ref ? [...(isObject(each) ? [each] : []), ...inside(each)] : [],
  )

/** Where in a job each object stands, by what follows from where its file does: `/rooms/…/windows/…`. */
function* standing(schema: Schema, at: string, chapter: Chapter): Generator<readonly [Schema, string]> {
  if (schema.$ref) yield* standing(followed(schema.$ref, chapter).to, at, chapter)
  yield [schema, at]
  for (const [name, member] of Object.entries(schema.properties ?? {})) yield* standing(member, `${at}/${name}`, chapter)
  for (const each of [schema.items, schema.additionalProperties])
    if (typeof each === 'object') yield* standing(each, `${at}/…`, chapter)
}
const placesOf = (schema: Schema, chapter: Chapter): string =>
  [...standing(chapter.schema as Schema, chapter.at, chapter)]
    .flatMap(([each, at]) => (each === schema ? [code(at)] : []))
    .join(', ')

function table(heading: string, schema: Schema, chapter: Chapter): readonly string[] {
  const members = Object.entries(schema.properties ?? {})
  const places = placesOf(schema, chapter)
  const base = schema.$ref ? ` It has the members of ${followed(schema.$ref, chapter).shown}, and these.` : ''
  const rows = members.map(([name, member]) => row(name, member, schema.required?.includes(name) ?? false, chapter))
  const head = ['| name | what | kind of value | must be there | limits and default |', '|---|---|---|---|---|']
  const shown = rows.length > 0 ? [...head, ...rows] : ['This version has no members here.']
  return [`### ${heading}`, '', `${schema.description}${base}${places === '``' ? '' : ` Stands at ${places}.`}`, '', ...shown, '']
}

/** The tables of a chapter: its root, each object inside it, then each definition with what is inside that. */
function tables(chapter: Chapter): readonly string[] {
  const root = chapter.schema as Schema
  const titled = (schema: Schema) => table(headingOf(schema, chapter), schema, chapter)
  const definitions = Object.values(root.$defs ?? {}).filter(isObject)
  return [
    ...table(chapter.title, root, chapter),
    ...inside(root).flatMap(titled),
    ...definitions.flatMap((each) => [each, ...inside(each)]).flatMap(titled),
  ]
}

const mark = '<!-- What follows is generated from the schemas by `npm run generate`. -->'

/** A manual with the tables of all members behind its mark; what stands before the mark is kept. */
export function manual(before: string, chapters: readonly Chapter[]): string {
  const [kept, ...rest] = before.split(mark)
  if (rest.length !== 1) throw new Error(`Unexpected: schema/README.md has the mark ${rest.length} times, expected once: ${mark}`)
  return `${kept}${mark}\n\n${chapters.flatMap(tables).join('\n').trimEnd()}\n`
}
