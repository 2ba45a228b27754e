import type { Place } from '../places.ts'
import { type Finding, info, type Severity, type Values } from './finding.ts'
import { type Pointer, placeOf } from './pointers.ts'
import { liner, locate, type Offsets } from './positions.ts'
import { pointerIn } from './readings.ts'
import type { Node } from './tree.ts'

/** Something to be said about a job file, and where. `code` has its sentence in `jobWords`, or in `lengthWords` of the length package. */
export interface Diagnostic {
  readonly code: string
  readonly severity: Severity
  /** The place in the job; undefined for what is no value of it, and below an item without id. */
  readonly place?: Place
  readonly pointer?: Pointer
  /** From 1; columns count UTF-16 code units. The end is the place after the last one. */
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  /** What the sentence is filled with. */
  readonly values: Values
}

// More than this nobody reads, and a file of millions of mistakes must not become as many sentences.
const mostDiagnostics = 1000

interface Placed {
  readonly finding: Finding
  readonly offsets: Offsets
}
const sameness = ({ code, spot, values, other }: Finding): string => JSON.stringify([code, spot, values, other])

/** Where the text itself is wrong, what a schema says about the value read in its stead is left out. */
function withoutEchoes(placed: readonly Placed[]): readonly Placed[] {
  const isAboutText = ({ finding }: Placed) => pointerIn(finding) === undefined
  const wrong = new Set(
    placed.filter((one) => isAboutText(one) && one.finding.severity === 'error').map(({ offsets }) => offsets[0]),
  )
  return placed.filter((one) => isAboutText(one) || !wrong.has(one.offsets[0]))
}

/** Findings with their lines and columns, in the order of the text; each once, and at most 1,000. `isCut`: there is more than was looked into. */
export function diagnose(all: readonly Finding[], text: string, root: Node, job: unknown, isCut = false): readonly Diagnostic[] {
  const findings = [...new Map(all.map((finding) => [sameness(finding), finding])).values()]
  const position = liner(text)
  const placed = withoutEchoes(findings.map((finding) => ({ finding, offsets: locate(text, root, finding.spot) })))
  const sorted = placed.toSorted((a, b) => a.offsets[0] - b.offsets[0])
  const isMore = isCut || sorted.length > mostDiagnostics
  const end = [text.length, text.length] as const
  const rest = isMore
    ? [{ finding: info('job/more', { from: end[0], to: end[1] }, { most: mostDiagnostics }), offsets: end }]
    : []
  return [...sorted.slice(0, mostDiagnostics), ...rest].map(({ finding, offsets: [from, to] }) => {
    const { code, severity, values, other } = finding
    const pointer = pointerIn(finding)
    const after = position(Math.max(from, to))
    const elsewhere = other && position(locate(text, root, other)[0])
    return {
      code,
      severity,
      ...(pointer !== undefined && { pointer, place: placeOf(job, pointer) }),
      ...position(from),
      endLine: after.line,
      endColumn: after.column,
      values: elsewhere ? { ...values, otherLine: elsewhere.line, otherColumn: elsewhere.column } : values,
    }
  })
}
