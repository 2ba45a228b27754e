import type { Line } from './working.ts'

/** An arrow of the picture of a sum, in pixels, y down. `broken`: longer than it is drawn. */
export interface Stair {
  readonly line: Line
  readonly x: number
  readonly from: number
  readonly to: number
  readonly broken: boolean
}
export interface Stairs {
  readonly stairs: readonly Stair[]
  /** Where zero is. */
  readonly zero: number
  readonly width: number
  readonly height: number
}

const inch = 25_400_000
const brokenHeight = 58
const room = { above: 26, below: 12, left: 58, right: 20 }

/** Terms more than six times as long as the next shorter one would make all others invisible: they are broken. */
export function brokenFrom(values: readonly number[]): number {
  const sizes = values
    .map(Math.abs)
    .filter((size) => size > 0)
    .sort((a, b) => a - b)
  const gap = sizes.findIndex((size, n) => n > 0 && size > 6 * (sizes[n - 1] ?? size))
  return gap === -1 ? Number.POSITIVE_INFINITY : (sizes[gap] ?? Number.POSITIVE_INFINITY)
}

const signed = (line: Line) => (line.sign === '−' ? -line.value : line.value)

/** Levels before the first term and after each, y up, at so many pixels per nanometre. */
function levels(values: readonly number[], broken: number, scale: number): readonly number[] {
  let level = 0
  const rise = (value: number) => (Math.abs(value) >= broken ? Math.sign(value) * brokenHeight : value * scale)
  return [0, ...values.map((value) => (level += rise(value)))]
}
const span = (all: readonly number[]) => Math.max(...all) - Math.min(...all)

/**
 * The picture of a sum: every term an arrow that starts where the one before ended, all to one scale but the broken ones.
 * Undefined when there is nothing to climb: fewer than two lengths.
 */
export function stairsOf(lines: readonly Line[], width: number, height: number): Stairs | undefined {
  const terms = lines.filter((line) => line.kind === 'term' && line.unit === 'length')
  if (terms.length < 2 || terms.some((line) => line.sign === '×')) return undefined
  const values = terms.map(signed)
  const broken = brokenFrom(values)
  const most = height - room.above - room.below
  const scales = Array.from({ length: 80 }, (_, n) => (38 * 0.92 ** n) / inch)
  const scale = scales.find((each) => span(levels(values, broken, each)) <= most) ?? (scales.at(-1) as number)
  const all = levels(values, broken, scale)
  const zero = room.above + Math.max(...all)
  const apart = Math.min(60, (width - room.left - room.right) / Math.max(1, terms.length - 1))
  return {
    stairs: terms.map((line, n) => ({
      line,
      x: room.left + n * apart,
      from: zero - (all[n] ?? 0),
      to: zero - (all[n + 1] ?? 0),
      broken: Math.abs(signed(line)) >= broken,
    })),
    zero,
    width,
    height: room.above + span(all) + room.below,
  }
}
