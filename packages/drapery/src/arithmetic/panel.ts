import {
  count,
  divided,
  given,
  inch,
  type Known,
  type Length,
  type LengthReckoning,
  minus,
  number,
  plus,
  type Reckoning,
  spread,
  sum,
  times,
} from '@evenhem/length'

export interface PanelOrder {
  readonly pleats: Known<number>
  /** Leading edge to first pleat. */
  readonly leadingFlat: Known<Length>
  readonly firstToLast: Known<Length>
  /** Last pleat to the edge at the wall; 0 without a return. */
  readonly return: Known<Length>
  /** Last pleat to the outer edge, where there is no return. */
  readonly outerFlat?: Known<Length> | undefined
  readonly flatWidth?: Known<Length> | undefined
}
/** One hook of a panel. `across`: from the leading edge, along the flat heading, to the hook. */
export interface Hook {
  readonly n: number
  readonly on: 'leading-edge' | 'pleat' | 'outer-edge'
  readonly pleat?: number
  readonly across: Length
}
export interface PanelSizes {
  readonly working: readonly Reckoning[]
  readonly hooks: readonly Hook[]
  readonly space: LengthReckoning
  readonly finishedWidth: LengthReckoning
  /** What one pleat takes of the cloth; undefined when the order does not give the flat width. */
  readonly pleat: LengthReckoning | undefined
}

/**
 * How a pleated panel is made up: one hook at the leading edge, one at each pleat, one at the outer edge (common practice, no source;
 * reference case hooks-02), spaces of equal width between the pleats, and the map that must close:
 * leading flat + spaces + return (or outer flat) = finished width; finished width + pleats × pleat = flat width (Woodcock, Calculating Pleats and Spaces, 2019; read).
 */
export function makeUp(
  at: string,
  { pleats, leadingFlat, firstToLast, return: back, outerFlat, flatWidth }: PanelOrder,
): PanelSizes {
  const spaces = count(`${at}#spaces`, 'drapery/spaces', plus('drapery/pleats', pleats), minus('drapery/one', number(1)))
  const space = divided(
    `${at}#space`,
    'drapery/space',
    plus('drapery/first-to-last', firstToLast),
    plus('drapery/spaces', spaces),
  )
  const finishedWidth = sum(
    `${at}#finished-width`,
    'drapery/finished-width',
    plus('drapery/leading-flat', leadingFlat),
    plus('drapery/first-to-last', firstToLast),
    outerFlat ? plus('drapery/outer-flat', outerFlat) : plus('drapery/return-width', back),
  )
  const inPleats =
    flatWidth &&
    sum(
      `${at}#in-pleats`,
      'drapery/in-pleats',
      plus('drapery/flat-width', flatWidth),
      minus('drapery/finished-width', finishedWidth),
    )
  const pleat =
    inPleats && divided(`${at}#pleat`, 'drapery/pleat-size', plus('drapery/in-pleats', inPleats), plus('drapery/pleats', pleats))
  const hooks = hooksOf(pleats.value, leadingFlat.value, firstToLast.value, finishedWidth.value)
  return {
    working: [spaces, space, finishedWidth, ...(inPleats && pleat ? [inPleats, pleat] : [])],
    hooks,
    space,
    finishedWidth,
    pleat,
  }
}

function hooksOf(pleats: number, leadingFlat: Length, firstToLast: Length, finishedWidth: Length): readonly Hook[] {
  const at = spread(firstToLast, Math.max(1, pleats - 1))
  return [
    { n: 1, on: 'leading-edge', across: 0 as Length },
    ...Array.from(
      { length: pleats },
      (_, i): Hook => ({ n: i + 2, on: 'pleat', pleat: i + 1, across: (leadingFlat + (at[i] ?? 0)) as Length }),
    ),
    { n: pleats + 2, on: 'outer-edge', across: finishedWidth },
  ]
}

/** What a panel covers of the rod, leading edge to last pleat (without a return: to its outer edge), less its share of it. Positive: there is cloth to spare; negative: a gap. */
export const coverLess = (
  at: string,
  leadingFlat: Known<Length>,
  firstToLast: Known<Length>,
  outerFlat: Known<Length> | undefined,
  share: LengthReckoning,
): LengthReckoning =>
  sum(
    `${at}#cover-less`,
    'drapery/cover-less',
    plus('drapery/leading-flat', leadingFlat),
    plus('drapery/first-to-last', firstToLast),
    ...(outerFlat ? [plus('drapery/outer-flat', outerFlat)] : []),
    minus('drapery/share', share),
  )

/** How much wider than its share a panel may be: `allowed` for a share up to 72 in, beyond that a hundredth of it (common practice, no source). */
export const widthAllowed = (at: string, share: LengthReckoning, allowed: Known<Length>): LengthReckoning =>
  share.value <= 72 * inch
    ? given(`${at}#width-allowed`, 'drapery/width-allowed', plus('drapery/width-allowed', allowed))
    : divided(`${at}#width-allowed`, 'drapery/width-allowed', plus('drapery/share', share), plus('drapery/hundred', number(100)))

/** A return against the projection to where the hooks bear. Positive: wider than the projection. */
export const returnLess = (name: string, back: Known<Length>, projection: Known<Length>): LengthReckoning =>
  sum(name, 'drapery/return-less', plus('drapery/return-width', back), minus('drapery/projection', projection))

/**
 * The widest space that can fold back behind its carriers: half of it reaches toward the wall, and keeps `free` from it (How to Hang Non-Pinch-Pleated
 * Drapes on a Traverse Rod, general how-to article, step 2; read; case mount-08: 2 × (wall to carrier front − 1/2 in)). Last, after the room there is.
 */
export function foldsBack(
  name: string,
  projection: Known<Length>,
  free: Known<Length>,
): readonly [LengthReckoning, LengthReckoning] {
  const room = sum(`${name}-free`, 'drapery/fold-room', plus('drapery/projection', projection), minus('drapery/kept-free', free))
  return [room, times(name, 'drapery/space-most', plus('drapery/fold-room', room), plus('drapery/twice', number(2)))]
}
