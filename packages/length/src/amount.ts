import { type Cursor, gap, hyphen, pattern, see, slash, take } from './cursor.ts'
import { type LengthProblem, problem } from './problem.ts'

/** A number as it was written, never negative: whole + numerator / denominator, each in digits. Decimals stand over a power of ten. */
export interface Amount {
  readonly whole: string
  readonly numerator: string
  readonly denominator: string
  readonly decimal: boolean
  /** Offsets into the text. */
  readonly from: number
  readonly to: number
}

const built: Readonly<Record<string, readonly [numerator: string, denominator: string]>> = {
  '¼': ['1', '4'],
  '½': ['1', '2'],
  '¾': ['3', '4'],
  '⅐': ['1', '7'],
  '⅑': ['1', '9'],
  '⅒': ['1', '10'],
  '⅓': ['1', '3'],
  '⅔': ['2', '3'],
  '⅕': ['1', '5'],
  '⅖': ['2', '5'],
  '⅗': ['3', '5'],
  '⅘': ['4', '5'],
  '⅙': ['1', '6'],
  '⅚': ['5', '6'],
  '⅛': ['1', '8'],
  '⅜': ['3', '8'],
  '⅝': ['5', '8'],
  '⅞': ['7', '8'],
}
/** One character that is a whole fraction. */
export const builtFraction = `[${Object.keys(built).join('')}]`
/** Where a fraction begins, finished or not. */
export const fractionAhead = `(?:\\d+${gap}*${slash}|${builtFraction})`

const decimal = pattern('(\\d+)(?:\\.(\\d+))?|\\.(\\d+)')
const fraction = pattern(`(\\d+)${gap}*${slash}${gap}*(\\d*)|(${builtFraction})`)
const joint = pattern(`(?:${gap}+|${hyphen})?(?=${builtFraction})|(?:${gap}+|${hyphen})(?=${fractionAhead})`)
const slashAhead = pattern(`${gap}*${slash}`)
const decimalsAhead = pattern('\\.\\d+')

/** More than any tape has; fractions finer than this are decimals. */
const mostDenominator = 9999

/**
 * The number at the cursor: `86`, `86.5`, `.5`, `86 1/2`, `86-1/2`, `86½`, `1/2`. Undefined, and no move, when no number begins there.
 * A fraction is less than one everywhere: `861/2` is more likely 86 1/2 without its space than 430 1/2.
 */
export function amountAt(cursor: Cursor): Amount | LengthProblem | undefined {
  const from = cursor.at
  if (see(cursor, fraction)) return withFraction(cursor, from, '')
  const found = take(cursor, decimal)
  if (!found) return undefined
  const decimals = found[2] ?? found[3]
  const to = cursor.at
  if (decimals !== undefined && see(cursor, slashAhead)) return pointInFraction(cursor, from)
  if (!take(cursor, joint)) return plain(found[1] ?? '0', decimals, from, to)
  if (decimals === undefined) return withFraction(cursor, from, found[1] as string)
  const got = see(cursor, fraction)?.[0] ?? ''
  return problem('length/decimal-and-fraction', cursor.at, cursor.at + got.length, { got, before: found[0] })
}

const plain = (whole: string, decimals: string | undefined, from: number, to: number): Amount => ({
  whole,
  numerator: decimals ?? '0',
  denominator: decimals === undefined ? '1' : `1${'0'.repeat(decimals.length)}`,
  decimal: decimals !== undefined,
  from,
  to,
})

/** Reads the fraction at the cursor; `whole` is what stood before it, empty for nothing. */
function withFraction(cursor: Cursor, from: number, whole: string): Amount | LengthProblem {
  const at = cursor.at
  const [got, above, below, mark] = take(cursor, fraction) as RegExpExecArray
  const [numerator, denominator] = built[mark ?? ''] ?? [above as string, below as string]
  if (denominator === '') return problem('length/fraction-unfinished', at, cursor.at, { got: got.trimEnd() })
  if (see(cursor, slashAhead)) return secondSlash(cursor, got)
  if (see(cursor, decimalsAhead)) return pointInFraction(cursor, at)
  if (Number(denominator) === 0) return problem('length/zero-denominator', cursor.at - denominator.length, cursor.at, { got })
  if (Number(denominator) > mostDenominator) {
    return problem('length/denominator', cursor.at - denominator.length, cursor.at, {
      got: denominator,
      most: String(mostDenominator),
    })
  }
  if (Number(numerator) >= Number(denominator)) return tooMuch(at, cursor.at, got, whole, numerator, denominator)
  return { whole: whole || '0', numerator, denominator, decimal: false, from, to: cursor.at }
}

function secondSlash(cursor: Cursor, before: string): LengthProblem {
  const skipped = (take(cursor, slashAhead) as RegExpExecArray)[0]
  return problem('length/second-slash', cursor.at - 1, cursor.at, { before, got: skipped.trim() })
}

const restOfNumber = pattern('[\\d./\\u2044\\u2215]*')
function pointInFraction(cursor: Cursor, from: number): LengthProblem {
  take(cursor, restOfNumber)
  return problem('length/decimal-in-fraction', from, cursor.at, { got: cursor.text.slice(from, cursor.at) })
}

/** A fraction of one or more: says what it comes to and, when a space may have been lost inside it, where. */
function tooMuch(from: number, to: number, got: string, before: string, above: string, below: string): LengthProblem {
  const numerator = BigInt(above)
  const denominator = BigInt(below)
  const whole = BigInt(before || '0') + numerator / denominator
  const rest = numerator % denominator
  const meant = rest === 0n ? `${whole}` : `${whole} ${rest}/${denominator}`
  const split = before === '' ? withSpace(above, below) : undefined
  return split === undefined
    ? problem('length/improper-fraction', from, to, { got, meant })
    : problem('length/lost-space', from, to, { got, meant, split })
}

/** `861/2` as `86 1/2`: the longest end of the digits that makes a fraction less than one. */
function withSpace(above: string, below: string): string | undefined {
  const at = [...above].findIndex((digit, i) => i > 0 && digit !== '0' && Number(above.slice(i)) < Number(below))
  return at < 0 ? undefined : `${above.slice(0, at)} ${above.slice(at)}/${below}`
}

/** The amount of things of a whole `size`, to the nearest whole, half-way cases up; `exact` when nothing was rounded. */
export function inWholes(amount: Amount, size: number): { readonly value: number; readonly exact: boolean } {
  const whole = Number(amount.whole) * size
  const above = Number(amount.numerator) * size
  const below = Number(amount.denominator)
  if (above > Number.MAX_SAFE_INTEGER) return longDecimals(amount, size, whole)
  const rest = above % below
  return { value: whole + (above - rest) / below + (2 * rest >= below ? 1 : 0), exact: rest === 0 }
}

function longDecimals(amount: Amount, size: number, whole: number) {
  const above = BigInt(amount.numerator) * BigInt(size)
  const below = BigInt(amount.denominator)
  const rest = above % below
  return { value: whole + Number(above / below) + (2n * rest >= below ? 1 : 0), exact: rest === 0n }
}

/** The amount as a plain number, to the last bits of what a number holds. */
export const asNumber = (amount: Amount): number =>
  amount.decimal
    ? Number(`${amount.whole}.${amount.numerator}`)
    : Number(amount.whole) + Number(amount.numerator) / Number(amount.denominator)
