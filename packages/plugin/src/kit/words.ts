import { IntlMessageFormat } from 'intl-messageformat'
import type { Plugin, Words } from '../contract.ts'
import { type ArgumentUse, argumentsOf } from '../message.ts'
import type { Said } from './said.ts'

type Uses = ReadonlyMap<string, ReadonlySet<ArgumentUse>>
// The same sentence is said at a hundred windows.
const known = new Map<string, Uses | string>()
/** The arguments of a message; a text where it can't be read. */
function usesOf(text: string): Uses | string {
  const uses = known.get(text) ?? readUses(text)
  known.set(text, uses)
  return uses
}
function readUses(text: string): Uses | string {
  try {
    return argumentsOf(new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true }).getAst())
  } catch (error) {
    return (error as Error).message
  }
}
const partsOf = ({ says, help }: Words[string]): readonly (readonly [string, string])[] => [
  ['says', says],
  ...(help === undefined ? [] : [['help', help] as const]),
]

/** Codes without words, in some language of the plugin. */
export function wordless(
  plugin: Plugin,
  others: readonly Plugin[],
  said: readonly Said[],
  codes: readonly string[],
): readonly string[] {
  const languages = Object.keys(plugin.words)
  const wanted = new Map([
    ...said.filter((each) => !each.perhaps).map(({ code, by }) => [code, by] as const),
    ...codes.map((code) => [code, 'a rule’s codes'] as const),
  ])
  return languages.flatMap((language) =>
    [...wanted]
      .filter(([code]) => !wordsFor(plugin, others, language, code))
      .map(([code, by]) => `"${code}" of ${by} has no words in "${language}"; add them to words.${language}`),
  )
}
/** The languages that a sheet can be switched to and the plugin has no words in. */
export const speechless = ({ words }: Plugin): readonly string[] =>
  ['en', 'es']
    .filter((language) => !words[language])
    .map((language) => `It has no words in "${language}"; add words.${language} with the same codes`)

function wordsFor(plugin: Plugin, others: readonly Plugin[], language: string, code: string): Words[string] | undefined {
  if (code.startsWith(`${plugin.id}/`)) return plugin.words[language]?.[code]
  return others.map(({ words }) => words[language]?.[code] ?? words.en?.[code]).find((each) => each !== undefined)
}

/** Sentences that need a value which is not given with their code, or need it as a number. */
export function valueless(plugin: Plugin, said: readonly Said[]): readonly string[] {
  const found = said
    .filter((each) => !each.anyValues)
    .flatMap(({ code, values, by }) =>
      Object.entries(plugin.words).flatMap(([language, words]) =>
        (words[code] ? partsOf(words[code]) : []).flatMap(([part, text]) =>
          [...missing(usesOf(text), values)].map(
            (name) =>
              `"${code}" of ${by}: ${part} in "${language}" needs {${name}}; give it among its values, or say another code there`,
          ),
        ),
      ),
    )
  return [...new Set(found)]
}
function* missing(uses: Uses | string, values: Said['values']): Iterable<string> {
  if (typeof uses === 'string') return
  for (const [name, use] of uses) {
    const value = values[name]
    const isNumber = typeof value === 'object' && !('length' in value) && !('code' in value)
    if (value === undefined) yield name
    else if (use.has('number') && !isNumber) yield `${name}, as a number`
  }
}

/** Where the languages of a plugin differ in codes or in the arguments of a sentence; sentences that can't be read. */
export function uneven(plugin: Plugin): readonly string[] {
  const codes = [...new Set(Object.values(plugin.words).flatMap((words) => Object.keys(words)))].sort()
  return codes.flatMap((code) => {
    const texts = Object.entries(plugin.words).map(([language, words]) => [language, words[code]] as const)
    const absent = texts
      .filter(([, words]) => !words)
      .map(([language]) => `"${code}" has no words in "${language}"; add them to words.${language}`)
    return [...absent, ...unevenParts(code, texts)]
  })
}
function unevenParts(code: string, texts: readonly (readonly [string, Words[string] | undefined])[]): readonly string[] {
  return (['says', 'help'] as const).flatMap((part) => {
    const read = texts.filter(([, words]) => words).map(([language, words]) => [language, signature(words?.[part])] as const)
    const broken = read
      .filter(([, text]) => text.startsWith('!'))
      .map(
        ([language, text]) =>
          `"${code}": ${part} in "${language}" can't be read: ${text.slice(1)}; each {name} needs both braces, plural and select an “other”`,
      )
    const differ = read
      .filter(([, text]) => text !== read[0]?.[1])
      .map(([language, text]) => `"${code}": ${part} in "${language}" has ${text}, in "${read[0]?.[0]}" ${read[0]?.[1]}`)
    return broken.length > 0 ? broken : differ
  })
}
const signature = (text: string | undefined): string => {
  if (text === undefined) return 'nothing'
  const uses = usesOf(text)
  return typeof uses === 'string' ? `!${uses}` : `{${[...uses.keys()].sort().join(', ')}}`
}
