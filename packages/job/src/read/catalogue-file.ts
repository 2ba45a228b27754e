import { decode, withoutMark } from './bytes.ts'
import { type CatalogueFile, catalogueFiles, type List, lists } from './catalogues.ts'
import { compiled } from './compiled.ts'
import { type Diagnostic, diagnose } from './diagnostics.ts'
import type { Extensions } from './extensions.ts'
import { error, type Finding, type Values } from './finding.ts'
import { newPass, putLengths } from './keywords.ts'
import { checkPlugins } from './plugins.ts'
import { shown } from './refusals.ts'
import { readText, without } from './text.ts'
import type { Node } from './tree.ts'
import { isObject, own } from './values.ts'

/** A catalogue file: hardware and fabrics that several jobs share. */
export interface ReadCatalogueFile {
  /** Undefined when something about it is an error. */
  readonly catalogue?: Readonly<Record<List, readonly object[]>>
  readonly diagnostics: readonly Diagnostic[]
  readonly text: string
}

/** Why a catalogue could not be opened, by whoever opens files: one of the codes `job/catalogue-…`, and what its sentence is filled with. */
export interface UnreadCatalogue {
  readonly why: 'missing' | 'outside' | 'no-file' | 'too-large' | 'unreadable'
  readonly values?: Values
}
/** What became of a file that a job names: what it holds, or why that is not known. */
export type CatalogueContent = Uint8Array | string | UnreadCatalogue

/** True of the text of a catalogue, which is read by `readCatalogue` and not as a job. */
export const isCatalogue = (text: string): boolean => /"format"\s*:\s*"evenhem-catalogue\//.test(text)

/** The catalogue files that the text of a job names and that may be read, relative to its folder; none when it is no JSON. */
export function cataloguesNamed(text: string): readonly string[] {
  if (!text.includes('"catalogues"')) return []
  try {
    return catalogueFiles(JSON.parse(withoutMark(text)))
  } catch {
    return []
  }
}

/** Reads a catalogue like a job, with its own places. */
export function readCatalogue(bytes: Uint8Array | string, options: Extensions): ReadCatalogueFile {
  const { text, value, tree, findings, isCut } = catalogueText(bytes, options)
  const diagnostics = findings.length > 0 ? diagnose(findings, text, tree(), value, isCut) : []
  const isGood = isObject(value) && !findings.some(({ severity }) => severity === 'error')
  return {
    ...(isGood && { catalogue: { hardware: listOf(value, 'hardware'), fabrics: listOf(value, 'fabrics') } }),
    diagnostics,
    text,
  }
}
const listOf = (value: unknown, list: List): readonly object[] => {
  const items = own(value, list)
  return Array.isArray(items) ? items : []
}

/** The value of a catalogue, its lengths read, and as it is written. */
function catalogueText(bytes: Uint8Array | string, options: Extensions) {
  const { text, whole, findings: odd } = decode(bytes)
  const nothing: Node = { is: 'nothing', start: 0, end: 0, value: undefined }
  if (!whole) return { text, value: undefined, tree: () => nothing, findings: odd, written: undefined, isCut: false }
  const { value, tree, findings, twice } = readText(withoutMark(text))
  const written = structuredClone(value)
  const checked = value === undefined ? { findings: [], isCut: false } : checkCatalogue(value, options)
  const said = findings.length > 0 ? without(checked.findings) : checked.findings
  return { text, value, tree, findings: [...odd, ...findings, ...twice, ...said], written, isCut: checked.isCut }
}

const newer = /^evenhem-catalogue\/(?!1$)\d+$/

/** Checks a value as a catalogue and puts its lengths. */
function checkCatalogue(value: unknown, options: Extensions): { readonly findings: readonly Finding[]; readonly isCut: boolean } {
  const only = (finding: Finding) => ({ findings: [finding], isCut: false })
  if (!isObject(value)) return only(error('job/no-catalogue', { value: '' }, { got: shown(value) }))
  const { format } = value
  if (typeof format === 'string' && newer.test(format))
    return only(error('job/newer-catalogue', { value: '/format' }, { got: format }))
  const { extensions, validators } = compiled(options)
  const pass = newPass(value.units)
  validators.catalogue(value, pass)
  checkPlugins(value, extensions, validators, pass)
  putLengths(pass)
  const takers = takersIn(value)
  const lacks = new Set(takers)
  // A catalogue names no plugins: the jobs that take from it do. What an entry lacks that takes from elsewhere is said by that.
  const said = pass.findings.filter(
    ({ code, spot }) => code !== 'job/no-uses' && !(code === 'job/missing' && 'value' in spot && lacks.has(spot.value)),
  )
  const chains = takers.map((at) => error('job/catalogue-chain', { value: `${at}/catalogue/from` }))
  return { findings: [...chains, ...said], isCut: pass.isCut }
}

/** Entries that say themselves to be taken from a catalogue of a job. */
const takersIn = (value: unknown): readonly string[] =>
  lists.flatMap((list) => listOf(value, list).flatMap((entry, n) => (takes(entry) ? [`/${list}/${n}`] : [])))
function takes(entry: object): boolean {
  const reference = own(entry, 'catalogue')
  return isObject(reference) && typeof reference.from === 'string'
}

/** What became of a catalogue that a job names. */
export function catalogueFile(content: CatalogueContent | undefined, options: Extensions): CatalogueFile {
  if (content === undefined) return { wrong: 'missing' }
  if (isObject(content) && 'why' in content)
    return { wrong: content.why as UnreadCatalogue['why'], values: content.values as Values }
  const { value, findings, written } = catalogueText(content as Uint8Array | string, options)
  const count = findings.filter(({ severity }) => severity === 'error').length
  if (count > 0 || !isObject(value)) return { wrong: 'broken', values: { count } }
  const entries = (list: List) =>
    listOf(value, list).map((read, n) => ({
      read: { ...read } as Readonly<Record<string, unknown>>,
      written: listOf(written, list)[n] as Readonly<Record<string, unknown>>,
    }))
  return { catalogue: { lists: { hardware: entries('hardware'), fabrics: entries('fabrics') } } }
}
