import type { Written } from './written.ts'

type OneAndMany = readonly [one: string, many: string]

const small = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
]
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']
const fractions: Readonly<Record<number, OneAndMany>> = {
  2: ['half', 'halves'],
  4: ['quarter', 'quarters'],
  8: ['eighth', 'eighths'],
  16: ['sixteenth', 'sixteenths'],
  32: ['thirty-second', 'thirty-seconds'],
  64: ['sixty-fourth', 'sixty-fourths'],
}
const units = {
  in: ['inch', 'inches'],
  'ft-in': ['inch', 'inches'],
  mm: ['millimetre', 'millimetres'],
  cm: ['centimetre', 'centimetres'],
} as const

const numberWord = (n: number): string => {
  if (n >= 100) return String(n)
  if (n < small.length) return small[n] as string
  return n % 10 === 0 ? (tens[n / 10] as string) : `${tens[Math.floor(n / 10)]}-${small[n % 10]}`
}

function english(written: Written): string {
  const { negative, feet, numerator, denominator, unit } = written
  const fraction = numerator === undefined || denominator === undefined ? '' : englishFraction(numerator, denominator)
  // 7 ft 0 1/2 in is “7 feet one half inch”, and 7 ft 0 in is “7 feet”.
  const whole = feet !== undefined && written.whole === '0' ? '' : written.whole
  const number = [whole, fraction].filter(Boolean).join(' and ')
  const name = units[unit][whole === '' || number === '1' ? 0 : 1]
  const parts = [
    negative && 'minus',
    feet !== undefined && `${feet} ${feet === 1 ? 'foot' : 'feet'}`,
    number && `${number} ${name}`,
  ]
  return parts.filter(Boolean).join(' ')
}

function englishFraction(numerator: number, denominator: number): string {
  const names = fractions[denominator]
  return names ? `${numberWord(numerator)} ${names[numerator === 1 ? 0 : 1]}` : `${numberWord(numerator)} over ${denominator}`
}

const spanishFractions: Readonly<Record<number, OneAndMany>> = {
  2: ['medio', 'medios'],
  4: ['cuarto', 'cuartos'],
  8: ['octavo', 'octavos'],
  16: ['dieciseisavo', 'dieciseisavos'],
  32: ['treintaidosavo', 'treintaidosavos'],
  64: ['sesentaicuatroavo', 'sesentaicuatroavos'],
}
const spanishUnits = {
  in: ['pulgada', 'pulgadas'],
  'ft-in': ['pulgada', 'pulgadas'],
  mm: ['milímetro', 'milímetros'],
  cm: ['centímetro', 'centímetros'],
} as const

const spanishFraction = (numerator: number, denominator: number): string => {
  const names = spanishFractions[denominator]
  if (!names) return `${numerator} sobre ${denominator}`
  if (denominator === 2) return names[0]
  return numerator === 1 ? `un ${names[0]}` : `${numerator} ${names[1]}`
}

/** “93 pulgadas y un octavo”, “1 pulgada y media”, and below an inch “5 octavos de pulgada”, “media pulgada”. */
function spanish(written: Written): string {
  const { negative, feet, numerator, denominator, unit } = written
  const fraction = numerator === undefined || denominator === undefined ? '' : spanishFraction(numerator, denominator)
  const whole = (feet !== undefined || fraction !== '') && written.whole === '0' ? '' : written.whole
  const parts = [
    negative && 'menos',
    feet !== undefined && `${feet} ${feet === 1 ? 'pie' : 'pies'}`,
    spanishInches(whole, fraction, spanishUnits[unit]),
  ]
  return parts.filter(Boolean).join(' ')
}

function spanishInches(whole: string, fraction: string, [one, many]: OneAndMany): string {
  if (whole === '') return fraction === 'medio' ? `media ${one}` : fraction && `${fraction} de ${one}`
  if (whole === '1') return `1 ${one}${fraction && ` y ${fraction === 'medio' ? 'media' : fraction}`}`
  return `${whole} ${many}${fraction && ` y ${fraction === 'medio' ? 'media' : fraction}`}`
}

const languages = { en: english, es: spanish } as const

/** Languages that lengths can be spoken in. */
export type SpokenLanguage = keyof typeof languages

/**
 * A length as a screen reader should say it: “93 and one eighth inches”, “minus five eighths inch”, “7 feet 2 and one half inches”,
 * “2197 millimetres”. Left to itself a reader says 1/8 as a date or as “one slash eight”. Feet alone leave out the 0 inches.
 */
export const spokenLength = (written: Written, language: SpokenLanguage): string => languages[language](written)
