import { type Known, type Length, type LengthReckoning, minus, most, plus, sum } from '@evenhem/length'

export interface PanelLength {
  readonly panel: string
  readonly finishedLength: Known<Length>
  readonly pin: Known<Length>
}

/** Heights above the level line that follow from the panels: hem, top of the drapery, and the hang line where the hooks bear. */
export interface Heights {
  readonly working: readonly LengthReckoning[]
  readonly hem: LengthReckoning
  readonly top: LengthReckoning
  readonly hangLine: LengthReckoning
  /** The panel that needs the highest hang line and so sets it; the first of those that are equal. */
  readonly sets: string
  /** The hem of each panel when all hang from one line. */
  readonly panels: readonly { readonly panel: string; readonly hem: LengthReckoning }[]
}

/** What the hem is measured from, above the level line: the highest floor, the top of the stool, or the bottom of the apron, below which it ends. */
export interface HemBase {
  readonly at: 'floor' | 'sill' | 'apron'
  readonly height: Known<Length>
}
const bases = { floor: 'drapery/highest-floor', sill: 'drapery/sill-top', apron: 'drapery/apron-bottom' } as const
/** The words of what a hem is measured from. */
export const baseWords = (base: HemBase): string => bases[base.at]

/** How far a hem clears what it is measured from: above a floor or a stool, below an apron. */
export const clearsBase = (name: string, base: HemBase, hem: LengthReckoning): LengthReckoning =>
  base.at === 'apron'
    ? sum(name, 'drapery/clears-panel', plus(baseWords(base), base.height), minus('drapery/above-level', hem))
    : sum(name, 'drapery/clears-panel', plus('drapery/above-level', hem), minus(baseWords(base), base.height))

/**
 * The hem is the highest floor under the drapery plus the clearance; at a stool it ends above it, at an apron below it. The top of the drapery
 * is a finished length above it, and the hooks bear a pin setting below the top: a deeper pin lifts heading and hem. The rod is level, so the panel
 * that needs the highest hang line sets it; a shorter panel hangs higher by the difference, which its pins can take up.
 */
export function heights(at: string, base: HemBase, clearance: Known<Length>, panels: readonly PanelLength[]): Heights {
  const away = base.at === 'apron' ? minus : plus
  const hem = sum(`${at}#hem`, 'drapery/hem', plus(baseWords(base), base.height), away('drapery/clearance', clearance))
  const bearings = panels.map(({ panel, finishedLength, pin }) =>
    sum(
      `${at}#hang-line-${panel}`,
      'drapery/hang-line-panel',
      plus('drapery/hem', hem),
      plus('drapery/finished-length', finishedLength),
      minus('drapery/pin', pin),
    ),
  )
  const hangLine = most(
    `${at}#hang-line`,
    'drapery/hang-line',
    ...bearings.map((bearing) => plus('drapery/hang-line-panel', bearing)),
  )
  const highest = panels[bearings.findIndex((bearing) => bearing.value === hangLine.value)] as PanelLength
  const top = sum(`${at}#top`, 'drapery/top', plus('drapery/hang-line', hangLine), plus('drapery/pin', highest.pin))
  const hems = panels.map(({ panel, finishedLength, pin }) => ({
    panel,
    hem: sum(
      `${at}#hem-${panel}`,
      'drapery/hem-panel',
      plus('drapery/hang-line', hangLine),
      plus('drapery/pin', pin),
      minus('drapery/finished-length', finishedLength),
    ),
  }))
  return {
    working: [hem, ...bearings, hangLine, top, ...hems.map((each) => each.hem)],
    hem,
    top,
    hangLine,
    sets: highest.panel,
    panels: hems,
  }
}

/** The top of the rod: the hooks bear in the eye of a ring, an eye drop below it (or a carrier drop on a track). */
export const topOfRod = (
  at: string,
  hangLine: LengthReckoning,
  drop: Known<Length>,
  what = 'drapery/eye-drop',
): LengthReckoning => sum(`${at}#top-of-rod`, 'drapery/top-of-rod', plus('drapery/hang-line', hangLine), plus(what, drop))

/** The top of a bracket's plate. `offset`: the plate's top against the top of the rod, below it negative. */
export const topOfPlate = (at: string, rod: LengthReckoning, offset: Known<Length>): LengthReckoning =>
  sum(`${at}#top-of-plate`, 'drapery/top-of-plate', plus('drapery/top-of-rod', rod), plus('drapery/plate-offset', offset))

/** A hole in the plate, `down` below its top. */
export const holeHeight = (name: string, plate: LengthReckoning, down: Known<Length>): LengthReckoning =>
  sum(name, 'drapery/hole-height', plus('drapery/top-of-plate', plate), minus('drapery/hole-down', down))

/** From the floor right below a hole up to it: what the tape reads. */
export const fromFloor = (name: string, height: LengthReckoning, floor: LengthReckoning): LengthReckoning =>
  sum(name, 'drapery/from-floor', plus('drapery/hole-height', height), minus('drapery/floor', floor))

/** The hole that holds a return at the wall: `hole` below where the last hook bears. */
export const returnHoleHeight = (name: string, hangLine: LengthReckoning, hole: Known<Length>): LengthReckoning =>
  sum(name, 'drapery/hole-height', plus('drapery/hang-line', hangLine), minus('drapery/return-hole', hole))

/** Where the order means the top of the rod to be, above the level line: from the highest floor, or from the top of the casing. */
export const meantFromFloor = (at: string, floor: LengthReckoning, height: Known<Length>): LengthReckoning =>
  sum(
    `${at}#meant-from-floor`,
    'drapery/meant-top-of-rod',
    plus('drapery/highest-floor', floor),
    plus('drapery/rod-top-order', height),
  )
export const meantFromCasing = (at: string, casingTop: Known<Length>, above: Known<Length>): LengthReckoning =>
  sum(
    `${at}#meant-from-casing`,
    'drapery/meant-top-of-rod',
    plus('drapery/casing-top', casingTop),
    plus('drapery/above-casing', above),
  )

export const meantFromCeiling = (at: string, ceiling: LengthReckoning, under: Known<Length>): LengthReckoning =>
  sum(
    `${at}#meant-from-ceiling`,
    'drapery/meant-top-of-rod',
    plus('drapery/lowest-ceiling', ceiling),
    minus('drapery/below-ceiling', under),
  )

/** The two ways to the rod's height, compared: from the panels less as ordered. Positive: the panels ask for a higher rod than meant. */
export const heightsApart = (name: string, worked: LengthReckoning, meant: LengthReckoning): LengthReckoning =>
  sum(name, 'drapery/heights-apart', plus('drapery/top-of-rod', worked), minus('drapery/meant-top-of-rod', meant))

/** What goes into a finished length when it is worked out from the rod: taken off (clearance, eye drop) or put on (pin setting). */
export interface Allowance {
  readonly value: Length
  readonly put: 'on' | 'off'
}

/**
 * Which allowances explain panels that are long or short by `apart`. Finished length = rod − clearance − eye drop + pin setting, so a
 * deduction that was forgotten makes a panel long by it and one taken twice makes it short; of the pin setting, which is put on, the
 * reverse (a difference of at most `near` still counts). Several may explain it: equal allowances can't be told apart.
 */
export function explained(
  apart: Length,
  allowances: Readonly<Record<string, Allowance>>,
  near: Length,
): readonly { readonly what: string; readonly how: 'forgotten' | 'twice' }[] {
  return Object.entries(allowances)
    .filter(([, { value }]) => value > near && Math.abs(Math.abs(apart) - value) <= near)
    .map(([what, { put }]) => ({ what, how: apart > 0 === (put === 'off') ? 'forgotten' : 'twice' }))
}

/** The hems of a pair: the left one's clearance less the right one's. */
export const hemsApart = (at: string, left: LengthReckoning, right: LengthReckoning): LengthReckoning =>
  sum(`${at}#hems-apart`, 'drapery/hems-apart', plus('drapery/clears-panel', left), minus('drapery/clears-panel', right))

/** A height above the highest floor under the drapery. */
export const overFloor = (name: string, what: string, height: LengthReckoning, highest: LengthReckoning): LengthReckoning =>
  sum(name, what, plus('drapery/above-level', height), minus('drapery/highest-floor', highest))
