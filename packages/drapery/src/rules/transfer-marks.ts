import { below, type FoundBracket, type Place, type Treatment } from '@evenhem/job'
import { formula, given, type Known, known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import {
  type Choices,
  ceilingAt,
  choicesAt,
  type FirstBracket,
  type FurtherBracket,
  floorAt,
  type OutOfLevel,
  outOfLevel,
  reckoningsOf,
  straight,
} from '../arithmetic/index.ts'
import type { Floor, HangLine, HungBracket, PlannedMark } from '../facts/index.ts'
import { member, perhaps } from '../given.ts'

/** A bracket or support with what was found there. */
export interface Bracket {
  readonly id: string
  readonly planned: PlannedMark
  readonly found: FoundBracket
  /** Of what was found. */
  readonly place: Place
  /** The floor right below it as the floor of the window has it. */
  readonly ground: LengthReckoning
}
type Read = 'floorToHole' | 'floorToHead' | 'floorToCeiling' | 'floorToLevel' | 'hole'
export const readAt = ({ place, found }: Bracket, name: Read): Known<Length> | undefined =>
  perhaps(member(place, [name], found[name]))
/** Whether a line was read there. */
export const isRead = (bracket: Bracket): boolean =>
  (['floorToHead', 'floorToCeiling', 'floorToLevel'] as const).some((name) => bracket.found[name] !== undefined)
export const isRecorded = (bracket: Bracket): boolean =>
  readAt(bracket, 'floorToHole') !== undefined || readAt(bracket, 'hole') !== undefined
/** Fixed, and somebody wrote how high its hole is: nothing else moves its mark. */
export const isHeld = (bracket: Bracket): boolean => bracket.found.fixed === true && isRecorded(bracket)

export const bracketsOf = (it: Treatment, at: Place, marks: readonly PlannedMark[], floor: Floor): readonly Bracket[] =>
  marks.map((planned) => ({
    id: planned.bracket,
    planned,
    found: it.found?.brackets?.[planned.bracket] ?? {},
    place: below(at, 'found', 'brackets', planned.bracket),
    ground: floorAt(`${at}#ground-${planned.bracket}`, floor.points, known(planned.x)),
  }))

/** The bracket that the others are taken from: what somebody said, else the end with the higher floor, the left one where it is level; one that is held before any that is not. */
export function firstOf(it: Treatment, brackets: readonly Bracket[]): Bracket {
  const [left, right] = ['left', 'right'].map((side) => brackets.find(({ id }) => id === side)) as [Bracket, Bracket]
  const higher = right.ground.value > left.ground.value ? right : left
  const wanted = brackets.find(({ id }) => id === it.found?.first) ?? higher
  const held = [wanted, higher, ...brackets].find(isHeld)
  return held ?? wanted
}

/** Lines as points that the order or earlier readings hold; they stand in where nobody read the line at either bracket. */
export interface StandIns {
  readonly floor: Floor
  readonly head: Floor['points']
  readonly ceiling: Floor['points']
}
/** From the floor right below up to a line that runs through points. */
function standIn(at: Place, { id, planned, ground }: Bracket, points: Floor['points'], line: 'head' | 'ceiling') {
  const over = { ...ceilingAt(`${at}#${line}-over-${id}`, points, known(planned.x)), what: `drapery/${line}` }
  const up = sum(
    `${at}#floor-to-${line}-${id}`,
    `drapery/floor-to-${line}`,
    plus(`drapery/${line}`, over),
    minus('drapery/floor', ground),
  )
  return { value: known(up), working: [over, up] }
}
interface Lines {
  readonly first: Known<Length>
  readonly further: Known<Length>
  readonly working: readonly LengthReckoning[]
}
/** One line at both brackets, from the same source; undefined when it is known at one of them only, which tells nothing. */
function lineAt(
  at: Place,
  first: Bracket,
  further: Bracket,
  line: 'head' | 'ceiling',
  points: Floor['points'],
): Lines | undefined {
  const name = line === 'head' ? 'floorToHead' : 'floorToCeiling'
  const [one, other] = [readAt(first, name), readAt(further, name)]
  if (one && other) return { first: one, further: other, working: [] }
  if (one || other || points.length < 2) return undefined
  const [a, b] = [standIn(at, first, points, line), standIn(at, further, points, line)]
  return { first: a.value, further: b.value, working: [...a.working, ...b.working] }
}

/** The first bracket with its top hole from its own floor: as read, else as planned. */
export interface First {
  readonly bracket: Bracket
  readonly hole: LengthReckoning
  /** Its top hole above the level line. */
  readonly height: LengthReckoning
}
export function firstHole(at: Place, bracket: Bracket): First {
  const name = `${at}#first-hole`
  const [read, height] = [readAt(bracket, 'floorToHole'), readAt(bracket, 'hole')]
  const floor = minus('drapery/floor', bracket.ground)
  const hole = read
    ? given(name, 'drapery/first-hole', plus('drapery/floor-to-hole', read))
    : sum(
        name,
        'drapery/first-hole',
        height ? plus('drapery/hole-read', height) : plus('drapery/planned-hole', bracket.planned.hole),
        floor,
      )
  const up = sum(
    `${at}#first-height`,
    'drapery/hole-height',
    plus('drapery/first-hole', hole),
    plus('drapery/floor', bracket.ground),
  )
  return { bracket, hole, height: up }
}

/** A further bracket against the first one. */
export interface Further {
  readonly bracket: Bracket
  readonly first: FirstBracket
  readonly reading: FurtherBracket
  readonly rises: OutOfLevel
  /** Worked out once something was read there or chosen. */
  readonly choices?: Choices | undefined
  /** The floor right below it: as a level line tells, else as the window's floor. */
  readonly floor: LengthReckoning
  /** Whether a level line or points of the floor tell it. */
  readonly isLevelKnown: boolean
  readonly working: readonly LengthReckoning[]
}
export function furtherOf(
  at: Place,
  first: First,
  bracket: Bracket,
  stand: StandIns,
  near: Known<Length>,
  reach: Known<Length>,
): Further {
  const { id, planned, ground } = bracket
  const [head, ceiling] = [
    lineAt(at, first.bracket, bracket, 'head', stand.head),
    lineAt(at, first.bracket, bracket, 'ceiling', stand.ceiling),
  ]
  const read = readAt(bracket, 'floorToLevel')
  const byFloor =
    read || stand.floor.points.length < 2
      ? undefined
      : sum(
          `${at}#level-${id}`,
          'drapery/level-from-floor',
          plus('drapery/hole-height', first.height),
          minus('drapery/floor', ground),
        )
  const level = read ?? (byFloor && known(byFloor))
  const under =
    read &&
    sum(
      `${at}#floor-under-${id}`,
      'drapery/floor',
      plus('drapery/hole-height', first.height),
      minus('drapery/floor-to-level', read),
    )
  const lower = sum(
    `${at}#lower-${id}`,
    'drapery/plate-lower',
    plus('drapery/planned-hole', first.bracket.planned.hole),
    minus('drapery/planned-hole', planned.hole),
  )
  const from: FirstBracket = { hole: known(first.hole), head: head?.first, ceiling: ceiling?.first }
  const reading: FurtherBracket = {
    head: head?.further,
    ceiling: ceiling?.further,
    level,
    ...(lower.value === 0 ? {} : { lower: known(lower) }),
  }
  const choices =
    isRead(bracket) || bracket.found.follows ? choicesAt(`${at}#${id}`, from, reading, near.value, reach) : undefined
  const rises = outOfLevel(`${at}#${id}`, from, reading)
  return {
    bracket,
    first: from,
    reading,
    rises,
    choices,
    floor: under ?? ground,
    isLevelKnown: level !== undefined,
    working: [
      ...(head?.working ?? []),
      ...(ceiling?.working ?? []),
      ...[byFloor, under].filter((each) => each !== undefined),
      ...(lower.value === 0 ? [] : [lower]),
      ...Object.values(rises),
      ...(choices ? reckoningsOf(choices) : []),
    ],
  }
}

/** What puts the holes of a bracket elsewhere than a level rod has them: a mark from the floor right below it, or by how much it is moved. */
export type Put = { readonly by: HungBracket['by'] } & ({ readonly mark: LengthReckoning } | { readonly moved: LengthReckoning })

/** The mark of a hole that was read, from the floor right below it. */
export function markRead(at: Place, bracket: Bracket, floor: LengthReckoning): LengthReckoning | undefined {
  const name = `${at}#mark-read-${bracket.id}`
  const [read, hole] = [readAt(bracket, 'floorToHole'), readAt(bracket, 'hole')]
  if (read) return given(name, 'drapery/mark', plus('drapery/floor-to-hole', read))
  return hole && sum(name, 'drapery/mark', plus('drapery/hole-read', hole), minus('drapery/floor', floor))
}
/** The mark that somebody chose; undefined while it is not known. */
export const markChosen = ({ bracket, choices }: Further): LengthReckoning | undefined =>
  choices?.list.find(({ follows }) => follows === bracket.found.follows)?.mark

/** A hole that was read where the bracket is fixed; else the choice; else the hole that was read. */
export function putAt(at: Place, further: Further): Put | undefined {
  const { bracket, floor } = further
  const read = markRead(at, bracket, floor)
  if (read && bracket.found.fixed) return { by: 'fixed', mark: read }
  const chosen = markChosen(further)
  if (chosen) return { by: bracket.found.follows, mark: chosen }
  return read && { by: 'read', mark: read }
}

/** A bracket as the rod hangs on it, and its working; at its place on a level rod when nothing puts it elsewhere. */
export function hungOf(
  at: Place,
  { id, planned }: Bracket,
  { hangLine }: HangLine,
  topOfRod: LengthReckoning | undefined,
  floor: LengthReckoning,
  put: Put | undefined,
): { readonly point: HungBracket; readonly working: readonly LengthReckoning[] } {
  const { bracket, x } = { bracket: id, x: planned.x }
  if (!put) return { point: { bracket, x, height: hangLine }, working: [] }
  const hole =
    'mark' in put
      ? sum(`${at}#hung-hole-${id}`, 'drapery/hole-height', plus('drapery/mark', put.mark), plus('drapery/floor', floor))
      : undefined
  const moved = hole
    ? sum(
        `${at}#hung-moved-${id}`,
        'drapery/moved',
        plus('drapery/hole-height', hole),
        minus('drapery/planned-hole', planned.hole),
      )
    : (put as { readonly moved: LengthReckoning }).moved
  const up = plus('drapery/moved', moved)
  const height = sum(`${at}#hung-bears-${id}`, 'drapery/bears', plus('drapery/hang-line', hangLine), up)
  const plate = sum(`${at}#hung-plate-${id}`, 'drapery/top-of-plate', plus('drapery/top-of-plate', planned.plate), up)
  const rod = topOfRod && sum(`${at}#hung-rod-${id}`, 'drapery/top-of-rod', plus('drapery/top-of-rod', topOfRod), up)
  const own = 'mark' in put ? [put.mark] : []
  return {
    point: {
      bracket,
      x,
      height,
      by: put.by,
      moved,
      plate,
      ...(rod ? { rod } : {}),
      ...('mark' in put ? { mark: put.mark, floor } : {}),
    },
    // Of a choice the mark stands with all that can be chosen.
    working: [
      ...(put.by === 'fixed' || put.by === 'read' ? own : []),
      ...(hole ? [hole] : []),
      moved,
      height,
      plate,
      ...(rod ? [rod] : []),
    ],
  }
}

/** Moved as the first one is: level with it. */
export const levelWith = (at: Place, { id }: Bracket, first: HungBracket): Put | undefined =>
  first.moved && { by: 'first', moved: given(`${at}#hung-moved-${id}`, 'drapery/moved', plus('drapery/moved', first.moved)) }

/** In the straight line between two brackets of which one at least is moved. */
export function inLine(at: Place, { id, planned }: Bracket, left: HungBracket, right: HungBracket): Put | undefined {
  if (!left.moved && !right.moved) return undefined
  const value = straight(planned.x.value, left.x.value, left.moved?.value ?? 0, right.x.value, right.moved?.value ?? 0)
  const terms = [left, right].flatMap(({ x, moved }) => [
    plus('drapery/bracket-x', x),
    ...(moved ? [plus('drapery/moved', moved)] : []),
  ])
  const along = plus('drapery/along-the-wall', planned.x)
  return {
    by: 'in-line',
    moved: formula(`${at}#hung-moved-${id}`, 'drapery/moved', value, 'drapery/straight-along-rod', along, ...terms),
  }
}
