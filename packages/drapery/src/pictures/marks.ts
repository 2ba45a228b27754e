import type { Dimension, Figure, Layer, Mark } from '@evenhem/drawing'
import type { LengthReckoning } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import { floor, hangLine, type Hole, holes } from '../facts.ts'
import { member, openingOf, windowOf } from '../given.ts'
import { mm } from './shapes.ts'

const figure = (reckoning: LengthReckoning, what: string): Figure => ({ value: reckoning.value, of: reckoning.name, what, state: 'computed' })
const cross = (hole: Hole): Mark => ({ kind: 'cross', role: 'mark', at: [mm(hole.x.value), mm(hole.height.value)], of: hole.height.name })

/** From the floor right below a hole up to it. Holes over one another stand side by side, the highest innermost. */
function upright(hole: Hole, column: number): Dimension {
  const inward = hole.side === 'left' ? 1 : -1
  const x = mm(hole.x.value) + inward * (60 + column * 110)
  const y = mm(hole.height.value)
  return { kind: 'dimension', role: 'mark', side: 'inside', from: [x, y - mm(hole.fromFloor.value)], to: [x, y], figure: figure(hole.fromFloor, hole.what) }
}

/** From the nearer edge of the casing outward to a column of holes. */
const outward = (hole: Hole, casingEdge: number): Dimension =>
  ({ kind: 'dimension', role: 'dimension', side: 'above', from: [Math.min(casingEdge, mm(hole.x.value)), mm(hole.height.value)], to: [Math.max(casingEdge, mm(hole.x.value)), mm(hole.height.value)], figure: figure(hole.fromCasing, 'drapery/from-casing') })

const columns = (all: readonly Hole[]): readonly Hole[] => all.filter((hole, i) => all.findIndex((other) => other.x.value === hole.x.value) === i)

/** What to pencil on the wall: each hole from its own floor and from the casing, on the marks sheet; the left bracket's on the elevation too. */
export const marksPicture = rule({ id: 'marks-picture', on: 'treatment', needs: { holes, hangLine, floor }, gives: { layers } }).run(({ at, window }, facts) => {
  const { opening, openingAt } = openingOf(window, windowOf(at))
  const width = member(openingAt, ['casing', 'width'], opening.casing?.width)
  if (width.value === undefined) return { ask: [width.from] }
  const edge = (hole: Hole): number => (hole.side === 'left' ? 0 : mm(width.value ?? 0))
  const sides = (['left', 'right'] as const).map((side) => facts.holes.filter((hole) => hole.side === side).sort((a, b) => b.height.value - a.height.value))
  const sheet: Layer = { view: 'marks', depth: 70, marks: [
    ...facts.holes.map(cross),
    ...sides.flatMap((side) => side.map((hole, i) => upright(hole, i))),
    ...columns(facts.holes).map((hole) => outward(hole, edge(hole))),
  ] }
  const first = facts.holes.filter((hole) => hole.side === 'left' && hole.on === 'bracket')
  const elevation: Layer = { view: 'elevation', depth: 70, marks: [
    ...facts.holes.map(cross),
    ...first.map((hole): Mark => ({ kind: 'height', role: 'mark', at: [mm(hole.x.value), mm(hole.height.value)], base: mm(hole.height.value - hole.fromFloor.value), figure: figure(hole.fromFloor, hole.what) })),
    { kind: 'height', role: 'dimension', at: [mm(first[0]?.x.value ?? 0), mm(facts.hangLine.hangLine.value)], figure: figure(facts.hangLine.hangLine, 'drapery/hang-line') },
    { kind: 'height', role: 'dimension', at: [mm(first[0]?.x.value ?? 0), mm(facts.hangLine.hem.value)], figure: figure(facts.hangLine.hem, 'drapery/hem') },
  ] }
  return { layers: [sheet, elevation] }
})
