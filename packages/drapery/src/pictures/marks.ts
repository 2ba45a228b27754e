import type { Detail, Dimension, Figure, Layer, Mark, Point } from '@evenhem/drawing'
import { type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { floor, frame, type Hole, hangLine, holes } from '../facts.ts'
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

/** From the nearer edge of the casing outward to a column of holes. */
const outward = (hole: Hole, casingEdge: number): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'above',
  from: [Math.min(casingEdge, mm(hole.x.value)), mm(hole.height.value)],
  to: [Math.max(casingEdge, mm(hole.x.value)), mm(hole.height.value)],
  figure: figure(hole.fromCasing, 'drapery/from-casing'),
})

const columns = (all: readonly Hole[]): readonly Hole[] =>
  all.filter((hole, i) => all.findIndex((other) => other.x.value === hole.x.value) === i)

/** A support by its number from the left, when there are several. */
function supportWord(hole: Hole, all: readonly Hole[]): string {
  const ids = [...new Set(all.flatMap(({ support }) => support ?? []))]
  return ids.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(ids.indexOf(hole.support ?? '') + 1, 9)}`
}

/** Around the holes of one side, with the distances that a rule on the wall can check: hole to hole, and across to the wall angle. */
function detailOf(
  at: string,
  side: 'left' | 'right',
  all: readonly Hole[],
): { readonly detail: Detail; readonly working: readonly LengthReckoning[] } | undefined {
  const own = all.filter((hole) => hole.side === side).sort((a, b) => b.height.value - a.height.value)
  const plate = own.filter((hole) => hole.on === 'bracket')
  const [top, lower, angle] = [plate[0], plate.at(-1), own.find((hole) => hole.on === 'return')]
  if (!top || !lower) return undefined
  const down = sum(
    `${at}#between-holes-${side}`,
    'drapery/between-holes',
    plus('drapery/hole-height', top.height),
    minus('drapery/hole-height', lower.height),
  )
  const across =
    angle &&
    sum(
      `${at}#across-${side}`,
      'drapery/across-to-angle',
      plus('drapery/from-casing', angle.fromCasing),
      minus('drapery/from-casing', top.fromCasing),
    )
  const inward = side === 'left' ? 1 : -1
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
  const [left, right] = inward > 0 ? [x - 75, x + 60] : [x - 60, x + 75]
  return {
    detail: {
      kind: 'detail',
      id: `detail-${side}`,
      code: `drapery/detail-${side}`,
      from: [left, low - 55],
      to: [right, high + 50],
      marks,
    },
    working: [...(down.value > 0 ? [down] : []), ...(across ? [across] : [])],
  }
}

/** What to pencil on the wall: each hole from its own floor and from the casing, on the marks sheet; the left bracket's on the elevation too. */
export const marksPicture = rule({
  id: 'marks-picture',
  on: 'treatment',
  needs: { holes, hangLine, floor, frame },
  gives: { layers, reckonings },
}).run(({ at }, facts) => {
  const edge = (hole: Hole): number => mm(hole.side === 'right' ? facts.frame.right.value : (facts.frame.left?.value ?? 0))
  const [left, right] = [detailOf(at, 'left', facts.holes), detailOf(at, 'right', facts.holes)]
  const heightOf = (hole: Hole): Mark => ({
    kind: 'height',
    role: 'mark',
    ...(hole.side === 'middle' ? { owner: supportWord(hole, facts.holes) } : { side: hole.side }),
    at: [mm(hole.x.value), mm(hole.height.value)],
    base: mm(hole.height.value - hole.fromFloor.value),
    figure: figure(hole.fromFloor, hole.what),
  })
  const sheet: Layer = {
    view: 'marks',
    depth: 70,
    marks: [
      ...facts.holes.map(cross),
      ...facts.holes.map(heightOf),
      ...columns(facts.holes).map((hole) => outward(hole, edge(hole))),
      ...[left, right].flatMap((each) => (each ? [each.detail] : [])),
    ],
  }
  const first = facts.holes.filter((hole) => hole.side === 'left')
  const x = mm(first[0]?.x.value ?? 0)
  const elevation: Layer = {
    view: 'elevation',
    depth: 70,
    marks: [
      ...first.map(cross),
      ...first.filter((hole) => hole.on === 'bracket').map(heightOf),
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
      ...(left ? [left.detail] : []),
    ],
  }
  return { layers: [sheet, elevation], reckonings: [...(left?.working ?? []), ...(right?.working ?? [])] }
})
