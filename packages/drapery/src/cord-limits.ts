import { inch, type Length } from '@evenhem/length'

/** A published limit of cords, with where it was read. `basis` as the collection of sources says it. */
export interface CordLimit {
  readonly value: Length
  /** In short, as people are told. */
  readonly source: string
  readonly basis: 'read' | 'read (secondary)'
}
/** What a country publishes of cords; what it does not is left out, and nothing is taken from another. */
export interface CordLimits {
  /** Two letters, ISO 3166-1. */
  readonly countries: readonly string[]
  /** The longest free cord within reach. */
  readonly freeCord?: CordLimit
  /** The longest way around a loop within reach. */
  readonly loop?: CordLimit
  /** A loop that a loose cord forms must be shorter than this, or wholly above that height. */
  readonly lowLoop?: { readonly shorter: CordLimit; readonly above: CordLimit }
  /** The lowest point of cord or loop above the floor. */
  readonly lowest?: CordLimit
}
const cm = (n: number): Length => (n * 10_000_000) as Length

const sor = 'Corded Window Coverings Regulations, SOR/2019-97'
const au = 'Corded Internal Window Coverings Safety Standard 2014'
/** Summaries of EN 13120; the standard itself was not read. */
const en = 'EN 13120, as summaries give it'

export const cordLimits: readonly CordLimits[] = [
  {
    countries: ['US'],
    // Custom products made from 1 June 2024: no free-hanging operating cords; loops only with a tension device. The 8-inch rule of 16 CFR 1260 was vacated.
    freeCord: { value: 0 as Length, source: 'ANSI/WCMA A100.1-2022, a voluntary standard', basis: 'read (secondary)' },
  },
  {
    countries: ['CA'],
    freeCord: { value: cm(22), source: `${sor}, section 5, pulled with 35 N`, basis: 'read' },
    loop: { value: cm(44), source: `${sor}, section 7, pulled with 35 N`, basis: 'read' },
  },
  {
    countries: ['AU'],
    lowLoop: {
      shorter: { value: cm(22), source: au, basis: 'read' },
      above: { value: cm(160), source: au, basis: 'read' },
    },
  },
  {
    countries: ['IE'],
    lowest: { value: cm(160), source: 'advice of the National Standards Authority of Ireland', basis: 'read' },
  },
  {
    countries: 'GB AT BE BG HR CY CZ DK EE FI FR DE GR HU IT LV LT LU MT NL PL PT RO SK SI ES SE NO IS CH'.split(' '),
    lowest: { value: cm(150), source: en, basis: 'read (secondary)' },
  },
]

/** What the country of a job publishes of cords; undefined: nothing is known here. */
export const limitsOf = (country: string): CordLimits | undefined =>
  cordLimits.find(({ countries }) => countries.includes(country))

/** How high what people work may be in a public place. */
export interface ReachRange {
  readonly least: Length
  readonly most: Length
  readonly source: string
}
/** Forward reach without anything in the way (2010 ADA Standards for Accessible Design, 308.2.1; read); only the United States is known here. */
export const reachOf = (country: string): ReachRange | undefined =>
  country === 'US'
    ? { least: (15 * inch) as Length, most: (48 * inch) as Length, source: '2010 ADA Standards, 308.2.1' }
    : undefined
