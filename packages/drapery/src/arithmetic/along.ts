import { type Known, known, type Length, type LengthReckoning, minus, number, plus, sum, times } from '@evenhem/length'
import { type Corner, placeAlong, rodBetween, turnsBetween } from './corner.ts'

type Side = 'left' | 'right'

/** The outer edges of the casings that a drapery covers. x from the left edge of the first casing of the window; `left` undefined: right there. */
export interface Span {
  readonly left?: Known<Length> | undefined
  readonly right: Known<Length>
  readonly width: Known<Length>
}
/** A casing: where it begins and how wide it is. */
export interface CasingAlong {
  readonly id: string
  readonly x?: Known<Length> | undefined
  readonly width: Known<Length>
}

/** The span of casings that run from left to right; with the reckonings that it needs. */
export function casingSpan(at: string, casings: readonly CasingAlong[]): Span & { readonly working: readonly LengthReckoning[] } {
  const [first, last] = [casings[0] as CasingAlong, casings.at(-1) as CasingAlong]
  if (!last.x) return { right: last.width, width: last.width, working: [] }
  const right = sum(
    `${at}#frame-right`,
    'drapery/frame-right',
    plus('drapery/casing-x', last.x),
    plus('drapery/casing-width', last.width),
  )
  const from = first.x ? [minus('drapery/frame-left', first.x)] : []
  const width = sum(`${at}#frame-width`, 'drapery/frame-width', plus('drapery/frame-right', right), ...from)
  return { left: first.x, right: known(right), width: known(width), working: [right, width] }
}

export interface CoverageOrder {
  readonly frame: Span
  /** What the drapery covers; may be left out where both pasts are given. */
  readonly rodWidth?: Known<Length> | undefined
  /** Past the casing on this side; left out on both sides: as far on the one as on the other. */
  readonly pastLeft?: Known<Length> | undefined
  readonly pastRight?: Known<Length> | undefined
}
/** Where the closed drapery begins and ends, and how much that is. All x from the left edge of the first casing, to the right positive. */
export interface CoverEnds {
  readonly working: readonly LengthReckoning[]
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly width: Known<Length>
}

const half = number(0.5)

/**
 * Where a closed drapery begins and ends. The rod width is what the drapery covers: a rod of 36 on a casing of 30
 * passes it by 3 on each side (common practice, no source). Undefined when the order does not say enough.
 */
export function coverEnds(at: string, { frame, rodWidth, pastLeft, pastRight }: CoverageOrder): CoverEnds | undefined {
  const fromLeft = (past: Known<Length>) =>
    sum(`${at}#cover-left`, 'drapery/cover-left', ...edge('drapery/frame-left', frame.left), minus('drapery/past-left', past))
  const fromRight = (past: Known<Length>) =>
    sum(`${at}#cover-right`, 'drapery/cover-right', plus('drapery/frame-right', frame.right), plus('drapery/past-right', past))
  if (pastLeft && pastRight) {
    const [left, right] = [fromLeft(pastLeft), fromRight(pastRight)]
    const width = sum(
      `${at}#cover-width`,
      'drapery/covers',
      plus('drapery/cover-right', right),
      minus('drapery/cover-left', left),
    )
    return { working: [left, right, width], left, right, width: known(width) }
  }
  if (!rodWidth) return undefined
  if (pastRight) {
    const right = fromRight(pastRight)
    const left = sum(
      `${at}#cover-left`,
      'drapery/cover-left',
      plus('drapery/cover-right', right),
      minus('drapery/rod-width', rodWidth),
    )
    return { working: [right, left], left, right, width: rodWidth }
  }
  const [both, even] = evenly(at, rodWidth, frame.width)
  const left = fromLeft(pastLeft ?? known(even))
  const right = sum(
    `${at}#cover-right`,
    'drapery/cover-right',
    plus('drapery/cover-left', left),
    plus('drapery/rod-width', rodWidth),
  )
  return { working: [...(pastLeft ? [] : [both, even]), left, right], left, right, width: rodWidth }
}

const edge = (what: string, x: Known<Length> | undefined) => (x ? [plus(what, x)] : [])

/** What passes the casing on both sides together, and half of it. */
function evenly(at: string, rodWidth: Known<Length>, casing: Known<Length>): readonly [LengthReckoning, LengthReckoning] {
  const both = sum(
    `${at}#past-both`,
    'drapery/past-both',
    plus('drapery/rod-width', rodWidth),
    minus('drapery/casing-width', casing),
  )
  return [both, times(`${at}#past-left`, 'drapery/past-left', plus('drapery/past-both', both), plus('drapery/half', half))]
}

/** What one panel covers: from its outer end to its leading edge, when drawn. */
export interface PanelShare {
  readonly end: LengthReckoning
  readonly leading: LengthReckoning
  readonly width: LengthReckoning
}
/** Where a pair meets, and the share of each. */
export interface PairShares {
  readonly working: readonly LengthReckoning[]
  readonly meets: LengthReckoning
  readonly left: LengthReckoning
  readonly right: LengthReckoning
}

/**
 * How a pair shares what it covers, along the rod. A pair on rings butts: no overlap. Each covers half, unless the order says where they meet,
 * or how much the left panel is to cover. Around corners the rod is as much shorter than the walls as it is set back in each.
 */
export function pairShares(
  at: string,
  { left, right, width }: CoverEnds,
  order: { readonly meets?: Known<Length> | undefined; readonly leftShare?: Known<Length> | undefined },
  corners: readonly Corner[] = [],
): PairShares {
  const from = { what: 'drapery/cover-left', x: left }
  if (!order.meets && !order.leftShare) {
    const share = times(`${at}#share`, 'drapery/share', plus('drapery/rod-width', width), plus('drapery/half', half))
    const meets = placeAlong(`${at}#meets`, 'drapery/meets', corners, from, { what: 'drapery/share', length: share }, 1)
    return { working: [share, meets], meets, left: share, right: share }
  }
  const meets = order.meets
    ? sum(`${at}#meets`, 'drapery/meets', plus('drapery/meets-order', order.meets))
    : placeAlong(
        `${at}#meets`,
        'drapery/meets',
        corners,
        from,
        { what: 'drapery/share', length: order.leftShare as Known<Length> },
        1,
      )
  const shares = {
    left: sum(
      `${at}#share-left`,
      'drapery/share',
      plus('drapery/meets', meets),
      minus('drapery/cover-left', left),
      ...turnsBetween(corners, left.value, meets.value),
    ),
    right: sum(
      `${at}#share-right`,
      'drapery/share',
      plus('drapery/cover-right', right),
      minus('drapery/meets', meets),
      ...turnsBetween(corners, meets.value, right.value),
    ),
  }
  return { working: [meets, shares.left, shares.right], meets, ...shares }
}

/** What the panels of a pair cover when their leading edges lie over one another: half the overlap more than their shares, each. */
export interface Overlapped {
  readonly half: LengthReckoning
  readonly leading: Readonly<Record<Side, LengthReckoning>>
  readonly covers: Readonly<Record<Side, LengthReckoning>>
}

/**
 * A pair that overlaps: each panel is its share of the rod and half the overlap, and its leading edge lies that much beyond the meeting point
 * (UFGS-12491N, 2.2.1.1: finished widths of a pair = rod + overlap + both returns; read; case width-01).
 */
export function overlapped(
  at: string,
  { meets, left, right }: PairShares,
  overlap: Known<Length>,
  corners: readonly Corner[] = [],
): Overlapped {
  const lap = times(
    `${at}#half-overlap`,
    'drapery/half-overlap',
    plus('drapery/overlap-ordered', overlap),
    plus('drapery/half', half),
  )
  const beyond = (side: Side) =>
    placeAlong(
      `${at}#leading-${side}`,
      'drapery/leading-edge',
      corners,
      { what: 'drapery/meets', x: meets },
      { what: 'drapery/half-overlap', length: lap },
      side === 'left' ? 1 : -1,
    )
  const covers = (side: Side, share: LengthReckoning) =>
    sum(`${at}#covers-${side}`, 'drapery/share-overlapped', plus('drapery/share', share), plus('drapery/half-overlap', lap))
  return {
    half: lap,
    leading: { left: beyond('left'), right: beyond('right') },
    covers: { left: covers('left', left), right: covers('right', right) },
  }
}

/** A one-way draw covers all of it: its one panel gathers at `outer`. */
export const oneWayShare = (at: string, ends: CoverEnds, corners: readonly Corner[] = []): LengthReckoning =>
  sum(
    `${at}#share`,
    'drapery/share',
    plus('drapery/cover-right', ends.right),
    minus('drapery/cover-left', ends.left),
    ...turnsBetween(corners, ends.left.value, ends.right.value),
  )

/** A stationary panel hangs from its end inward by its own share, and stays there. */
export function stationaryShare(
  panelAt: string,
  outer: Side,
  end: LengthReckoning,
  share: LengthReckoning,
  corners: readonly Corner[] = [],
): PanelShare {
  const leading = placeAlong(
    `${panelAt}#leading`,
    'drapery/leading-edge',
    corners,
    { what: 'drapery/outer-end', x: end },
    { what: 'drapery/share', length: share },
    outer === 'left' ? 1 : -1,
  )
  return { end, leading, width: share }
}

/** How far the drapery as ordered would be from what it covers by the other two figures: the rod width and how far it passes the casing on both sides. */
export const widthsApart = (at: string, covered: Known<Length>, ordered: Known<Length>): LengthReckoning =>
  sum(`${at}#widths-apart`, 'drapery/widths-apart', plus('drapery/covers', covered), minus('drapery/rod-width', ordered))

/** How far the closed drapery passes the casing on each side; negative: it does not reach its edge. */
export function pastCasing(
  at: string,
  left: LengthReckoning,
  right: LengthReckoning,
  frame: Span,
): { readonly left: LengthReckoning; readonly right: LengthReckoning } {
  return {
    left: sum(
      `${at}#passes-left`,
      'drapery/passes-left',
      ...edge('drapery/frame-left', frame.left),
      minus('drapery/cover-left', left),
    ),
    right: sum(
      `${at}#passes-right`,
      'drapery/passes-right',
      plus('drapery/cover-right', right),
      minus('drapery/frame-right', frame.right),
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

/** Half a bracket and half a ring: how near to the middle of a bracket a ring can come. */
export function halvesBeside(
  at: string,
  side: Side | 'middle',
  plateWidth: Known<Length>,
  ringWidth: Known<Length>,
): readonly [LengthReckoning, LengthReckoning, LengthReckoning] {
  const plate = times(
    `${at}#half-plate-${side}`,
    'drapery/half-plate',
    plus('drapery/plate-width', plateWidth),
    plus('drapery/half', half),
  )
  const ring = times(
    `${at}#half-ring-beside-${side}`,
    'drapery/half-ring',
    plus('drapery/ring-width', ringWidth),
    plus('drapery/half', half),
  )
  return [
    plate,
    ring,
    sum(`${at}#beside-${side}`, 'drapery/beside-bracket', plus('drapery/half-plate', plate), plus('drapery/half-ring', ring)),
  ]
}

/**
 * The leading end of a one-way draw, where no ring parks outside. Symmetric: the bracket stands as at the other end, so the ends look alike,
 * and the leading ring stops half a bracket and half a ring short of it. Reach: the bracket stands that much beyond the end of what is covered.
 */
export function leadingBracket(
  at: string,
  side: Side,
  how: 'symmetric' | 'reach',
  coverEnd: LengthReckoning,
  ringRoom: Known<Length>,
  beside: LengthReckoning,
): { readonly bracket: LengthReckoning; readonly drawn: LengthReckoning; readonly working: readonly LengthReckoning[] } {
  const [outward, inward] = side === 'left' ? [minus, plus] : [plus, minus]
  if (how === 'reach') {
    const reaching = sum(
      `${at}#bracket-${side}`,
      `drapery/bracket-${side}`,
      plus(`drapery/cover-${side}`, coverEnd),
      outward('drapery/beside-bracket', beside),
    )
    return { bracket: reaching, drawn: coverEnd, working: [reaching] }
  }
  const bracket = endBracket(at, side, coverEnd, ringRoom)
  const drawn = sum(
    `${at}#drawn-${side}`,
    'drapery/drawn-end',
    plus(`drapery/bracket-${side}`, bracket),
    inward('drapery/beside-bracket', beside),
  )
  return { bracket, drawn, working: [bracket, drawn] }
}

/**
 * Where the rod ends and the finial starts: the ring room and half a ring beyond its bracket. Where a ring parks at the cover end
 * that is half a ring beyond it.
 */
export function rodEnd(
  at: string,
  side: Side,
  from: { readonly coverEnd: LengthReckoning } | { readonly bracket: LengthReckoning; readonly ringRoom: Known<Length> },
  ringWidth: Known<Length>,
): readonly [LengthReckoning, LengthReckoning] {
  const outward = side === 'left' ? minus : plus
  const halfRing = times(
    `${at}#half-ring-${side}`,
    'drapery/half-ring',
    plus('drapery/ring-width', ringWidth),
    plus('drapery/half', half),
  )
  const start =
    'coverEnd' in from
      ? [plus(`drapery/cover-${side}`, from.coverEnd)]
      : [plus(`drapery/bracket-${side}`, from.bracket), outward('drapery/ring-room', from.ringRoom)]
  return [halfRing, sum(`${at}#rod-end-${side}`, `drapery/rod-end-${side}`, ...start, outward('drapery/half-ring', halfRing))]
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
export function spaceLeft(at: string, side: Side, reach: LengthReckoning, space: Known<Length>, frame: Span): LengthReckoning {
  const name = `${at}#wall-left-over-${side}`
  const wall = plus('drapery/wall-space', space)
  return side === 'left'
    ? sum(
        name,
        'drapery/space-left',
        wall,
        ...(frame.left ? [minus('drapery/frame-left', frame.left)] : []),
        plus('drapery/reach-left', reach),
      )
    : sum(name, 'drapery/space-left', wall, plus('drapery/frame-right', frame.right), minus('drapery/reach-right', reach))
}

/** A place on the wall measured outward from the nearer edge of the casing, negative inside it; of a support, to the right from the left edge. */
export function fromCasing(name: string, side: Side | 'middle', x: LengthReckoning, frame: Span): LengthReckoning {
  const along = 'drapery/along-the-wall'
  if (side === 'right') return sum(name, 'drapery/from-casing', plus(along, x), minus('drapery/frame-right', frame.right))
  if (side === 'left') return sum(name, 'drapery/from-casing', ...edge('drapery/frame-left', frame.left), minus(along, x))
  return sum(name, 'drapery/from-left-casing', plus(along, x), ...(frame.left ? [minus('drapery/frame-left', frame.left)] : []))
}

/** Where a splice is: so far from the left end of the rod. */
export const spliceAt = (name: string, rodLeft: LengthReckoning, fromLeft: Known<Length>): LengthReckoning =>
  sum(name, 'drapery/splice', plus('drapery/rod-end-left', rodLeft), plus('drapery/splice-from-left', fromLeft))

/** From one place on the wall to another along the rod, without a sign. */
export const between = (
  name: string,
  what: string,
  a: LengthReckoning,
  b: LengthReckoning,
  corners: readonly Corner[] = [],
): LengthReckoning => (a.value <= b.value ? rodBetween(name, what, corners, a, b) : rodBetween(name, what, corners, b, a))
