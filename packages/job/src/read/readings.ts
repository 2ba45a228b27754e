import type { Readings } from '../lay.ts'
import type { Place } from '../places.ts'
import type { Reading } from '../types.generated.ts'
import { type Extensions, formatOf, kindOf } from './extensions.ts'
import { error, type Finding, info } from './finding.ts'
import { newPass, type Pass, putLengths } from './keywords.ts'
import { checkNames } from './names.ts'
import { nearest } from './near.ts'
import { at, below, type Pointer, pointerOf, tokensOf } from './pointers.ts'
import type { Validators } from './validators.ts'
import { idOf, isObject } from './values.ts'

/** Readings whose values are in the form that their places ask for, and what is wrong with the others. */
export interface FoundReadings {
  readonly readings: Readings
  readonly findings: readonly Finding[]
}

/** Reads what a job has under `found`: each value by the schema of its place. One that is refused is reported and left out. */
export function readFound(job: unknown, extensions: Extensions, validators: Validators, pass: Pass): FoundReadings {
  const found = isObject(job) && isObject(job.found) ? job.found : {}
  const readings: Record<Place, Reading> = {}
  const findings: Finding[] = []
  for (const [place, raw] of Object.entries(found)) {
    const stands = below('/found', place)
    if (!isObject(raw) || raw.value === undefined || hasError(pass.findings, stands)) continue
    const refused = refusedPlace(job, place, stands, extensions, validators)
    const { value, findings: more } = refused
      ? { value: undefined, findings: [refused] }
      : readValue(job, place, raw.value, stands, validators, pass)
    findings.push(...more)
    if (value !== undefined) readings[place] = { ...(raw as unknown as Reading), value }
  }
  return { readings, findings }
}

/** The pointer of a finding, when it has one. */
export const pointerIn = ({ spot }: Finding): Pointer | undefined =>
  'value' in spot ? spot.value : 'name' in spot ? spot.name : undefined
const hasError = (findings: readonly Finding[], pointer: Pointer): boolean =>
  findings.some((finding) => finding.severity === 'error' && `${pointerIn(finding) ?? ''}/`.startsWith(`${pointer}/`))

/** What is wrong with a place, before anything is said of the value. */
function refusedPlace(
  job: unknown,
  place: Place,
  stands: Pointer,
  extensions: Extensions,
  validators: Validators,
): Finding | undefined {
  if (!place.startsWith('/')) return error('job/reading-no-place', { name: stands }, { place })
  const pointer = pointerOf(job, place)
  if (pointer === undefined) return noItem(job, place, stands)
  const plugin = strangePlugin(job, place, pointer, extensions)
  if (plugin !== undefined) return info('job/reading-kept', { name: stands }, { place, plugin })
  return validators.describe.at(job, tokensOf(pointer)).schemas.length > 0
    ? undefined
    : noMember(job, tokensOf(pointer), stands, place, validators)
}

/** The plugin that a place belongs to, when it is not known here, or only in an older version. */
function strangePlugin(job: unknown, place: Place, pointer: Pointer, extensions: Extensions): string | undefined {
  const tokens = tokensOf(place)
  const part = tokens.indexOf('with')
  const kind = tokens[0] === 'hardware' ? at(job, `${pointer.split('/').slice(0, 3).join('/')}/kind`) : undefined
  const plugin = part >= 0 ? tokens[part + 1] : typeof kind === 'string' ? (kindOf(extensions, kind)?.plugin ?? kind) : undefined
  const isStrange =
    plugin !== undefined && !(Number(at(job, below('/uses', plugin)) ?? 0) <= (formatOf(extensions, plugin) ?? -1))
  return isStrange ? plugin : undefined
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

function readValue(job: unknown, place: Place, raw: unknown, stands: Pointer, validators: Validators, outer: Pass) {
  const pass: Pass = { ...newPass(outer.units), answers: outer.answers }
  const holder = { value: structuredClone(raw) }
  const as = tokensOf(pointerOf(job, place) ?? '')
  validators.as(
    validators.describe.at(job, as),
    { value: holder.value, at: below(stands, 'value'), holder, key: 'value', as },
    job,
    pass,
  )
  const much = pass.withs.length + pass.entries.length > 0 ? [error('job/reading-of-much', { name: stands }, { place })] : []
  const findings = [...pass.findings, ...checkNames(job, pass), ...much]
  if (findings.some(({ severity }) => severity === 'error')) return { value: undefined, findings }
  putLengths(pass)
  return { value: holder.value, findings }
}
