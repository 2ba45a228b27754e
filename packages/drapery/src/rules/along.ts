import { below, type Place, type Treatment, type Wall, type Window } from '@evenhem/job'
import { given, type Known, known, type Length, type LengthReckoning, most, plus, type Reckoning, sum } from '@evenhem/length'
import { type Ask, type Check, checks, reckonings, rule } from '@evenhem/plugin'
import {
  type CasingAlong,
  type Corner,
  type CoverEnds,
  casingSpan,
  cornerAngle,
  coverEnds,
  oneWayShare,
  overlapped,
  pairShares,
  pastCasing,
  rodBetween,
  setBack,
  stationaryShare,
  widthsApart,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { type Coverage, coverage, drawnEnds, frame, overlap as overlapFact, projection, type Share } from '../facts/index.ts'
import {
  check,
  coveredBy,
  filled,
  long,
  magnitude,
  member,
  outerSide,
  type PlacedOpening,
  panelAt,
  perhaps,
  projectionAt,
  windowOf,
} from '../given.ts'

/** The casings that a treatment covers, as one span. */
export const frameRule = rule({ id: 'frame', on: 'treatment', needs: {}, gives: { frame, reckonings } }).run(
  ({ it, at, window }) => {
    const covered = coveredBy(it, window, windowOf(at))
    if (covered.length === 0) return { ask: [below(windowOf(at), 'walls', window.walls[0]?.id ?? '', 'openings')] }
    const first = window.walls.flatMap((wall) => wall.openings)[0]
    const members = Object.fromEntries(
      covered.flatMap(({ opening, openingAt }) => [
        [`${opening.id}/width`, member(openingAt, ['casing', 'width'], opening.casing?.width)],
        ...(opening === first ? [] : [[`${opening.id}/x`, member(openingAt, ['x'], opening.x)] as const]),
      ]),
    )
    return filled(members, (known) => {
      const casings = covered.map(
        ({ opening, openingAt }): CasingAlong => ({
          id: opening.id,
          x: perhaps(member(openingAt, ['x'], opening.x)),
          width: known[`${opening.id}/width`] as Known<Length>,
        }),
      )
      const { working, ...span } = casingSpan(at, casings)
      const [top, tops] = highestTop(at, covered)
      return { frame: { ...span, ...(top ? { top } : {}) }, reckonings: [...working, ...tops] }
    })
  },
)

/** The top of a casing: where it was read at several points all of them, else its one height. */
function topsOf({ opening, openingAt }: PlacedOpening): readonly Known<Length>[] {
  const points = (opening.head ?? []).map(({ id, y }) => ({ value: y, from: below(openingAt, 'head', id, 'y') }))
  const top = perhaps(member(openingAt, ['casing', 'top'], opening.casing?.top))
  return points.length > 0 ? points : top ? [top] : []
}

/** The highest top of the casings, when all are known. */
function highestTop(
  at: Place,
  covered: readonly PlacedOpening[],
): readonly [Known<Length> | undefined, readonly LengthReckoning[]] {
  const each = covered.map(topsOf)
  if (each.some((tops) => tops.length === 0)) return [undefined, []]
  const known = each.flat()
  if (known.length === 1) return [known[0], []]
  const highest = most(`${at}#casing-top`, 'drapery/casing-top', ...known.map((top) => plus('drapery/casing-top', top)))
  return [{ value: highest.value, from: highest.name }, [highest]]
}

/** Where the closed drapery begins, meets and ends, and what each panel covers. */
export const coverageRule = rule({
  id: 'coverage',
  on: 'treatment',
  needs: { frame, projection: { maybe: projection } },
  gives: { coverage, checks, reckonings },
  codes: ['drapery/panels-of-draw', 'drapery/widths-agree'],
}).run(({ it, at, job, window }, facts) => {
  const [rodWidth, pastLeft, pastRight] = (['width', 'pastLeft', 'pastRight'] as const).map((name) =>
    member(at, ['rod', name], it.rod?.[name]),
  )
  const order = {
    frame: facts.frame,
    rodWidth: rodWidth && perhaps(rodWidth),
    pastLeft: pastLeft && perhaps(pastLeft),
    pastRight: pastRight && perhaps(pastRight),
  }
  const ends = coverEnds(at, order)
  if (!ends) return { ask: [below(at, 'rod', 'width')] }
  const turned = turns(it, at, window, ends, facts.projection)
  if ('ask' in turned) return turned
  const { corners } = turned
  // How much of the rod is covered follows from its ends only when both are known on their own walls.
  if (corners.length > 0 && !(order.pastLeft && order.pastRight))
    return { ask: (['pastLeft', 'pastRight'] as const).filter((name) => !order[name]).map((name) => below(at, 'rod', name)) }
  const along =
    corners.length > 0 ? rodBetween(`${at}#covers-along`, 'drapery/covers', corners, ends.left, ends.right) : undefined
  const rodEnds = along ? { ...ends, width: known(along) } : ends
  const suits = panelsSuit(it)
  const counted = check(
    'drapery/panels-of-draw',
    suits ? 'pass' : 'fail',
    at,
    { count: { count: it.panels.length }, draw: drawWord(it) },
    'unpack',
  )
  const [agree, apart] = widthsAgree(at, order, rodEnds, ruleOf(job, 'heightsAgree'))
  if (!suits)
    return { checks: [counted, ...agree], reckonings: [...ends.working, ...turned.working, ...(along ? [along] : []), ...apart] }
  const shared = shares(it, at, rodEnds, corners)
  if ('ask' in shared) return shared
  const { left, right, width } = rodEnds
  return {
    coverage: { left, right, width, ...shared.coverage, ...(corners.length > 0 ? { corners } : {}) },
    checks: [counted, ...agree],
    reckonings: [...ends.working, ...turned.working, ...(along ? [along] : []), ...apart, ...shared.working],
  }
})

/** The corners inside what is covered, each with how far the rod is set back there; asks for an angle or a wall's end that is not known. */
function turns(
  it: Treatment,
  at: Place,
  window: Window,
  ends: CoverEnds,
  out: Known<Length> | undefined,
): { readonly corners: readonly Corner[]; readonly working: readonly Reckoning[] } | Ask {
  const windowAt = windowOf(at)
  const between = window.walls.slice(0, -1).map((wall, i) => ({ wall, next: window.walls[i + 1] as Wall }))
  const unplaced = between.filter(({ next }) => next.left === undefined)
  // A window of several walls whose ends nobody gave may still stay on one of them: its openings tell.
  const isAround = new Set(coveredBy(it, window, windowAt).map(({ wall }) => wall.id)).size > 1
  if (isAround && unplaced.length > 0) return { ask: unplaced.map(({ next }) => below(windowAt, 'walls', next.id, 'left')) }
  const inside = between.filter(
    ({ next }) => next.left !== undefined && next.left > ends.left.value && next.left < ends.right.value,
  )
  const unknown = inside.filter(({ wall }) => wall.corner === undefined)
  if (unknown.length > 0) return { ask: unknown.map(({ wall }) => below(windowAt, 'walls', wall.id, 'corner')) }
  if (inside.length === 0 || !out) return { corners: [], working: [] }
  const own = (['left', 'right'] as const).map((side) => projectionAt(it, at, side, out))
  const most = (own[0] as Known<Length>).value >= (own[1] as Known<Length>).value ? own[0] : own[1]
  const each = inside.map(({ wall, next }) => {
    const degrees = wall.corner as number
    const angle = cornerAngle(`${at}#angle-${wall.id}`, { value: degrees, from: below(windowAt, 'walls', wall.id, 'corner') })
    const back = setBack(`${at}#set-back-${wall.id}`, most as Known<Length>, angle)
    const x = { value: next.left as Length, from: below(windowAt, 'walls', next.id, 'left') }
    return { corner: { wall: wall.id, next: next.id, x, degrees, back }, working: [angle, back] }
  })
  return { corners: each.map(({ corner }) => corner), working: each.flatMap(({ working }) => working) }
}

const drawWord = (it: Treatment) => ({ code: `drapery/draw-${it.draw.replace(' ', '-')}` })
/** A pair has two panels that open apart, a one-way draw has one. */
function panelsSuit(it: Treatment): boolean {
  if (it.draw === 'stationary') return true
  if (it.draw !== 'pair') return it.panels.length === 1
  return (
    it.panels.length === 2 &&
    outerSide(it, it.panels[0]?.id ?? '') === 'left' &&
    outerSide(it, it.panels[1]?.id ?? '') === 'right'
  )
}

/** Where the order gives the rod width and both pasts, they must agree. */
function widthsAgree(
  at: Place,
  {
    rodWidth,
    pastLeft,
    pastRight,
  }: { rodWidth?: Known<Length> | undefined; pastLeft?: Known<Length> | undefined; pastRight?: Known<Length> | undefined },
  ends: CoverEnds,
  near: Known<Length>,
): readonly [readonly Check[], readonly LengthReckoning[]] {
  if (!rodWidth || !pastLeft || !pastRight) return [[], []]
  const apart = widthsApart(at, ends.width, rodWidth)
  const verdict = Math.abs(apart.value) <= near.value ? 'pass' : 'fail'
  const values = { covers: long(ends.width), width: long(rodWidth), apart: magnitude(apart) }
  const put = verdict === 'fail' ? { put: [{ at: rodWidth.from, value: { length: ends.width.value } }] } : {}
  return [[{ ...check('drapery/widths-agree', verdict, rodWidth.from, values, 'mark'), ...put }], [apart]]
}

interface Shared {
  readonly coverage: Pick<Coverage, 'meets' | 'leadingEnd' | 'shares'>
  readonly working: readonly LengthReckoning[]
}
function shares(it: Treatment, at: Place, ends: CoverEnds, corners: readonly Corner[]): Shared | Ask {
  switch (it.draw) {
    case 'pair':
      return ofPair(it, at, ends, corners)
    case 'stationary':
      return ofStationary(it, at, ends, corners)
    default:
      return ofOneWay(it, at, ends, corners)
  }
}

function ofPair(it: Treatment, at: Place, ends: CoverEnds, corners: readonly Corner[]): Shared {
  const first = it.panels[0]?.id ?? ''
  const meeting = perhaps(member(at, ['rod', 'middle'], it.rod?.middle))
  const leftShare = perhaps(member(panelAt(at, first), ['share'], it.panels[0]?.share))
  const pair = pairShares(at, ends, { meets: meeting, leftShare }, corners)
  const { meets, working } = pair
  const overlap = perhaps(member(at, ['overlap'], it.overlap))
  const lapped = overlap && overlap.value > 0 ? overlapped(at, pair, overlap, corners) : undefined
  const list = it.panels.map(({ id }): Share => {
    const outer = outerSide(it, id)
    const [leading, width] = lapped ? [lapped.leading[outer], lapped.covers[outer]] : [meets, pair[outer]]
    return { panel: id, outer, end: ends[outer], leading, width }
  })
  const more = lapped ? [lapped.half, ...list.flatMap(({ leading, width }) => [leading, width])] : []
  return { coverage: { meets, shares: list }, working: [...working, ...more] }
}

function ofOneWay(it: Treatment, at: Place, ends: CoverEnds, corners: readonly Corner[]): Shared {
  const [outer, leadingEnd] = it.draw === 'one-way left' ? (['left', 'right'] as const) : (['right', 'left'] as const)
  const width = oneWayShare(at, ends, corners)
  const list = it.panels.map(({ id }): Share => ({ panel: id, outer, end: ends[outer], leading: ends[leadingEnd], width }))
  return { coverage: { leadingEnd, shares: list }, working: [width] }
}

function ofStationary(it: Treatment, at: Place, ends: CoverEnds, corners: readonly Corner[]): Shared | Ask {
  const asked: Place[] = []
  const each = it.panels.map((panel) => {
    const place = panelAt(at, panel.id)
    const outer = outerSide(it, panel.id)
    const share = ownShare(place, panel)
    if (!share) asked.push(below(place, 'share'))
    const at_ = perhaps(member(place, ['at'], panel.at))
    const end = at_ ? given(`${place}#end`, 'drapery/outer-end', plus('drapery/outer-end', at_)) : ends[outer]
    return share
      ? { panel: panel.id, outer, ...stationaryShare(place, outer, end, share, corners), own: at_ ? [end] : [] }
      : undefined
  })
  if (asked.length > 0) return { ask: asked }
  const found = each.filter((one) => one !== undefined)
  return {
    coverage: { shares: found.map(({ own: _, ...share }) => share) },
    working: found.flatMap(({ width, leading, own }) => [width, ...own, leading]),
  }
}

/** What a stationary panel covers: as the order says, else as it was made. */
function ownShare(place: Place, panel: Treatment['panels'][number]): LengthReckoning | undefined {
  const ordered = perhaps(member(place, ['share'], panel.share))
  if (ordered) return given(`${place}#share`, 'drapery/share', plus('drapery/share', ordered))
  const [flat, pleats, outer] = (['leadingFlat', 'firstToLast', 'outerFlat'] as const).map((name) =>
    perhaps(member(place, [name], panel[name])),
  )
  if (!flat || !pleats) return undefined
  const beyond = outer ? [plus('drapery/outer-flat', outer)] : []
  return sum(
    `${place}#share`,
    'drapery/share',
    plus('drapery/leading-flat', flat),
    plus('drapery/first-to-last', pleats),
    ...beyond,
  )
}

/** The closed drapery against the casing: it must reach past it on both sides. Stationary panels cover nothing else, so they are not judged. */
export const coverageCheck = rule({
  id: 'coverage-check',
  on: 'treatment',
  needs: { coverage, frame, drawnEnds: { maybe: drawnEnds } },
  gives: { checks, reckonings },
  codes: ['drapery/coverage'],
}).run(({ it, at }, facts) => {
  const ends = facts.drawnEnds ?? facts.coverage
  const past = pastCasing(at, ends.left, ends.right, facts.frame)
  if (it.draw === 'stationary') return { reckonings: [past.left, past.right] }
  const short = past.left.value < 0 || past.right.value < 0
  const worse = past.left.value <= past.right.value ? ('left' as const) : ('right' as const)
  const values = {
    left: long(past.left),
    right: long(past.right),
    short: magnitude(past[worse]),
    side: { code: `drapery/${worse}` },
  }
  // One value that would do it: a rod that reaches both edges from the middle of what it covers now, when it is centred.
  const width = it.rod?.width
  const isEven = past.left.value === past.right.value && width !== undefined
  const put =
    short && isEven
      ? { put: [{ at: below(at, 'rod', 'width'), value: { length: (width - 2 * past.left.value) as Length } }] }
      : {}
  return {
    checks: [{ ...check('drapery/coverage', short ? 'fail' : 'pass', at, values, 'mark'), ...put }],
    reckonings: [past.left, past.right],
  }
})

/** The overlap that was ordered against what the arms of the hardware make; a rod without arms makes none. */
export const overlapCheck = rule({
  id: 'overlap',
  on: 'treatment',
  needs: { overlap: { maybe: overlapFact } },
  gives: { checks },
  codes: ['drapery/overlap'],
}).run(({ it, at, job }, facts) => {
  const made = facts.overlap
  if (it.draw !== 'pair' || !made) return {}
  const ordered = it.overlap ?? 0
  if (ordered === 0 && made.value === 0) return {}
  const apart = ordered - made.value
  const verdict = Math.abs(apart) <= ruleOf(job, 'heightsAgree').value ? 'pass' : 'fail'
  const values = {
    ordered: { length: ordered as Length },
    made: long(made),
    apart: { length: Math.abs(apart) as Length },
    arms: made.value > 0 ? 'yes' : 'no',
    way: apart > 0 ? 'more' : 'less',
  }
  const place = below(at, 'overlap')
  const put = verdict === 'fail' ? { put: [{ at: place, value: long(made) }] } : {}
  return { checks: [{ ...check('drapery/overlap', verdict, it.overlap === undefined ? at : place, values, 'hang'), ...put }] }
})
