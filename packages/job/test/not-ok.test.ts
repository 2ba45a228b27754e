import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { cataloguesNamed, extensionsOf, formatDiagnostics, readJob } from '@evenhem/job/read'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'

const folder = fileURLToPath(new URL('../../../schema/examples/not-ok/', import.meta.url))
const extensions = extensionsOf(plugins)
/** A wrong file, with the catalogues that lie beside it. */
const readWrong = (file: string) => {
  const text = readFileSync(folder + file)
  const named = cataloguesNamed(text.toString()).filter((each) => existsSync(folder + each))
  return readJob(text, { ...extensions, catalogues: new Map(named.map((each) => [each, readFileSync(folder + each)])) })
}
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.job.json'))
  .map((file) => file.slice(0, -'.job.json'.length))

/** What is written beside a wrong file; `-changed` beside that holds what is said now, when it differs. */
function expected(name: string, said: string): string {
  const [file, changed] = [`${folder}${name}.txt`, `${folder}${name}-changed.txt`]
  const text = existsSync(file) ? readFileSync(file, 'utf8') : ''
  if (text !== said) writeFileSync(changed, said)
  else rmSync(changed, { force: true })
  return text
}

test.each(names)('of %s everything is said that must be said, and nothing else', (name) => {
  const { diagnostics, text } = readWrong(`${name}.job.json`)
  const said = formatDiagnostics(diagnostics, text, { file: `${name}.job.json` })
  expect(said).toBe(expected(name, said))
})

test('there are at least forty wrong files, of the format and of each plugin, and each has beside it what must be said', () => {
  expect(names.length).toBeGreaterThanOrEqual(40)
  const said = names.map((name) => (existsSync(`${folder}${name}.txt`) ? readFileSync(`${folder}${name}.txt`, 'utf8') : ''))
  expect(names.filter((name, i) => !said[i]?.startsWith(`${name}.job.json:`))).toEqual([])
})

test('what each plugin adds to the format is wrong in one of them', () => {
  const ofHardware = (path = '') => /^\/hardware\/[^/]+\/(?!id$|kind$|name$)/.test(path)
  const places = names.flatMap((name) => readWrong(`${name}.job.json`).diagnostics)
  const under = (part: string) =>
    places.filter(({ severity, place }) => severity === 'error' && place?.includes(`/with/${part}/`))
  expect(extensions.additions.filter(({ plugin }) => under(plugin).length === 0)).toEqual([])
  expect(Object.values(extensions.kinds).filter(({ plugin, part }) => part && under(plugin).length === 0)).toEqual([])
  expect(places.filter(({ place }) => ofHardware(place)).length).toBeGreaterThan(4)
})
