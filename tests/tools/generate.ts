// Writes what follows from the schemas: types, the schemas themselves as code, and the tables of the manual. With --compare it writes nothing, names
// each file that is not as it would be written, and ends with 1.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { forms } from './forms.ts'
import { type Chapter, manual } from './manual.ts'
import { declarations, lists, type Schema, schemaFile } from './types.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const code = (value: unknown): string => JSON.stringify(value, null, 2)
const from = (source: string): string => `// Generated from ${source} by \`npm run generate\`.\n`

/** What packages/job holds of the format. */
async function ofTheFormat(): Promise<ReadonlyMap<string, string>> {
  const job = schemaFile('job.schema.json')
  const catalogue = schemaFile('../../catalogue/1/catalogue.schema.json')
  const constant = (name: string, value: unknown) => `export const ${name}: Readonly<Record<string, unknown>> = ${code(value)}\n`
  return new Map([
    ['packages/job/src/types.generated.ts', `${from('schema/job/1')}${await declarations(job, 'Job')}`],
    [
      'packages/job/src/lists.generated.ts',
      `${from('schema/job/1')}// Where the format has lists, as patterns of places.\nexport const lists: readonly string[] = ${code(lists(job))}\n`,
    ],
    [
      'packages/job/src/read/schemas.generated.ts',
      from('schema') +
        constant('jobSchema', job) +
        constant('lengthSchema', schemaFile('length.schema.json')) +
        constant('catalogueSchema', catalogue),
    ],
  ])
}

const pascal = (name: string): string => name.replaceAll(/(?:^|-)([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())
const camel = (name: string): string => name.replaceAll(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())

/** `plugins/returns/src/part.schema.json` → `part.generated.ts` beside it: the constant `partSchema`, and its types. */
async function ofPlugin(folder: string, file: string): Promise<readonly [string, string]> {
  const name = file.slice(0, -'.schema.json'.length)
  const schema: Schema = JSON.parse(readFileSync(`${root}${folder}/${file}`, 'utf8'))
  const types = await declarations(schema, pascal(name))
  return [
    `${folder}/${name}.generated.ts`,
    `${from(`${folder}/${file}`)}${types}\nexport const ${camel(name)}Schema = ${code(schema)} as const\n`,
  ]
}

const sources = readdirSync(`${root}plugins`)
  .map((name) => `plugins/${name}/src`)
  .filter((folder) => existsSync(root + folder))
const schemas = sources.flatMap((folder) =>
  readdirSync(root + folder)
    .filter((file) => file.endsWith('.schema.json'))
    .sort()
    .map((file) => [folder, file] as const),
)

/** `hardware.schema.json` of a plugin holds what its kind asks for, all else is its part under `with`. */
function chapterOf(folder: string, file: string): Chapter {
  const schema: Schema = JSON.parse(readFileSync(`${root}${folder}/${file}`, 'utf8'))
  const of = folder.split('/')[1] ?? ''
  const kind = schema.properties?.kind?.const
  return kind === undefined
    ? { schema, of, title: `Part of ${of}`, at: `…/with/${of}` }
    : { schema, of, title: `Hardware of the kind ${kind}`, at: '/hardware/…' }
}
const job: Chapter = { schema: schemaFile('job.schema.json'), title: 'Job', at: '' }
const chapters: readonly Chapter[] = [
  job,
  ...schemas.map((each) => chapterOf(...each)),
  { schema: schemaFile('../../catalogue/1/catalogue.schema.json'), title: 'Shared catalogue', at: '', job },
  { schema: schemaFile('../../log/1/event.schema.json'), title: 'Entry of a site log', at: '' },
]
const readme = 'schema/README.md'

/** What a plugin's part is of, by the name of its schema or by plugin and name; of treatments where nothing is said. */
const levels: Readonly<Record<string, readonly string[]>> = {
  fabric: ['/fabrics/*'],
  window: ['/rooms/*/windows/*'],
  'punch-list/part': ['', '/rooms/*/windows/*'],
}
function partsAt(folder: string, file: string): readonly string[] {
  const [plugin, name] = [folder.split('/')[1] ?? '', file.slice(0, -'.schema.json'.length)]
  const of = levels[`${plugin}/${name}`] ?? levels[name] ?? ['/rooms/*/windows/*/treatments/*']
  return of.map((level) => `${level}/with/${plugin}`)
}

/** What one value is at every place where a person may put one, for the tablet, which has no validator: of the job and of our plugins. */
function ofTheViewer(): readonly [string, string] {
  const ofPlugins = schemas.flatMap(([folder, file]) => {
    const schema: Schema = JSON.parse(readFileSync(`${root}${folder}/${file}`, 'utf8'))
    const isKind = schema.properties?.kind?.const !== undefined
    return (isKind ? ['/hardware/*'] : partsAt(folder, file)).flatMap((at) => forms(schema, at))
  })
  const all = new Map([...forms(schemaFile('job.schema.json')), ...ofPlugins].map((form) => [form[0], form]))
  const rows = [...all.values()].map((form) => `  ${JSON.stringify(form)},\n`).join('')
  const type = 'readonly (readonly [place: string, takes: string, ...more: readonly unknown[]])[]'
  return ['plugins/forms.generated.ts', `${from('the schemas')}export const forms: ${type} = [\n${rows}]\n`]
}

const all: readonly (readonly [string, string])[] = [
  ...(await ofTheFormat()),
  ...(await Promise.all(schemas.map((each) => ofPlugin(...each)))),
  ofTheViewer(),
  [readme, manual(readFileSync(root + readme, 'utf8'), chapters)],
]
const changed = all.filter(([file, text]) => !existsSync(root + file) || readFileSync(root + file, 'utf8') !== text)
if (process.argv.includes('--compare')) {
  for (const [file] of changed) console.error(`${file} is not what its schema gives; run \`npm run generate\` and commit it`)
  process.exitCode = changed.length > 0 ? 1 : 0
} else
  for (const [file, text] of changed) {
    writeFileSync(root + file, text)
    console.log(file)
  }
