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
  /** The hem of each panel when all hang from one line. */
  readonly panels: readonly { readonly panel: string; readonly hem: LengthReckoning }[]
}

/**
 * The hem is the highest floor under the drapery plus the clearance. The top of the drapery is a finished length above it, and
 * the hooks bear a pin setting below the top: a deeper pin lifts heading and hem. The rod is level, so the panel that needs the
 * highest hang line sets it; a shorter panel hangs higher by the difference, which its pins can take up.
 */
export function heights(at: string, floor: LengthReckoning, clearance: Known<Length>, panels: readonly PanelLength[]): Heights {
  const hem = sum(`${at}#hem`, 'drapery/hem', plus('drapery/highest-floor', floor), plus('drapery/clearance', clearance))
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
  return { working: [hem, ...bearings, hangLine, top, ...hems.map((each) => each.hem)], hem, top, hangLine, panels: hems }
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
    `${at}#meant-top-of-rod`,
    'drapery/meant-top-of-rod',
    plus('drapery/highest-floor', floor),
    plus('drapery/rod-top-order', height),
  )
export const meantFromCasing = (at: string, casingTop: Known<Length>, above: Known<Length>): LengthReckoning =>
  sum(
    `${at}#meant-top-of-rod`,
    'drapery/meant-top-of-rod',
    plus('drapery/casing-top', casingTop),
    plus('drapery/above-casing', above),
  )

/** The two ways to the rod's height, compared: from the panels less as ordered. Positive: the panels ask for a higher rod than meant. */
export const heightsApart = (at: string, worked: LengthReckoning, meant: LengthReckoning): LengthReckoning =>
  sum(
    `${at}#heights-apart`,
    'drapery/heights-apart',
    plus('drapery/top-of-rod', worked),
    minus('drapery/meant-top-of-rod', meant),
  )

/**
 * Which deduction explains panels that are long or short by `apart`: one that was forgotten makes a panel long by it,
 * one taken twice makes it short by it (trade rule; a difference of at most `near` still counts).
 */
export function explained(
  apart: Length,
  deductions: Readonly<Record<string, Length>>,
  near: Length,
): { readonly what: string; readonly how: 'forgotten' | 'twice' } | undefined {
  const found = Object.entries(deductions).find(([, value]) => value > near && Math.abs(Math.abs(apart) - value) <= near)
  return found && { what: found[0], how: apart > 0 ? 'forgotten' : 'twice' }
}

/** The three marks at a second bracket, and whether they agree. */
export interface ThreeMarks {
  readonly fromFloor: Length
  readonly fromFrame: Length
  readonly fromCeiling: Length
  readonly apart: Length
  readonly agree: boolean
}
/**
 * At the second bracket there is no hole yet. Three marks stand for it: the first hole's height above the floor, its height above the
 * frame head, its distance below the ceiling, each taken to the second bracket. Within `near` (1/8 in, common practice, no source) they agree.
 */
export function threeMarks(
  first: { readonly hole: Length; readonly frame: Length; readonly ceiling: Length },
  second: { readonly frame: Length; readonly ceiling: Length },
  near: Length,
): ThreeMarks {
  const marks = [first.hole, second.frame + (first.hole - first.frame), second.ceiling - (first.ceiling - first.hole)] as [
    Length,
    Length,
    Length,
  ]
  const apart = (Math.max(...marks) - Math.min(...marks)) as Length
  return { fromFloor: marks[0], fromFrame: marks[1], fromCeiling: marks[2], apart, agree: apart <= near }
}
