import type { Place, Seal, SealedLine, Signature } from '@evenhem/job'
import { hashOf } from './chain.ts'
import { type Event, writeEvent } from './event.ts'

/** Where signatures stand, each under a name of its own. */
export const signaturesAt: Place = '/job/found/signatures'

/** An event, and the hash of its line as it stands in its file; left out: that of the line that `writeEvent` makes. */
export interface Recorded {
  readonly event: Event
  readonly hash?: string
}
type Lines = readonly Recorded[]

const photoAt = /\/found\/photos\/([0-9a-f]{64})$/
/** The hash of the photo that an event is about; undefined when it is about none. */
export const photoOf = ({ place }: Event): string | undefined => photoAt.exec(place)?.[1]
/** The hashes of all photos that lines name, sorted, each once. */
export const photosNamed = (lines: Lines): readonly string[] =>
  [...new Set(lines.flatMap(({ event }) => photoOf(event) ?? []))].sort()
const photosHash = (lines: Lines): string => hashOf(photosNamed(lines).join('\n'))

/** What is signed: the job file by the hash of its bytes (SHA-256, hexadecimal), every line of the log by the last one of each device, and which photos they name. */
export function sealOf(job: string, lines: Lines): Seal {
  const last = new Map<string, Recorded>()
  for (const line of lines) {
    const { by, n } = line.event
    if (n > (last.get(by)?.event.n ?? 0)) last.set(by, line)
  }
  const devices = [...last.keys()].sort().map((by): [string, SealedLine] => [by, sealedLine(last.get(by) as Recorded)])
  return { job, devices: Object.fromEntries(devices), photos: photosHash(lines) }
}
const sealedLine = ({ event, hash }: Recorded): SealedLine => ({ n: event.n, hash: hash ?? hashOf(writeEvent(event)) })

/** A signature as it is put: with its seal, which also holds the hash of the signature itself, since no line may follow that would prove it. */
export function sealed(signed: Omit<Signature, 'seal'>, job: string, lines: Lines): Signature {
  const seal = sealOf(job, lines)
  return { ...signed, seal: { ...seal, signature: ownHash({ ...signed, seal }) } }
}

/** The hash of a signature but for the member that holds it. */
export function ownHash({ role, name, accepts, strokes, typed, left, seal: { job, devices, photos } }: Signature): string {
  return hashOf(JSON.stringify({ role, name, accepts, strokes, typed, left, seal: { job, devices, photos } }))
}

type Members = Readonly<Record<string, unknown>>
const isObject = (value: unknown): value is Members => value !== null && typeof value === 'object' && !Array.isArray(value)
const isHash = (value: unknown): boolean => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value)
const isSealedLine = (value: unknown): boolean => isObject(value) && Number.isSafeInteger(value.n) && isHash(value.hash)

/** Whether a value is a signature whose seal can be read. All else about it is for the schema to say. */
export function isSignature(value: unknown): value is Signature {
  const seal = isObject(value) ? value.seal : undefined
  if (!isObject(seal) || !isObject(seal.devices)) return false
  return isHash(seal.job) && isHash(seal.photos) && Object.values(seal.devices).every(isSealedLine)
}
