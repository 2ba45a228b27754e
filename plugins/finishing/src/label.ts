import type { FabricCare } from './fabric.generated.ts'

/** What a care label says of steam, with whose word that is. `plate`: the hottest iron in degrees Celsius, where the label shows dots. */
export interface LabelSays {
  readonly steam: 'allowed' | 'only' | 'none' | 'unsaid'
  readonly by: 'none' | 'crossed' | 'one' | 'only' | 'two' | 'three' | 'nothing'
  readonly source: 'finishing/source-symbols' | 'finishing/source-terms' | 'finishing/source-none'
  readonly plate?: number
}

/**
 * Ironing symbols (read; GINETEX and public tables after ISO 3758, the standard itself was not read): three dots 200 °C, two 150 °C, both with steam;
 * one 110 °C without steam; crossed out: do not iron, and some tables add: no steaming.
 */
const irons = {
  'three dots': { steam: 'allowed', by: 'three', plate: 200 },
  'two dots': { steam: 'allowed', by: 'two', plate: 150 },
  'one dot': { steam: 'none', by: 'one', plate: 110 },
  'crossed out': { steam: 'none', by: 'crossed' },
} as const

/** What a label says of steam: what forbids it comes before what allows it. The words are those of 16 CFR 423 (read). */
export function labelOf(care: FabricCare | undefined): LabelSays {
  const iron = care?.iron && ({ ...irons[care.iron], source: 'finishing/source-symbols' } as const)
  const terms = 'finishing/source-terms'
  if (care?.steam === 'no steam') return { ...plateOf(iron), steam: 'none', by: 'none', source: terms }
  if (iron?.steam === 'none') return iron
  if (care?.steam === 'steam only') return { ...plateOf(iron), steam: 'only', by: 'only', source: terms }
  return iron ?? { steam: 'unsaid', by: 'nothing', source: 'finishing/source-none' }
}
const plateOf = (iron: (typeof irons)[keyof typeof irons] | undefined) => (iron && 'plate' in iron ? { plate: iron.plate } : {})

/** Words that ask for steam beside an iron that forbids it. */
export const contradicts = (care: FabricCare | undefined): boolean =>
  care?.steam === 'steam only' && (care.iron === 'one dot' || care.iron === 'crossed out')
