import { below, type Job, type Readings, type Signature } from '@evenhem/job'
import { type Fingerprint, fingerprintOf } from './fingerprint.ts'
import type { Section } from './outline.ts'
import type { Voice } from './voice.ts'

/** A signature as a paper shows it. */
export interface ShownSignature {
  readonly id: string
  readonly name: string
  /** As whom, and when: `Customer, December 8, 2026`. */
  readonly as: string
  /** What was accepted, and what was left with the customer. */
  readonly says: readonly string[]
  /** Strokes as a path in a field of 300 by 100; empty where the name was typed. */
  readonly path: string
  /** For who cannot see it. */
  readonly alternative: string
  readonly fingerprint: Fingerprint
}
/** The signatures; `instead` is said while a customer's is missing. */
export interface Signed extends Section<ShownSignature> {
  readonly instead?: string
  /** What the fingerprints are for. */
  readonly about: string
  /** A customer has signed: what follows is no draft. */
  readonly isSigned: boolean
}

/** The field that signatures are drawn in: three times as wide as high. */
export const field = { width: 300, height: 100 }
const round = (share: number): number => Math.round(share * 10) / 10

/** A stroke as a path through its places; one place by itself is a dot. */
function strokePath(stroke: readonly number[]): string {
  const places = Array.from({ length: Math.floor(stroke.length / 2) }, (_, n) =>
    [round((stroke[2 * n] as number) * field.width), round((stroke[2 * n + 1] as number) * field.height)].join(' '),
  )
  const [first, ...rest] = places
  return first === undefined ? '' : `M${first}${rest.length > 0 ? `L${rest.join(' ')}` : 'h.1'}`
}

const signaturesIn = ({ job }: Job): readonly (readonly [id: string, signature: Signature])[] =>
  Object.entries(job.found?.signatures ?? {})

const when = (id: string, readings: Readings): string => readings[below('/job/found/signatures', id)]?.when ?? ''

function shown(id: string, signature: Signature, readings: Readings, voice: Voice): ShownSignature {
  const { role, name, accepts, strokes, typed, left, seal } = signature
  const day = when(id, readings)
  const as = [voice.text(`report/signed-${role}`), ...(day ? [voice.day(day)] : [])].join(', ')
  return {
    id,
    name,
    as,
    says: [
      ...(accepts ? [voice.text(`report/accepts-${accepts === 'with open points' ? 'with' : 'without'}`)] : []),
      ...(typed ? [voice.text('report/signed-typed')] : []),
      ...(left ? [voice.text('report/signed-left', { left })] : []),
    ],
    path: typed ? '' : strokes.map(strokePath).join(''),
    alternative: voice.text('report/signature-of', { name }),
    fingerprint: fingerprintOf(seal),
  }
}

/** When it was signed in ms since 1970, whatever clock it was written on; 0 where nobody said. */
const time = (id: string, readings: Readings): number => Date.parse(when(id, readings)) || 0

/** Who signed, the earliest first. */
export function signedOf(found: Job, readings: Readings, voice: Voice): Signed {
  const all = signaturesIn(found).toSorted(([a], [b]) => time(a, readings) - time(b, readings))
  const isSigned = all.some(([, { role }]) => role === 'customer')
  return {
    title: voice.text('report/signed'),
    of: all.map(([id, signature]) => shown(id, signature, readings, voice)),
    ...(isSigned ? {} : { instead: voice.text('report/not-signed') }),
    about: voice.text('report/fingerprint'),
    isSigned,
  }
}
