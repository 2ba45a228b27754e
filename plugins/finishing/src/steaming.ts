import type { FabricCare } from './fabric.generated.ts'
import { type FibreCare, type FibreName, fibreCare, fibreOf, type Gentleness, gentleness } from './fibres.ts'
import { type LabelSays, labelOf } from './label.ts'

/** A cloth of a drapery: its face, or what lies behind it. */
export interface Cloth {
  readonly id: string
  readonly name: string
  readonly as: 'face' | 'lining' | 'interlining'
  readonly fibres: readonly string[]
  readonly care?: FabricCare | undefined
}

/** Why a drapery is not steamed. */
export type Stop = LabelSays['by'] | 'marked' | 'side' | 'unknown' | 'unnamed' | 'ordered'

/** How a drapery is steamed, or that it is not. */
export interface Steaming {
  readonly steam: boolean
  /** Why not; where it is steamed, what allows it: the label, or what is usual for the fibre. */
  readonly by: Stop | 'fibre'
  readonly source: LabelSays['source'] | 'finishing/source-practice'
  /** The cloth that decided. */
  readonly cloth: string
  readonly level: Gentleness
  readonly fibre: FibreName | 'unknown'
  readonly from: 'either' | 'back' | 'face'
  readonly off: boolean
  readonly still: boolean
  /** Steam or water may leave a mark: silk, or as the supplier says. */
  readonly spots: boolean
  readonly pile: boolean
  readonly relaxer: 'allowed' | 'not allowed' | 'unsaid'
}

/** Velvet by its supplier, or by its name where nobody says whether it has a pile. */
export const isVelvet = ({ name, care }: Cloth): boolean =>
  care?.pile === 'velvet' || (care?.pile === undefined && /velvet|terciopelo/i.test(name))
/** Fibres of which nothing is known here, or none at all. */
export const isUnknown = ({ fibres }: Cloth): boolean =>
  fibres.length === 0 || fibres.some((fibre) => fibreOf(fibre) === undefined)

interface Limits {
  readonly cloth: Cloth
  readonly fibre: FibreName | 'unknown'
  readonly care: Pick<FibreCare, 'level' | 'back' | 'off' | 'still'>
}
/** Where nothing is known and the label allows steam: the least of everything. */
const careful = { level: 'least', back: true, off: true, still: true } as const

/** What each fibre of each cloth asks for. */
const limitsOf = (cloth: Cloth): readonly Limits[] =>
  isUnknown(cloth)
    ? [{ cloth, fibre: 'unknown', care: careful }]
    : cloth.fibres.map((name) => {
        const fibre = fibreOf(name) as FibreName
        return { cloth, fibre, care: fibreCare[fibre] }
      })
const rank = ({ care, fibre }: Limits): number =>
  gentleness.indexOf(care.level) * 1000 + (fibre === 'unknown' ? 0 : fibreCare[fibre].plate)
/** Of several the one that takes the least steam; of alike ones the one with the cooler iron. */
const delicate = (all: readonly Limits[]): Limits => all.reduce((a, b) => (rank(b) < rank(a) ? b : a))

/** A drapery of a fabric that the order does not name. */
const unnamed: Steaming = {
  steam: false,
  by: 'unnamed',
  source: 'finishing/source-practice',
  cloth: '',
  level: 'least',
  fibre: 'unknown',
  from: 'back',
  off: true,
  still: true,
  spots: false,
  pile: false,
  relaxer: 'unsaid',
}

/**
 * How the cloths of a drapery are steamed together: the face first, then what is behind it. The label rules over the fibres, and the most delicate of all
 * fibres and cloths over the others (common practice, no source). Pile is never steamed on its face, a coated back never on the coating (common practice,
 * no source). `wanted`: what the order says; `tried`: what steam left in a hidden place. Without cloths nothing is steamed.
 */
export function steamingOf(cloths: readonly Cloth[], wanted?: boolean, tried?: 'mark' | 'no mark'): Steaming {
  if (cloths.length === 0) return unnamed
  const all = cloths.flatMap(limitsOf)
  const most = delicate(all)
  const sides = sidesOf(cloths, all)
  const pile = cloths.some(isVelvet)
  const how = {
    level: atMost(most.care.level, sides.coated ? 'least' : pile || cloths.some(spotsOf) ? 'light' : 'generous'),
    fibre: most.fibre,
    from: sides.coated ? ('face' as const) : sides.back ? ('back' as const) : ('either' as const),
    off: sides.coated || sides.back || all.some(({ care }) => care.off) || saysOnly(cloths),
    still: all.some(({ care }) => care.still),
    spots: cloths.some(spotsOf),
    pile,
    relaxer: relaxerOf(cloths),
  }
  return { ...decided(cloths, most, sides, wanted, tried), ...how }
}

/** A coating takes the least, pile and what spots take light steam (common practice, no source). */
const atMost = (level: Gentleness, cap: Gentleness): Gentleness =>
  gentleness[Math.min(gentleness.indexOf(level), gentleness.indexOf(cap))] as Gentleness

/** Which sides are left to steam from. */
function sidesOf(cloths: readonly Cloth[], all: readonly Limits[]) {
  const coated = cloths.some(({ care }) => care?.coated === true)
  const back = all.some(({ care }) => care.back) || cloths.some((cloth) => isVelvet(cloth) || cloth.care?.waterSpots === true)
  return { coated, back }
}
const saysOnly = (cloths: readonly Cloth[]): boolean => cloths.some(({ care }) => labelOf(care).steam === 'only')
/** Water can spot silk (common practice, no source), and what its supplier says so of. */
export const spotsOf = ({ fibres, care }: Cloth): boolean => care?.waterSpots ?? fibres.some((fibre) => fibreOf(fibre) === 'silk')

/** An alcohol-based relaxer only where every cloth allows it (common practice, no source). */
function relaxerOf(cloths: readonly Cloth[]): Steaming['relaxer'] {
  if (cloths.some(({ care }) => care?.relaxer === 'not allowed')) return 'not allowed'
  return cloths.every(({ care }) => care?.relaxer === 'allowed') ? 'allowed' : 'unsaid'
}

type Decided = Pick<Steaming, 'steam' | 'by' | 'source' | 'cloth'>
const practice = 'finishing/source-practice'
/** Whether it is steamed: labels that forbid come first, then what was tried and found, what cannot be, and what is not known. */
function decided(
  cloths: readonly Cloth[],
  most: Limits,
  sides: ReturnType<typeof sidesOf>,
  wanted: boolean | undefined,
  tried: 'mark' | 'no mark' | undefined,
): Decided {
  const labels = cloths.map((cloth) => ({ cloth: cloth.name, ...labelOf(cloth.care), isUnknown: isUnknown(cloth) }))
  const stop = (by: Stop, cloth: string): Decided => ({ steam: false, by, source: practice, cloth })
  const forbids = labels.find(({ steam }) => steam === 'none')
  if (forbids) return { ...stop(forbids.by, forbids.cloth), source: forbids.source }
  if (tried === 'mark') return stop('marked', most.cloth.name)
  if (wanted === false) return stop('ordered', most.cloth.name)
  if (sides.coated && sides.back) return stop('side', most.cloth.name)
  const strange = labels.find((label) => label.isUnknown && label.steam === 'unsaid')
  if (strange) return stop('unknown', strange.cloth)
  const allows = labels.find((label) => label.cloth === most.cloth.name && label.steam !== 'unsaid')
  return allows
    ? { steam: true, by: allows.by, source: allows.source, cloth: allows.cloth }
    : { steam: true, by: 'fibre', source: practice, cloth: most.cloth.name }
}
