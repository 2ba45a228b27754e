import type { Mark, Point } from '@evenhem/drawing'
import { below, type Obstacle, type Opening, type Place, type Stud, type Wall, type Window } from '@evenhem/job'
import { inch, type Known, type Length } from '@evenhem/length'
import { type Member, member } from '../given.ts'
import { box, mm, through } from './shapes.ts'

/** Drawn, with a broken line and a place to fill, while nobody has measured; no number is ever read from it. */
const unsaid = { width: 48 * inch, top: 84 * inch, bottom: 26 * inch, space: 12 * inch, apart: 10 * inch } as const

/** An opening as it stands along the wall, in mm, with the members that say so. */
export interface Stands {
  readonly opening: Opening
  readonly openingAt: Place
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
  readonly x: Member<Length>
  readonly sizes: Readonly<Record<'width' | 'bottom' | 'top', Member<Length>>>
  /** False: something of it is not measured, and it is drawn broken. */
  readonly isKnown: boolean
}

function standing(opening: Opening, openingAt: Place, after: number | undefined): Stands {
  const size = (name: 'width' | 'top' | 'bottom') => member(openingAt, ['casing', name], opening.casing?.[name])
  const sizes = { width: size('width'), top: size('top'), bottom: size('bottom') }
  const x = member(openingAt, ['x'], opening.x)
  const left = after === undefined ? mm(opening.x ?? 0) : opening.x === undefined ? after + mm(unsaid.apart) : mm(opening.x)
  return {
    opening,
    openingAt,
    left,
    right: left + mm(sizes.width.value ?? unsaid.width),
    bottom: mm(sizes.bottom.value ?? unsaid.bottom),
    top: mm(sizes.top.value ?? unsaid.top),
    x,
    sizes,
    isKnown: Object.values(sizes).every(({ value }) => value !== undefined) && (after === undefined || opening.x !== undefined),
  }
}

/** The walls of a window, unfolded, from end to end. */
export interface Wide {
  readonly openings: readonly Stands[]
  readonly left: number
  readonly right: number
  readonly space: Readonly<Record<'left' | 'right', Member<Length>>>
  readonly walls: readonly Wall[]
}

export function wideOf(window: Window, at: Place): Wide {
  const openings: Stands[] = []
  for (const wall of window.walls)
    for (const opening of wall.openings)
      openings.push(standing(opening, below(at, 'walls', wall.id, 'openings', opening.id), openings.at(-1)?.right))
  const [first, last] = [window.walls[0] as Wall, window.walls.at(-1) as Wall]
  const space = {
    left: member(below(at, 'walls', first.id), ['space', 'left'], first.space?.left),
    right: member(below(at, 'walls', last.id), ['space', 'right'], last.space?.right),
  }
  return {
    openings,
    left: (openings[0]?.left ?? 0) - mm(space.left.value ?? unsaid.space),
    right: (openings.at(-1)?.right ?? 0) + mm(space.right.value ?? unsaid.space),
    space,
    walls: window.walls,
  }
}

/** Drawn in the place of an obstacle whose size nobody has said. */
const small = 4 * inch
const codeOf = ({ kind }: Obstacle): string => `drapery/obstacle-${kind.replaceAll(' ', '-')}`
/** Obstacles on the wall with how far to keep from them, and what they are. Those without a place are not drawn. */
export const obstacleMarks = ({ walls }: Wide): readonly Mark[] =>
  walls
    .flatMap((wall) => wall.obstacles ?? [])
    .flatMap((obstacle): readonly Mark[] => {
      if (obstacle.left === undefined || obstacle.bottom === undefined) return []
      const [left, bottom] = [mm(obstacle.left), mm(obstacle.bottom)]
      const [right, top] = [left + mm(obstacle.width ?? small), bottom + mm(obstacle.height ?? small)]
      const keep = mm(obstacle.keepOff ?? 0)
      const name = obstacle.name === undefined ? { code: codeOf(obstacle) } : { text: obstacle.name }
      return [
        ...(keep > 0 ? [box('hidden', [left - keep, bottom - keep], [right + keep, top + keep])] : []),
        box('obstacle', [left, bottom], [right, top]),
        { kind: 'caption', role: 'dimension', at: [(left + right) / 2, bottom - mm(2.5 * inch)], anchor: 'middle', ...name },
      ]
    })

/** An obstacle from above: how far it stands out, with how far to keep from it. */
export interface StandsOut {
  readonly id: string
  readonly code: string
  readonly left: number
  readonly right: number
  readonly keep: number
  readonly depth: Known<Length>
}
export const standingOut = (window: Window, at: Place): readonly StandsOut[] =>
  window.walls.flatMap((wall) =>
    (wall.obstacles ?? []).flatMap((obstacle) => {
      const { left, depth } = obstacle
      if (left === undefined || depth === undefined || depth === 0) return []
      return {
        id: obstacle.id,
        code: codeOf(obstacle),
        left: mm(left),
        right: mm(left + (obstacle.width ?? small)),
        keep: mm(obstacle.keepOff ?? 0),
        depth: { value: depth, from: below(at, 'walls', wall.id, 'obstacles', obstacle.id, 'depth') },
      }
    }),
  )

/** Studs are behind the wall: broken lines from floor to ceiling. */
export const studMarks = ({ walls }: Wide, bottom: number, top: number): readonly Mark[] =>
  walls
    .flatMap((wall): readonly Stud[] => wall.studs ?? [])
    .map(({ x }) => ({ kind: 'line', role: 'hidden', from: [mm(x), bottom], to: [mm(x), top] }))

/** The lower edge of the crown, along each wall that has one. */
export const crownMarks = ({ walls, left, right }: Wide): readonly Mark[] =>
  walls.flatMap((wall) => {
    if (wall.crown?.bottom === undefined) return []
    const [from, y] = [mm(wall.left ?? 0) || left, mm(wall.crown.bottom)]
    const to = wall.width === undefined ? right : Math.min(right, from + mm(wall.width))
    return [
      through('casing', [
        [from, y],
        [to, y],
      ]),
    ]
  })

/** Casing, frame and panes, with stool and apron. */
export function openingMarks({ opening, left, right, bottom, top, isKnown }: Stands): readonly Mark[] {
  if (!isKnown) return [box('hidden', [left, bottom], [right, top])]
  const board = mm(opening.casing?.board ?? 3 * inch)
  const sill = opening.sill?.top === undefined ? bottom + board : mm(opening.sill.top)
  const inner = { l: left + board, r: right - board, b: sill, t: top - board }
  const [sash, middle] = [mm(2 * inch), (inner.l + inner.r) / 2]
  const pane = (l: number, r: number): Mark => box('glass', [l, inner.b + sash], [r, inner.t - sash])
  const under = sill - mm(1.25 * inch)
  const apron = opening.apron?.bottom
  const corner: Point = [right, apron === undefined ? 0 : mm(apron)]
  return [
    box('casing', [left, bottom], [right, top]),
    box('frame', [inner.l, inner.b], [inner.r, inner.t]),
    pane(inner.l + sash, middle - sash / 2),
    pane(middle + sash / 2, inner.r - sash),
    ...(apron === undefined ? [] : [box('casing', [left, under], corner)]),
    ...(opening.sill ? [box('casing', [left - mm(inch), under], [right + mm(inch), sill])] : []),
  ]
}
