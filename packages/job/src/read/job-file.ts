import type { Readings } from '../lay.ts'
import type { Place } from '../places.ts'
import type { Job } from '../types.generated.ts'
import { decode, withoutMark } from './bytes.ts'
import { type CatalogueFile, catalogueFiles, changedSince, type List, mergeCatalogues } from './catalogues.ts'
import { type Diagnostic, diagnose } from './diagnostics.ts'
import { type Extensions, withIds } from './extensions.ts'
import { error, type Finding } from './finding.ts'
import { newPass, putLengths } from './keywords.ts'
import { checkNames, walk } from './names.ts'
import { oddities } from './odd.ts'
import { parse } from './parse.ts'
import { checkPlugins } from './plugins.ts'
import { type EntryRead, pointerIn, readEntryAt, readFound } from './readings.ts'
import { shown } from './refusals.ts'
import { deepest, scan } from './scan.ts'
import { type Node, toValue } from './tree.ts'
import { upgrade } from './upgrades.ts'
import { type Validators, validatorsOf } from './validators.ts'
import { isObject } from './values.ts'

/** What a job file held. */
export interface ReadJob {
  /** The order, its lengths read; undefined when something about the order is an error. */
  readonly job?: Job
  /** The readings of its `found`, those that are not refused. */
  readonly readings: Readings
  readonly diagnostics: readonly Diagnostic[]
  /** The text of the file, every byte of it, for showing diagnostics and for edits. Of a file that is no UTF-8, only to be shown. */
  readonly text: string
}
/** What plugins add to the format, and what the file is called. */
export interface ReadOptions extends Extensions {
  readonly file?: string
  /** The bytes of the catalogue files that the job names, by their names; those that are not here are missing. */
  readonly catalogues?: ReadonlyMap<string, Uint8Array | string>
}

interface Compiled {
  readonly from: Extensions
  readonly extensions: Extensions
  readonly validators: Validators
}
const kept = new WeakMap<object, Compiled>()

/** Options may be made anew for each file; the lists in them are the same, so validators are kept by these. */
function compiled(options: Extensions): Compiled {
  const before = kept.get(options.kinds)
  if (before && before.from.additions === options.additions) return before
  const extensions = withIds(options)
  const made = { from: options, extensions, validators: validatorsOf(extensions) }
  kept.set(options.kinds, made)
  return made
}

/**
 * Reads a job file: bytes to text to value, checked against the format and the plugins' schemas, lengths made `Length`. Everything that can be
 * told is told, also of a file whose syntax is broken. Never throws for what is in the file; a TypeError tells of extensions that contradict
 * each other. The text is read once, quickly; where each thing stands is only looked up when something is to be said.
 */
export function readJob(bytes: Uint8Array | string, options: ReadOptions): ReadJob {
  const { text, whole, findings: odd } = decode(bytes)
  const nothing: Node = { is: 'nothing', start: 0, end: 0, value: undefined }
  if (!whole) return { readings: {}, text, diagnostics: diagnose(odd, text, nothing, undefined) }
  const { value, tree, findings, twice } = readText(withoutMark(text))
  const checked = value === undefined ? nothingFound : checkJob(value, findings.length > 0, options)
  const all = [...odd, ...findings, ...twice, ...checked.findings]
  const diagnostics = all.length > 0 ? diagnose(all, text, tree(), value, checked.isCut) : []
  const isUsable =
    value !== undefined && !all.some((finding) => finding.severity === 'error' && !pointerIn(finding)?.startsWith('/found/'))
  return { ...(isUsable && { job: value as Job }), readings: checked.readings, diagnostics, text }
}

/** Reads one value that somebody put at a place of a read job: by the schema of that place, lengths made `Length`. Never throws for a value. */
export function readEntry(job: Job, place: Place, value: unknown, options: Extensions): EntryRead {
  const { extensions, validators } = compiled(options)
  return readEntryAt(job, place, value, extensions, validators)
}

/** The value of a text, whatever its syntax, and what is wrong with that. Its tree is made when it is asked for. */
interface TextRead {
  readonly value: unknown
  readonly tree: () => Node
  readonly findings: readonly Finding[]
  /** Ids that stand twice in a list. */
  readonly twice: readonly Finding[]
}

function readText(text: string): TextRead {
  const { tooDeep, names, odd } = scan(text)
  let parsed: ReturnType<typeof parse> | undefined
  const once = () => (parsed ??= parse(text))
  const tree = () => once().root
  if (tooDeep !== undefined)
    return {
      value: undefined,
      tree,
      findings: [error('job/too-deep', { from: tooDeep, to: tooDeep + 1 }, { most: deepest })],
      twice: [],
    }
  try {
    const value: unknown = JSON.parse(text)
    // A name that stands twice is lost in the value, so the text has more of them.
    const walked = walk(value)
    const isPlain = !odd && walked.names === names
    return { value, tree, findings: isPlain ? [] : oddities(text, tree()), twice: walked.twice }
  } catch {
    const { root, faults } = once()
    const findings = faults.length > 0 ? faults : [error('job/stray', { from: 0, to: 1 }, { got: text.slice(0, 1) })]
    const value = toValue(root)
    return { value, tree, findings: [...findings, ...oddities(text, root)], twice: walk(value).twice }
  }
}

const newer = /^evenhem-job\/(?!1$)\d+$/

interface Checked {
  readonly readings: Readings
  readonly findings: readonly Finding[]
  /** Whether there is more than was looked into. */
  readonly isCut: boolean
}
const nothingFound: Checked = { readings: {}, findings: [], isCut: false }

/** Checks a value as a job and puts its lengths. */
function checkJob(job: unknown, isBroken: boolean, options: ReadOptions): Checked {
  const only = (finding: Finding): Checked => ({ ...nothingFound, findings: [finding] })
  if (!isObject(job)) return only(error('job/no-object', { value: '' }, { got: shown(job) }))
  const { format } = job
  if (typeof format === 'string' && newer.test(format))
    return only(error('job/newer-format', { value: '/format' }, { got: format }))
  const { extensions, validators } = compiled(options)
  const upgraded = upgrade(job, extensions)
  const merged = mergeCatalogues(job, (file) => catalogueFile(options.catalogues?.get(file), options))
  const pass = newPass(job.units)
  validators.job(job, pass)
  checkPlugins(job, extensions, validators, pass)
  const found = readFound(job, extensions, validators, pass)
  putLengths(pass)
  const own = pass.findings.filter(
    ({ code, spot }) => !(code === 'job/missing' && 'value' in spot && merged.lost.has(spot.value)),
  )
  const all = [
    ...upgraded,
    ...merged.findings,
    ...changedSince(merged.frozen),
    ...own,
    ...checkNames(job, pass),
    ...found.findings,
  ]
  const findings = isBroken ? all.filter(({ code }) => !lostWithIt.has(code)) : all
  return { readings: found.readings, findings, isCut: pass.isCut }
}

// What a broken text lost may well have been there.
const lostWithIt = new Set(['job/missing', 'job/missing-plain', 'job/too-few'])

/** A catalogue file: hardware and fabrics that several jobs share. */
export interface ReadCatalogueFile {
  /** Undefined when something about it is an error. */
  readonly catalogue?: Readonly<Record<List, readonly object[]>>
  readonly diagnostics: readonly Diagnostic[]
  readonly text: string
}
const catalogueMembers = ['$schema', 'format', 'units', 'name', 'hardware', 'fabrics']

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
  const { text, value, tree, findings } = catalogueText(bytes, options)
  const diagnostics = findings.length > 0 ? diagnose(findings, text, tree(), value) : []
  const isGood = isObject(value) && !findings.some(({ severity }) => severity === 'error')
  return {
    ...(isGood && { catalogue: { hardware: listOf(value, 'hardware'), fabrics: listOf(value, 'fabrics') } }),
    diagnostics,
    text,
  }
}
const listOf = (value: Readonly<Record<string, unknown>>, list: List): readonly object[] =>
  Array.isArray(value[list]) ? (value[list] as readonly object[]) : []

/** Entries are checked as those of a job that holds nothing else, so places are the same. */
function catalogueText(bytes: Uint8Array | string, options: Extensions) {
  const { text, whole, findings: odd } = decode(bytes)
  const nothing: Node = { is: 'nothing', start: 0, end: 0, value: undefined }
  if (!whole) return { text, value: undefined, tree: () => nothing, findings: odd, written: undefined }
  const { value, tree, findings, twice } = readText(withoutMark(text))
  const own = [...odd, ...findings, ...twice]
  if (!isObject(value))
    return {
      text,
      value,
      tree,
      findings: [...own, ...(own.length > 0 ? [] : [error('job/no-object', { value: '' }, { got: shown(value) })])],
      written: undefined,
    }
  const written = structuredClone(value)
  const strange = Object.keys(value).filter((name) => !catalogueMembers.includes(name))
  const unknown = strange.map((name) =>
    error('job/unknown-member', { name: `/${name}` }, { name, members: catalogueMembers.join(', ') }),
  )
  const missing = (['units', 'name'] as const)
    .filter((name) => typeof value[name] !== 'string')
    .map((name) => error('job/missing-plain', { value: '' }, { name }))
  const { units, hardware, fabrics } = value
  const job = {
    format: 'evenhem-job/1',
    ...(units === undefined ? { units: 'in' } : { units }),
    job: { number: '-', name: '-', country: 'US' },
    ...(hardware === undefined ? {} : { hardware }),
    ...(fabrics === undefined ? {} : { fabrics }),
    rooms: [],
  }
  const checked = checkJob(job, findings.length > 0, options)
  // A catalogue names no plugins: the jobs that take from it do.
  const others = checked.findings.filter(({ code }) => code !== 'job/no-uses')
  return { text, value, tree, findings: [...own, ...unknown, ...missing, ...others], written }
}

function catalogueFile(bytes: Uint8Array | string | undefined, options: Extensions): CatalogueFile {
  if (bytes === undefined) return { wrong: 'missing', count: 0 }
  const { value, findings, written } = catalogueText(bytes, options)
  const errors = findings.filter(({ severity }) => severity === 'error').length
  if (errors > 0 || !isObject(value) || !isObject(written)) return { wrong: 'broken', count: errors }
  const entries = (list: List) =>
    listOf(value, list).map((read, n) => ({
      read: { ...read } as Readonly<Record<string, unknown>>,
      written: listOf(written, list)[n] as Readonly<Record<string, unknown>>,
    }))
  return { catalogue: { lists: { hardware: entries('hardware'), fabrics: entries('fabrics') } } }
}
