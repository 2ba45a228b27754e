import type { Readings } from '../lay.ts'
import type { Place } from '../places.ts'
import type { Job } from '../types.generated.ts'
import { decode, withoutMark } from './bytes.ts'
import { type CatalogueContent, catalogueFile } from './catalogue-file.ts'
import { changedSince, mergeCatalogues } from './catalogues.ts'
import { compiled } from './compiled.ts'
import { type Diagnostic, diagnose } from './diagnostics.ts'
import type { Extensions } from './extensions.ts'
import { error, type Finding } from './finding.ts'
import { newPass, putLengths } from './keywords.ts'
import { checkNames } from './names.ts'
import { checkPlugins } from './plugins.ts'
import { type EntryRead, pointerIn, readEntryAt, readFound } from './readings.ts'
import { shown } from './refusals.ts'
import { readText, without } from './text.ts'
import type { Node } from './tree.ts'
import { upgrade } from './upgrades.ts'
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
  /** The catalogue files that the job names, by their names; those that are not here are missing. */
  readonly catalogues?: ReadonlyMap<string, CatalogueContent>
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
    // A name of its own no catalogue could give it.
    ({ code, spot, values }) =>
      !(code === 'job/missing' && values.name !== 'id' && 'value' in spot && merged.lost.has(spot.value)),
  )
  const all = [
    ...upgraded,
    ...merged.findings,
    ...changedSince(merged.frozen),
    ...own,
    ...checkNames(job, pass),
    ...found.findings,
  ]
  const findings = isBroken ? without(all) : all
  return { readings: found.readings, findings, isCut: pass.isCut }
}
