import { eventId, type Wrong, wrong } from './event.ts'
import type { Line, Row } from './log-file.ts'

/** Why two logs are not merged. Nothing was changed. */
export class Refusal extends Error {
  readonly wrong: Wrong
  constructor(of: Wrong, message: string = of.code) {
    super(message)
    this.wrong = of
  }
}
/** Two logs have other content under the same id: one of them was changed, or two devices have one name. */
export class Clash extends Refusal {
  constructor({ event }: Line) {
    const message = `Unexpected other content of entry ${eventId(event)}, expected the same in both logs`
    super(wrong('log/clash', { by: event.by, n: event.n }), message)
  }
}

/** The lines that another copy of a device's file has and ours has not, by number. Throws a `Clash` when the same number says two things. */
export function missingIn(ours: readonly Line[], theirs: readonly Line[]): readonly Line[] {
  const mine = new Map(ours.map((line) => [line.event.n, line]))
  const clash = theirs.find(({ event, text }) => mine.has(event.n) && mine.get(event.n)?.text !== text)
  if (clash) throw new Clash(clash)
  return theirs.filter(({ event }) => !mine.has(event.n)).toSorted((a, b) => a.event.n - b.event.n)
}

/** The bytes of a file with lines put where their numbers belong. Every row that was there stays, one that is no event too. */
export function withLines(rows: readonly Row[], more: readonly Line[]): Uint8Array {
  const left = [...more]
  const all: Uint8Array[] = []
  for (const { bytes, line } of rows) {
    while (line && (left[0]?.event.n ?? Number.POSITIVE_INFINITY) < line.event.n) all.push(encode(left.shift()))
    all.push(bytes)
  }
  return joined([...all, ...left.map(encode)])
}
const encode = (line: Line | undefined): Uint8Array => new TextEncoder().encode(line?.text ?? '')
function joined(rows: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(rows.reduce((sum, row) => sum + row.length + 1, 0)).fill(0x0a)
  let at = 0
  for (const row of rows) {
    bytes.set(row, at)
    at += row.length + 1
  }
  return bytes
}
