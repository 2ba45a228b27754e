import { type Length, type Tape, type Written, writeLength } from '@evenhem/length'
import { type ArgumentUse, argumentsOf, type Plugin, type Quantity, type Values, type Words } from '@evenhem/plugin'
import { IntlMessageFormat } from 'intl-messageformat'
import { hostWords } from './host-words.ts'

/** Sentences by language, then by code, of one plugin. */
export type Sentences = Readonly<Record<string, Words>>
export interface SayOptions {
  /** Of the host and of every plugin: `wordsOf(plugins)`. Where two have the same code the first one says it. */
  readonly words: readonly Sentences[]
  /** BCP 47: `en`, `es-MX`. What has no words in it is said in its first part alone, then in English. */
  readonly language: string
  /** How lengths are written. Inches and feet also mean pounds, metric also kilograms and newtons. */
  readonly tape: Tape
}
export interface Say {
  /** The sentence of a code. A code without words, or whose words lack a value, is shown as `[code]`. */
  readonly say: (code: string, values?: Values) => string
  /** What to do about it; undefined when the code has no such words. */
  readonly help: (code: string, values?: Values) => string | undefined
  readonly length: (length: Length) => Written
  readonly quantity: (quantity: Quantity) => string
  readonly hasCode: (code: string) => boolean
}

/** The words of the host and of these plugins. */
export const wordsOf = (plugins: readonly Plugin[]): readonly Sentences[] => [hostWords, ...plugins.map((plugin) => plugin.words)]

/** Says codes in a reader's language and unit. Values from a job are put in as they are: no markup, no message syntax. */
export function createSay({ words, language, tape }: SayOptions): Say {
  const languages = [...new Set([language, language.split('-', 1)[0] as string, 'en'])]
  // Spanish by itself writes a decimal comma; that of the Americas a point, as every tape here does.
  const numbers = language === 'es' ? 'es-419' : language
  const messages = new Map<string, Message | undefined>()
  const wordsFor = (code: string): { readonly says: string; readonly help?: string } | undefined => {
    for (const tongue of languages)
      for (const each of words) {
        const own = each[tongue]
        if (own && Object.hasOwn(own, code)) return own[code]
      }
    return undefined
  }
  const length = (nanometres: Length): Written => writeLength(nanometres, tape)
  const write = (value: Quantity | string): string => {
    if (typeof value === 'string') return value
    if ('code' in value) return say(value.code)
    return 'length' in value ? length(value.length).text : written(value, numbers, tape)
  }
  const format = (text: string, values: Values): string | undefined => {
    if (!messages.has(text)) messages.set(text, parsed(text, numbers))
    const message = messages.get(text)
    return message && formatted(message, values, write)
  }
  const say = (code: string, values: Values = {}): string => {
    const text = wordsFor(code)?.says
    return (text === undefined ? undefined : format(text, values)) ?? `[${code}]`
  }
  const help = (code: string, values: Values = {}): string | undefined => {
    const text = wordsFor(code)?.help
    return text === undefined ? undefined : (format(text, values) ?? `[${code}]`)
  }
  return { say, help, length, quantity: write, hasCode: (code) => wordsFor(code) !== undefined }
}

interface Message {
  readonly format: IntlMessageFormat
  readonly uses: ReadonlyMap<string, ReadonlySet<ArgumentUse>>
}
/** Undefined when the message can't be read: its code is shown instead, and the kit names the fault. */
function parsed(text: string, language: string): Message | undefined {
  try {
    const format = new IntlMessageFormat(text, language, undefined, { ignoreTag: true })
    return { format, uses: argumentsOf(format.getAst()) }
  } catch {
    return undefined
  }
}

/** Undefined when a value is missing, or is no number where the message counts by it. */
function formatted({ format, uses }: Message, values: Values, write: (value: Quantity | string) => string): string | undefined {
  const given: Record<string, string | number> = {}
  for (const [name, use] of uses) {
    const value = Object.hasOwn(values, name) ? values[name] : undefined
    const plain = value !== undefined && use.has('number') ? numberIn(value) : undefined
    if (value === undefined || (use.has('number') && plain === undefined)) return undefined
    given[name] = plain ?? write(value)
  }
  return String(format.format(given))
}
/** A number that a message may count by or format itself. A length is not: its unit is the reader's. */
function numberIn(value: Quantity | string): number | undefined {
  if (typeof value === 'string' || 'length' in value || 'code' in value) return undefined
  return Object.values(value)[0]
}

const poundInKilograms = 0.45359237
const poundForceInNewtons = 4.4482216152605
/** Counts as they are; the others to three digits: mass in kg or lb, force in N or lbf, an angle in degrees. Sizes of the pounds: NIST SP 811, B.8. */
function written(
  quantity: Exclude<Quantity, { readonly length: Length } | { readonly code: string }>,
  language: string,
  { unit }: Tape,
): string {
  const customary = unit === 'in' || unit === 'ft-in'
  const digits = (value: number): string =>
    new Intl.NumberFormat(language, { maximumSignificantDigits: 3 }).format(value).replace('-', '−')
  if ('count' in quantity) return new Intl.NumberFormat(language).format(quantity.count).replace('-', '−')
  if ('mass' in quantity) return customary ? `${digits(quantity.mass / poundInKilograms)} lb` : `${digits(quantity.mass)} kg`
  if ('force' in quantity)
    return customary ? `${digits(quantity.force / poundForceInNewtons)} lbf` : `${digits(quantity.force)} N`
  return 'angle' in quantity ? `${digits((quantity.angle * 180) / Math.PI)}°` : digits(quantity.ratio)
}
