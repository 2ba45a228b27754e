import { readFileSync } from 'node:fs'
import { inch } from '@evenhem/length'
import { plugins } from '@evenhem/plugins'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cataloguesNamed, extensionsOf, readCatalogue, readJob } from '../src/read.ts'

const folder = new URL('../../../schema/examples/from-the-catalogue/', import.meta.url)
const [text, catalogue] = ['job.json', 'catalogue.json'].map((name) => readFileSync(new URL(name, folder), 'utf8')) as [
  string,
  string,
]
const extensions = extensionsOf(plugins)
type Changes = Readonly<Record<string, unknown>>
const read = (job: string, catalogues: Readonly<Record<string, string>> = { 'catalogue.json': catalogue }) =>
  readJob(job, { ...extensions, catalogues: new Map(Object.entries(catalogues)) })
const rodOf = (job: ReturnType<typeof read>['job'], id: string) =>
  job?.hardware?.find((entry) => entry.id === id) as unknown as {
    readonly bracket: { readonly projection: number }
    readonly rod: { readonly height: number }
  }

test('an entry without members of its own is what the catalogue says, in the catalogue’s units', () => {
  const { job } = read(text)
  expect(job?.units).toBe('mm')
  expect(rodOf(job, 'white').rod.height / inch).toBe(1)
  expect(rodOf(job, 'white').bracket.projection / inch).toBe(3.5)
  expect(job?.fabrics?.[0]?.lining).toBe('cotton sateen')
})
test('a frozen copy wins, and what the catalogue says otherwise now is a warning with both', () => {
  const { job, diagnostics } = read(text)
  expect(rodOf(job, 'white-last-year').bracket.projection).toBe(90_000_000)
  expect(diagnostics.map(({ code, severity, place, values }) => [code, severity, place, values])).toEqual([
    ['job/catalogue-changed', 'warning', '/hardware/white-last-year/bracket/projection', { got: '"90 mm"', now: '"3 1/2"' }],
  ])
})
test('a catalogue in millimetres without units at its numbers serves a job in inches', () => {
  const written = catalogue.replaceAll(/"(-?\d[\d /]*)"/g, '"$1 in"')
  const metric = written.replace('"units": "in"', '"units": "mm"').replace('"height": "1 in"', '"height": 25')
  const { job, diagnostics } = read(text.replace('"units": "mm"', '"units": "in"'), { 'catalogue.json': metric })
  expect(diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code)).toEqual([])
  expect(rodOf(job, 'white').rod.height).toBe(25_000_000)
})
test('everything frozen reads as everything referred', () => {
  const order = JSON.parse(text) as { hardware: Changes[]; fabrics: Changes[] }
  const source = JSON.parse(catalogue.replaceAll(/"(-?\d[\d /]*)"/g, '"$1 in"')) as { hardware: Changes[]; fabrics: Changes[] }
  const [white] = order.hardware
  const frozen = {
    ...order,
    hardware: [{ ...source.hardware[0], ...white }],
    fabrics: [{ ...source.fabrics[0], ...order.fabrics[0] }],
  }
  const referred = { ...order, hardware: [white] }
  const both = [frozen, referred].map((job) => read(JSON.stringify(job).replaceAll('white-last-year', 'white')))
  expect(both.map(({ diagnostics }) => diagnostics.map(({ code }) => code))).toEqual([[], []])
  expect(both[0]?.job).toEqual(both[1]?.job)
})
test('no path leads out of the folder that holds the folder of the job', () => {
  const part = fc.constantFrom('..', '.', '', 'a', 'b.json', 'C:', 'a\\b', '~', '.hidden.json')
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
      const named = cataloguesNamed(JSON.stringify({ catalogues: [{ id: 'x', file: parts.join('/') }] }))
      for (const file of named) {
        expect(file.split('/').slice(1)).not.toContain('..')
        expect(file).toMatch(/^(\.\.\/)?[^/\\:.]/)
      }
    }),
  )
  expect(
    cataloguesNamed('{ "catalogues": [{ "id": "a", "file": "../all/yard.json" }, { "id": "b", "file": "/etc/passwd.json" }] }'),
  ).toEqual(['../all/yard.json'])
})
test('a catalogue is read by itself, with its own places', () => {
  expect(readCatalogue(catalogue, extensions).diagnostics).toEqual([])
  const { catalogue: none, diagnostics } = readCatalogue(catalogue.replace('"height": "1"', '"height": "tall"'), extensions)
  expect(none).toBeUndefined()
  expect(diagnostics.map(({ code, pointer }) => [code, pointer])).toEqual([['length/number-expected', '/hardware/0/rod/height']])
})
