import type { Place } from '@evenhem/job'
import type { Part } from '@evenhem/plugin'
import { byText } from './plan.ts'

/** The parts of one window, as its plan or its summary has them. */
export interface PackedWindow {
  readonly window: Place
  readonly parts: readonly Part[]
}
/** So many of one thing. Things are the same when they are called the same, are as long, and are of the same hardware. */
export interface PullLine {
  /** A code. */
  readonly what: string
  readonly length?: Part['length']
  readonly hardware?: Place
  readonly count: number
  /** How many more the order packs as spares; absent where it says nothing about them. */
  readonly spares?: number
}
export interface PullList {
  readonly windows: readonly { readonly window: Place; readonly lines: readonly PullLine[] }[]
  /** Everything once, whichever window it is for. */
  readonly job: readonly PullLine[]
}

/** Adds up what to pack, by window and for the whole job: the same thing is one line, and each part is counted once in either. */
export const pullList = (windows: readonly PackedWindow[]): PullList => ({
  windows: windows.map(({ window, parts }) => ({ window, lines: linesOf(parts) })),
  job: linesOf(windows.flatMap(({ parts }) => parts)),
})

function linesOf(parts: readonly Part[]): readonly PullLine[] {
  const lines = new Map<string, PullLine>()
  for (const { what, length, hardware, count, spares } of parts) {
    const key = JSON.stringify([what, length, hardware])
    const { count: before = 0, spares: kept } = lines.get(key) ?? {}
    const all = spares === undefined ? kept : (kept ?? 0) + spares
    lines.set(key, {
      what,
      ...(length !== undefined && { length }),
      ...(hardware !== undefined && { hardware }),
      count: before + count,
      ...(all !== undefined && { spares: all }),
    })
  }
  return [...lines.values()].sort(inOrder)
}

/** By hardware, then by what it is, the longest first. */
const inOrder = (a: PullLine, b: PullLine): number =>
  byText(a.hardware ?? '', b.hardware ?? '') || byText(a.what, b.what) || (b.length ?? 0) - (a.length ?? 0)
