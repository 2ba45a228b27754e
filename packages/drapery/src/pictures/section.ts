import type { Detail, Dimension, Figure, Mark, Point } from '@evenhem/drawing'
import { inch, type Known, type Length } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import type { Member } from '../given.ts'
import { type Stands, type StandsOut, standingOut, type Wide, wideOf } from './openings.ts'
import { box, mm, outline, through } from './shapes.ts'

/** Drawn while nobody has said how large a thing is; no number is ever read from it. */
const unsaid = { board: 3 * inch, casing: 0.75 * inch, sill: 2 * inch } as const
/** How much of the wall's thickness is shown. */
const thick = mm(4 * inch)

/** In a section y runs from the face of the wall into the room, downward on the sheet: a place at a distance from the wall. */
export const outFromWall = (x: number, distance: number): Point => [x, -distance]

const figureOf = ({ value, from }: Member<Length> | Known<Length>, what: string): Figure => ({
  ...(value === undefined ? {} : { value }),
  of: from,
  what,
  state: value === undefined ? 'unknown' : 'ordered',
})
/** A dimension at right angles to the wall, from its face. */
export const standsOut = (x: number, distance: Known<Length>, what: string): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'inside',
  from: outFromWall(x, 0),
  to: outFromWall(x, mm(distance.value)),
  figure: figureOf(distance, what),
})
const along = (from: number, to: number, figure: Figure): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'above',
  from: [from, thick],
  to: [to, thick],
  figure,
})

/** A stretch of cut wall. */
const cutWall = (left: number, right: number): readonly Mark[] => [
  {
    kind: 'hatch',
    role: 'hatch',
    of: [
      [left, 0],
      [right, 0],
      [right, thick],
      [left, thick],
    ],
  },
  through('wall', [
    [left, 0],
    [right, 0],
  ]),
]

/** Casing boards on the wall, jambs, sash and glass between them, and the stool in front. */
function cutOpening({ opening, left, right }: Stands): readonly Mark[] {
  const stands = mm(opening.casing?.thickness ?? unsaid.casing)
  const [from, to] = jambsOf({ opening, left, right })
  const sash = mm(1.5 * inch)
  const stool = opening.sill ? mm(opening.sill.depth ?? unsaid.sill) : 0
  const jamb = (x: number): Mark =>
    through('wall', [
      [x, 0],
      [x, thick],
    ])
  return [
    jamb(from),
    jamb(to),
    box('frame', [from, thick / 3], [from + sash, (2 * thick) / 3]),
    box('frame', [to - sash, thick / 3], [to, (2 * thick) / 3]),
    box('glass', [from + sash, 0.46 * thick], [to - sash, 0.54 * thick]),
    ...(opening.sill ? [box('hidden', [left - mm(inch), -stool], [right + mm(inch), 0])] : []),
    box('casing', [left, -stands], [from, 0]),
    box('casing', [to, -stands], [right, 0]),
  ]
}
/** Where the wall is cut out: inside the boards of the casing. */
function jambsOf({ opening, left, right }: Pick<Stands, 'opening' | 'left' | 'right'>): readonly [number, number] {
  const board = Math.min(mm(opening.casing?.board ?? unsaid.board), (right - left) / 2)
  return [left + board, right - board]
}

/** The wall between the openings, from end to end. */
function cutWalls({ openings, left, right }: Wide): readonly Mark[] {
  const ends = [left, ...openings.flatMap(jambsOf), right]
  return ends.flatMap((x, n) => (n % 2 === 0 ? cutWall(x, ends[n + 1] ?? right) : []))
}

/** Obstacles that stand out, with how far to keep from them; each one's depth is enlarged with it. */
const obstacleAbove = ({ left, right, keep, depth }: StandsOut): readonly Mark[] => [
  ...(keep > 0 ? [box('hidden', [left - keep, 0], [right + keep, -mm(depth.value) - keep])] : []),
  box('obstacle', [left, 0], [right, -mm(depth.value)]),
]
function obstacleDetail({ id, code, left, right, depth }: StandsOut): Detail {
  const side = mm(2 * inch)
  return {
    kind: 'detail',
    id: `obstacle-${id}`,
    code,
    from: [left - 2 * side, -mm(depth.value) - side],
    to: [right + side, side / 2],
    marks: [standsOut(left - 0.8 * side, depth, 'drapery/obstacle-depth')],
  }
}

/** Only what a drapery could come to is enlarged: a rod seldom reaches further past a casing (common practice, no source). */
const near = mm(14 * inch)
const isNear = ({ left, right }: StandsOut, { openings }: Wide): boolean =>
  openings.some((opening) => left < opening.right + near && right > opening.left - near)

/** The wall cut through the window and seen from above, with the sizes that the order gives along it. */
export const wallSection = rule({ id: 'wall-section', on: 'window', needs: {}, gives: { layers } }).run(({ it, at }) => {
  const wide = wideOf(it, at)
  const obstacles = standingOut(it, at)
  const [first, last] = [wide.openings[0], wide.openings.at(-1)]
  const room = outline('wall-face', [
    [wide.left, 0],
    [wide.right, 0],
    [wide.right, -mm(inch)],
    [wide.left, -mm(inch)],
  ])
  const marks = [room, ...cutWalls(wide), ...wide.openings.flatMap(cutOpening), ...obstacles.flatMap(obstacleAbove)]
  const rows = [
    ...(first ? [along(wide.left, first.left, figureOf(wide.space.left, 'drapery/wall-space'))] : []),
    ...wide.openings.map((each) => along(each.left, each.right, figureOf(each.sizes.width, 'drapery/casing-width'))),
    ...(last ? [along(last.right, wide.right, figureOf(wide.space.right, 'drapery/wall-space'))] : []),
  ]
  return {
    layers: [
      { view: 'plan', depth: 0, marks: [{ kind: 'group', id: 'wall', words: 'drapery/section-words', marks }] },
      { view: 'plan', depth: 60, marks: [...rows, ...obstacles.filter((each) => isNear(each, wide)).map(obstacleDetail)] },
    ],
  }
})
