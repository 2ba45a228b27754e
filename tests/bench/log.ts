import { type Entry, fold, readLogFile, write } from '@evenhem/site-log'
import { best, tell } from './measure.ts'

const count = 10_000
/** A day that nobody has: ten thousand readings at two thousand places, each put over the one before. */
function logOf(): string {
  const puts = Array.from({ length: count }, (_, i) => ({
    place: `/rooms/r${i % 20}/windows/w${i % 100}/treatments/over/found/hems/h${i % 2000}`,
    value: `${84 + (i % 16)} 1/2`,
  }))
  const clock = '2026-11-30T09:12:00Z'
  return write({ device: 'tablet-1', last: undefined, clock, who: 'Ana' }, puts, fold([]))
    .map(({ text }) => `${text}\n`)
    .join('')
}

/** Reading and folding a log, against JSON.parse of the same lines. */
export function log(): void {
  console.log('\nthe site log, against JSON.parse of the same lines')
  const bytes = Buffer.from(logOf())
  const plain = best(20, () =>
    bytes
      .toString('utf8')
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line)),
  )
  const file = readLogFile('tablet-1', bytes)
  const entries: readonly Entry[] = file.lines.map(({ event }) => ({ event, read: event.value }))
  const reading = best(10, () => readLogFile('tablet-1', bytes))
  const folding = best(10, () => fold(entries))
  const size = `${count} lines, ${(bytes.length / 1e6).toFixed(1)} MB`
  tell({ what: `reading, checking and chaining ${size}`, is: reading / plain, unit: '×', note: `(${reading.toFixed(0)} ms)` })
  tell({ what: `folding ${count} entries`, is: folding / plain, unit: '×', note: `(${folding.toFixed(1)} ms)` })
}
