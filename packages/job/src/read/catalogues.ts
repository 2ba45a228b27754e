import { error, type Finding, short, type Values, warning } from './finding.ts'
import { nearest } from './near.ts'
import { below, type Pointer } from './pointers.ts'
import { shown } from './refusals.ts'
import { isObject } from './values.ts'

type Entry = Readonly<Record<string, unknown>>
/** A catalogue that was read: its entries as they are written and as they read, lengths in nanometres. */
export interface ReadCatalogue {
  readonly lists: Readonly<Record<List, readonly { readonly written: Entry; readonly read: Entry }[]>>
}
/** What became of a file that a job names as a catalogue. */
export type CatalogueFile =
  | { readonly catalogue: ReadCatalogue }
  | { readonly wrong: 'missing' | 'outside' | 'no-file' | 'too-large' | 'unreadable' | 'broken'; readonly values?: Values }

export const lists = ['hardware', 'fabrics'] as const
export type List = (typeof lists)[number]

const allowed = /^(?:\.\.\/)?(?:[^/\\:.\p{Cc}][^/\\:\p{Cc}]*\/)*[^/\\:.\p{Cc}][^/\\:\p{Cc}]*\.json$/u
/** Whether a path from the folder of a job stays in it or in the one that holds it, and ends at a .json file; hidden files are none. */
export const mayBeCatalogue = (path: string): boolean => allowed.test(path)

/** The files that a job names as catalogues, in its order: only those that may be read, relative to the folder of the job. */
export function catalogueFiles(job: unknown): readonly string[] {
  const named = isObject(job) && Array.isArray(job.catalogues) ? job.catalogues : []
  const files = named.flatMap((each: unknown) => (isObject(each) && typeof each.file === 'string' ? [each.file] : []))
  return [...new Set(files)].filter(mayBeCatalogue)
}

/** Members that an entry has of itself; with no others it is the catalogue's. */
const itsOwn: ReadonlySet<string> = new Set(['id', 'kind', 'name', 'catalogue'])

interface Frozen {
  readonly at: Pointer
  readonly read: Entry
  readonly original: Entry
  /** As both are written. */
  readonly written: Entry
  readonly catalogue: Entry
}
/** What is to be compared when the lengths of the job are read. */
export interface Merged {
  readonly findings: readonly Finding[]
  readonly frozen: readonly Frozen[]
  /** Entries that refer to what is not there: that they lack members is said by that. */
  readonly lost: ReadonlySet<Pointer>
}

/** Puts what catalogues say in the place of entries that only refer to them; those with members of their own stay as they are. Changes the job. */
export function mergeCatalogues(job: Record<string, unknown>, fileOf: (file: string) => CatalogueFile): Merged {
  const findings: Finding[] = []
  const frozen: Frozen[] = []
  const lost = new Set<Pointer>()
  const known = new Map<string, ReadCatalogue>()
  for (const [n, named] of (Array.isArray(job.catalogues) ? job.catalogues : []).entries()) {
    if (!isObject(named) || typeof named.id !== 'string' || typeof named.file !== 'string') continue
    const spot = { value: below(`/catalogues/${n}`, 'file') }
    if (!mayBeCatalogue(named.file)) {
      findings.push(error('job/catalogue-path', spot, { got: short(named.file) }))
      continue
    }
    const file = fileOf(named.file)
    if ('catalogue' in file) known.set(named.id, file.catalogue)
    else findings.push(error(`job/catalogue-${file.wrong}`, spot, { ...file.values, got: short(named.file) }))
  }
  const broken = findings.length > 0
  for (const list of lists)
    for (const [n, entry] of (Array.isArray(job[list]) ? job[list] : []).entries()) {
      const reference = isObject(entry) && isObject(entry.catalogue) ? entry.catalogue : undefined
      if (!isObject(entry) || typeof reference?.from !== 'string') continue
      const at = `/${list}/${n}`
      const original = originalOf(at, list, entry, reference, known, broken)
      if ('code' in original || original.written === undefined) lost.add(at)
      if ('code' in original) findings.push(original)
      else if (original.written === undefined) continue
      else if (Object.keys(entry).some((name) => !itsOwn.has(name)))
        frozen.push({ at, read: entry, original: original.read, written: structuredClone(entry), catalogue: original.written })
      else Object.assign(entry, withUnits(original.written, original.read))
    }
  return { findings, frozen, lost }
}

interface Original {
  readonly written?: Entry
  readonly read: Entry
}
function originalOf(
  at: Pointer,
  list: List,
  entry: Entry,
  reference: Entry,
  known: ReadonlyMap<string, ReadCatalogue>,
  broken: boolean,
): Finding | Original {
  const from = String(reference.from)
  const catalogue = known.get(from)
  if (!catalogue)
    return broken ? { read: {} } : named('job/catalogue-unknown', below(below(at, 'catalogue'), 'from'), from, [...known.keys()])
  if (typeof reference.item !== 'string' && typeof entry.id !== 'string') return { read: {} }
  const item = typeof reference.item === 'string' ? reference.item : String(entry.id)
  const found = catalogue.lists[list].find(({ written }) => written.id === item)
  const ids = catalogue.lists[list].map(({ written }) => String(written.id))
  const place = typeof reference.item === 'string' ? below(below(at, 'catalogue'), 'item') : below(at, 'id')
  if (!found) return named('job/catalogue-item', place, item, ids)
  if (list === 'hardware' && found.written.kind !== entry.kind)
    return error(
      'job/catalogue-kind',
      { value: below(at, 'kind') },
      { got: shown(entry.kind), expected: shown(found.written.kind), item },
    )
  return found
}

/** A name that is none of those there are. */
function named(code: string, value: Pointer, got: string, names: readonly string[]): Finding {
  const values: Values = { got: short(got), names: names.slice(0, 16).join(', ') || '–' }
  const near = nearest(got, names)
  return near ? error(`${code}-near`, { value }, { ...values, near }) : error(code, { value }, values)
}

/** A number of a catalogue without a unit is in the catalogue's units and not in the job's, so lengths get theirs. */
function withUnits(written: Entry, read: Entry): Entry {
  const put = (raw: unknown, now: unknown): unknown => {
    if (Array.isArray(raw)) return raw.map((each, n) => put(each, (now as readonly unknown[])[n]))
    if (isObject(raw))
      return Object.fromEntries(Object.entries(raw).map(([name, each]) => [name, put(each, (now as Entry)[name])]))
    // A length reads as another number than it is written; what is no length stays.
    return raw === now || typeof now !== 'number' ? raw : inMillimetres(now)
  }
  return Object.fromEntries(
    Object.entries(written)
      .filter(([name]) => !itsOwn.has(name))
      .map(([name, each]) => [name, put(each, read[name])]),
  )
}
/** Whole nanometres as millimetres, exactly. */
const inMillimetres = (nanometres: number): string => {
  const sign = nanometres < 0 ? '-' : ''
  const digits = String(Math.abs(nanometres)).padStart(7, '0')
  return `${sign}${digits.slice(0, -6)}.${digits.slice(-6)} mm`
}

/** Values of frozen copies that are not what the catalogue says now: a warning each, with both as they are written. */
export const changedSince = (frozen: readonly Frozen[]): readonly Finding[] =>
  frozen.flatMap((each) => differences(each.at, each.read, each.original, each.written, each.catalogue))

function differences(at: Pointer, read: unknown, original: unknown, written: unknown, catalogue: unknown): readonly Finding[] {
  if (isObject(read) && isObject(original))
    return Object.keys(read)
      .filter((name) => name in original && (at.split('/').length > 3 || !itsOwn.has(name)))
      .flatMap((name) =>
        differences(below(at, name), read[name], original[name], memberOf(written, name), memberOf(catalogue, name)),
      )
  if (Array.isArray(read) && Array.isArray(original) && read.length === original.length)
    return read.flatMap((each, n) => differences(`${at}/${n}`, each, original[n], memberOf(written, n), memberOf(catalogue, n)))
  if (JSON.stringify(read) === JSON.stringify(original)) return []
  return [warning('job/catalogue-changed', { value: at }, { got: shown(written), now: shown(catalogue) })]
}
const memberOf = (value: unknown, name: string | number): unknown =>
  value !== null && typeof value === 'object' ? (value as Readonly<Record<string | number, unknown>>)[name] : undefined
