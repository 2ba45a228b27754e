import { readFileSync } from 'node:fs'
import { plugins } from '@evenhem/plugins'
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'

const file = (name: string): object => JSON.parse(readFileSync(new URL(`../../schema/job/1/${name}`, import.meta.url), 'utf8'))
interface Part {
  readonly with?: Readonly<Record<string, unknown>>
}
/** As much of a job as leads to the parts of plugins. */
interface Parsed {
  readonly hardware: readonly { readonly kind: string }[]
  readonly rooms: readonly { readonly windows: readonly { readonly treatments: readonly Part[] }[] }[]
}

/** Schema validation as a program would do it that only wants to know whether a file is good: the same schemas, no places, no lengths. */
export function plainValidation(): (job: unknown) => boolean {
  const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false })
  ajv.addSchema(file('length.schema.json')).addSchema(file('job.schema.json'))
  const job = ajv.getSchema('https://evenhem.example/job/1/job.schema.json') as ValidateFunction
  const kinds = new Map(plugins.flatMap((plugin) => plugin.kinds.map((kind) => [kind.kind, ajv.compile(kind.schema)] as const)))
  const parts = new Map(
    plugins.flatMap((plugin) =>
      [
        ...plugin.kinds.flatMap((kind) => (kind.part ? [kind.part] : [])),
        ...plugin.additions.map((addition) => addition.schema),
      ].map((schema) => [plugin.id, ajv.compile(schema)] as const),
    ),
  )
  return (value) => {
    const { hardware, rooms } = value as Parsed
    const entries = hardware.every((entry) => kinds.get(entry.kind)?.(entry) ?? true)
    const treatments = rooms.flatMap((room) => room.windows.flatMap((window) => window.treatments))
    return (
      job(value) &&
      entries &&
      treatments.every((treatment) => Object.entries(treatment.with ?? {}).every(([id, part]) => parts.get(id)?.(part) ?? true))
    )
  }
}
