import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { plugins } from '@evenhem/plugins'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { expect, test } from 'vitest'
import { extensionsOf, readJob, schemaOf } from '../src/read.ts'
import { bare, jobText, withPulleys } from './job.ts'

const folder = fileURLToPath(new URL('../../../schema/examples/', import.meta.url))
const examples = readdirSync(folder).filter((name) => existsSync(`${folder}${name}/job.json`))
/** Validates as an editor does: by the one schema alone, without what the reader adds. */
const validator = (extensions: typeof bare) =>
  new Ajv2020({ strict: false, allErrors: true, validateFormats: false }).compile(schemaOf(extensions))
const ours = validator(extensionsOf(plugins))

test.each(examples)('the one schema for editors takes the example %s', (name) => {
  expect([ours(JSON.parse(readFileSync(`${folder}${name}/job.json`, 'utf8'))), ours.errors]).toEqual([true, null])
})

test('it says what the kind of an entry asks for, at that entry', () => {
  const validate = validator(withPulleys)
  expect(validate(JSON.parse(jobText({ hardware: [{ id: 'rope', kind: 'pulley', name: 'Rope', colour: 'red' }] })))).toBe(false)
  expect(validate.errors?.map(({ instancePath, params }) => [instancePath, params])).toContainEqual([
    '/hardware/0',
    { unevaluatedProperty: 'colour' },
  ])
})

test('it says what a plugin’s part is, on a treatment and on a room', () => {
  const validate = validator(withPulleys)
  const paths = (text: string) => (validate(JSON.parse(text)) ? [] : validate.errors?.map(({ instancePath }) => instancePath))
  expect(paths(jobText().replace('"draw": "pair"', '"draw": "pair", "with": { "pulleys": { "knots": "two" } }'))).toContain(
    '/rooms/0/windows/0/treatments/0/with/pulleys/knots',
  )
  expect(paths(jobText().replace('"name": "Den"', '"name": "Den", "with": { "pulleys": { "colour": 1 } }'))).toContain(
    '/rooms/0/with/pulleys/colour',
  )
})

test('it lets pass what only the reader knows to be unknown: another kind, another plugin', () => {
  expect(
    validator(withPulleys)(
      JSON.parse(jobText({ hardware: [{ id: 'rope', kind: 'lift', name: 'Lift', up: 1 }], with: { sky: {} } })),
    ),
  ).toBe(true)
})

test('it refers to nothing outside itself', () => {
  const text = JSON.stringify(schemaOf(extensionsOf(plugins)))
  expect([...text.matchAll(/"\$ref":"([^"]+)"/g)].filter(([, to]) => !to?.startsWith('#/$defs/'))).toEqual([])
})

test('without plugins it is the format alone', () => {
  expect(validator(bare)(JSON.parse(jobText()))).toBe(true)
  expect(readJob(jobText({ uses: {} }), bare).job).toBeDefined()
})
