import type { Readings } from '../lay.ts'
import type { Job } from '../types.generated.ts'
import { decode, withoutMark } from './bytes.ts'
import { type Diagnostic, diagnose } from './diagnostics.ts'
import { type Extensions, withIds } from './extensions.ts'
import { error, type Finding } from './finding.ts'
import { newPass, putLengths } from './keywords.ts'
import { checkNames, walk } from './names.ts'
import { oddities } from './odd.ts'
import { parse } from './parse.ts'
import { checkPlugins } from './plugins.ts'
import { pointerIn, readFound } from './readings.ts'
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
  const pass = newPass(job.units)
  validators.job(job, pass)
  checkPlugins(job, extensions, validators, pass)
  const found = readFound(job, extensions, validators, pass)
  putLengths(pass)
  const all = [...upgraded, ...pass.findings, ...checkNames(job, pass), ...found.findings]
  const findings = isBroken ? all.filter(({ code }) => !lostWithIt.has(code)) : all
  return { readings: found.readings, findings, isCut: pass.isCut }
}

// What a broken text lost may well have been there.
const lostWithIt = new Set(['job/missing', 'job/missing-plain', 'job/too-few'])
