import { isDateTime, type Place } from '@evenhem/job'

/** The name of an event that no other has: who wrote it and its number there, `tablet-3:17`. */
export type EventId = `${string}:${number}`

/** A value put at a place. Without `value` it withdraws what it is put over. Events are only ever added. */
export interface Event {
  /** The device that wrote it, as its file is called. */
  readonly by: string
  /** Its number on this device, from 1, without gaps. */
  readonly n: number
  /** Passes the highest one seen when it was written, so that what follows something is shown after it. */
  readonly count: number
  /** What the device's clock said (RFC 3339); only shown, since clocks are wrong. */
  readonly clock: string
  /** Who held the device, where it knows. */
  readonly who?: string
  /** SHA-256 of the line before, in hexadecimal; only the first line has none. */
  readonly before?: string
  readonly place: Place
  readonly value?: unknown
  /** The events at this place that it replaces. */
  readonly over?: readonly EventId[]
}

/** Something about a line or a file of a log that is not as it should be: a code of `logWords`, and what its sentence is filled with. */
export interface Wrong {
  readonly code: string
  readonly values: Readonly<Record<string, string | number>>
}
export const wrong = (code: string, values: Wrong['values'] = {}): Wrong => ({ code, values })

export const eventId = ({ by, n }: Pick<Event, 'by' | 'n'>): EventId => `${by}:${n}`

/** Longer lines are refused: no value that a person puts needs them. In UTF-16 code units. */
export const longestLine = 65_536
const deepest = 16

/** An event as the one line that stands for it, without its end: members in this order, no spaces. */
export function writeEvent({ by, n, count, clock, who, before, place, value, over }: Event): string {
  return JSON.stringify({ by, n, count, clock, who, before, place, value, over })
}

const device = /^[a-z0-9][a-z0-9-]{0,39}$/
/** Whether a device may be called so: its name is the name of its file. */
export const isDevice = (name: string): boolean => device.test(name)
const isNumber = (value: unknown): boolean => Number.isSafeInteger(value) && (value as number) >= 1
// A lone surrogate is no character: two different ones may be written as the same bytes. In JSON it may also stand as an escape.
const isWellFormed = (text: string): boolean => !/\p{Surrogate}/u.test(text)
const escapesSurrogate = (line: string): boolean => /(?<!\\)(?:\\\\)*\\ud[89a-f]/.test(line)
const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.length > 0 && [...value].length <= longest
const isId = (value: unknown): boolean => {
  const [, by = '', n = ''] = typeof value === 'string' ? (/^(.+):([1-9]\d{0,14})$/.exec(value) ?? []) : []
  return isDevice(by) && isNumber(Number(n))
}
const depth = (value: unknown): number =>
  value !== null && typeof value === 'object' ? 1 + Math.max(0, ...Object.values(value).map(depth)) : 0

type Members = Readonly<Record<string, unknown>>
/** What each member must be; `log/member-…` says it in words. */
const members: Readonly<Record<string, { readonly must?: true; readonly is: (value: unknown) => boolean }>> = {
  by: { must: true, is: (value) => typeof value === 'string' && isDevice(value) },
  n: { must: true, is: isNumber },
  count: { must: true, is: isNumber },
  clock: { must: true, is: (value) => isText(value, 60) && isDateTime(value) },
  who: { is: (value) => isText(value, 200) },
  before: { is: (value) => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value) },
  place: { must: true, is: (value) => isText(value, 1000) && value.startsWith('/') && !/~(?![01])/.test(value) },
  value: { is: (value) => value !== null && depth(value) <= deepest },
  over: { is: isOver },
}
function isOver(value: unknown): boolean {
  const isList = Array.isArray(value) && value.length > 0 && value.length <= 1000
  return isList && value.every(isId) && new Set(value).size === value.length
}

/** What is wrong with a value as an event; undefined when it is one. */
function wrongEvent(value: unknown): Wrong | undefined {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return wrong('log/no-event')
  const strange = Object.keys(value).find((name) => !Object.hasOwn(members, name))
  if (strange !== undefined) return wrong('log/strange-member', { name: strange.slice(0, 60) })
  for (const [name, { must, is }] of Object.entries(members)) {
    const part = (value as Members)[name]
    if (part === undefined ? must : !is(part)) return wrong(`log/member-${name}`)
  }
  const { n, before } = value as Members
  return (n === 1) === (before === undefined) ? undefined : wrong('log/before')
}

/**
 * Reads one line of a log. It must be what `JSON.stringify` would write of its value: then no name stands twice, no number is odd and nothing
 * is changed by reading it. Never throws.
 */
export function readEvent(line: string): Event | Wrong {
  if (line.length > longestLine) return wrong('log/long-line', { most: longestLine })
  try {
    const value: unknown = JSON.parse(line)
    if (JSON.stringify(value) !== line || !isWellFormed(line) || escapesSurrogate(line)) return wrong('log/odd-json')
    return wrongEvent(value) ?? (value as Event)
  } catch {
    return wrong('log/no-json')
  }
}
export const isWrong = (read: Event | Wrong): read is Wrong => 'code' in read
