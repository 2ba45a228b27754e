/** How much steam a fibre takes, from hardly any up. */
export const gentleness = ['least', 'low', 'light', 'moderate', 'generous'] as const
export type Gentleness = (typeof gentleness)[number]

/** What is known of a fibre. */
export interface FibreCare {
  readonly level: Gentleness
  /** From the back alone. */
  readonly back?: true
  /** Held off the cloth. */
  readonly off?: true
  /** Nothing may pull at it while it is warm and damp. */
  readonly still?: true
  /** What irons its cloth at the most, in whole degrees Celsius: the lowest figure of those that were published for it. */
  readonly plate: number
  /** Whose figure that is. */
  readonly source: 'finishing/source-household' | 'finishing/source-textile'
}

const household = 'finishing/source-household'
const textile = 'finishing/source-textile'

/**
 * Fibres by their names. Plate temperatures are published (read): The Spruce, Select the correct ironing temperature for fabrics; TextileTuts, Iron
 * temperature guide, its lower end; where both give one, the lower. How they are steamed is common practice, no source: linen and cotton take generous
 * steam; viscose is weak when wet, lightly from the back, no pulling; wool without pressure or pulling; on silk water can spot, from the back, held off;
 * polyester and triacetate moderately; acetate at low heat from the back, no contact; nylon low, held off; acrylic can stretch or flatten for good, least
 * heat, held off, no weight on the panel; elastane follows the lower limit of its blend, which is taken as light.
 */
export const fibreCare = {
  linen: { level: 'generous', plate: 210, source: textile },
  cotton: { level: 'generous', plate: 180, source: textile },
  viscose: { level: 'light', back: true, still: true, plate: 191, source: household },
  wool: { level: 'moderate', off: true, still: true, plate: 149, source: household },
  silk: { level: 'light', back: true, off: true, plate: 149, source: household },
  polyester: { level: 'moderate', plate: 149, source: household },
  acetate: { level: 'low', back: true, off: true, plate: 130, source: textile },
  triacetate: { level: 'moderate', plate: 199, source: household },
  nylon: { level: 'low', off: true, plate: 130, source: textile },
  acrylic: { level: 'least', off: true, still: true, plate: 110, source: textile },
  elastane: { level: 'light', plate: 135, source: household },
} as const satisfies Readonly<Record<string, FibreCare>>
export type FibreName = keyof typeof fibreCare

/** Other names of them, without accents: generic names of Regulation (EU) No 1007/2011 and 16 CFR 303.7 (read), and what they are called in Spanish. */
const alsoCalled: Readonly<Record<string, FibreName>> = {
  flax: 'linen',
  lino: 'linen',
  algodon: 'cotton',
  rayon: 'viscose',
  viscosa: 'viscose',
  lana: 'wool',
  seda: 'silk',
  poliester: 'polyester',
  acetato: 'acetate',
  triacetato: 'triacetate',
  polyamide: 'nylon',
  poliamida: 'nylon',
  nailon: 'nylon',
  acrilico: 'acrylic',
  acrilica: 'acrylic',
  spandex: 'elastane',
  elastano: 'elastane',
}

const plain = (name: string): string => name.trim().toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '')

/** The fibre that a name in the order is of; undefined where nothing is known of it here. */
export function fibreOf(name: string): FibreName | undefined {
  const own = plain(name)
  if (Object.hasOwn(fibreCare, own)) return own as FibreName
  return Object.hasOwn(alsoCalled, own) ? alsoCalled[own] : undefined
}
