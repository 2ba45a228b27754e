import { lengthWords, type QuantityKind, readLength, readQuantity } from '@evenhem/length'
import { describe, expect, test } from 'vitest'

/** Text, the code it gets, and the columns: first, and the one after the last. */
type Refusal = readonly [text: string, code: string, column: number, end: number]

const refusals: readonly Refusal[] = [
  ['', 'empty', 1, 1],
  ['   ', 'empty', 1, 4],
  ['9'.repeat(41), 'too-long', 41, 42],
  ['abc', 'number-expected', 1, 4],
  ['in', 'number-expected', 1, 3],
  ['"', 'number-expected', 1, 2],
  ['NaN', 'number-expected', 1, 4],
  ['-Infinity', 'number-expected', 2, 10],
  ['-', 'unfinished', 2, 2],
  // two numbers, or numbers that do not go together
  ['86 1 2', 'two-numbers', 4, 5],
  ['7 2', 'two-numbers', 3, 4],
  ['2 197 mm', 'two-numbers', 3, 6],
  ['1/2 1/4', 'two-numbers', 5, 8],
  ['1/2 86', 'two-numbers', 5, 7],
  ['½6', 'two-numbers', 2, 3],
  ['½ ½', 'two-numbers', 3, 4],
  ['86 .5', 'two-numbers', 4, 6],
  ['86"1/2', 'two-numbers', 4, 7],
  ['7 in 2', 'two-numbers', 6, 7],
  [`7' 2" 3"`, 'two-numbers', 7, 8],
  ['7 ft 20 cm', 'mixed-units', 6, 11],
  ['2 m 20 cm', 'mixed-units', 5, 10],
  ['2 in 7 ft', 'mixed-units', 6, 10],
  ['2 in 3 in', 'mixed-units', 6, 10],
  ["7' 2'", 'mixed-units', 4, 6],
  [`5' 14"`, 'carry', 4, 7],
  [`5' 12"`, 'carry', 4, 7],
  [`5'-12 1/2"`, 'carry', 4, 11],
  ['7.5 ft 2 in', 'first-not-whole', 1, 4],
  [`7 1/2' 2"`, 'first-not-whole', 1, 6],
  ['-7½ ft 2 in', 'first-not-whole', 2, 4],
  // fractions
  ['1/0', 'zero-denominator', 3, 4],
  ['86 1/00', 'zero-denominator', 6, 8],
  ['3/2/1', 'second-slash', 4, 5],
  ['86 1/2 / 3', 'second-slash', 8, 9],
  ['½/2', 'second-slash', 2, 3],
  ['86 1/', 'fraction-unfinished', 4, 6],
  ['/2', 'fraction-unfinished', 1, 3],
  ['1/x', 'fraction-unfinished', 1, 3],
  ['1/½', 'fraction-unfinished', 1, 3],
  ['86 1/12345', 'denominator', 6, 11],
  ['86 3/2', 'improper-fraction', 4, 7],
  ['86 2/2', 'improper-fraction', 4, 7],
  ['3/2', 'improper-fraction', 1, 4],
  ['8/8', 'improper-fraction', 1, 4],
  [`7' 3/2"`, 'improper-fraction', 4, 7],
  ['861/2', 'lost-space', 1, 6],
  ['11/8', 'lost-space', 1, 5],
  ['86.5 1/2', 'decimal-and-fraction', 6, 9],
  ['86.5½', 'decimal-and-fraction', 5, 6],
  ['1.5/2', 'decimal-in-fraction', 1, 6],
  ['1/2.5', 'decimal-in-fraction', 1, 6],
  // commas, points, exponents
  ['86,5', 'comma-either', 3, 4],
  ['1,234', 'comma-either', 2, 3],
  ['0,5', 'comma', 2, 3],
  ['1,234.5', 'comma', 2, 3],
  ['1.234,5', 'comma', 6, 7],
  ['1,234,567', 'comma', 2, 3],
  ['86.', 'point', 3, 4],
  ['86. in', 'point', 3, 4],
  ['.', 'point', 1, 2],
  ['86..5', 'point', 3, 4],
  ['1.2.3', 'second-point', 4, 5],
  ['1e3', 'exponent', 2, 4],
  ['1E-3 mm', 'exponent', 2, 5],
  // signs and ranges
  ['86-87', 'range', 3, 6],
  ['86 - 87', 'range', 4, 8],
  ['86"-87"', 'range', 4, 7],
  ['7-2 1/2', 'range', 2, 4],
  ['86 - 1/2', 'minus-inside', 4, 5],
  ['86 -1/2', 'minus-inside', 4, 5],
  ['86- 1/2', 'minus-inside', 3, 4],
  ['86−1/2', 'minus-inside', 3, 4],
  ['86 −½', 'minus-inside', 4, 5],
  [`7' -2"`, 'minus-inside', 4, 5],
  ['--1/2', 'second-sign', 2, 3],
  ['-+1', 'second-sign', 2, 3],
  ['- −1', 'second-sign', 3, 4],
  ['86--1/2', 'second-sign', 4, 5],
  [`-7' -2"`, 'second-sign', 5, 6],
  // units
  ['86 inchs', 'unit-misspelt', 4, 9],
  ['7 foots', 'unit-misspelt', 3, 8],
  ['2 milimetres', 'unit-misspelt', 3, 13],
  ['86 km', 'unknown-unit', 4, 6],
  ['86 furlongs', 'unknown-unit', 4, 12],
  ['5 m²', 'unknown-unit', 3, 5],
  ['0x10', 'unknown-unit', 2, 3],
  ['7 ft 2 xx', 'unknown-unit', 8, 10],
  ['86 in wide', 'left-over', 7, 11],
  ['7 ft in', 'left-over', 6, 8],
  [`7'"`, 'left-over', 3, 4],
  // other characters
  ['٨٦', 'other-digits', 1, 3],
  ['８６', 'other-digits', 1, 3],
  ['8６', 'other-digits', 2, 3],
  ['86²', 'other-digits', 3, 4],
  ['86 ⁵⁄₈', 'other-digits', 4, 5],
  ['#', 'character', 1, 2],
  ['86 # 2', 'character', 4, 5],
  ['86-', 'character', 3, 4],
  ['1_000', 'character', 2, 3],
  ['86 ,5', 'character', 4, 5],
  ['86 1/2,5', 'character', 7, 8],
  ['±1/8', 'character', 1, 2],
  ['86\u200b', 'character', 3, 4],
  ['\ufeff86', 'character', 1, 2],
  ['86\n', 'character', 3, 4],
  ['86 💡', 'character', 4, 6],
  ['86\ud800', 'character', 3, 4],
  ['7 ft.5 in', 'character', 5, 6],
  // too far
  ['9000000.000000001 m', 'too-large', 1, 20],
  ['-9000001 m', 'too-large', 2, 11],
  ['9'.repeat(40), 'too-large', 1, 41],
]

const refused = (text: string | number) => {
  const read = readLength(text, 'in')
  return read.ok ? undefined : read.problem
}

describe('what is ambiguous or impossible is refused, with its columns', () => {
  test.each(refusals)('%j is %s at %d', (text, code, column, end) => {
    expect(refused(text)).toMatchObject({ code: `length/${code}`, column, end })
  })
})

test('numbers that are not finite, or too far, are refused', () => {
  expect([Number.NaN, Number.POSITIVE_INFINITY, 1e21, -9.1e12].map((number) => refused(number)?.code)).toEqual([
    'length/not-finite',
    'length/not-finite',
    'length/too-large',
    'length/too-large',
  ])
})

const quantities: readonly (readonly [text: string, kind: QuantityKind, code: string, column: number, end: number])[] = [
  ['320', 'mass', 'unit-missing', 1, 4],
  ['20 lb', 'force', 'unit-misspelt', 4, 6],
  ['12 oz/yd', 'arealWeight', 'linear-weight', 4, 9],
  ['12 oz', 'arealWeight', 'unit-misspelt', 4, 6],
  ['320 g/m3', 'arealWeight', 'unit-misspelt', 5, 9],
  ['320 g/m2', 'mass', 'unknown-unit', 5, 9],
  ['12 oz/yd2', 'linearWeight', 'unit-misspelt', 4, 10],
  ['7 lb 16 oz', 'mass', 'carry', 6, 11],
  ['7 kg 4 oz', 'mass', 'mixed-units', 6, 10],
  ['320,5 g/m2', 'arealWeight', 'comma-either', 4, 5],
  ['', 'force', 'empty', 1, 1],
]
describe('quantities are refused in the same way', () => {
  test.each(quantities)('%j as %s is %s at %d', (text, kind, code, column, end) => {
    const read = readQuantity(text, kind)
    expect(read.ok ? undefined : read.problem).toMatchObject({ code: `length/${code}`, column, end })
  })
})

const said = (text: string | number): string => {
  const problem = refused(text)
  if (!problem) return 'read'
  return lengthWords[problem.code].says.replace(/\{(\w+)\}/g, (_, name: string) => problem.values[name] ?? `{${name}}`)
}
test('a refusal says what was found, what was expected and what to do', () => {
  expect(['861/2', '86 3/2', '86,5', '1.234,5', '86 -1/2', `5' 14"`, '86 inchs', '86\u200b', '9000001 m'].map(said)).toEqual([
    'Unexpected 861/2, expected a fraction less than one; write 86 1/2 with its space, or 430 1/2 if that is meant.',
    'Unexpected 3/2, expected a fraction less than one; write 87 1/2 if that is meant.',
    'Unexpected comma in 86,5, expected a point before decimals and no other mark; write 86.5 or 865, whichever is meant.',
    'Unexpected comma in 1.234,5, expected a point before decimals and no other mark; write 1234.5.',
    'Unexpected - after 86, expected a space or a hyphen without spaces; write 86 1/2 if nothing is to be taken away.',
    `Unexpected 14" after 5', expected less than 12 in; look at the reading again, or carry it over.`,
    'Unexpected unit inchs, expected one of in, ft, yd, mm, cm, m; did you mean inches?',
    'Unexpected U+200B, expected a number and its unit only; take it out.',
    'Unexpected 9000001 m, expected no more than 9000 km either way; look at the number and its unit.',
  ])
})

const answers = [
  ...refusals.map(([text]) => readLength(text, 'in')),
  readLength(Number.NaN, 'in'),
  ...quantities.map(([text, kind]) => readQuantity(text, kind)),
]
const problems = answers.flatMap((answer) => (answer.ok ? [] : [answer.problem]))
test('every code is shown by an example here, and every sentence gets all of its values', () => {
  const codes = new Set(problems.map(({ code }) => code))
  expect([...codes].sort()).toEqual(Object.keys(lengthWords).sort())
  for (const { code, values } of problems) {
    for (const [, name] of lengthWords[code].says.matchAll(/\{(\w+)\}/g)) expect(values, code).toHaveProperty(name as string)
  }
})
test('every sentence is in three parts, and a help is a sentence', () => {
  for (const words of Object.values(lengthWords)) {
    expect(words.says).toMatch(/^Unexpected .*, expected .*; .*[.?]$/)
    if ('help' in words) expect(words.help).toMatch(/^[A-Z].*\.$/)
  }
})
