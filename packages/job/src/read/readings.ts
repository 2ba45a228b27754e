import type { Readings } from '../lay.ts'
import type { Place } from '../places.ts'
import type { Job, Reading } from '../types.generated.ts'
import { type Extensions, formatOf } from './extensions.ts'
import { error, type Finding, info, type Values } from './finding.ts'
import { newPass, type Pass, putLengths } from './keywords.ts'
import { checkNames } from './names.ts'
import { nearest } from './near.ts'
import { at, below, type Pointer, pointerOf, tokensOf } from './pointers.ts'
import type { Described } from './schemas.ts'
import type { Validators } from './validators.ts'
import { idOf, isObject } from './values.ts'

/** Readings whose values are in the form that their places ask for, and what is wrong with the others. */
export interface FoundReadings {
  readonly readings: Readings
  readonly findings: readonly Finding[]
}

/** What is said of a value that its place does not take. */
export interface RefusedEntry {
  readonly code: string
  readonly values: Values
}
/** A value as its place takes it, or why it does not. */
export type EntryRead = { readonly value: unknown } | { readonly refused: RefusedEntry }

/** Reads one value that was put at a place of a job, by the schema of that place. What belongs to a plugin that is not here is refused too. */
export function readEntryAt(job: Job, place: Place, raw: unknown, extensions: Extensions, validators: Validators): EntryRead {
  const stands = below('/found', place)
  const target = lookUp(job, place, stands, extensions, validators)
  const read =
    'says' in target
      ? { value: undefined, findings: [target.says] }
      : readValue(job, target, raw, stands, validators, newPass(job.units))
  const wrong = read.findings.find(({ severity }) => severity === 'error') ?? read.findings[0]
  return read.value === undefined && wrong ? { refused: { code: wrong.code, values: wrong.values } } : { value: read.value }
}

/** Reads what a job has under `found`: each value by the schema of its place. One that is refused is reported and left out. */
export function readFound(job: unknown, extensions: Extensions, validators: Validators, pass: Pass): FoundReadings {
  const found = isObject(job) && isObject(job.found) ? job.found : {}
  const refused = new Set(
    pass.findings.flatMap((finding) => (finding.severity === 'error' ? [tokensOf(pointerIn(finding) ?? '')[1]] : [])),
  )
  const readings: Record<Place, Reading> = {}
  const findings: Finding[] = []
  for (const [place, raw] of Object.entries(found)) {
    if (!isObject(raw) || raw.value === undefined || refused.has(place)) continue
    const stands = below('/found', place)
    const target = lookUp(job, place, stands, extensions, validators)
    const { value, findings: more } =
      'says' in target
        ? { value: undefined, findings: [target.says] }
        : readValue(job, target, raw.value, stands, validators, pass)
    findings.push(...more)
    if (value !== undefined) readings[place] = { ...(raw as unknown as Reading), value }
  }
  return { readings, findings }
}

/** The pointer of a finding, when it has one. */
export const pointerIn = ({ spot }: Finding): Pointer | undefined =>
  'value' in spot ? spot.value : 'name' in spot ? spot.name : undefined

/** Where a reading goes, and what the format says there. */
interface Target {
  readonly tokens: readonly string[]
  readonly described: Described
}

function lookUp(
  job: unknown,
  place: Place,
  stands: Pointer,
  extensions: Extensions,
  validators: Validators,
): Target | { readonly says: Finding } {
  if (!place.startsWith('/')) return { says: error('job/reading-no-place', { name: stands }, { place }) }
  const pointer = pointerOf(job, place)
  if (pointer === undefined) return { says: noItem(job, place, stands) }
  const tokens = tokensOf(pointer)
  const described = validators.describe.at(job, tokens)
  const { plugin } = described
  if (plugin !== undefined && !isUnderstood(plugin, job, extensions))
    return { says: info('job/reading-kept', { name: stands }, { place, plugin }) }
  return described.schemas.length > 0 ? { tokens, described } : { says: noMember(job, tokens, stands, place, validators) }
}

function isUnderstood(plugin: string, job: unknown, extensions: Extensions): boolean {
  const version = at(job, below('/uses', plugin))
  const ours = formatOf(extensions, plugin)
  return ours !== undefined && !(typeof version === 'number' && version > ours)
}

/** An item on the way that no list has. */
function noItem(job: unknown, place: Place, stands: Pointer): Finding {
  const tokens = tokensOf(place)
  const length = tokens.findIndex((_, index) => pointerOf(job, tokens.slice(0, index + 1).reduce(below, '')) === undefined)
  const list = at(job, pointerOf(job, tokens.slice(0, length).reduce(below, '')) ?? '')
  const ids = Array.isArray(list) ? list.flatMap((item) => idOf(item) ?? []) : []
  return notThere('job/reading-nowhere', stands, place, tokens[length] ?? '', ids)
}

/** A member that no schema has. */
function noMember(job: unknown, tokens: readonly string[], stands: Pointer, place: Place, { describe }: Validators): Finding {
  const length = tokens.findIndex((_, index) => describe.at(job, tokens.slice(0, index + 1)).schemas.length === 0)
  return notThere('job/reading-unknown', stands, place, tokens[length] ?? '', [
    ...describe.members(describe.at(job, tokens.slice(0, length))).keys(),
  ])
}

function notThere(code: string, stands: Pointer, place: Place, name: string, names: readonly string[]): Finding {
  const near = nearest(name, names)
  return error(
    near ? `${code}-near` : code,
    { name: stands },
    { place, name, near: near ?? '', names: names.slice(0, 16).join(', ') },
  )
}

function readValue(
  job: unknown,
  { tokens, described }: Target,
  raw: unknown,
  stands: Pointer,
  validators: Validators,
  outer: Pass,
) {
  const pass: Pass = { ...newPass(outer.units), answers: outer.answers }
  const holder = { value: typeof raw === 'object' ? structuredClone(raw) : raw }
  validators.as(described, { value: holder.value, at: below(stands, 'value'), holder, key: 'value', as: tokens }, job, pass)
  const much = pass.withs.length + pass.entries.length > 0 ? [error('job/reading-of-much', { name: stands })] : []
  const findings = [...pass.findings, ...checkNames(job, pass), ...much]
  if (findings.some(({ severity }) => severity === 'error')) return { value: undefined, findings }
  putLengths(pass)
  return { value: holder.value, findings }
}
