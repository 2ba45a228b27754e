import { words as drawingWords } from '@evenhem/drawing'
import { type Length, type SpokenLanguage, spokenLength, type Tape, type Written } from '@evenhem/length'
import { createSay, type Sentences } from '@evenhem/planner/say'
import type { Values } from '@evenhem/plugin'
import { words as reportWords } from './words.ts'

/** A length in a sentence: exact, as the reader's tape shows it, and as it is spoken where we can say it in the reader's language. */
export interface NumberPiece {
  readonly length: Length
  readonly written: Written
  /** The unit, where `written.text` is without one; a sentence says it, a list of facts and a drawing say it once for all. */
  readonly unit?: string
  readonly spoken?: string
}
/** A sentence: text, and the lengths in it. */
export type Said = readonly (string | NumberPiece)[]

/** Says codes to the reader of a report. */
export interface Voice {
  /** A sentence of a code, its lengths kept apart so that each paper sets them as numbers. */
  readonly said: (code: string, values?: Values) => Said
  readonly help: (code: string, values?: Values) => Said | undefined
  /** A sentence as one text. */
  readonly text: (code: string, values?: Values) => string
  readonly number: (length: Length) => NumberPiece
  /** What something weighs, with its unit. */
  readonly weigh: (kilograms: number) => string
  /** A day, written out: `2026-11-30T09:12:00-05:00` is 30 November, on the clock where it was written. What is no day stands as it is. */
  readonly day: (when: string) => string
  readonly tape: Tape
  readonly language: string
}

// Two code points that never stand for a character; between them the number of a length in the sentence.
const [open, close] = ['\ufdd0', '\ufdd1']
const held = new RegExp(`${open}(\\d+)${close}`)
const heldOrHalf = new RegExp(`[${open}${close}]`, 'g')

const aDay = /^\d{4}-\d\d-\d\d$/

/** The values with each length put by, and each day as the reader writes it, for a sentence to carry through, and the lengths that were put by. */
function putBy(values: Values, day: Voice['day']): { readonly values: Values; readonly lengths: readonly Length[] } {
  const lengths: Length[] = []
  const kept = Object.entries(values).map(([name, value]) => {
    if (typeof value === 'string') return [name, (aDay.test(value) ? day(value) : value).replace(heldOrHalf, '\ufffd')] as const
    return 'length' in value ? ([name, `${open}${lengths.push(value.length) - 1}${close}`] as const) : ([name, value] as const)
  })
  return { values: Object.fromEntries(kept), lengths }
}

const takenUp = (sentence: string, number: (n: number) => NumberPiece): Said =>
  sentence
    .split(held)
    .map((part, n) => (n % 2 === 1 ? number(Number(part)) : part))
    .filter((part) => part !== '')

/** Days by the calendar of a language, without this machine's clock or zone. */
function daysIn(language: string): Voice['day'] {
  const format = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' })
  return (when) => {
    const day = /^\d{4}-\d\d-\d\d/.exec(when)?.[0]
    const time = day === undefined ? Number.NaN : Date.parse(`${day}T00:00:00Z`)
    return Number.isNaN(time) ? when : format.format(time)
  }
}

/** The language that a length is spoken in for readers of this one; undefined where we can't. */
function spokenIn(language: string): SpokenLanguage | undefined {
  const [tongue] = language.split('-', 1)
  return tongue === 'en' || tongue === 'es' ? tongue : undefined
}

/** The voice of a report in a language, with lengths as a tape shows them. `words` are the host's and the plugins': `wordsOf(plugins)`. */
export function createVoice(words: readonly Sentences[], language: string, tape: Tape): Voice {
  const { say, help, length, quantity } = createSay({ words: [...words, drawingWords, reportWords], language, tape })
  const tongue = spokenIn(language)
  const day = daysIn(language)
  const number = (exact: Length): NumberPiece => {
    const written = length(exact)
    return {
      length: exact,
      written,
      ...(tape.unit === 'in' ? { unit: say('drawing/in') } : {}),
      ...(tongue ? { spoken: spokenLength(written, tongue) } : {}),
    }
  }
  const whole = <T extends string | undefined>(
    sentence: (code: string, values: Values) => T,
    code: string,
    values: Values = {},
  ) => {
    const kept = putBy(values, day)
    const text = sentence(code, kept.values)
    return text === undefined ? undefined : takenUp(text, (n) => number(kept.lengths[n] as Length))
  }
  return {
    said: (code, values) => whole(say, code, values) ?? [],
    help: (code, values) => whole(help, code, values),
    text: say,
    number,
    weigh: (mass) => quantity({ mass }),
    day,
    tape,
    language,
  }
}
