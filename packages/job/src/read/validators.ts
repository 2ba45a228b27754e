import { Ajv2020, type ErrorObject, type ValidateFunction } from 'ajv/dist/2020.js'
import { isDate, isDateTime } from '../dates.ts'
import type { Extensions } from './extensions.ts'
import { keywords, type Pass } from './keywords.ts'
import { type Pointer, tokensOf } from './pointers.ts'
import { type Known, refusal } from './refusals.ts'
import { catalogueSchema } from './schemas.generated.ts'
import {
  catalogueDocument,
  type Described,
  type Describer,
  describer,
  documentsOf,
  type JsonSchema,
  jobDocument,
  type Located,
} from './schemas.ts'

/** A value that is to be checked: where it is said to stand, and what holds it under which name or number. */
export interface Stand {
  readonly value: unknown
  readonly at: Pointer
  readonly holder: object
  readonly key: string | number
  /** The tokens of the place in the job whose schema holds for it, when that is not where it stands: a reading. */
  readonly as?: readonly string[]
}

/** Checks against the schemas of the format and of plugins. What is found on the way, lengths too, is added to the pass. */
export interface Validators {
  readonly job: (job: unknown, pass: Pass) => void
  readonly catalogue: (catalogue: unknown, pass: Pass) => void
  /** By one of the schemas of the extensions. */
  readonly by: (schema: JsonSchema, stand: Stand, job: unknown, pass: Pass) => void
  /** By what the format says at a place. */
  readonly as: (described: Described, stand: Stand, job: unknown, pass: Pass) => void
  readonly describe: Describer
}

// A file of a million empty items has as many errors, and ajv copies all that it has for each that comes: it stops at these many.
const mostErrors = 2000
const stopAtMost = (code: string): string =>
  code.replaceAll(/vErrors\.concat\(([\w.]+)\)/g, `(vErrors.length < ${mostErrors} ? vErrors.concat($1) : vErrors)`)
const settings = {
  ...{ strict: true, strictRequired: false, strictTypes: false, allowMatchingProperties: true },
  ...{ allErrors: true, verbose: true, passContext: true },
} as const
const reference = ({ document, path }: Pick<Located, 'document' | 'path'>): string =>
  `${document}#${path.split('/').map(encodeURIComponent).join('/')}`

/** The validators of the format with these extensions. Compiling takes some tens of milliseconds, so they are made once and kept. */
export function validatorsOf(extensions: Extensions): Validators {
  const ajv = new Ajv2020({ ...settings, code: { process: stopAtMost }, formats: { date: isDate, 'date-time': isDateTime } })
  for (const keyword of keywords) ajv.addKeyword(keyword)
  for (const document of documentsOf(extensions).values()) ajv.addSchema(document)
  const describe = describer(extensions)
  const kept = new Map<string, ValidateFunction>()

  const validator = (references: readonly string[]): ValidateFunction => {
    const name = references.join(' ')
    const validate = kept.get(name) ?? ajv.compile({ allOf: references.map(($ref) => ({ $ref })) })
    kept.set(name, validate)
    return validate
  }
  const run = (
    validate: ValidateFunction,
    { value, at, holder, key, as }: Stand,
    job: unknown,
    pass: Pass,
    tells = describe,
  ): void => {
    if (
      validate.call(pass, value, {
        instancePath: at,
        parentData: holder,
        parentDataProperty: key,
        rootData: job as object,
        dynamicAnchors: {},
      })
    )
      return
    const known = (refused: ErrorObject): Known => {
      const described = tells.at(
        job,
        as ? [...as, ...tokensOf(refused.instancePath.slice(at.length))] : tokensOf(refused.instancePath),
      )
      return {
        description: described.schemas.map(({ schema }) => schema.description).find((text) => typeof text === 'string') ?? '',
        members: tells.members(described),
      }
    }
    const errors = validate.errors ?? []
    pass.isCut ||= errors.length >= mostErrors
    for (const refused of errors.slice(0, mostErrors)) {
      const finding = refusal(refused, () => known(refused))
      if (finding) pass.findings.push(finding)
    }
  }
  const whole = (value: unknown): Stand => ({ value, at: '', holder: { value }, key: 'value' })
  const ofCatalogues = describer(extensions, catalogueSchema)
  return {
    job: (job, pass) => run(validator([`${jobDocument}#`]), whole(job), job, pass),
    catalogue: (value, pass) => run(validator([`${catalogueDocument}#`]), whole(value), value, pass, ofCatalogues),
    by: (schema, stand, job, pass) => run(validator([`${schema.$id}#`]), stand, job, pass),
    as: ({ schemas }, stand, job, pass) => run(validator(schemas.map(reference)), stand, job, pass),
    describe,
  }
}
