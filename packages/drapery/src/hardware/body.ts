import { below, type Place, type Treatment } from '@evenhem/job'
import { inch, type Known, type Length, metre, number, plus, type Reckoning, readQuantity, twelveDigits } from '@evenhem/length'
import {
  clearWoods,
  creepFactors,
  materials,
  rectangle,
  rectangleTube,
  roundTube,
  type Section,
  solidRound,
  solidSquare,
  squareTube,
} from '@evenhem/mechanics'
import { between } from '../arithmetic/index.ts'
import type { Coverage, Fixing, Rod, RodBody } from '../facts/index.ts'
import { kilogramsOf, member, perhaps, projectionAt } from '../given.ts'
import type { PlateSizes } from './brackets.ts'

/** A section as an order gives it. */
export interface SectionSaid {
  readonly shape: 'round' | 'square' | 'rectangle'
  readonly height: Length
  readonly width?: Length
  readonly wall?: Length
}
/** What an entry of hardware says of its rod. */
export interface RodSaid {
  readonly section?: SectionSaid | undefined
  readonly inner?: SectionSaid | undefined
  readonly material?: string | undefined
  readonly species?: string | undefined
  readonly weight?: string | undefined
  readonly splice?: 'turns' | 'stiff' | undefined
}

const metres = (length: number): number => length / metre
/** A section in metres; undefined where its sizes make none. */
function sectionOf({ shape, height, width, wall }: SectionSaid): Section | undefined {
  if (Math.min(height, width ?? height, wall ?? height) <= 0) return undefined
  const [high, wide] = [metres(height), metres(width ?? height)]
  if (wall === undefined)
    return shape === 'round' ? solidRound(high) : shape === 'square' ? solidSquare(high) : rectangle(wide, high)
  const thick = metres(wall)
  if (2 * thick >= Math.min(high, shape === 'rectangle' ? wide : high)) return undefined
  if (shape === 'rectangle') return rectangleTube(wide, high, thick)
  return (shape === 'round' ? roundTube : squareTube)(high, high - 2 * thick)
}

interface Stuff {
  /** Pa and kg/m³. */
  readonly elasticity: number
  readonly density: number
  readonly creep: number
  readonly assumes: readonly string[]
}
/** Wood at 12 % moisture weighs its specific gravity and the water in it (Wood Handbook, Eq. 4-9, from memory). Of a wood that nobody names the least stiff and the heaviest are taken. */
function woodOf(species: string | undefined): Stuff {
  const own = species === undefined ? undefined : clearWoods[species as keyof typeof clearWoods]
  const all = own ? [own] : Object.values(clearWoods)
  return {
    elasticity: Math.min(...all.map(({ elasticity }) => elasticity)),
    density: 1120 * Math.max(...all.map(({ gravity }) => gravity)),
    creep: creepFactors.seasoned,
    assumes: ['drapery/assume-creep', ...(own ? [] : ['drapery/assume-wood'])],
  }
}
function stuffOf({ material, species }: RodSaid): Stuff | undefined {
  if (material === 'wood') return woodOf(species)
  const own = material === undefined ? undefined : materials[material as keyof typeof materials]
  if (!own) return undefined
  return {
    elasticity: own.elasticity.value,
    density: own.density.value,
    creep: 1,
    assumes: own.creeps ? ['drapery/assume-acrylic'] : [],
  }
}

/** A rod as a beam, with what it weighs, by what its hardware says. `bearer`: what one ring or carrier weighs, as the order writes it. */
export function rodBodyOf(
  at: Place,
  hardwareAt: Place,
  said: RodSaid,
  { rod, coverage }: { readonly rod: Rod; readonly coverage: Coverage },
  it: Treatment,
  { bearer, finial }: { readonly bearer?: string | undefined; readonly finial?: { readonly weight?: string } | undefined },
): { readonly rodBody: RodBody; readonly reckonings: readonly Reckoning[] } {
  const long = between(`${at}#rod-whole`, 'drapery/rod-whole', rod.left, rod.right, coverage.corners)
  const stuff = stuffOf(said)
  const section = said.section && sectionOf(said.section)
  const each = eachMetre(said.weight, section, stuff)
  const weight = each === undefined ? undefined : rodWeight(at, each, long)
  const whole = (rod.right.value - rod.left.value) as Length
  const ei = stuff && section ? stiffnessOf(said, section, stuff.elasticity, rod.left.value, whole, it) : undefined
  const [ofBearer, ofFinial] = [kilogramsOf(bearer), kilogramsOf(finial?.weight)]
  const at_ = (name: string) => below(hardwareAt, 'rod', name)
  const rodBody: RodBody = {
    stiffness: ei ?? [],
    ...(weight ? { weight } : {}),
    creep: stuff?.creep ?? 1,
    turns: said.splice !== 'stiff',
    ...(ofBearer === undefined ? {} : { bearer: number(ofBearer) }),
    ...(ofFinial === undefined ? {} : { finial: number(ofFinial) }),
    lacks: [
      ...(stuff ? [] : [at_('material')]),
      ...(section ? [] : [at_('section')]),
      ...(stuff && section && !ei ? [below(at, 'rod', 'thin')] : []),
    ],
    assumes: [
      ...(stuff?.assumes ?? []),
      ...(ofBearer === undefined ? ['drapery/assume-bearers'] : []),
      ...(finial && ofFinial === undefined ? ['drapery/assume-finials'] : []),
    ],
  }
  return { rodBody, reckonings: [long, ...(weight ? [weight] : [])] }
}
/** What a metre of the rod weighs, kg. */
function eachMetre(weight: string | undefined, section: Section | undefined, stuff: Stuff | undefined): number | undefined {
  const read = weight === undefined ? undefined : readQuantity(weight, 'linearWeight')
  if (read?.ok) return read.value
  return section && stuff && twelveDigits(section.area * stuff.density)
}
const rodWeight = (at: Place, each: number, long: Known<Length> | Reckoning): Reckoning => ({
  name: `${at}#rod-weight`,
  what: 'drapery/rod-weight',
  value: twelveDigits(each * metres(long.value)),
  unit: 'mass',
  how: 'formula',
  terms: [plus('drapery/rod-whole', long), plus('drapery/kilograms-a-metre', number(each))],
  source: 'drapery/weight-of-rod',
})
/** E·I along the rod: thinner where its inner tube is alone. Undefined for a rod that is pushed together while it is not said how thin it is, or where. */
function stiffnessOf(
  { inner }: RodSaid,
  section: Section,
  elasticity: number,
  left: Length,
  whole: Length,
  { rod }: Treatment,
): RodBody['stiffness'] | undefined {
  const thick = { from: left, ei: twelveDigits(elasticity * section.inertia) }
  const thin = rod?.thin
  if (!thin && !inner) return [thick]
  const thinner = inner && sectionOf(inner)
  if (!thin || !thinner || thin.from < 0 || thin.from >= thin.to || thin.to > whole + slack) return undefined
  const at = (length: Length) => (left + length) as Length
  return [thick, { from: at(thin.from), ei: twelveDigits(elasticity * thinner.inertia) }, { from: at(thin.to), ei: thick.ei }]
}
/** A length as somebody measures it may be a little more than what is worked out. */
const slack = 2 * inch

interface PlateSaid extends PlateSizes {
  readonly thickness?: Length
  readonly rated?: string
  readonly holdsDown?: boolean
  readonly screw?: string
}
interface FixedBy {
  readonly bracket: PlateSaid & { readonly projection?: Length; readonly inner?: { readonly projection: Length } }
  readonly support?: PlateSaid | undefined
  readonly ceiling?: { readonly holes?: readonly unknown[]; readonly rated?: string; readonly screw?: string } | undefined
}
/** How end brackets and supports are held, by what the hardware says of their plates. */
export function fixingsOf(it: Treatment, at: Place, hardware: FixedBy, hardwareAt: Place): readonly Fixing[] {
  if (it.mount === 'ceiling') return ceilingFixings(hardware)
  const own = perhaps(member(hardwareAt, ['bracket', 'projection'], hardware.bracket.projection))
  const each = own && (['left', 'right'] as const).map((side) => projectionAt(it, at, side, own))
  const projection = each?.reduce((a, b) => (b.value > a.value ? b : a))
  return (['bracket', 'support'] as const).flatMap((part) => {
    const said = hardware[part]
    return said
      ? [fixingOf(part, said, below(hardwareAt, part), projection, part === 'bracket' ? hardware.bracket.inner : undefined)]
      : []
  })
}
const rating = (rated: string | undefined) => {
  const kilograms = kilogramsOf(rated)
  return kilograms === undefined || kilograms <= 0 ? {} : { rated: number(kilograms) }
}
function fixingOf(
  part: Fixing['part'],
  said: PlateSaid,
  place: Place,
  projection: Known<Length> | undefined,
  inner: { readonly projection: Length } | undefined,
): Fixing {
  const [height, thickness] = [
    perhaps(member(place, ['height'], said.height)),
    perhaps(member(place, ['thickness'], said.thickness)),
  ]
  return {
    ...{ part, on: 'wall' as const },
    ...(projection ? { projection } : {}),
    ...(height ? { height } : {}),
    ...(thickness ? { thickness } : {}),
    holes: (said.holes ?? []).map(({ id, down }) => ({ value: down, from: below(place, 'holes', id, 'down') })),
    ...rating(said.rated),
    holdsDown: said.holdsDown ?? false,
    ...(said.screw === undefined ? {} : { screw: said.screw }),
    ...(inner ? { inner: { value: inner.projection, from: below(place, 'inner', 'projection') } } : {}),
  }
}
const ceilingFixings = ({ ceiling }: FixedBy): readonly Fixing[] =>
  ceiling
    ? (['bracket', 'support'] as const).map((part) => ({
        ...{ part, on: 'ceiling' as const },
        holes: (ceiling.holes ?? []).map(() => number(0) as Known<Length>),
        ...rating(ceiling.rated),
        holdsDown: true,
        ...(ceiling.screw === undefined ? {} : { screw: ceiling.screw }),
      }))
    : []
