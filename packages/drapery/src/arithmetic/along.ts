import { type Known, type Length, type LengthReckoning, minus, number, plus, sum, times } from '@evenhem/length'

export interface CoverageOrder {
  readonly casing: Known<Length>
  readonly rodWidth: Known<Length>
  /** Past the casing on the left; undefined: as far as on the right. */
  readonly pastLeft: Known<Length> | undefined
}

/** What a closed pair covers. All x from the left edge of the casing, to the right positive. */
export interface PairCoverage {
  readonly working: readonly LengthReckoning[]
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly meets: LengthReckoning
  readonly share: LengthReckoning
}

const half = number(0.5)

/**
 * Where a closed pair begins, meets and ends. The rod width is what the drapery covers: a rod of 36 on a casing of 30
 * passes it by 3 on each side (common practice, no source). A pair on rings butts: no overlap, each panel covers half.
 */
export function pairCoverage(at: string, { casing, rodWidth, pastLeft }: CoverageOrder): PairCoverage {
  const both = sum(
    `${at}#past-both`,
    'drapery/past-both',
    plus('drapery/rod-width', rodWidth),
    minus('drapery/casing-width', casing),
  )
  const even = times(`${at}#past-left`, 'drapery/past-left', plus('drapery/past-both', both), plus('drapery/half', half))
  const left = sum(`${at}#cover-left`, 'drapery/cover-left', minus('drapery/past-left', pastLeft ?? even))
  const right = sum(
    `${at}#cover-right`,
    'drapery/cover-right',
    plus('drapery/cover-left', left),
    plus('drapery/rod-width', rodWidth),
  )
  const share = times(`${at}#share`, 'drapery/share', plus('drapery/rod-width', rodWidth), plus('drapery/half', half))
  const meets = sum(`${at}#meets`, 'drapery/meets', plus('drapery/cover-left', left), plus('drapery/share', share))
  return { working: [...(pastLeft ? [] : [both, even]), left, right, share, meets], left, right, meets, share }
}

/** How far the closed drapery passes the casing on each side; negative: it does not reach its edge. */
export function pastCasing(
  at: string,
  left: LengthReckoning,
  right: LengthReckoning,
  casing: Known<Length>,
): { readonly left: LengthReckoning; readonly right: LengthReckoning } {
  return {
    left: sum(`${at}#passes-left`, 'drapery/passes-left', minus('drapery/cover-left', left)),
    right: sum(
      `${at}#passes-right`,
      'drapery/passes-right',
      plus('drapery/cover-right', right),
      minus('drapery/casing-width', casing),
    ),
  }
}

/**
 * The middle of an end bracket: a ring parks outside it, so it stands inside the cover end by the ring room
 * (bracket middle to parked ring). Cover end 3 past the casing and ring room 1 puts the bracket 2 past it (common practice, no source).
 */
export const endBracket = (
  at: string,
  side: 'left' | 'right',
  coverEnd: LengthReckoning,
  ringRoom: Known<Length>,
): LengthReckoning =>
  sum(
    `${at}#bracket-${side}`,
    `drapery/bracket-${side}`,
    plus(`drapery/cover-${side}`, coverEnd),
    (side === 'left' ? plus : minus)('drapery/ring-room', ringRoom),
  )

/** Where the rod ends and the finial starts: half a ring beyond the parked ring. */
export function rodEnd(
  at: string,
  side: 'left' | 'right',
  coverEnd: LengthReckoning,
  ringWidth: Known<Length>,
): readonly [LengthReckoning, LengthReckoning] {
  const halfRing = times(
    `${at}#half-ring-${side}`,
    'drapery/half-ring',
    plus('drapery/ring-width', ringWidth),
    plus('drapery/half', half),
  )
  return [
    halfRing,
    sum(
      `${at}#rod-end-${side}`,
      `drapery/rod-end-${side}`,
      plus(`drapery/cover-${side}`, coverEnd),
      (side === 'left' ? minus : plus)('drapery/half-ring', halfRing),
    ),
  ]
}

/** The outermost point of the hardware: the tip of the finial. */
export const finialTip = (at: string, side: 'left' | 'right', end: LengthReckoning, finial: Known<Length>): LengthReckoning =>
  sum(
    `${at}#reach-${side}`,
    `drapery/reach-${side}`,
    plus(`drapery/rod-end-${side}`, end),
    (side === 'left' ? minus : plus)('drapery/finial-length', finial),
  )

/** What is left of the wall beyond the hardware's outermost point; negative: it does not fit. `space` is free wall from the casing outward. */
export function spaceLeft(
  at: string,
  side: 'left' | 'right',
  reach: LengthReckoning,
  space: Known<Length>,
  casing: Known<Length>,
): LengthReckoning {
  const name = `${at}#wall-left-over-${side}`
  return side === 'left'
    ? sum(name, 'drapery/space-left', plus('drapery/wall-space', space), plus('drapery/reach-left', reach))
    : sum(
        name,
        'drapery/space-left',
        plus('drapery/wall-space', space),
        plus('drapery/casing-width', casing),
        minus('drapery/reach-right', reach),
      )
}

/** A place on the wall measured outward from the nearer edge of the casing; negative inside the casing. */
export const fromCasing = (name: string, side: 'left' | 'right', x: LengthReckoning, casing: Known<Length>): LengthReckoning =>
  side === 'left'
    ? sum(name, 'drapery/from-casing', minus('drapery/along-the-wall', x))
    : sum(name, 'drapery/from-casing', plus('drapery/along-the-wall', x), minus('drapery/casing-width', casing))
