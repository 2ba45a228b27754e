import type { Written } from '@evenhem/length'

const small = [
  'zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen',
  'sixteen', 'seventeen', 'eighteen', 'nineteen', 'twenty',
]
const parts: Readonly<Record<number, readonly [one: string, many: string]>> = {
  2: ['half', 'halves'], 4: ['quarter', 'quarters'], 8: ['eighth', 'eighths'], 16: ['sixteenth', 'sixteenths'], 32: ['thirty-second', 'thirty-seconds'],
}

const count = (n: number): string => small[n] ?? `twenty-${small[n - 20]}`

function fraction({ numerator, denominator }: Written): string {
  if (numerator === undefined || denominator === undefined) return ''
  const names = parts[denominator]
  return names ? `${count(numerator)} ${names[numerator === 1 ? 0 : 1]}` : `${numerator} over ${denominator}`
}

const units = { in: ['inch', 'inches'], 'ft-in': ['inch', 'inches'], mm: ['millimetre', 'millimetres'], cm: ['centimetre', 'centimetres'] } as const

/** A number as a screen reader should say it: “93 and one eighth inches”, “minus one half inch”, “7 feet 2 inches”. */
export function spoken(written: Written): string {
  const part = fraction(written)
  const number = [written.whole, part].filter(Boolean).join(' and ') || '0'
  const one = number === '1' || (written.whole === '' && part !== '')
  const feet = written.feet === undefined ? '' : `${written.feet} ${written.feet === 1 ? 'foot' : 'feet'} `
  const rest = written.feet !== undefined && number === '0' ? '' : `${number} ${units[written.unit][one ? 0 : 1]}`
  return `${written.negative ? 'minus ' : ''}${feet}${rest}`.trim()
}
