import { readdirSync, readFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Schema, Validator } from '@cfworker/json-schema'
import { catalogueSchemaOf, type Diagnostic, readCatalogue, readJob, schemaOf } from '@evenhem/job/read'
import { expect, test } from 'vitest'
import { cataloguesIn, extensions, names } from '../tools/examples.ts'
import { random } from '../tools/jobs.ts'
import { isLong } from '../tools/long.ts'

// A validator that has nothing to do with ours reads the schema that `evenhem schema` prints, and must refuse the same places of
// the same files. What the reader refuses by other rules than the schema is told apart by its code; a code in no list fails.

const folder = fileURLToPath(new URL('../../schema/examples/', import.meta.url))
const wrong = readdirSync(`${folder}not-ok`).filter((file) => /\.(job|catalogue)\.json$/.test(file))
const goodCatalogues = ['catalogue.json', 'from-the-catalogue/catalogue.json']
const files = [...names.map((name) => `${name}/job.json`), ...goodCatalogues, ...wrong.map((file) => `not-ok/${file}`)]

const codes = (list: string): readonly string[] => list.split(/\s+/).map((code) => `job/${code}`)
/** What a code is about: a text that is no JSON, JSON that would be changed in silence, the schema, or rules beside it. */
const rules = {
  json: codes(
    'utf-8 utf-16 empty comment space trailing-comma extra-comma missing-comma missing-colon missing-name missing-value ends-early unclosed unclosed-at-end unexpected stray after-end quotes open-text control-character escape bare-name bare-word word-near bare-length number-form no-number',
  ),
  kept: codes('too-deep name-twice surrogate number-too-large number-not-kept minus-zero'),
  schema: codes(
    'no-object no-catalogue newer-format newer-catalogue missing missing-plain unknown-member unknown-member-near no-members type type-text type-number type-whole-number type-truth type-object type-list type-length choice choice-near choice-one id id-near pattern date date-time empty-text text-too-short text-too-long too-small too-small-or-equal too-large too-large-or-equal step too-few too-many refused',
  ),
  ours: codes(
    'absurd-length absurd-length-unit absurd-length-units id-twice names-nothing names-nothing-near names-nothing-at-all reading-no-place reading-nowhere reading-nowhere-near reading-unknown reading-unknown-near reading-of-much catalogue-path catalogue-missing catalogue-broken catalogue-chain catalogue-unknown catalogue-unknown-near catalogue-item catalogue-item-near catalogue-kind',
  ),
}
type Rule = keyof typeof rules

/** The schema knows nothing of what a reading's place asks for. */
const isReading = (pointer = ''): boolean => /^\/found\/[^/]+\/value/.test(pointer)
function ruleOf({ code, pointer }: Diagnostic): Rule {
  if (code.startsWith('length/') || isReading(pointer)) return 'ours'
  const rule = (Object.keys(rules) as Rule[]).find((each) => rules[each].includes(code))
  if (!rule) throw new Error(`Unexpected code ${code}, expected one that is in a list; say what it is about`)
  return rule
}

const by = (schema: object) => new Validator(structuredClone(schema) as Schema, '2020-12', false)
const validator = (known: typeof extensions) => by(schemaOf(known))
const whole = validator(extensions)
const catalogue = by(catalogueSchemaOf(extensions))
const bare = validator({ kinds: {}, additions: [], formats: {} })

// These pass on what was refused further inside.
const passesOn = /^(\$ref|properties|items|allOf|if|additionalProperties|unevaluatedProperties)$/
/** The places that the other validator refuses: where a keyword does, or where a member stands that nothing knows. */
function refused(job: unknown, by: Validator): readonly string[] {
  const errors = by.validate(job).errors.map(({ keyword, instanceLocation }) => ({ keyword, at: instanceLocation.slice(1) }))
  const own = errors.filter(({ keyword }) => !passesOn.test(keyword) && keyword !== 'false')
  const inside = (at: string) => own.some((each) => each.at === at || each.at.startsWith(`${at}/`))
  const strange = errors.filter(({ keyword, at }) => keyword === 'false' && !inside(at))
  const innermost = strange.filter(({ at }) => !strange.some((each) => each.at.startsWith(`${at}/`)))
  return [...new Set([...own, ...innermost].map(({ at }) => at))].sort()
}
const places = (diagnostics: readonly Diagnostic[]): readonly string[] =>
  [...new Set(diagnostics.map(({ pointer }) => pointer ?? ''))].sort()

function parsed(bytes: Uint8Array): { readonly job: unknown } | undefined {
  try {
    return { job: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) }
  } catch {
    return undefined
  }
}
/** Read with the catalogues that lie beside it. */
const isCatalogue = (file: string): boolean => file.endsWith('catalogue.json')
const readWith = (file: string, bytes: Uint8Array | string) =>
  isCatalogue(file)
    ? readCatalogue(bytes, extensions)
    : readJob(bytes, { ...extensions, catalogues: cataloguesIn(`${folder}${dirname(file)}/`, bytes.toString()) })
/** What is wrong with a file, by rule. */
function look(file: string) {
  const bytes = readFileSync(folder + file)
  const { diagnostics } = readWith(file, bytes)
  const errors = diagnostics.filter(({ severity }) => severity === 'error')
  const of = (rule: Rule) => errors.filter((error) => ruleOf(error) === rule)
  const isNewer = diagnostics.some(({ code }) => code === 'job/newer-plugin')
  return {
    json: parsed(bytes),
    of,
    said: new Set(errors.map(ruleOf)),
    by: isCatalogue(file) ? catalogue : isNewer ? bare : whole,
  }
}

test.each(files)('both say the same of %s', (file) => {
  const { json, of, by } = look(file)
  expect(of('json').length > 0, 'the reader says what is no JSON').toBe(json === undefined)
  // A value that would not be kept as written is not looked into further.
  if (json && of('kept').length === 0) expect(refused(json.job, by)).toEqual(places(of('schema')))
})

/** The first rule by which a file is wrong, in the order in which reading meets them. */
const firstOf = (file: string): string => (Object.keys(rules) as Rule[]).find((rule) => look(file).said.has(rule)) ?? 'good'

test('every file was compared, or is wrong by a rule beside the schema', () => {
  const first = new Map(files.map((file) => [file, firstOf(file)]))
  const counts: Record<string, number> = {}
  for (const rule of first.values()) counts[rule] = (counts[rule] ?? 0) + 1
  console.log(`files of the examples, by what is wrong: ${JSON.stringify(counts)}`)
  expect(Object.keys(counts).sort()).toEqual(['good', 'json', 'kept', 'ours', 'schema'])
  expect(counts.schema).toBeGreaterThan(10)
  const good = [...names.map((name) => `${name}/job.json`), ...goodCatalogues]
  expect(good.filter((file) => first.get(file) !== 'good')).toEqual([])
})

type Held = Record<string, unknown>
const isHeld = (value: unknown): value is Held => typeof value === 'object' && value !== null
/** Every object and list of a value. */
const holders = (value: unknown): readonly Held[] => (isHeld(value) ? [value, ...Object.values(value).flatMap(holders)] : [])
const strange = [null, true, -1, 0.5, 999, '', 'x y', [], {}, [[]], { id: 'x' }]

/** A job with one thing in it taken out, put in or made something else. */
function spoilt(job: unknown, seed: number): unknown {
  const next = random(seed)
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T
  const copy = structuredClone(job)
  const holder = pick(holders(copy).filter((each) => Object.keys(each).length > 0))
  const name = pick(Object.keys(holder))
  const change = pick(['out', 'in', 'other'])
  if (change === 'out' && !Array.isArray(holder)) delete holder[name]
  else holder[change === 'in' && !Array.isArray(holder) ? 'strange' : name] = pick(strange)
  return copy
}

/** Compares what both say of good files in which one thing was spoilt; returns how many places were wrong. */
function compareSpoilt(good: readonly string[], times: number, by: Validator): number {
  const values = good.map((file): unknown => JSON.parse(readFileSync(folder + file, 'utf8')))
  let wrong = 0
  for (let seed = 1; seed <= times; seed++) {
    const made = spoilt(values[seed % values.length], seed)
    const { diagnostics } = readWith(good[seed % good.length] ?? '', JSON.stringify(made))
    const ours = places(diagnostics.filter((each) => each.severity === 'error' && ruleOf(each) === 'schema'))
    expect({ seed, places: refused(made, by) }).toEqual({ seed, places: ours })
    wrong += ours.length
  }
  return wrong
}

const times = isLong ? 400 : 150
test('both say the same of a job in which one thing was spoilt', () => {
  const jobs = names.map((name) => `${name}/job.json`)
  expect(compareSpoilt(jobs, times, whole)).toBeGreaterThan(times / 2)
})
test('both say the same of a catalogue in which one thing was spoilt', () => {
  expect(compareSpoilt(goodCatalogues, times / 2, catalogue)).toBeGreaterThan(times / 4)
})
