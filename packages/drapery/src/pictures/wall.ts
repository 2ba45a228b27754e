import type { Dimension, Figure, Mark, Point } from '@evenhem/drawing'
import { inch, type Known, known, type Length, type LengthReckoning, minus, number, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { ceilingAt } from '../arithmetic/floor.ts'
import { ceiling, type Floor, floor } from '../facts/index.ts'
import { type Member, member } from '../given.ts'
import { crownMarks, obstacleMarks, openingMarks, type Stands, studMarks, type Wide, wideOf } from './openings.ts'
import { mm, outline, through } from './shapes.ts'

const depthOfHatch = mm(5 * inch)
/** Between the casing and a ceiling that nobody has measured. */
const unknownAbove = mm(12 * inch)

const figureOf = ({ value, from }: Member<Length> | Known<Length>, what: string): Figure => ({
  ...(value === undefined ? {} : { value }),
  of: from,
  what,
  state: value === undefined ? 'unknown' : 'ordered',
})
const computed = (reckoning: LengthReckoning): Figure => ({
  value: reckoning.value,
  of: reckoning.name,
  what: reckoning.what,
  state: 'computed',
})
const dimension = (side: Dimension['side'], from: Point, to: Point, figure: Figure): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side,
  from,
  to,
  figure,
})

/** The line of the floor or the ceiling from x to x, through its points, straight between and level beyond them. */
export function floorLine(points: Floor['points'], left: number, right: number): readonly Point[] {
  const all = points.map((point): Point => [mm(point.x.value), mm(point.y.value)])
  const heightAt = (x: number): number => {
    const [before, after] = [all.findLast((point) => point[0] <= x), all.find((point) => point[0] >= x)]
    if (!before || !after || before === after) return (before ?? after)?.[1] ?? 0
    return before[1] + ((after[1] - before[1]) * (x - before[0])) / (after[0] - before[0])
  }
  return [[left, heightAt(left)], ...all.filter(([x]) => x > left && x < right), [right, heightAt(right)]]
}

/** What lies between two members, as a reckoning; undefined while one is not known. */
const between = (name: string, what: string, high: Member<Length>, highWhat: string, low: Member<Length>, lowWhat: string) =>
  high.value === undefined || low.value === undefined
    ? undefined
    : sum(name, what, plus(highWhat, high as Known), minus(lowWhat, low as Known))

/** From one casing to the next. */
function gapOf(at: string, before: Stands, next: Stands): LengthReckoning | undefined {
  const width = before.sizes.width
  if (next.x.value === undefined || width.value === undefined) return undefined
  const name = `${at}#between-${before.opening.id}-${next.opening.id}`
  const from = before.x.value === undefined ? [] : [minus('drapery/casing-x', before.x as Known<Length>)]
  return sum(
    name,
    'drapery/between-casings',
    plus('drapery/casing-x', next.x as Known<Length>),
    ...from,
    minus('drapery/casing-width', width as Known<Length>),
  )
}

/** The row below: wall space, casings and what lies between them, wall space. */
function rowBelow(at: string, wide: Wide, low: number) {
  const gaps = wide.openings.slice(1).map((next, i) => gapOf(at, wide.openings[i] as Stands, next))
  const row = (from: number, to: number, figure: Figure): Dimension => dimension('below', [from, low], [to, low], figure)
  const [first, last] = [wide.openings[0], wide.openings.at(-1)]
  const marks = [
    ...(first ? [row(wide.left, first.left, figureOf(wide.space.left, 'drapery/wall-space'))] : []),
    ...wide.openings.flatMap((each, i) => {
      const [next, gap] = [wide.openings[i + 1], gaps[i]]
      const own = row(each.left, each.right, figureOf(each.sizes.width, 'drapery/casing-width'))
      if (!next) return [own]
      return [own, row(each.right, next.left, gap ? computed(gap) : figureOf(next.x, 'drapery/between-casings'))]
    }),
    ...(last ? [row(last.right, wide.right, figureOf(wide.space.right, 'drapery/wall-space'))] : []),
  ]
  return { marks, working: gaps.filter((each) => each !== undefined) }
}

/** The line of the ceiling, as the floor's; level at a height while nobody has said. */
const ceilingLine = (over: Floor | undefined, { left, right }: Wide, level: number): readonly Point[] =>
  over && over.points.length > 1
    ? floorLine(over.points, left, right)
    : [
        [left, level],
        [right, level],
      ]
/** The ceiling over the left edge of the first casing: as it stands when it was read once, else worked out between its points. */
function ceilingOver(at: string, first: Stands | undefined, { points }: Floor) {
  const [only] = points
  if (!only || points.length === 1) return { over: only?.y as Known<Length>, working: [] }
  const over = ceilingAt(
    `${at}#ceiling-over-casing`,
    points,
    (first?.x.value === undefined ? number(0) : first.x) as Known<Length>,
  )
  return { over: known(over), working: [over] }
}

/** The column on the right: floor to casing, the casing's height, casing to ceiling. */
function columnRight(at: string, first: Stands, over: Member<Length>, x: number) {
  const { sizes } = first
  const [highest, lowest] = ['drapery/casing-top', 'drapery/casing-bottom'] as const
  const height = between(`${at}#casing-height`, 'drapery/casing-height', sizes.top, highest, sizes.bottom, lowest)
  const above = between(`${at}#above-casing`, 'drapery/above-casing-free', over, 'drapery/ceiling', sizes.top, highest)
  const column = (from: number, to: number, figure: Figure): Dimension => dimension('right', [x, from], [x, to], figure)
  const marks = [
    // A door stands on the floor.
    ...(sizes.bottom.value === 0 ? [] : [column(0, first.bottom, figureOf(sizes.bottom, lowest))]),
    height
      ? column(first.bottom, first.top, computed(height))
      : column(sizes.top.value === undefined ? first.bottom : 0, first.top, figureOf(sizes.top, highest)),
    ...(above ? [column(first.top, first.top + mm(above.value), computed(above))] : []),
  ]
  return { marks, working: [height, above].filter((each) => each !== undefined) }
}

/** Wall, floor, ceiling and openings, with the sizes that the order gives: the ground of every view of a window. */
export const wallPicture = rule({
  id: 'wall-picture',
  on: 'window',
  needs: { floor, ceiling: { maybe: ceiling } },
  gives: { layers, reckonings },
}).run(({ it, at, room }, facts) => {
  const wide = wideOf(it, at)
  const first = wide.openings[0]
  const overCasing = facts.ceiling && ceilingOver(at, first, facts.ceiling)
  const highest = member(at.slice(0, at.lastIndexOf('/windows/')), ['ceiling'], room.ceiling)
  const level =
    mm(facts.ceiling?.points[0]?.y.value ?? highest.value ?? 0) ||
    Math.max(0, ...wide.openings.map(({ top }) => top)) + unknownAbove
  const edges = { left: wide.left, right: wide.right, over: ceilingLine(facts.ceiling, wide, level) }
  const top = Math.max(...edges.over.map(([, y]) => y))
  const line = floorLine(facts.floor.points, edges.left, edges.right)
  const low = Math.min(...line.map(([, y]) => y))
  const boards = it.walls[0]?.baseboard
  const marks: readonly Mark[] = [
    ...ground(edges, line),
    ...baseboard(boards?.height, edges, line),
    ...crownMarks(wide),
    ...wide.openings.flatMap(openingMarks),
    ...obstacleMarks(wide),
  ]
  const row = rowBelow(at, wide, low)
  const column = first ? columnRight(at, first, overCasing?.over ?? highest, edges.right) : { marks: [], working: [] }
  const group = (own: readonly Mark[]): Mark => ({ kind: 'group', id: 'wall', words: 'drapery/wall-words', marks: own })
  return {
    layers: [
      { view: 'elevation', depth: 0, marks: [group(marks)] },
      { view: 'elevation', depth: 60, marks: [...row.marks, ...column.marks] },
      { view: 'marks', depth: 0, marks: [group([...marks, ...studMarks(wide, low, top)])] },
      { view: 'marks', depth: 60, marks: row.marks },
    ],
    reckonings: [...row.working, ...column.working, ...(overCasing?.working ?? [])],
  }
})

interface Edges {
  readonly left: number
  readonly right: number
  /** The line of the ceiling. */
  readonly over: readonly Point[]
}

function ground({ left, right, over }: Edges, line: readonly Point[]): readonly Mark[] {
  const deep = (from: readonly Point[], y: number): Mark => ({
    kind: 'hatch',
    role: 'hatch',
    of: [...from, [right, y], [left, y]],
  })
  const [lowest, highest] = [Math.min(...line.map(([, y]) => y)), Math.max(...over.map(([, y]) => y))]
  const side = (x: number, bottom: Point | undefined, top: Point | undefined): Mark =>
    through('wall', [
      [x, top?.[1] ?? 0],
      [x, bottom?.[1] ?? 0],
    ])
  return [
    outline('wall-face', [...over, ...[...line].reverse()]),
    deep(line, lowest - depthOfHatch),
    deep(over, highest + depthOfHatch),
    through('wall', over),
    side(left, line[0], over[0]),
    side(right, line.at(-1), over.at(-1)),
    through('wall', line),
  ]
}

const baseboard = (height: Length | undefined, { left, right }: Edges, line: readonly Point[]): readonly Mark[] =>
  height === undefined
    ? []
    : [
        through(
          'baseboard',
          line.map(([x, y]): Point => [x, y + mm(height)]),
        ),
        {
          kind: 'line',
          role: 'baseboard',
          from: [left, (line[0]?.[1] ?? 0) + mm(height) * 0.9],
          to: [right, (line.at(-1)?.[1] ?? 0) + mm(height) * 0.9],
        },
      ]
