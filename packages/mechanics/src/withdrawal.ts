import { aboveZero, type Found, found, type Refusal, refused } from './found.ts'
import { inch, poundForce, psi } from './inch-pounds.ts'

// How much it takes to pull a screw out of wood: design values of the NDS, and what breaks in a test by the Wood Handbook.

/** Where the equations were read, through copies that quote them. */
export const withdrawalSources = {
  nds: { source: 'National Design Specification for Wood Construction (ANSI/AWC 2018), 12.2', basis: 'read' },
  handbook: { source: 'Wood Handbook, FPL-GTR-282 (USDA Forest Products Laboratory, 2021), chapter 8', basis: 'read' },
} as const

/** How long a load stays, and what a design value of the NDS is multiplied by for it (NDS 2018, Table 2.3.2; read). What hangs for years is `permanent`. */
export const loadDurations = {
  permanent: 0.9,
  'ten years': 1,
  'two months': 1.15,
  'seven days': 1.25,
  /** The most that a connection may use. */
  'ten minutes': 1.6,
} as const
export type LoadDuration = keyof typeof loadDurations

/** Into which side of the wood a screw goes. */
export type Grain = 'side' | 'end'

/** A screw in wood. */
export interface Threaded {
  /** Specific gravity of the wood: `speciesGroups` for the NDS, `clearWoods` for the Wood Handbook. */
  readonly gravity: number
  /** Over the thread, m. */
  readonly diameter: number
  /** Thread in the wood, m; not what stands in wallboard, and of a lag screw not its tip. */
  readonly thread: number
  readonly grain?: Grain
}
/** A screw in wood with a load that stays for some time. */
export interface Pulled extends Threaded {
  readonly duration: LoadDuration
}

/** The woods the equations of the NDS are meant for. */
export const gravities = { least: 0.31, most: 0.73 } as const
/** The diameters they are meant for, m: wood screws from No. 6 to No. 24, lag screws from 1/4 to 1-1/4 in (the latter from memory). */
export const withdrawalDiameters = {
  wood: { least: 0.138 * inch, most: 0.372 * inch },
  lag: { least: 0.25 * inch, most: 1.25 * inch },
} as const
/** A diameter worked out in another order may miss the end of a range by its last bit. */
const within = (value: number, { least, most }: { readonly least: number; readonly most: number }): boolean =>
  value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9)

function meant({ gravity, diameter, thread }: Threaded, kind: keyof typeof withdrawalDiameters): Refusal | undefined {
  aboveZero({ gravity, diameter })
  if (!within(gravity, gravities)) return refused('gravity')
  if (!within(diameter, withdrawalDiameters[kind])) return refused('size')
  return thread > 0 ? undefined : refused('penetration')
}

/**
 * What a wood screw may be pulled with, N: 2850 G² D pounds per inch of thread in side grain, times its thread and the duration's factor (NDS 2018, Eq. 12.2-2; read).
 * Refused: end grain (12.2.2.3), woods outside 0.31 to 0.73, screws outside No. 6 to No. 24, no thread in the wood. Whether the screw's own steel holds is not in it.
 */
export function woodScrewPull(screw: Pulled): Found {
  const { gravity, diameter, thread, grain, duration } = screw
  if (grain === 'end') return refused('end-grain')
  return meant(screw, 'wood') ?? found(2850 * psi * gravity ** 2 * diameter * thread * loadDurations[duration])
}

/**
 * What a lag screw may be pulled with, N: 1800 G^1.5 D^0.75 pounds per inch of thread without the tip, times thread and duration; in end grain three quarters of it
 * (NDS 2018, Eq. 12.2-1 and 12.2.1; read). Refused as for wood screws, and below 1/4 in.
 */
export function lagPull(screw: Pulled): Found {
  const { gravity, diameter, thread, grain, duration } = screw
  const perMetre = 1800 * (poundForce / inch) * gravity ** 1.5 * (diameter / inch) ** 0.75
  return meant(screw, 'lag') ?? found(perMetre * thread * loadDurations[duration] * ofGrain(grain))
}

/** End grain holds about three quarters of side grain where it does not split (Wood Handbook, p. 8-11; read). */
export const endGrainShare = 0.75
const ofGrain = (grain: Grain = 'side'): number => (grain === 'end' ? endGrainShare : 1)

/** A tapping screw holds 1.05 (light woods) to 1.16 (dense) of a wood screw, about 1.10 (Wood Handbook, p. 8-10; read): the lowest. */
export const tappingShare = 1.05

/**
 * What pulls a wood screw out in a test, N, on the average of many: 15,700 G² D L pounds, of thread L in seasoned wood with a lead hole (Wood Handbook, Eq. 8-10; read).
 * Not what it may be loaded with: see `longTerm`. Sizes that are not above 0 throw.
 */
export function woodScrewUltimate({ gravity, diameter, thread, grain }: Threaded): number {
  aboveZero({ gravity, diameter, thread })
  return 15_700 * psi * gravity ** 2 * diameter * thread * ofGrain(grain)
}

/** What pulls a lag screw out in a test, N: 8,100 G^1.5 D^0.75 L pounds (Wood Handbook, Eq. 8-14; read). Sizes that are not above 0 throw. */
export function lagUltimate({ gravity, diameter, thread, grain }: Threaded): number {
  aboveZero({ gravity, diameter, thread })
  return 8100 * (poundForce / inch) * gravity ** 1.5 * (diameter / inch) ** 0.75 * thread * ofGrain(grain)
}

/** What may stay for long of what breaks in a test: one sixth (Wood Handbook, Allowable Loads, p. 8-6, in its part on nails; read). */
export const longTerm = (ultimate: number): number => ultimate / 6
/** The same for ten years of use: a tenth more. */
export const normalTerm = (ultimate: number): number => 1.1 * longTerm(ultimate)

/** Screw numbers that the Wood Handbook's equation is meant for, by the screw's length in inches (Table 8-8; read). */
const handbookNumbers: readonly (readonly [length: number, least: number, most: number])[] = [
  [0.5, 1, 6],
  [0.75, 2, 11],
  [1, 3, 12],
  [1.5, 5, 14],
  [2, 7, 16],
  [2.5, 9, 18],
  [3, 12, 20],
]

/**
 * Whether the Wood Handbook's equation is meant for a screw of a number and a length, m; a long thin one may break before it is pulled out.
 * Between two printed lengths both have to hold the number; beyond them none does.
 */
export function isOfHandbook(number: number, length: number): boolean {
  const inches = length / inch
  const shorter = handbookNumbers.findLast(([each]) => each <= inches + 1e-9)
  const longer = handbookNumbers.find(([each]) => each >= inches - 1e-9)
  return [shorter, longer].every((row) => row !== undefined && number >= row[1] && number <= row[2])
}

/** How deep a screw has to stand in the wood to count at all, in diameters: a wood screw with its tip (NDS 2018, 12.1.5.6), a lag screw without (12.1.4.6); read. */
export const leastPenetrations = { wood: 6, lag: 4 } as const
/** The same as a length, m, for a diameter, m. */
export const leastPenetration = (kind: keyof typeof leastPenetrations, diameter: number): number =>
  leastPenetrations[kind] * diameter
