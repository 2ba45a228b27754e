import { type BareUnit, readLength } from '@evenhem/length'
import { Trouble } from './command.ts'
import type { Phrase } from './voice.ts'
import type { CliCode } from './words.ts'

/** What is known of a new job, by the name of the option that says it. */
export type Answers = Readonly<Record<string, string>>

/** Something that a new job is asked about, on a terminal or by an option. */
export interface Question {
  readonly flag: string
  /** How it is asked, and what its option says of itself. */
  readonly asks: CliCode
  readonly says: CliCode
  readonly value: string
  readonly choices?: readonly string[]
  /** Not asked while this one has no answer. */
  readonly needs?: string
  readonly isRequired?: boolean
  readonly otherwise?: (answers: Answers) => string | undefined
  /** Throws `Trouble` when that cannot be the answer. */
  readonly check?: (answer: string, flag: string, answers: Answers) => void
}

type Check = NonNullable<Question['check']>
const bad = (flag: string, got: string, expected: Phrase, example: string): never => {
  throw new Trouble('bad-answer', { flag, got: got || '""', expected, example })
}
const isText: Check = (answer, flag) => {
  if (answer.trim() === '') bad(flag, answer, { code: 'some-text' }, '"26-117"')
}
const isCountry: Check = (answer, flag) => {
  if (!/^[A-Z]{2}$/.test(answer)) bad(flag, answer, { code: 'country-code' }, 'US')
}
const isLength: Check = (answer, flag, { units }) => {
  const read = readLength(answer, units as BareUnit)
  if (read.ok) return
  throw new Trouble('not-a-length', { flag, says: { refused: read.problem.code, values: read.problem.values } })
}
const mostPleats = 200
const isCount: Check = (answer, flag) => {
  const range: Phrase = { code: 'whole-number', values: { least: 1, most: mostPleats } }
  if (!/^[1-9]\d*$/.test(answer) || Number(answer) > mostPleats) bad(flag, answer, range, '11')
}
const isSize: Check = (answer, flag, answers) => {
  const sides = sidesOf(answer)
  if (sides.length !== 2) bad(flag, answer, { code: 'size' }, '"62 x 86 1/4"')
  for (const side of sides) isLength(side, flag, answers)
}
const isOneOf =
  (choices: readonly string[]): Check =>
  (answer, flag) => {
    if (!choices.includes(answer))
      bad(flag, answer, { code: 'one-of', values: { choices: choices.join(', ') } }, choices[0] ?? '')
  }

/** The two sides of a size: `62 x 86 1/4`. */
export const sidesOf = (size: string): readonly string[] => size.split(/\s*[x×X]\s*/).filter((side) => side !== '')

const units = ['in', 'mm', 'cm']
const draws = ['pair', 'one-way left', 'one-way right', 'stationary']
const length = { value: 'LENGTH', check: isLength }

/** Everything that is asked, in this order. */
export const questions: readonly Question[] = [
  { flag: 'number', asks: 'ask.number', says: '--number', value: 'TEXT', isRequired: true, check: isText },
  { flag: 'name', asks: 'ask.name', says: '--name', value: 'TEXT', otherwise: ({ number }) => number, check: isText },
  { flag: 'country', asks: 'ask.country', says: '--country', value: 'US', isRequired: true, check: isCountry },
  {
    flag: 'units',
    asks: 'ask.units',
    says: '--job-units',
    value: 'UNIT',
    choices: units,
    isRequired: true,
    check: isOneOf(units),
  },
  { flag: 'customer', asks: 'ask.customer', says: '--customer', value: 'TEXT', check: isText },
  { flag: 'room', asks: 'ask.room', says: '--room', value: 'TEXT', check: isText },
  { flag: 'window', asks: 'ask.window', says: '--new-window', value: 'TEXT', needs: 'room', check: isText },
  { flag: 'opening', asks: 'ask.opening', says: '--opening', value: 'WIDTHxTOP', needs: 'window', check: isSize },
  { flag: 'rod-diameter', asks: 'ask.rod-diameter', says: '--rod-diameter', needs: 'window', ...length },
  {
    flag: 'draw',
    asks: 'ask.draw',
    says: '--draw',
    value: 'DRAW',
    choices: draws,
    needs: 'rod-diameter',
    otherwise: () => 'pair',
    check: isOneOf(draws),
  },
  { flag: 'rod', asks: 'ask.rod', says: '--rod', needs: 'rod-diameter', ...length },
  { flag: 'top', asks: 'ask.top', says: '--top', needs: 'rod-diameter', ...length },
  { flag: 'length', asks: 'ask.length', says: '--length', needs: 'rod-diameter', ...length },
  { flag: 'pleats', asks: 'ask.pleats', says: '--pleats', value: 'N', needs: 'rod-diameter', check: isCount },
]
