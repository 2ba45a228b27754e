import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { cataloguesNamed, extensionsOf, formatDiagnostics, readCatalogue, readJob } from '@evenhem/job/read'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'

const folder = fileURLToPath(new URL('../../../schema/examples/not-ok/', import.meta.url))
const extensions = extensionsOf(plugins)
/** A wrong job with the catalogues that lie beside it, or a wrong catalogue. */
const readWrong = (file: string) => {
  const text = readFileSync(folder + file)
  if (file.endsWith('.catalogue.json')) return readCatalogue(text, extensions)
  const named = cataloguesNamed(text.toString()).filter((each) => existsSync(folder + each))
  return readJob(text, { ...extensions, catalogues: new Map(named.map((each) => [each, readFileSync(folder + each)])) })
}
const files = readdirSync(folder).filter((file) => /\.(job|catalogue)\.json$/.test(file))
const nameOf = (file: string): string => file.replace(/\.(job|catalogue)\.json$/, '')
const names = files.map(nameOf)

/** What is written beside a wrong file; `-changed` beside that holds what is said now, when it differs. */
function expected(name: string, said: string): string {
  const [file, changed] = [`${folder}${name}.txt`, `${folder}${name}-changed.txt`]
  const text = existsSync(file) ? readFileSync(file, 'utf8') : ''
  if (text !== said) writeFileSync(changed, said)
  else rmSync(changed, { force: true })
  return text
}

test.each(files)('of %s everything is said that must be said, and nothing else', (file) => {
  const { diagnostics, text } = readWrong(file)
  const said = formatDiagnostics(diagnostics, text, { file })
  expect(said).toBe(expected(nameOf(file), said))
})

test('there are at least forty wrong files, of the format and of each plugin, and each has beside it what must be said', () => {
  expect(names.length).toBeGreaterThanOrEqual(40)
  const said = names.map((name) => (existsSync(`${folder}${name}.txt`) ? readFileSync(`${folder}${name}.txt`, 'utf8') : ''))
  expect(files.filter((file, i) => !said[i]?.startsWith(`${file}:`))).toEqual([])
})

test('what each plugin adds to the format is wrong in one of them', () => {
  const ofHardware = (path = '') => /^\/hardware\/[^/]+\/(?!id$|kind$|name$)/.test(path)
  const places = files.flatMap((file) => readWrong(file).diagnostics)
  const under = (part: string) =>
    places.filter(({ severity, place }) => severity === 'error' && place?.includes(`/with/${part}/`))
  expect(extensions.additions.filter(({ plugin }) => under(plugin).length === 0)).toEqual([])
  expect(Object.values(extensions.kinds).filter(({ plugin, part }) => part && under(plugin).length === 0)).toEqual([])
  expect(places.filter(({ place }) => ofHardware(place)).length).toBeGreaterThan(4)
})
