import { aboveZero, type Found, found, notBelowZero, type Refusal, refused } from './found.ts'
import { inch, psi } from './inch-pounds.ts'
import { type LoadDuration, leastPenetration, loadDurations } from './withdrawal.ts'

// What a screw in shear holds. It bends, or crushes what it stands in, in one of six ways; the weakest counts.

/** What a screw bears against, over a length, m, with a strength, Pa. */
export interface Bearing {
  readonly strength: number
  readonly length: number
}
/** A screw through a side member into a main member. */
export interface Dowel {
  /** What bears, m: of a screw its root. */
  readonly diameter: number
  /** Bending yield strength, Pa. */
  readonly bending: number
  readonly side: Bearing
  readonly main: Bearing
  /** Between the two, m: air, or wallboard, which carries nothing here. */
  readonly gap: number
}
/** Im, Is: main or side member crushes; II: the screw turns in both; IIIm, IIIs: it bends in one of them; IV: in both. */
export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV'

/** The load, N, at which A P² + B P + C is nothing; C is below 0. Written so that a wide gap, a large B, loses no digits. */
const positiveRoot = (a: number, b: number, c: number): number => (-2 * c) / (b + Math.sqrt(b * b - 4 * a * c))

/**
 * The load, N, at which a dowel yields in each of the six ways: the general dowel equations in quadratic form with a gap between the members
 * (AWC Technical Report 12, from memory; tests put each load back into the balance of the screw). Without a gap they are the yield modes of NDS 2018, Table 12.3.1A (read), before its reduction.
 * Sizes that are not above 0 and a gap below 0 throw.
 */
export function yieldLoads({ diameter, bending, side, main, gap }: Dowel): Readonly<Record<YieldMode, number>> {
  aboveZero({ diameter, bending, 'side strength': side.strength, 'side length': side.length })
  aboveZero({ 'main strength': main.strength, 'main length': main.length })
  notBelowZero({ gap })
  const [s, m] = [side.strength * diameter, main.strength * diameter]
  const moment = (bending * diameter ** 3) / 6
  // Crushing over its whole length, a member has these parts in A, B and C; where the screw bends in it, it has the ones of yielding.
  const crushed = (q: number, length: number) => ({ a: 1 / (4 * q), b: length / 2, c: (q * length ** 2) / 4 })
  const bent = (q: number) => ({ a: 1 / (2 * q), b: 0, c: moment })
  const mode = (one: Parts, other: Parts): number => positiveRoot(one.a + other.a, one.b + other.b + gap, -one.c - other.c)
  return {
    Im: m * main.length,
    Is: s * side.length,
    II: mode(crushed(s, side.length), crushed(m, main.length)),
    IIIm: mode(bent(s), crushed(m, main.length)),
    IIIs: mode(crushed(s, side.length), bent(m)),
    IV: mode(bent(s), bent(m)),
  }
}
interface Parts {
  readonly a: number
  readonly b: number
  readonly c: number
}

/** What a screw bears against in wood, Pa: 16,600 G^1.84 psi (Wood Handbook, Eq. 8-3; NDS 2018, Table 12.3.3, which prints it to 50 psi; read). */
export function woodBearing(gravity: number): number {
  aboveZero({ gravity })
  return 16_600 * psi * gravity ** 1.84
}
/** What it bears against in a plate of mild steel sheet, Pa: 61,850 psi (NDS 2018, Table 12M; read). No other metal has a value here. */
export const steelBearing = 61_850 * psi

/** Bending yield strength, psi, up to a diameter over the thread, inches (NDS 2018, footnotes of Tables 12L and 12M; read). */
const bendings: readonly (readonly [upTo: number, bending: number])[] = [
  [0.142, 100_000],
  [0.177, 90_000],
  [0.236, 80_000],
  [0.273, 70_000],
]
/** Bending yield strength of a common wood screw by its diameter over the thread, m, in Pa; undefined outside 0.099 to 0.273 in. */
export function screwBending(diameter: number): number | undefined {
  const inches = diameter / inch
  const row = bendings.find(([upTo]) => inches <= upTo + 1e-9)
  return row && inches >= 0.099 - 1e-9 ? row[1] * psi : undefined
}

/** What the yield load is divided by for a root diameter, m: 2.2 up to 0.17 in, 10 D + 0.5 beyond (NDS 2018, Table 12.3.1B; read). Below 1/4 in only. */
export const yieldReduction = (diameter: number): number => (diameter / inch <= 0.17 + 1e-9 ? 2.2 : (10 * diameter) / inch + 0.5)

/** A wood screw that holds something to wood, in side grain. */
export interface Sheared {
  /** Over the thread, m. */
  readonly diameter: number
  /** At the root of the thread, m. */
  readonly root: number
  /** Bending yield strength, Pa; undefined: that of a common wood screw (`screwBending`). */
  readonly bending?: number
  /** What it holds: its strength in bearing, Pa, and thickness, m. */
  readonly side: Bearing
  /** Strength in bearing of the wood, Pa. */
  readonly strength: number
  /** How deep it stands in the wood, m, tip included. */
  readonly penetration: number
  /** Wallboard or air between the two, m; undefined: none. */
  readonly gap?: number
  readonly duration: LoadDuration
}
/** What a screw holds in shear, N, and how it would give way. */
export type Lateral = { readonly ok: true; readonly value: number; readonly mode: YieldMode } | Refusal

/**
 * What a wood screw may be loaded with in shear, N: the least of the six yield loads over their reduction, times the duration's factor (NDS 2018, 12.3; read),
 * with the gap of AWC Technical Report 12 (from memory). Ten diameters of penetration give the full value; from six on it is the lesser of the proportional part
 * (Tables 12L and 12M; read) and of what the shorter length bears. Refused: less than six, and diameters without a bending strength or with a root of 1/4 in or more.
 */
export function screwShear(screw: Sheared): Lateral {
  const { diameter, root, penetration, bending = screwBending(diameter) } = screw
  aboveZero({ diameter, root })
  if (bending === undefined || root >= inch / 4) return refused('size')
  const diameters = penetration / diameter
  if (!(penetration >= leastPenetration('wood', diameter) * (1 - 1e-9))) return refused('penetration')
  const [full, real] = [10, Math.min(10, diameters)].map((deep) => weakest(screw, bending, deep)) as [Yielded, Yielded]
  const part = { ...full, value: full.value * Math.min(1, diameters / 10) }
  return { ok: true, ...(part.value <= real.value ? part : real) }
}
interface Yielded {
  readonly value: number
  readonly mode: YieldMode
}

/** The weakest of the six with so many diameters in the wood. Half of the tip, which is two diameters long, bears nothing (NDS 2018, 12.3.5.3; from memory). */
function weakest({ diameter, root, side, strength, gap = 0, duration }: Sheared, bending: number, deep: number): Yielded {
  const main = { strength, length: (deep - 1) * diameter }
  const loads = Object.entries(yieldLoads({ diameter: root, bending, side, main, gap })) as [YieldMode, number][]
  const [mode, load] = loads.reduce((least, each) => (each[1] < least[1] ? each : least))
  return { mode, value: (load / yieldReduction(root)) * loadDurations[duration] }
}

/** K of the Wood Handbook, psi, from a specific gravity on, and the last gravity that is printed (Table 8-4, p. 8-6; read). */
const handbookShears = {
  softwood: {
    most: 0.52,
    from: [
      [0.29, 3360],
      [0.43, 4320],
      [0.48, 5280],
    ],
  },
  hardwood: {
    most: 0.74,
    from: [
      [0.33, 3360],
      [0.48, 4640],
      [0.57, 6400],
    ],
  },
} as const
export type WoodKind = keyof typeof handbookShears

/** K of the Wood Handbook for a wood, Pa; undefined for gravities it does not print. Between two printed ranges the lower counts. */
export function handbookShear(kind: WoodKind, gravity: number): number | undefined {
  const { most, from } = handbookShears[kind]
  const row = from.findLast(([least]) => gravity >= least - 1e-9)
  return row && gravity <= most + 1e-9 ? row[1] * psi : undefined
}
/** A plate of metal holds a quarter more than wood on wood (Wood Handbook, p. 8-12; read). */
export const metalOnWood = 1.25

/**
 * The load in shear, N, up to which a wood screw gives way in proportion: K D² (Wood Handbook, Eq. 8-13; read). It slips 0.007 to 0.010 in, needs seven diameters
 * in the wood, and is no design value of the NDS. Refused for gravities without a K.
 */
export function proportionalShear(kind: WoodKind, gravity: number, diameter: number): Found {
  aboveZero({ gravity, diameter })
  const k = handbookShear(kind, gravity)
  return k === undefined ? refused('gravity') : found(k * diameter ** 2)
}
