import { builtFraction } from './amount.ts'
import { type Cursor, gap, hyphen, pattern, see, slash } from './cursor.ts'
import { hintFor, isNamed, type Measure } from './measure.ts'
import { type LengthProblem, problem } from './problem.ts'
import type { LengthCode } from './words.ts'

/** What stands where it should not, in the order it is looked for. */
type Surprises = readonly (readonly [what: RegExp, code: LengthCode])[]
type Values = Readonly<Record<string, string>>

/** A number that was read well: its offsets in the text, whether the text began with a sign, and whether a smaller unit may follow, as after feet. */
export interface Before {
  readonly from: number
  readonly to: number
  readonly signed: boolean
  readonly follows: boolean
}

const otherDigits = /(?![0-9])[\p{Nd}\p{No}]+/uy
const word = /\p{L}[\p{L}\p{M}²³]*(?:[/·⋅*^][\p{L}\p{M}\d²³]+)*|[%°'"‘’“”′″]+/uy
const anySign = pattern(`\\+|\\u2212|${hyphen}`)
const fractionHere = `\\d+${gap}*${slash}${gap}*\\d+|${builtFraction}`
const fractionOnly = pattern(fractionHere)
const numberHere = pattern(`${fractionHere}|\\d[\\d.]*|\\.\\d+`)

const insteadOfNumber: Surprises = [
  [anySign, 'length/second-sign'],
  [/\./y, 'length/point'],
  [pattern(`${slash}(?:${gap}*\\d+)?`), 'length/fraction-unfinished'],
  [otherDigits, 'length/other-digits'],
  [word, 'length/number-expected'],
]
const afterNumber: Surprises = [
  [pattern('e[-+\\u2212]?\\d+'), 'length/exponent'],
  [numberHere, 'length/two-numbers'],
  [otherDigits, 'length/other-digits'],
]
const afterUnit: Surprises = [
  [numberHere, 'length/two-numbers'],
  [otherDigits, 'length/other-digits'],
  [word, 'length/left-over'],
]

function first(cursor: Cursor, surprises: Surprises, values: Values): LengthProblem | undefined {
  for (const [what, code] of surprises) {
    const got = see(cursor, what)?.[0]
    if (got) return problem(code, cursor.at, cursor.at + got.length, { ...values, got })
  }
  return undefined
}

/** One character that is nothing of a number; what cannot be seen is named by its code point. */
function character(cursor: Cursor): LengthProblem {
  const code = cursor.text.codePointAt(cursor.at) as number
  const got = String.fromCodePoint(code)
  const name = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`
  return problem('length/character', cursor.at, cursor.at + got.length, { got: /[\p{C}\p{Z}\p{M}]/u.test(got) ? name : got })
}

/** Why no number begins at the cursor. */
export function noNumber(cursor: Cursor, { example }: Measure): LengthProblem {
  const { text, at } = cursor
  if (at >= text.length) return problem('length/unfinished', at, at, { before: text.trim() })
  return first(cursor, insteadOfNumber, { example }) ?? character(cursor)
}

/** What is wrong with the text at the cursor, after a number without a unit. */
export function unitRefused(cursor: Cursor, before: Before, measure: Measure): LengthProblem {
  const values = { before: cursor.text.slice(before.from, before.to), example: measure.example }
  return (
    (cursor.at === before.to ? markInside(cursor, before) : undefined) ??
    hyphenInside(cursor, before) ??
    first(cursor, afterNumber, values) ??
    unknownUnit(cursor, measure) ??
    character(cursor)
  )
}

/** What is wrong with the text at the cursor, after a number with its unit. */
export function leftOver(cursor: Cursor, before: Before, { example }: Measure): LengthProblem {
  const values = { before: cursor.text.slice(before.from, before.to), example }
  return hyphenInside(cursor, before) ?? first(cursor, afterUnit, values) ?? character(cursor)
}

const digitsAndMarks = /[\d.,]*/y
/** A comma or a further point right behind digits. */
function markInside({ text, at }: Cursor, { from }: Before): LengthProblem | undefined {
  const digits = text.slice(from, at)
  if (!/^[\d.]+$/.test(digits)) return undefined
  const got = see({ text, at: from }, digitsAndMarks)?.[0] as string
  if (text[at] === ',' && /\d/.test(text[at + 1] ?? '')) return comma(at, got)
  if (text[at] !== '.') return undefined
  return problem(digits.includes('.') ? 'length/second-point' : 'length/point', at, at + 1, { got })
}

/** One comma alone may stand before decimals or between thousands; with a point, a second comma or a leading 0 it can only be one of them. */
function comma(at: number, got: string): LengthProblem {
  const plain = got.replaceAll(',', '')
  const point = got.replaceAll('.', '').replace(',', '.')
  const single = got.indexOf(',') === got.lastIndexOf(',')
  if (single && !got.includes('.') && !got.startsWith('0'))
    return problem('length/comma-either', at, at + 1, { got, point, plain })
  const decimal = single && (got.startsWith('0') || got.indexOf(',') > got.indexOf('.'))
  return problem('length/comma', at, at + 1, { got, meant: decimal ? point : plain })
}

const hyphenAndSpace = pattern(`(?:\\u2212|${hyphen})${gap}*`)
/** A hyphen or minus sign that joins nothing: a second sign, a range, or a minus before the fraction or the inches. */
function hyphenInside(cursor: Cursor, before: Before): LengthProblem | undefined {
  const found = see(cursor, hyphenAndSpace)
  if (!found) return undefined
  const { text, at } = cursor
  const next = { text, at: at + found[0].length }
  if (see(next, anySign)) return problem('length/second-sign', next.at, next.at + 1, { got: text[next.at] as string })
  const number = see(next, numberHere)?.[0]
  if (number === undefined) return character(cursor)
  const values = { got: text[at] as string, before: text.slice(before.from, before.to) }
  if (!before.follows && !see(next, fractionOnly)) return range(cursor, next.at + number.length, values)
  return problem(before.signed ? 'length/second-sign' : 'length/minus-inside', at, at + 1, {
    ...values,
    meant: `${values.before} ${text.slice(next.at).trimEnd()}`,
  })
}

const range = ({ text, at }: Cursor, end: number, values: Values): LengthProblem =>
  problem('length/range', at, end, { ...values, got: text.slice(at, end) })

function unknownUnit(cursor: Cursor, measure: Measure): LengthProblem | undefined {
  const got = see(cursor, word)?.[0]
  if (got === undefined) return undefined
  // A unit that is known but was not taken: what stands right behind it is in the way, as in `7 ft.5 in`.
  if (isNamed(measure, got)) return character({ ...cursor, at: cursor.at + got.length })
  const hint = hintFor(measure, got)
  const values = { got, units: measure.units }
  return hint
    ? problem(hint.code, cursor.at, cursor.at + got.length, { ...values, meant: hint.meant })
    : problem('length/unknown-unit', cursor.at, cursor.at + got.length, values)
}
