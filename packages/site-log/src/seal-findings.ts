import type { Seal, SealedLine, Signature } from '@evenhem/job'
import { hashOf } from './chain.ts'
import { type EventId, eventId, writeEvent } from './event.ts'
import { ownHash, photosNamed, type Recorded, sealOf } from './seal.ts'

/** What differs from what was signed: the job file, the signature itself, a line, the chain before a line, which photos the lines name, a photo. */
export type SealCode =
  | 'seal/job'
  | 'seal/signature'
  | 'seal/line-changed'
  | 'seal/line-missing'
  | 'seal/chain'
  | 'seal/photos'
  | 'seal/photo'
  /** What came after somebody signed, or was not known to the tablet that signed: no fault. */
  | 'seal/after'

/** What is said about a signature, and where: at lines `n` to `to` of the device `by`, or at the photo of that hash. */
export interface SealFinding {
  readonly code: SealCode
  readonly by?: string
  readonly n?: number
  readonly to?: number
  /** How many lines it is about. */
  readonly count?: number
  readonly photo?: string
}
export const isFault = ({ code }: SealFinding): boolean => code !== 'seal/after'

/** The lines of a device, by number. */
type Own = ReadonlyMap<number, Recorded>
const numbers = (own: Own): readonly number[] => [...own.keys()].sort((a, b) => a - b)

function byDevice(lines: readonly Recorded[]): ReadonlyMap<string, Own> {
  const devices = new Map<string, Map<number, Recorded>>()
  for (const line of lines) {
    const { by, n } = line.event
    devices.set(by, (devices.get(by) ?? new Map<number, Recorded>()).set(n, line))
  }
  return devices
}

/**
 * What was signed against what is there now. `job`: the hash of the job file's bytes; `lines`: all that the log holds; `photos`: the hashes of
 * the photos that are there with the bytes that their names say. Empty when everything is as signed and nothing was added.
 */
export function againstSeal(
  { event, value }: { readonly event: Recorded['event']; readonly value: Signature },
  job: string,
  lines: readonly Recorded[],
  photos: ReadonlySet<string>,
): readonly SealFinding[] {
  const { seal } = value
  const devices = byDevice(lines)
  const sealedLines = lines.filter((line) => isSealed(seal, line))
  return [
    ...(seal.job === job ? [] : [{ code: 'seal/job' } as const]),
    ...(seal.signature === undefined || seal.signature === ownHash(value)
      ? []
      : [{ code: 'seal/signature', ...lineOf(event) } as const]),
    ...Object.entries(seal.devices).flatMap(([by, last]) => againstLine(by, last, devices.get(by) ?? new Map())),
    ...(seal.photos === sealOf(job, sealedLines).photos ? [] : [{ code: 'seal/photos' } as const]),
    ...photosNamed(sealedLines).flatMap((photo) => (photos.has(photo) ? [] : [{ code: 'seal/photo', photo } as const])),
    ...[...devices].flatMap(([by, own]) => added(by, own, seal, eventId(event))),
  ]
}
const lineOf = ({ by, n }: Recorded['event']) => ({ by, n })

const lastOf = ({ devices }: Seal, by: string): number => (Object.hasOwn(devices, by) ? (devices[by]?.n ?? 0) : 0)
const isSealed = (seal: Seal, { event: { by, n } }: Recorded): boolean => n <= lastOf(seal, by)

/** Whether a line is the one with that hash. Another program may have its members in another order. */
const isLine = ({ event, hash }: Recorded, expected: string): boolean =>
  hash === expected || hashOf(writeEvent(event)) === expected

/** From the signed line back to the first: each line proves the one before it, so the line that was changed is named itself. */
function againstLine(by: string, { n: last, hash }: SealedLine, own: Own): readonly SealFinding[] {
  const found: SealFinding[] = []
  let expected: string | undefined = hash
  let next = last + 1
  let isProven = true
  const missing = (n: number): SealFinding => ({ code: 'seal/line-missing', by, n, to: next - 1, count: next - n })
  for (const n of numbers(own)
    .filter((each) => each <= last)
    .reverse()) {
    const line = own.get(n) as Recorded
    if (n < next - 1) found.push(missing(n + 1))
    const fits: boolean = n < next - 1 || expected === undefined || isLine(line, expected)
    // What a changed line says of the one before it proves nothing.
    if (!fits) found.push(isProven ? { code: 'seal/line-changed', by, n } : { code: 'seal/chain', by, n: next })
    ;[isProven, expected, next] = [fits, line.event.before, n]
  }
  return (next > 1 ? [...found, missing(1)] : found).toReversed()
}

/** The lines of a device that the seal does not hold, but for the signature itself. */
function added(by: string, own: Own, seal: Seal, signature: EventId): readonly SealFinding[] {
  const more = numbers(own).filter((n) => n > lastOf(seal, by) && `${by}:${n}` !== signature)
  const [n, to] = [more[0], more.at(-1)]
  return n === undefined || to === undefined ? [] : [{ code: 'seal/after', by, n, to, count: more.length }]
}
