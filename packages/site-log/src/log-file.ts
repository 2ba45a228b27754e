import { hashOf } from './chain.ts'
import { type Event, isWrong, readEvent, type Wrong, wrong } from './event.ts'

/** A line of a device's file that is an event, as it stands there. */
export interface Line {
  readonly text: string
  readonly event: Event
}
/** A row of a file without its end. `line`: the event that it is. */
export interface Row {
  readonly bytes: Uint8Array
  readonly line?: Line
}
/** Something wrong at a line, from 1. */
export interface LineWrong extends Wrong {
  readonly line: number
}
/** What a device's file holds. */
export interface LogFile {
  readonly device: string
  readonly lines: readonly Line[]
  /** Every row that ends, as its bytes, those that are no events too. */
  readonly rows: readonly Row[]
  readonly wrong: readonly LineWrong[]
  /** How many bytes of the file are lines that end; what is behind them was torn off while it was written. */
  readonly whole: number
}

/** What the last line of a device was: the next one follows it. */
export interface Last {
  readonly n: number
  readonly count: number
  readonly hash: string
}
export const lastOf = (lines: readonly Line[]): Last | undefined => {
  const line = lines.at(-1)
  return line && { n: line.event.n, count: line.event.count, hash: hashOf(line.text) }
}

const newline = 0x0a

/** The rows of bytes that end with a line feed, and where the last one ends. */
function rowsOf(bytes: Uint8Array): { readonly rows: readonly Uint8Array[]; readonly whole: number } {
  const rows: Uint8Array[] = []
  let from = 0
  for (let end = bytes.indexOf(newline); end >= 0; end = bytes.indexOf(newline, from)) {
    rows.push(bytes.subarray(from, end))
    from = end + 1
  }
  return { rows, whole: from }
}

const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
function textOf(row: Uint8Array): string | undefined {
  try {
    return decoder.decode(row)
  } catch {
    return undefined
  }
}

/** What a line says against what stood before it. It counts all the same: what somebody recorded is not lost for a broken chain. */
function against(before: Last | undefined, { n, count, before: hash }: Event): Wrong | undefined {
  if (n !== (before?.n ?? 0) + 1) return wrong('log/gap', { n, after: before?.n ?? 0 })
  if (hash !== before?.hash) return wrong('log/chain', { n })
  return count > (before?.count ?? 0) ? undefined : wrong('log/count', { n, count, after: before?.count ?? 0 })
}

/**
 * Reads the file of a device. A line that is no event, or another event under a number that was there already, is reported and left out;
 * a line that does not follow the one before it is reported and counts. Never throws.
 */
export function readLogFile(device: string, bytes: Uint8Array): LogFile {
  const { rows: all, whole } = rowsOf(bytes)
  const rows: Row[] = []
  const wrongs: LineWrong[] = []
  const byNumber = new Map<number, string>()
  let last: Last | undefined
  for (const [i, row] of all.entries()) {
    const read = readRow(device, row, byNumber)
    const odd = 'code' in read ? read : against(last, read.event)
    if (odd) wrongs.push({ ...odd, line: i + 1 })
    rows.push('code' in read ? { bytes: row } : { bytes: row, line: read })
    if ('code' in read) continue
    byNumber.set(read.event.n, read.text)
    last = lastOf([read])
  }
  if (whole < bytes.length) wrongs.push({ ...wrong('log/torn', { bytes: bytes.length - whole }), line: all.length + 1 })
  return { device, lines: rows.flatMap(({ line }) => line ?? []), rows, wrong: wrongs, whole }
}

function readRow(device: string, row: Uint8Array, before: ReadonlyMap<number, string>): Line | Wrong {
  const text = textOf(row)
  if (text === undefined) return wrong('log/no-utf-8')
  const event = readEvent(text)
  if (isWrong(event)) return event
  return refusedIn(device, event, text, before) ?? { text, event }
}

function refusedIn(device: string, { by, n }: Event, text: string, before: ReadonlyMap<number, string>): Wrong | undefined {
  if (by !== device) return wrong('log/other-device', { by, device })
  const first = before.get(n)
  return first === undefined ? undefined : wrong(first === text ? 'log/twice' : 'log/clash', { by, n })
}

/** The bytes of lines in a file. */
export const bytesOf = (lines: readonly string[]): Uint8Array =>
  new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''))
