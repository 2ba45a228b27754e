import { Ajv2020, type ErrorObject, type ValidateFunction } from 'ajv/dist/2020.js'
import type { Fact, JsonSchema, Plugin } from '../contract.ts'
import type { CheckFact } from './host.ts'

/** Checks values of facts against the schemas of their owners: the plugin that a fact is named after, else whoever declares it. */
export function checkFactsOf(plugins: readonly Plugin[]): CheckFact {
  const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictRequired: false })
  const owned = new Map<string, JsonSchema>()
  for (const plugin of plugins)
    for (const fact of plugin.rules.flatMap(factsOf)) if (fact.id.startsWith(`${plugin.id}/`)) owned.set(fact.id, fact.schema)
  const compiled = new Map<JsonSchema, ValidateFunction>()
  return (fact, value) => {
    const schema = owned.get(fact.id) ?? fact.schema
    const validate = compiled.get(schema) ?? ajv.compile(schema)
    compiled.set(schema, validate)
    return validate(value) ? undefined : (validate.errors ?? []).filter(isSaid).map(shown).join('; ')
  }
}

/** That a branch did not hold says nothing beside what was wrong in it. */
const isSaid = ({ keyword }: ErrorObject): boolean => keyword !== 'if'
function shown({ instancePath, message, keyword, params }: ErrorObject): string {
  const what = `${instancePath && `${instancePath} `}${message}`
  if (keyword === 'additionalProperties') return `${what}: ${params.additionalProperty}`
  return keyword === 'enum' ? `${what}: ${params.allowedValues.join(', ')}` : what
}

const factsOf = (rule: Plugin['rules'][number]): readonly Fact[] => [
  ...Object.values(rule.gives),
  ...Object.values(rule.needs).map((need) => ('maybe' in need ? need.maybe : 'each' in need ? need.each : need)),
]
