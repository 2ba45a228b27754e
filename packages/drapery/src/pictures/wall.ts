import type { Dimension, Figure, Mark, Point } from '@evenhem/drawing'
import { inch, type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { type Floor, floor } from '../facts.ts'
import { type Member, member, openingOf } from '../given.ts'
import { box, mm, outline, through } from './shapes.ts'

const depthOfHatch = mm(5 * inch)
/** Drawn, with a broken line and a place to fill, while nobody has measured; no number is ever read from it. */
const unknown = { width: 48 * inch, top: 84 * inch, bottom: 26 * inch, space: 12 * inch } as const

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

/** Wall, floor, ceiling and opening, with the sizes that the order gives: the ground of every view of a window. */
export const wallPicture = rule({ id: 'wall-picture', on: 'window', needs: { floor }, gives: { layers, reckonings } }).run(
  ({ it, at, room }, facts) => {
    const { wall, opening, wallAt, openingAt } = openingOf(it, at)
    const roomAt = at.slice(0, at.lastIndexOf('/windows/'))
    const casing = (name: 'width' | 'top' | 'bottom') => member(openingAt, ['casing', name], opening.casing?.[name])
    const [width, top, bottom] = [casing('width'), casing('top'), casing('bottom')]
    const space = {
      left: member(wallAt, ['space', 'left'], wall.space?.left),
      right: member(wallAt, ['space', 'right'], wall.space?.right),
    }
    const ceiling = member(roomAt, ['ceiling'], room.ceiling)
    const size = {
      width: mm(width.value ?? unknown.width),
      top: mm(top.value ?? unknown.top),
      bottom: mm(bottom.value ?? unknown.bottom),
    }
    const edges = {
      left: -mm(space.left.value ?? unknown.space),
      right: size.width + mm(space.right.value ?? unknown.space),
      top: mm(ceiling.value ?? 0) || size.top + mm(unknown.space),
    }
    const line = floorLine(facts.floor.points, edges.left, edges.right)
    const between = (name: string, what: string, high: Member<Length>, highWhat: string, low: Member<Length>, lowWhat: string) =>
      high.value === undefined || low.value === undefined
        ? undefined
        : sum(`${at}#${name}`, what, plus(highWhat, high as Known), minus(lowWhat, low as Known))
    const casingHeight = between(
      'casing-height',
      'drapery/casing-height',
      top,
      'drapery/casing-top',
      bottom,
      'drapery/casing-bottom',
    )
    const above = between('above-casing', 'drapery/above-casing-free', ceiling, 'drapery/ceiling', top, 'drapery/casing-top')
    const known = [width, top, bottom].every((each) => each.value !== undefined)
    const marks: readonly Mark[] = [
      ...ground(edges, line),
      ...baseboard(wall.baseboard?.height, edges, line),
      ...(known
        ? openingMarks(opening, size.width, size.bottom, size.top)
        : [box('hidden', [0, size.bottom], [size.width, size.top])]),
    ]
    const low = Math.min(...line.map(([, y]) => y))
    const rows = [
      dimension('below', [edges.left, low], [0, low], figureOf(space.left, 'drapery/wall-space')),
      dimension('below', [0, low], [size.width, low], figureOf(width, 'drapery/casing-width')),
      dimension('below', [size.width, low], [edges.right, low], figureOf(space.right, 'drapery/wall-space')),
      dimension('right', [edges.right, 0], [edges.right, size.bottom], figureOf(bottom, 'drapery/casing-bottom')),
      dimension(
        'right',
        [edges.right, size.bottom],
        [edges.right, size.top],
        casingHeight ? computed(casingHeight) : figureOf(top, 'drapery/casing-top'),
      ),
      ...(above ? [dimension('right', [edges.right, size.top], [edges.right, edges.top], computed(above))] : []),
    ]
    const both = (view: 'elevation' | 'marks') => [
      { view, depth: 0, marks: [{ kind: 'group', id: 'wall', words: 'drapery/wall-words', marks }] as readonly Mark[] },
      { view, depth: 60, marks: view === 'marks' ? rows.filter((row) => row.side === 'below') : rows },
    ]
    return {
      layers: [...both('elevation'), ...both('marks')],
      reckonings: [casingHeight, above].filter((each) => each !== undefined),
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

function openingMarks(
  opening: ReturnType<typeof openingOf>['opening'],
  width: number,
  bottom: number,
  top: number,
): readonly Mark[] {
  const board = mm(opening.casing?.board ?? 3 * inch)
  const sill = opening.sill?.top === undefined ? bottom + board : mm(opening.sill.top)
  const inner: { l: number; r: number; b: number; t: number } = { l: board, r: width - board, b: sill, t: top - board }
  const sash = mm(2 * inch)
  const middle = (inner.l + inner.r) / 2
  const pane = (l: number, r: number): Mark => box('glass', [l, inner.b + sash], [r, inner.t - sash])
  return [
    box('casing', [0, bottom], [width, top]),
    box('frame', [inner.l, inner.b], [inner.r, inner.t]),
    pane(inner.l + sash, middle - sash / 2),
    pane(middle + sash / 2, inner.r - sash),
    ...(opening.sill ? [box('casing', [-mm(inch), sill - mm(1.25 * inch)], [width + mm(inch), sill])] : []),
  ]
}
