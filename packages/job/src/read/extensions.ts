import type { JsonSchema } from './schemas.ts'

/** What a plugin must have so that its part of a job file can be read; every plugin of the contract has it. */
export interface PluginFormat {
  readonly id: string
  /** The number under `uses` in a job file. */
  readonly format: number
  readonly kinds: readonly { readonly kind: string; readonly schema: JsonSchema; readonly part?: JsonSchema }[]
  readonly additions: readonly { readonly to: string; readonly schema: JsonSchema }[]
  readonly upgrades?: readonly Upgrade[]
}
/**
 * Makes an item of an older version into one of version `to`. It is given each of its plugin's items: entries of its kinds and its parts
 * under `with`. It runs on the value read, never on the text.
 */
export interface Upgrade {
  readonly to: number
  readonly because: string
  readonly up: (item: object) => object
}

/** A kind of hardware: whose it is, its entry under `hardware`, and its plugin's own part of a treatment. */
export interface KindFormat {
  readonly plugin: string
  readonly schema: JsonSchema
  readonly part?: JsonSchema
}
/** What a plugin adds under `with` at one level. */
export interface AdditionFormat {
  readonly plugin: string
  readonly to: string
  readonly schema: JsonSchema
}

/** What plugins add to the format. Make it once and use it again: validators are kept by it. */
export interface Extensions {
  readonly kinds: Readonly<Record<string, KindFormat>>
  readonly additions: readonly AdditionFormat[]
  /** The newest version of each plugin's part that is understood here. */
  readonly formats: Readonly<Record<string, number>>
  readonly upgrades?: Readonly<Record<string, readonly Upgrade[]>>
}

/** What a list of plugins adds to the format. Two plugins that bring the same kind are refused by a TypeError that names both. */
export function extensionsOf(plugins: readonly PluginFormat[]): Extensions {
  const kinds = plugins.flatMap(({ id, kinds }) =>
    kinds.map(({ kind, schema, part }) => [kind, { plugin: id, schema, part }] as const),
  )
  kinds.forEach(([kind, { plugin }], index) => {
    const before = kinds.slice(0, index).find(([other]) => other === kind)
    if (before)
      throw new TypeError(
        `Unexpected second kind ${kind} in plugin ${plugin}, expected one; ${before[1].plugin} brings it too, leave one of them out`,
      )
  })
  return {
    kinds: Object.fromEntries(kinds),
    additions: plugins.flatMap(({ id, additions }) => additions.map(({ to, schema }) => ({ plugin: id, to, schema }))),
    formats: Object.fromEntries(plugins.map(({ id, format }) => [id, format])),
    upgrades: Object.fromEntries(plugins.map(({ id, upgrades = [] }) => [id, upgrades])),
  }
}

const identified = (schema: JsonSchema, id: string): JsonSchema =>
  typeof schema.$id === 'string' ? schema : { ...schema, $id: `https://evenhem.example/${id}` }

/** The same extensions, in which every schema has an `$id`. */
export const withIds = ({ kinds, additions, ...rest }: Extensions): Extensions => ({
  ...rest,
  kinds: Object.fromEntries(
    Object.entries(kinds).map(([kind, { plugin, schema, part }]) => [
      kind,
      { plugin, schema: identified(schema, `kind/${kind}`), part: part && identified(part, `part/${plugin}/${kind}`) },
    ]),
  ),
  additions: additions.map(({ plugin, to, schema }) => ({ plugin, to, schema: identified(schema, `addition/${plugin}/${to}`) })),
})

const of = <T>(record: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(record, name) ? record[name] : undefined

/** The kind of that name, if it is known here. */
export const kindOf = ({ kinds }: Extensions, kind: unknown): KindFormat | undefined =>
  typeof kind === 'string' ? of(kinds, kind) : undefined
/** The version of a plugin's part that is understood here. */
export const formatOf = ({ formats }: Extensions, plugin: string): number | undefined => of(formats, plugin)

/** The schema of a plugin's part at a level; at a treatment the one that goes with its kind of hardware comes first. */
export function partOf(
  extensions: Extensions,
  plugin: string,
  level: string,
  kind: KindFormat | undefined,
): JsonSchema | undefined {
  const own = level === 'treatment' && kind?.plugin === plugin ? kind.part : undefined
  return own ?? extensions.additions.find((addition) => addition.plugin === plugin && addition.to === level)?.schema
}
