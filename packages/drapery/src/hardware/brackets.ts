import { below, type Place, type Treatment, type Window } from '@evenhem/job'
import { given, type Known, known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { floorAt, fromCasing, fromFloor, holeHeight } from '../arithmetic/index.ts'
import type { Floor, Frame, Hole, HungLine, PlannedMark, Plate } from '../facts/index.ts'
import { coveredBy, type Member, member, windowOf } from '../given.ts'

const ends = ['left', 'right'] as const

/** What a hardware entry says of the plates of its brackets, or of its supports. */
export interface PlateSizes {
  readonly width?: Length
  readonly height?: Length
  readonly holes?: readonly { readonly id: string; readonly down: Length }[]
}
/** A support between the ends. */
export interface Support {
  readonly id: string
  readonly x: LengthReckoning
}
/** Where brackets and supports stand along the wall, x to their middles. */
export interface Brackets {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  /** From left to right. */
  readonly supports: readonly Support[]
}
/** The tops of their plates above the level line. */
export interface PlateTops {
  readonly bracket: LengthReckoning
  readonly support?: LengthReckoning | undefined
}

/** What brackets are screwed to, when it stands out from the wall: the casing or the crown, by so much. */
export function standsOut(
  it: Treatment,
  window: Window,
  windowAt: Place,
): { readonly what: string; readonly by: Member<Length> } | undefined {
  const first = coveredBy(it, window, windowAt)[0]
  if (!first) return undefined
  const { opening, openingAt, wall, wallAt } = first
  if (it.mount === 'casing')
    return { what: 'drapery/casing-thickness', by: member(openingAt, ['casing', 'thickness'], opening.casing?.thickness) }
  if (it.mount === 'crown')
    return { what: 'drapery/crown-projection', by: member(wallAt, ['crown', 'projection'], wall.crown?.projection) }
  return undefined
}

/** A bracket's projection and what it is screwed to: from the wall to where the hooks bear. */
export const projectionFrom = (at: Place, own: Known<Length>, what: string, by: Known<Length>): LengthReckoning =>
  sum(`${at}#projection`, 'drapery/projection', plus('drapery/bracket-projection', own), plus(what, by))

/** The supports of a treatment, from left to right: each stands where the order puts it, those that were added on site where somebody chose. */
export const supportsOf = (it: Treatment, at: Place): readonly Support[] =>
  [
    ...(it.rod?.supports ?? []).map(({ id, x }) => ({ id, value: x, from: below(at, 'rod', 'supports', id, 'x') })),
    ...Object.entries(it.found?.supports ?? {}).flatMap(([id, { x }]) =>
      x === undefined ? [] : [{ id, value: x, from: below(at, 'found', 'supports', id, 'x') }],
    ),
  ]
    .map(({ id, value, from }) => ({
      id,
      x: given(`${at}#support-${id}`, 'drapery/support', plus('drapery/support', { value, from })),
    }))
    .sort((a, b) => a.x.value - b.x.value)

/** The top of the supports' plates; `offset` against the top of the rod, below it negative. */
export const topOfSupport = (at: Place, rod: LengthReckoning, offset: Known<Length>): LengthReckoning =>
  sum(`${at}#top-of-support`, 'drapery/top-of-plate', plus('drapery/top-of-rod', rod), plus('drapery/plate-offset', offset))

interface Column {
  readonly key: string
  /** `left`, `right` or the id of a support. */
  readonly bracket: string
  readonly id: string
  readonly side: Hole['side']
  readonly support?: string
  readonly x: LengthReckoning
  readonly top: LengthReckoning
  readonly part: 'bracket' | 'support'
  /** The floor right below it as readings there tell it; undefined: as the floor of the window. */
  readonly floor?: LengthReckoning | undefined
}
/** Brackets and supports whose plates' tops are known, each where the rod hangs on it. */
const columnsOf = (stand: Brackets, tops: PlateTops, hung?: HungLine): readonly Column[] =>
  levelColumns(stand, tops).map((column) => {
    const own = hung?.points.find(({ bracket }) => bracket === column.bracket)
    return { ...column, top: own?.plate ?? column.top, floor: own?.floor }
  })
/** The same as a level rod has them. */
const levelColumns = (stand: Brackets, tops: PlateTops): readonly Column[] => [
  ...ends.map((side) => ({
    key: side,
    bracket: side,
    id: `bracket-${side}`,
    side,
    x: stand[side],
    top: tops.bracket,
    part: 'bracket' as const,
  })),
  ...(tops.support ? stand.supports : []).map(({ id, x }) => ({
    key: `support-${id}`,
    bracket: id,
    id: `support-${id}`,
    side: 'middle' as const,
    support: id,
    x,
    top: tops.support as LengthReckoning,
    part: 'support' as const,
  })),
]

/** A place from the nearer corner of the wall that it is on, when a corner is between it and the edge of the casing that it would be measured from; of a support always, where there is one. */
export function fromCorner(
  name: string,
  side: Hole['side'],
  x: LengthReckoning,
  { left, right }: Frame,
  { walls }: Window,
  windowAt: Place,
): LengthReckoning | undefined {
  const corners = walls
    .slice(1)
    .flatMap(({ id, left }) => (left === undefined ? [] : [{ value: left, from: below(windowAt, 'walls', id, 'left') }]))
  const edge = side === 'right' ? right.value : (left?.value ?? 0)
  const isAround = corners.some(({ value }) => value > Math.min(edge, x.value) && value < Math.max(edge, x.value))
  // A support is told as its neighbours are.
  if (!isAround && side !== 'middle') return undefined
  const before = corners.findLast(({ value }) => value <= x.value)
  const after = corners.find(({ value }) => value > x.value)
  const isLeft = before !== undefined && (after === undefined || x.value - before.value <= after.value - x.value)
  const along = plus('drapery/along-the-wall', x)
  if (isLeft) return sum(name, 'drapery/from-left-corner', along, minus('drapery/corner', before))
  return after && sum(name, 'drapery/from-right-corner', plus('drapery/corner', after), minus('drapery/along-the-wall', x))
}

/** The highest hole of each bracket and support on a level rod, from left to right; empty while plates' holes are not known, and for what hangs in the double brackets of another treatment. */
export function marksPlanned(
  it: Treatment,
  at: Place,
  hardware: Hardware,
  hardwareAt: Place,
  stand: Brackets,
  tops: PlateTops,
): { readonly marks: readonly PlannedMark[]; readonly reckonings: readonly LengthReckoning[] } {
  const columns = it.bracketsOf === undefined ? levelColumns(stand, tops) : []
  const marks = columns.flatMap(({ key, bracket, x, top, part }): readonly PlannedMark[] => {
    const [highest] = [...(hardware[part]?.holes ?? [])].sort((a, b) => a.down - b.down)
    if (!highest) return []
    const down = { value: highest.down, from: below(hardwareAt, part, 'holes', highest.id, 'down') }
    return [{ bracket, x, plate: top, hole: holeHeight(`${at}#planned-hole-${key}`, top, down) }]
  })
  if (marks.length < columns.length) return { marks: [], reckonings: [] }
  return { marks: marks.sort((a, b) => a.x.value - b.x.value), reckonings: marks.map(({ hole }) => hole) }
}

type Hardware = { readonly [part in 'bracket' | 'support']?: PlateSizes }

/** Every hole of brackets and supports, each from its own floor and from the casing. `what`: the code of a hole by its id. Asks for plates' holes that are not known. */
export function bracketHoles(
  at: Place,
  hardware: Hardware,
  hardwareAt: Place,
  stand: Brackets,
  tops: PlateTops,
  { floor, frame, hungLine }: { readonly floor: Floor; readonly frame: Frame; readonly hungLine?: HungLine | undefined },
  window: Window,
  what: (hole: string) => string,
): { readonly holes: readonly Hole[]; readonly reckonings: readonly LengthReckoning[] } | { readonly ask: readonly Place[] } {
  // In the double brackets of another treatment: those are drilled there.
  if (window.treatments.some(({ id, bracketsOf }) => bracketsOf !== undefined && at.endsWith(`/${id}`)))
    return { holes: [], reckonings: [] }
  const columns = columnsOf(stand, tops, hungLine)
  const unsaid = columns.find(({ part }) => !hardware[part]?.holes)
  if (unsaid) return { ask: [below(hardwareAt, unsaid.part, 'holes')] }
  const all = columns.map(({ key, id, side, support, x, top, part, floor: own }) => {
    const ground = own ?? floorAt(`${at}#floor-bracket-${key}`, floor.points, known(x))
    const outward = fromCasing(`${at}#bracket-from-casing-${key}`, side, x, frame)
    const corner = fromCorner(`${at}#bracket-from-corner-${key}`, side, x, frame, window, windowOf(at))
    const each = (hardware[part]?.holes ?? []).map((hole): Hole => {
      const down = { value: hole.down, from: below(hardwareAt, part, 'holes', hole.id, 'down') }
      const height = holeHeight(`${at}#hole-${key}-${hole.id}`, top, down)
      return {
        id: `${id}-${hole.id}`,
        on: part,
        what: what(hole.id),
        side,
        ...(support === undefined ? {} : { support }),
        x,
        height,
        fromFloor: fromFloor(`${at}#from-floor-${key}-${hole.id}`, height, ground),
        fromCasing: outward,
        ...(corner ? { fromCorner: corner } : {}),
      }
    })
    return {
      each,
      working: [
        ...(own ? [] : [ground]),
        outward,
        ...(corner ? [corner] : []),
        ...each.flatMap((hole) => [hole.height, hole.fromFloor]),
      ],
    }
  })
  return { holes: all.flatMap((column) => column.each), reckonings: all.flatMap((column) => column.working) }
}

/** The plates on the wall, where their sizes are known; those of the end brackets are needed. */
export function bracketPlates(
  hardware: Hardware,
  hardwareAt: Place,
  stand: Brackets,
  tops: PlateTops,
  hungLine?: HungLine,
): readonly Plate[] | { readonly ask: readonly Place[] } {
  const size = (part: 'bracket' | 'support') => ({
    width: member(hardwareAt, [part, 'width'], hardware[part]?.width),
    height: member(hardwareAt, [part, 'height'], hardware[part]?.height),
  })
  const isKnown = (part: 'bracket' | 'support') => Object.values(size(part)).every(({ value }) => value !== undefined)
  if (!isKnown('bracket'))
    return {
      ask: Object.values(size('bracket'))
        .filter(({ value }) => value === undefined)
        .map(({ from }) => from),
    }
  return columnsOf(stand, tops, hungLine)
    .filter(({ part }) => isKnown(part))
    .map(({ id, side, x, top, part }) => ({
      id,
      side,
      x,
      top,
      ...(size(part) as { readonly width: Known<Length>; readonly height: Known<Length> }),
    }))
}

/** Screws of two brackets and so many supports, one for each hole. */
export const screwsOf = (hardware: Hardware, supports: number): number =>
  2 * (hardware.bracket?.holes?.length ?? 0) + supports * (hardware.support?.holes?.length ?? 0)
