import type { Mark, Role } from '@evenhem/drawing'
import type { WindowPlan } from '@evenhem/planner'
import { grid, type Paper, papers } from './paper.ts'

/** Wall, window and drapery as they hang, without a number: nothing here is read, it is recognised. */
const kept: ReadonlySet<Role> = new Set(['wall-face', 'casing', 'glass', 'rod', 'fabric'])

/** A piece of a wall in mm of the wall, y up. */
export interface Piece {
  readonly role: Role
  /** An outline, as the data of an SVG path with y down. */
  readonly d: string
}
/** A wall with what hangs there, in mm of the wall. A window of which nothing is known is a bare wall. */
export interface SmallWall {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  readonly pieces: readonly Piece[]
  /** False: neither a window nor a drapery can be drawn. */
  readonly isKnown: boolean
}

type Corner = readonly [x: number, y: number]
interface Drawn extends Piece {
  readonly corners: readonly Corner[]
}

const written = (value: number): string => String(Math.round(value))
const flat = (mark: Mark): readonly Mark[] => (mark.kind === 'group' ? mark.marks.flatMap(flat) : [mark])

function pieceOf(mark: Mark): readonly Drawn[] {
  if (mark.kind === 'rect' && kept.has(mark.role)) {
    const [x, y] = mark.at
    const [right, top] = [x + mark.width, y + mark.height]
    const d = `M${written(x)} ${written(-y)}H${written(right)}V${written(-top)}H${written(x)}Z`
    return [{ role: mark.role, d, corners: [mark.at, [right, top]] }]
  }
  if (mark.kind !== 'path' || !kept.has(mark.role)) return []
  const corners: Corner[] = []
  const d = mark.d.map(([command, ...values]) => {
    const pairs = values.flatMap((value, n) => (n % 2 === 0 ? [[value, values[n + 1]] as [number, number]] : []))
    if (pairs.length > 0) corners.push(pairs.at(-1) as Corner)
    return `${command}${pairs.map(([x, y]) => `${written(x)} ${written(-y)}`).join(' ')}`
  })
  return [{ role: mark.role, d: d.join(''), corners }]
}

/** A wall as it stands in no plan: 1.5 m by 2.5 m, with nothing in it. */
const unknownWall: SmallWall = {
  left: 0,
  top: -2500,
  width: 1500,
  height: 2500,
  pieces: [{ role: 'wall-face', d: 'M0 0H1500V-2500H0Z' }],
  isKnown: false,
}

/** The wall of a plan, drawn for the frieze. */
export function smallWallOf({ layers }: WindowPlan): SmallWall {
  const drawn = layers
    .filter(({ view, state }) => view === 'elevation' && (state === undefined || state === 'drawn'))
    .flatMap(({ marks }) => marks.flatMap(flat).flatMap(pieceOf))
  if (drawn.length === 0) return unknownWall
  const corners = drawn.flatMap((piece) => piece.corners)
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
  const [left, top] = [Math.floor(Math.min(...xs)), -Math.ceil(Math.max(...ys))]
  return {
    left,
    top,
    width: Math.ceil(Math.max(...xs)) - left,
    height: -Math.floor(Math.min(...ys)) - top,
    pieces: drawn.map(({ role, d }) => ({ role, d })),
    isKnown: drawn.some(({ role }) => role !== 'wall-face'),
  }
}

/** Between walls of a room, between rooms, and under a row of them, in mm of paper. */
export const friezeGaps = { wall: 0, room: 5, row: 9 } as const
/** What the frieze may take of the cover's height, in mm of paper. */
const tall: Readonly<Record<Paper, number>> = { a4: 118, letter: 100 }
const largest = 1 / 42

/** The scale at which every wall of a house stands on the cover, in mm of paper for a mm of wall. */
export function friezeScale(rooms: readonly (readonly SmallWall[])[], paper: Paper): number {
  let scale = largest
  while (heightAt(rooms, scale) > tall[paper]) scale *= 0.96
  return scale
}

/** Rooms one after the other, a room that has no place left in a row begins the next, and one wider than the paper takes several. */
function heightAt(rooms: readonly (readonly SmallWall[])[], scale: number): number {
  const width = papers.a4.width - 2 * papers.a4.side
  let [x, total, row] = [0, 0, 0]
  for (const walls of rooms) {
    const lines = linesOf(walls, scale, width)
    const wide = Math.max(...lines)
    const high = Math.max(...walls.map(({ height }) => height * scale))
    const fits = lines.length === 1 && x > 0 && x + wide <= width
    if (!fits) [total, x, row] = [total + row, 0, 0]
    row = Math.max(row, high * lines.length + friezeGaps.row)
    x += wide + friezeGaps.room
  }
  return total + row
}

/** Widths of the rows of a room's walls. */
function linesOf(walls: readonly SmallWall[], scale: number, most: number): readonly number[] {
  const lines: number[] = []
  for (const { width } of walls) {
    const last = lines.at(-1)
    if (last !== undefined && last + width * scale <= most) lines[lines.length - 1] = last + width * scale
    else lines.push(Math.min(width * scale, grid))
  }
  return lines
}
