import type { Schema } from './types.ts'

type Ends = { readonly least: string; readonly most: string }
/** A place where one value stands, as a pattern (`*`: an item of a list or a name in a map), and what it takes. */
export type Form = readonly [place: string, takes: string, ...more: readonly unknown[]]

const formOf = (schema: Schema & { readonly [name: string]: unknown }): Form[1] | readonly unknown[] | undefined => {
  if (schema.$ref?.endsWith('length.schema.json')) {
    const { least, most } = (schema['x-evenhem-plausible'] ?? {}) as Partial<Ends>
    return ['length', least ?? '', most ?? '']
  }
  if (schema.enum) return ['choice', schema.enum]
  if (schema.type === 'integer') return ['count', schema.minimum ?? null, schema.maximum ?? null]
  if (schema.type === 'number') return ['number', schema.minimum ?? null, schema.maximum ?? null]
  if (schema.type === 'boolean') return ['tick']
  if (schema.type === 'string') return [schema.format === 'date' ? 'date' : 'text']
  return undefined
}

/** Every place of a schema where one value stands. */
export function forms(schema: Schema, at = '', of: Schema = schema): readonly Form[] {
  const own = formOf(of as Schema & Record<string, unknown>)
  if (own) return [[at, ...(own as readonly unknown[])] as unknown as Form]
  const to = of.$ref ? { ...(schema.$defs?.[of.$ref.split('/').at(-1) ?? ''] ?? {}), ...{ $ref: undefined } } : of
  const leaf = of.$ref ? formOf(to as Schema & Record<string, unknown>) : undefined
  if (leaf) return [[at, ...(leaf as readonly unknown[])] as unknown as Form]
  const below =
    typeof to.additionalProperties === 'object' && !at.endsWith('/with') && at !== '/found'
      ? [['*', to.additionalProperties] as const]
      : []
  const members = [...Object.entries(to.properties ?? {}), ...below, ...(to.items ? [['*', to.items] as const] : [])]
  return members.flatMap(([name, item]) => (name === '$schema' ? [] : forms(schema, `${at}/${name}`, item)))
}
