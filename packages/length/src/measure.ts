import { gap, pattern, slash } from './cursor.ts'
import type { LengthCode } from './words.ts'

/** A unit that text may name. */
export interface NamedUnit {
  /** The name that is offered. */
  readonly name: string
  /** How many of the measure's own unit make one. */
  readonly size: number
  /** Other ways to write it. `2` stands for ², ^2 and 2; `/` and `·` may have spaces around them. */
  readonly also: readonly string[]
  /** The smaller unit that may follow, and how many of it make one: inches after feet. */
  readonly smaller?: { readonly name: string; readonly limit: number }
}

/** A name that is no unit here, but tells what was meant. */
export interface Hint {
  readonly code: LengthCode
  readonly meant: string
}

/** One sort of quantity: the units it is read in. */
export interface Measure {
  /** Shown to somebody who wrote something else. */
  readonly example: string
  /** The units' names, for sentences. */
  readonly units: string
  /** A unit at the cursor. */
  readonly find: RegExp
  /** Units by their names in plain form. */
  readonly named: ReadonlyMap<string, NamedUnit>
  /** All names as they are written, to guess from. */
  readonly names: readonly string[]
  readonly hints: ReadonlyMap<string, Hint>
}

const plainName = (written: string): string =>
  written
    .toLowerCase()
    .replace(/[\s^.]/g, '')
    .replace(/²/g, '2')
    .replace(/[⋅*]/g, '·')
    .replace(/⁄|∕/g, '/')

const loose: Readonly<Record<string, string>> = {
  ' ': `${gap}+`,
  '2': '(?:\\^?2|²)',
  '/': `${gap}*${slash}${gap}*`,
  '·': `${gap}*[·⋅*]${gap}*`,
}

/** A word ends where its letters end, and a short form may have its point; `ft2in` is feet and inches, `oz/yd2` is not ounces by the yard. */
function nameSource(name: string): string {
  const source = name.replace(/[ 2/·]/g, (mark) => loose[mark] as string)
  if (!/[a-z2]$/i.test(name)) return source
  return `${source}(?:\\.(?!\\d))?(?![a-z\\u00b2\\u00b3\\u00c0-\\u024f./·^${name.includes('/') ? '\\d' : ''}])`
}

const longestFirst = (a: string, b: string): number => b.length - a.length

/** A measure from its units; the first name of each is the one offered. */
export function measure(example: string, units: readonly NamedUnit[], hints: Readonly<Record<string, Hint>> = {}): Measure {
  const named = new Map(units.flatMap((unit) => [unit.name, ...unit.also].map((name) => [plainName(name), unit] as const)))
  const names = units.flatMap((unit) => [unit.name, ...unit.also]).sort(longestFirst)
  return {
    example,
    units: units.map((unit) => unit.name).join(', '),
    find: pattern(names.map(nameSource).join('|')),
    named,
    names,
    hints: new Map(Object.entries(hints).map(([name, hint]) => [plainName(name), hint])),
  }
}

/** The unit by a name that the measure's pattern found. */
export const unitNamed = (measure: Measure, name: string): NamedUnit =>
  (measure.named.get(name) ?? measure.named.get(plainName(name))) as NamedUnit

/** Whether a name is a unit of the measure. */
export const isNamed = ({ named }: Measure, name: string): boolean => named.has(plainName(name))

/** What may have been meant by a name that is no unit. */
export function hintFor(measure: Measure, name: string): Hint | undefined {
  const hint = measure.hints.get(plainName(name))
  const near = hint ?? nearest(plainName(name), measure.names)
  return typeof near === 'string' ? { code: 'length/unit-misspelt', meant: near } : near
}

/** A name one slip away; names of one or two letters are too short to guess, `km` is not `cm`. */
function nearest(name: string, names: readonly string[]): string | undefined {
  if (name.length < 3) return undefined
  const slips = name.length < 6 ? 1 : 2
  return names
    .map((other) => [other, distance(name, plainName(other))] as const)
    .filter(([, far]) => far <= slips)
    .sort((a, b) => a[1] - b[1])[0]?.[0]
}

/** Letters to put in, take out, change or swap with their neighbour. */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  const at = (i: number, j: number): number => rows[i]?.[j] as number
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    rows.push(row)
    for (let j = 1; j <= b.length; j++) {
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? at(i - 2, j - 2) + 1 : Infinity
      row.push(Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1), swapped))
    }
  }
  return at(a.length, b.length)
}
