import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { lengthWords } from '@evenhem/length'
import { plugins } from '@evenhem/plugins'
import { IntlMessageFormat } from 'intl-messageformat'
import { expect, test } from 'vitest'
import {
  cataloguesNamed,
  diagnosticsJson,
  extensionsOf,
  jobWords,
  readCatalogue,
  readJob,
  type UnreadCatalogue,
} from '../src/read.ts'
import { codes, jobText, pulleys } from './job.ts'

const folder = fileURLToPath(new URL('../../../schema/examples/not-ok/', import.meta.url))
const wrongFiles = readdirSync(folder).filter((file) => /\.(job|catalogue)\.json$/.test(file))
const extensions = extensionsOf(plugins)
/** A wrong job with the catalogues that lie beside it, or a wrong catalogue. */
const readWrong = (file: string) => {
  const text = readFileSync(folder + file)
  if (file.endsWith('.catalogue.json')) return readCatalogue(text, extensions)
  const named = cataloguesNamed(text.toString()).filter((each) => existsSync(folder + each))
  return readJob(text, { ...extensions, catalogues: new Map(named.map((each) => [each, readFileSync(folder + each)])) })
}
/** Catalogues that could not be opened, as the server says it: no files that a folder of examples can hold. */
const unread = (content: UnreadCatalogue) =>
  readJob(jobText({ catalogues: [{ id: 'yard', file: 'yard.json' }] }), {
    ...extensions,
    catalogues: new Map([['yard.json', content]]),
  })
const notOpened = [
  unread({ why: 'outside' }),
  unread({ why: 'no-file' }),
  unread({ why: 'too-large', values: { size: 4.1, most: 4 } }),
  unread({ why: 'unreadable', values: { error: 'EACCES' } }),
]
const shown = [...wrongFiles.map(readWrong), ...notOpened].flatMap(({ diagnostics }) => diagnosticsJson(diagnostics))
const sentences = Object.entries(jobWords).map(([code, words]: [string, { readonly says: string; readonly help?: string }]) => ({
  code,
  ...words,
}))

/** What the plugins that ship have no occasion for, each in a job with an invented plugin. */
const inventions = (): readonly string[] => {
  const upgrade = (up: (item: object) => object) => extensionsOf([{ ...pulleys, upgrades: [{ to: 3, because: 'it must', up }] }])
  const hardware = (more: object) => jobText({ hardware: [{ id: 'rope', kind: 'pulley', name: 'Rope', ...more }] })
  const knots = (n: number) => jobText().replace('"draw": "pair"', `"draw": "pair", "with": { "pulleys": { "knots": ${n} } }`)
  const colour = (text: string) =>
    jobText().replace('"name": "Den"', `"name": "Den", "with": { "pulleys": { "colour": "${text}" } }`)
  const open = {
    id: 'open',
    format: 1,
    kinds: [],
    additions: [
      {
        to: 'job',
        schema: {
          type: ['boolean', 'object'],
          properties: { x: { not: { const: 1 } } },
          additionalProperties: false,
          required: ['gone'],
        },
      },
      { to: 'room', schema: { type: 'object', unevaluatedProperties: false } },
      {
        to: 'window',
        schema: {
          type: 'object',
          properties: { y: { type: 'boolean' }, z: { type: ['boolean', 'null'] }, w: { type: 'number' } },
        },
      },
    ],
  }
  const withOpen = (text: string) => codes(text, extensionsOf([pulleys, open]))
  return [
    ...codes(hardware({ turns: 0.3 })),
    ...codes(knots(9)),
    ...codes(colour('no')),
    ...codes(colour('yellow')),
    ...codes(
      jobText({ uses: { pulleys: 1 } }),
      upgrade((item) => item),
    ),
    ...codes(
      jobText({ uses: { pulleys: 1 } }),
      upgrade(() => []),
    ),
    ...codes(jobText({ rooms: Array.from({ length: 1100 }, (_, n) => ({ id: `r${n}`, name: 'R', windows: [], x: 1 })) })),
    ...withOpen(jobText({ uses: { pulleys: 3, open: 1 }, with: { open: { x: 1 } } })),
    ...withOpen(
      jobText({ uses: { pulleys: 3, open: 1 } }).replace('"name": "Den"', '"name": "Den", "with": { "open": { "x": 1 } }'),
    ),
    ...withOpen(
      jobText({ uses: { pulleys: 3, open: 1 } }).replace(
        '"name": "Window"',
        '"name": "Window", "with": { "open": { "y": 1, "z": 1, "w": "1" } }',
      ),
    ),
  ]
}

test('every code is said of some wrong file', () => {
  const seen = new Set([...shown.map(({ code }) => code), ...inventions()])
  expect(Object.keys(jobWords).filter((code) => !seen.has(code))).toEqual([])
})

test('every code that is said has its words', () => {
  const known = new Set([...Object.keys(jobWords), ...Object.keys(lengthWords)])
  expect([...shown.map(({ code }) => code), ...inventions()].filter((code) => !known.has(code))).toEqual([])
})

test('every gap of a sentence is filled', () => {
  expect(shown.flatMap(({ says, help }) => [says, help ?? '']).filter((text) => /\{[a-zA-Z]+\}/.test(text))).toEqual([])
})

test('every sentence says what is unexpected, what is expected, and what to do', () => {
  expect(
    sentences
      .filter(({ says }) => !/^Unexpected .+, expected .+(;|\?|,) .+[.?…:}]$/.test(says))
      .map(({ code, says }) => [code, says]),
  ).toEqual([])
})

test('every sentence is a message in ICU form, without markup', () => {
  const texts = sentences.flatMap(({ says, help }) => [says, help ?? ''])
  for (const text of texts) expect(() => new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true })).not.toThrow()
})

test('nothing is called invalid, and nobody is shouted at', () => {
  expect(sentences.filter(({ says, help = '' }) => /invalid|illegal|!|please|sorry/i.test(says + help))).toEqual([])
})
