import type { Dimension, Figure, Mark, Point } from '@evenhem/drawing'
import { inch, type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { type Floor, floor } from '../facts.ts'
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

/** The line of the floor from x to x, through its points and level beyond them. */
export function floorLine(points: Floor['points'], left: number, right: number): readonly Point[] {
  const inside = points.map((point): Point => [mm(point.x.value), mm(point.y.value)]).filter(([x]) => x > left && x < right)
  return [[left, inside[0]?.[1] ?? 0], ...inside, [right, inside.at(-1)?.[1] ?? 0]]
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

/** The column on the right: floor to casing, the casing's height, casing to ceiling. */
function columnRight(at: string, first: Stands, ceiling: Member<Length>, x: number, top: number) {
  const { sizes } = first
  const [highest, lowest] = ['drapery/casing-top', 'drapery/casing-bottom'] as const
  const height = between(`${at}#casing-height`, 'drapery/casing-height', sizes.top, highest, sizes.bottom, lowest)
  const above = between(`${at}#above-casing`, 'drapery/above-casing-free', ceiling, 'drapery/ceiling', sizes.top, highest)
  const column = (from: number, to: number, figure: Figure): Dimension => dimension('right', [x, from], [x, to], figure)
  const marks = [
    column(0, first.bottom, figureOf(sizes.bottom, lowest)),
    height
      ? column(first.bottom, first.top, computed(height))
      : column(sizes.top.value === undefined ? first.bottom : 0, first.top, figureOf(sizes.top, highest)),
    ...(above ? [column(first.top, top, computed(above))] : []),
  ]
  return { marks, working: [height, above].filter((each) => each !== undefined) }
}

/** Wall, floor, ceiling and openings, with the sizes that the order gives: the ground of every view of a window. */
export const wallPicture = rule({ id: 'wall-picture', on: 'window', needs: { floor }, gives: { layers, reckonings } }).run(
  ({ it, at, room }, facts) => {
    const wide = wideOf(it, at)
    const first = wide.openings[0]
    const roomAt = at.slice(0, at.lastIndexOf('/windows/'))
    const ceiling = member(roomAt, ['ceiling'], room.ceiling)
    const edges = {
      left: wide.left,
      right: wide.right,
      top: mm(ceiling.value ?? 0) || Math.max(0, ...wide.openings.map(({ top }) => top)) + unknownAbove,
    }
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
    const column = first ? columnRight(at, first, ceiling, edges.right, edges.top) : { marks: [], working: [] }
    const group = (own: readonly Mark[]): Mark => ({ kind: 'group', id: 'wall', words: 'drapery/wall-words', marks: own })
    return {
      layers: [
        { view: 'elevation', depth: 0, marks: [group(marks)] },
        { view: 'elevation', depth: 60, marks: [...row.marks, ...column.marks] },
        { view: 'marks', depth: 0, marks: [group([...marks, ...studMarks(wide, low, edges.top)])] },
        { view: 'marks', depth: 60, marks: row.marks },
      ],
      reckonings: [...row.working, ...column.working],
    }
  },
)

interface Edges {
  readonly left: number
  readonly right: number
  readonly top: number
}

function ground({ left, right, top }: Edges, line: readonly Point[]): readonly Mark[] {
  const under: readonly Point[] = [
    ...line,
    [right, Math.min(...line.map(([, y]) => y)) - depthOfHatch],
    [left, Math.min(...line.map(([, y]) => y)) - depthOfHatch],
  ]
  const back = [...line].reverse()
  return [
    outline('wall-face', [[left, top], [right, top], ...back]),
    { kind: 'hatch', role: 'hatch', of: under },
    {
      kind: 'hatch',
      role: 'hatch',
      of: [
        [left, top],
        [right, top],
        [right, top + depthOfHatch],
        [left, top + depthOfHatch],
      ],
    },
    through('wall', [
      [left, top],
      [right, top],
    ]),
    through('wall', [
      [left, top],
      [left, line[0]?.[1] ?? 0],
    ]),
    through('wall', [
      [right, top],
      [right, line.at(-1)?.[1] ?? 0],
    ]),
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
