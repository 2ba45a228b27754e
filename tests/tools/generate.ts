import { readFileSync, writeFileSync } from 'node:fs'
import { compile } from 'json-schema-to-typescript'

/** What json-schema-to-typescript understands of 2020-12; lengths become `Length`. */
function down(schema: any): any {
  if (Array.isArray(schema)) return schema.map(down)
  if (!schema || typeof schema !== 'object') return schema
  if (schema.$ref?.endsWith('length.schema.json')) return { description: schema.description, tsType: 'Length' }
  const out: any = {}
  for (const [key, value] of Object.entries<any>(schema)) {
    if (key === 'properties' || key === '$defs') out[key] = Object.fromEntries(Object.entries<any>(value).map(([name, item]) => [name, down(item)]))
    else if (key === 'unevaluatedProperties') out.additionalProperties ??= value
    else if (['pattern', 'format', '$schema', '$id', 'minItems', 'maxItems'].includes(key)) continue
    else out[key] = ['const', 'enum', 'default'].includes(key) ? value : down(value)
  }
  if (out.$ref && Object.keys(out).length > 1) delete out.description
  return out
}
const job = JSON.parse(readFileSync('schema/job/1/job.schema.json', 'utf8'))
const text = await compile(down(structuredClone(job)), 'Job', { bannerComment: '', additionalProperties: false, format: true, style: { semi: false, singleQuote: true, printWidth: 110 } })
writeFileSync('packages/job/src/types.generated.ts', `// Generated from schema/job/1 by \`npm run generate\`.\nimport type { Length } from '@evenhem/length'\n\n${text}`)
