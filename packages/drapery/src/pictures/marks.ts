import type { Detail, Dimension, Figure, Layer, Mark, Point } from '@evenhem/drawing'
import { type Known, known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { ceilingAt } from '../arithmetic/floor.ts'
import { ceiling, type Floor, floor, frame, type Hole, hangLine, holes } from '../facts/index.ts'
import { mm } from './shapes.ts'

const figure = (reckoning: LengthReckoning, what: string): Figure => ({
  value: reckoning.value,
  of: reckoning.name,
  what,
  state: 'computed',
})
const cross = (hole: Hole): Mark => ({
  kind: 'cross',
  role: 'mark',
  at: [mm(hole.x.value), mm(hole.height.value)],
  of: hole.height.name,
})

/** From the nearer edge of the casing outward to a column of holes; from the nearer corner where that is on another wall. */
function outward(hole: Hole, casingEdge: number): Dimension {
  const x = mm(hole.x.value)
  const { fromCorner } = hole
  const isLeft = fromCorner?.what === 'drapery/from-left-corner'
  const start = fromCorner ? x + (isLeft ? -1 : 1) * mm(fromCorner.value) : casingEdge
  return {
    kind: 'dimension',
    role: 'dimension',
    side: 'above',
    from: [Math.min(start, x), mm(hole.height.value)],
    to: [Math.max(start, x), mm(hole.height.value)],
    figure: fromCorner ? figure(fromCorner, fromCorner.what) : figure(hole.fromCasing, 'drapery/from-casing'),
  }
}

/** A hole in the ceiling, seen from above: out from the wall. */
function fromAbove({ x, fromWall }: Hole): readonly Mark[] {
  if (!fromWall) return []
  const [along, out] = [mm(x.value), -mm(fromWall.value)]
  return [
    { kind: 'cross', role: 'mark', at: [along, out], of: fromWall.name },
    {
      kind: 'dimension',
      role: 'dimension',
      side: 'inside',
      from: [along + 30, out],
      to: [along + 30, 0],
      figure: figure(fromWall, fromWall.what),
    },
  ]
}

const columns = (all: readonly Hole[]): readonly Hole[] =>
  all.filter((hole, i) => all.findIndex((other) => other.x.value === hole.x.value) === i)

/** A support by its number from the left, when there are several. */
function supportWord(hole: Hole, all: readonly Hole[]): string {
  const ids = [...new Set(all.flatMap(({ support }) => support ?? []))]
  return ids.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(ids.indexOf(hole.support ?? '') + 1, 9)}`
}

/** The holes of one bracket or support with what holds the return beside it; highest first. */
interface Column {
  readonly id: string
  readonly code: string
  readonly holes: readonly Hole[]
}
function columnsOf(all: readonly Hole[]): readonly Column[] {
  const ids = [...new Set(all.map((hole) => hole.support ?? hole.side))]
  return ids.map((id) => {
    const own = all.filter((hole) => (hole.support ?? hole.side) === id).sort((a, b) => b.height.value - a.height.value)
    const [first] = own
    return { id, code: first?.support === undefined ? `drapery/detail-${id}` : supportWord(first, all), holes: own }
  })
}

interface Enlarged {
  readonly detail: Detail
  readonly working: readonly LengthReckoning[]
}
/** Around one bracket or support, with the distances that a rule on the wall can check: hole to hole, and across to the wall angle. */
function detailOf(at: string, { id, code, holes: own }: Column): Enlarged | undefined {
  const plate = own.filter((hole) => hole.on !== 'return' && !hole.fromWall)
  const [top, lower, angle] = [plate[0], plate.at(-1), own.find((hole) => hole.on === 'return')]
  if (!top || !lower) return undefined
  const down = sum(
    `${at}#between-holes-${id}`,
    'drapery/between-holes',
    plus('drapery/hole-height', top.height),
    minus('drapery/hole-height', lower.height),
  )
  const across =
    angle &&
    sum(
      `${at}#across-${id}`,
      'drapery/across-to-angle',
      plus('drapery/from-casing', angle.fromCasing),
      minus('drapery/from-casing', top.fromCasing),
    )
  const inward = top.side === 'right' ? -1 : 1
  const [x, high, low] = [mm(top.x.value), mm(top.height.value), mm(lower.height.value)]
  const inside = (from: Point, to: Point, reckoning: LengthReckoning): Dimension => ({
    kind: 'dimension',
    role: 'dimension',
    side: 'inside',
    from,
    to,
    figure: figure(reckoning, reckoning.what),
  })
  const marks = [
    ...(down.value > 0 ? [inside([x + inward * 28, low], [x + inward * 28, high], down)] : []),
    ...(angle && across
      ? [inside([Math.min(x, mm(angle.x.value)), low - 30], [Math.max(x, mm(angle.x.value)), low - 30], across)]
      : []),
  ]
  const outer = top.side === 'middle' ? 45 : 75
  const [left, right] = inward > 0 ? [x - outer, x + 80] : [x - 80, x + outer]
  const [from, to]: readonly [Point, Point] = [
    [left, low - 55],
    [right, high + 50],
  ]
  return {
    detail: { kind: 'detail', id: `detail-${id}`, code, from, to, marks },
    working: [...(down.value > 0 ? [down] : []), ...(across ? [across] : [])],
  }
}

/** Where the line beside a bracket runs, clear of what is enlarged there. */
const beyondDetail = 400
/** The other two ways to the top hole of an end: up from the casing and down from the ceiling, where both stand over it. */
function crossChecks(at: string, { id, holes: own }: Column, casing: Known<Length> | undefined, over: Floor | undefined) {
  const top = own.find((hole) => hole.on === 'bracket' && !hole.fromWall)
  if (!top) return { marks: [], working: [] }
  const ceilingHere = over && ceilingAt(`${at}#ceiling-at-bracket-${id}`, over.points, known(top.x))
  const up =
    casing &&
    sum(
      `${at}#above-casing-${id}`,
      'drapery/hole-above-casing',
      plus('drapery/hole-height', top.height),
      minus('drapery/casing-top', casing),
    )
  const down =
    ceilingHere &&
    sum(
      `${at}#below-ceiling-${id}`,
      'drapery/hole-below-ceiling',
      plus('drapery/ceiling', ceilingHere),
      minus('drapery/hole-height', top.height),
    )
  const [x, y] = [mm(top.x.value), mm(top.height.value)]
  const beside = x + (top.side === 'right' ? -beyondDetail : beyondDetail)
  const line = (from: number, to: number, reckoning: LengthReckoning): Dimension => ({
    kind: 'dimension',
    role: 'dimension',
    side: 'inside',
    from: [beside, Math.min(from, to)],
    to: [beside, Math.max(from, to)],
    figure: figure(reckoning, reckoning.what),
  })
  const lines = [
    ...(up && up.value !== 0 ? [line(mm(casing.value), y, up)] : []),
    ...(down && ceilingHere ? [line(y, mm(ceilingHere.value), down)] : []),
  ]
  const level: Mark = { kind: 'line', role: 'dimension', from: [x, y], to: [beside, y] }
  return {
    marks: lines.length > 0 ? [level, ...lines] : [],
    working: [ceilingHere, up, down].filter((each) => each !== undefined),
  }
}

/** What to pencil on the wall: each hole from its own floor and from the casing, on the marks sheet; the left bracket's on the elevation too. */
export const marksPicture = rule({
  id: 'marks-picture',
  on: 'treatment',
  needs: { holes, hangLine, floor, frame, ceiling: { maybe: ceiling } },
  gives: { layers, reckonings },
}).run(({ at }, facts) => {
  const edge = (hole: Hole): number => mm(hole.side === 'right' ? facts.frame.right.value : (facts.frame.left?.value ?? 0))
  const groups = columnsOf(facts.holes)
  const details = groups.map((group) => detailOf(at, group)).filter((each) => each !== undefined)
  const checks = groups.map((group) => crossChecks(at, group, facts.frame.top, facts.ceiling))
  // Supports right of the middle are written on the right, so that neither column is crowded before the other.
  const ends = facts.holes.filter(({ side }) => side !== 'middle').map(({ x }) => x.value)
  const middle = (Math.min(...ends) + Math.max(...ends)) / 2
  const sideOf = ({ x }: Hole) => (x.value > middle ? ({ side: 'right' } as const) : {})
  const heightOf = (hole: Hole): Mark => ({
    kind: 'height',
    role: 'mark',
    ...(hole.side === 'middle' ? { owner: supportWord(hole, facts.holes), ...sideOf(hole) } : { side: hole.side }),
    at: [mm(hole.x.value), mm(hole.height.value)],
    base: mm(hole.height.value - hole.fromFloor.value),
    figure: figure(hole.fromFloor, hole.what),
  })
  const onWall = facts.holes.filter((hole) => !hole.fromWall)
  const sheet: Layer = {
    view: 'marks',
    depth: 70,
    marks: [
      ...facts.holes.map(cross),
      ...onWall.map(heightOf),
      ...columns(facts.holes).map((hole) => outward(hole, edge(hole))),
      ...checks.flatMap((each) => each.marks),
      ...details.map((each) => each.detail),
    ],
  }
  const first = facts.holes.filter((hole) => hole.side === 'left')
  /** Where the floor is not level the right bracket's holes have other heights, so that these say whose they are. */
  const isUnlike = (hole: Hole): boolean =>
    facts.holes.some(
      ({ side, what, fromFloor }) => side === 'right' && what === hole.what && fromFloor.value !== hole.fromFloor.value,
    )
  const ofLeft = (hole: Hole): Mark => ({ ...heightOf(hole), ...(isUnlike(hole) ? { owner: 'drawing/left-short' } : {}) })
  const x = mm(first[0]?.x.value ?? 0)
  const elevation: Layer = {
    view: 'elevation',
    depth: 70,
    marks: [
      ...first.map(cross),
      ...first.filter((hole) => hole.on === 'bracket' && !hole.fromWall).map(ofLeft),
      {
        kind: 'height',
        role: 'dimension',
        at: [x, mm(facts.hangLine.hangLine.value)],
        figure: figure(facts.hangLine.hangLine, 'drapery/hang-line'),
      },
      {
        kind: 'height',
        role: 'dimension',
        at: [x, mm(facts.hangLine.hem.value)],
        figure: figure(facts.hangLine.hem, 'drapery/hem'),
      },
      ...details.filter(({ detail }) => detail.id === 'detail-left').map(({ detail }) => detail),
    ],
  }
  const above: Layer = { view: 'plan', depth: 70, marks: facts.holes.flatMap(fromAbove) }
  return {
    layers: [sheet, elevation, ...(above.marks.length > 0 ? [above] : [])],
    reckonings: [...details, ...checks].flatMap(({ working }) => working),
  }
})
