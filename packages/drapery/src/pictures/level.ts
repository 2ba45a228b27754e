import type { Dimension, Figure, Layer, Mark, Point } from '@evenhem/drawing'
import { below, type Window } from '@evenhem/job'
import { type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import type { Frame } from '../facts/index.ts'
import type { Transfer } from '../rules/transfer.ts'
import { type Bracket, type Further, isRead, readAt } from '../rules/transfer-marks.ts'
import { mm, outline, through } from './shapes.ts'

/** How many times as steep as widths heights are drawn. What they differ by is to that scale; the ways between ceiling, rod, frame and floor are broken. */
export const steep = 12
type Line = 'ceiling' | 'head' | 'floor'

/** Where things are drawn: the rod's own height is 0 at the first bracket, and ceiling, head and floor stand apart from it. */
interface Sheet {
  readonly left: number
  readonly right: number
  /** From one column of readings to the next. */
  readonly column: number
  readonly at: Readonly<Record<Line, number>>
  readonly depth: number
}
interface Drawn {
  readonly marks: readonly Mark[]
  readonly working: readonly LengthReckoning[]
}
interface Place {
  readonly bracket: Bracket
  readonly further: Further | undefined
  readonly x: number
  /** Against the first bracket, steep: where each line is not known it is drawn level. */
  readonly rise: Readonly<Record<Line | 'rod', number>>
}

const riseOf = (gap: { readonly value: number } | undefined): number => steep * mm(gap?.value ?? 0)
function placesOf({ hung, first, further }: Transfer): readonly Place[] {
  const moved = (id: string): number => hung.points.find(({ bracket }) => bracket === id)?.moved?.value ?? 0
  return [{ bracket: first.bracket, further: undefined }, ...further.map((each) => ({ bracket: each.bracket, further: each }))]
    .map(({ bracket, further }) => ({
      bracket,
      further,
      x: mm(bracket.planned.x.value),
      rise: {
        ceiling: riseOf(further?.rises.ceiling),
        head: riseOf(further?.rises.head),
        floor: riseOf(further?.rises.floor),
        rod: riseOf({ value: moved(bracket.id) - moved(first.bracket.id) }),
      },
    }))
    .sort((a, b) => a.x - b.x)
}

/** Shares of the way from bracket to bracket. */
const shares = { column: 0.15, ceiling: 0.32, head: 0.3, floor: 0.8, hatch: 0.08, rod: 0.025, least: 600 } as const
function sheetOf(places: readonly Place[]): Sheet {
  const [first, last] = [places[0]?.x ?? 0, places.at(-1)?.x ?? 0]
  const wide = Math.max(shares.least, last - first)
  const most = Math.max(...places.flatMap(({ rise }) => Object.values(rise).map(Math.abs)))
  const column = shares.column * wide
  return {
    left: first - 4 * column,
    right: last + 4 * column,
    column,
    depth: shares.hatch * wide,
    at: {
      ceiling: shares.ceiling * wide + 2 * most,
      head: -shares.head * wide - 2 * most,
      floor: -shares.floor * wide - 4 * most,
    },
  }
}

const yOf = (sheet: Sheet, { rise }: Place, line: Line): number => sheet.at[line] + rise[line]
/** Where a line is known, and at the ends, where it is drawn level while it is not. */
const known = (places: readonly Place[], line: Line): readonly Place[] =>
  places.filter(
    ({ bracket: { id }, further }) => id === 'left' || id === 'right' || !further || further.rises[line] !== undefined,
  )
/** A line through the brackets, level beyond the outer ones, where nobody read it. */
const lineOf = (sheet: Sheet, places: readonly Place[], line: Line): readonly Point[] => {
  const points = known(places, line).map((place): Point => [place.x, yOf(sheet, place, line)])
  return [[sheet.left, points[0]?.[1] ?? 0], ...points, [sheet.right, points.at(-1)?.[1] ?? 0]]
}
const hatched = (sheet: Sheet, points: readonly Point[], depth: number): Mark => ({
  kind: 'hatch',
  role: 'hatch',
  of: [...points, [sheet.right, (points.at(-1)?.[1] ?? 0) + depth], [sheet.left, (points[0]?.[1] ?? 0) + depth]],
})
/** Drawn as cut where it was read at every bracket, else as what is not known. */
function surface(sheet: Sheet, places: readonly Place[], line: 'ceiling' | 'floor'): readonly Mark[] {
  const points = lineOf(sheet, places, line)
  const isKnown = known(places, line).every(({ further }) => further === undefined || further.rises[line] !== undefined)
  return isKnown
    ? [hatched(sheet, points, line === 'ceiling' ? sheet.depth : -sheet.depth), through('wall', points)]
    : [through('hidden', points)]
}
/** The top of the frame as it runs, with the beginning of its sides. */
function frameMarks(sheet: Sheet, places: readonly Place[], frame: Frame | undefined): readonly Mark[] {
  const points = lineOf(sheet, places, 'head')
  const sight = through('hidden', points)
  const [left, right] = [mm(frame?.left?.value ?? 0), mm(frame?.right.value ?? 0)]
  if (!(right > left)) return [sight]
  const at = (x: number): number => {
    const [a, b] = [points.findLast(([px]) => px <= x) ?? points[0], points.find(([px]) => px > x) ?? points.at(-1)] as [
      Point,
      Point,
    ]
    return a === b ? a[1] : a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0])
  }
  const inner = points.filter(([x]) => x > left && x < right)
  const low = Math.min(...points.map(([, y]) => y)) - 1.6 * sheet.depth
  return [sight, through('casing', [[left, low], [left, at(left)], ...inner, [right, at(right)], [right, low]])]
}

const place = (x: number, from: number, to: number, figure: Figure, more: Partial<Dimension> = {}): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'inside',
  from: [x, Math.min(from, to)],
  to: [x, Math.max(from, to)],
  figure,
  ...more,
})
/** What the tape read there, or a place to write it. */
const readFigure = (
  bracket: Bracket,
  name: 'floorToHead' | 'floorToCeiling' | 'floorToLevel' | 'floorToHole',
  what: string,
): Figure => {
  const known = readAt(bracket, name)
  return {
    ...(known ? { value: known.value } : {}),
    of: below(bracket.place, name),
    what,
    state: known ? 'ordered' : 'unknown',
  }
}
const worked = (reckoning: LengthReckoning, what = reckoning.what): Figure => ({
  value: reckoning.value,
  of: reckoning.name,
  what,
  state: 'computed',
})

/** From the floor up at one bracket: hole or level line, frame, ceiling, one beside the other, away from the middle. */
function readings(sheet: Sheet, each: Place, outward: 1 | -1, { first, hung }: Transfer): readonly Mark[] {
  const { bracket, further, x, rise } = each
  const floor = yOf(sheet, each, 'floor')
  const column = (n: number, to: number, figure: Figure): Dimension =>
    place(x + outward * n * sheet.column, floor, to, figure, { broken: true })
  const own =
    further === undefined && readAt(bracket, 'floorToHole') === undefined
      ? worked(first.hole)
      : readFigure(bracket, further ? 'floorToLevel' : 'floorToHole', further ? 'drapery/floor-to-level' : 'drapery/first-hole')
  const point = hung.points.find((one) => one.bracket === bracket.id)
  // A support that is set in line with the ends needs no reading.
  const isAsked = !further || bracket.id === 'left' || bracket.id === 'right' || isRead(bracket)
  return [
    ...(isAsked
      ? [
          column(1, further ? 0 : rise.rod, own),
          column(2, yOf(sheet, each, 'head'), readFigure(bracket, 'floorToHead', 'drapery/floor-to-head')),
          column(3, yOf(sheet, each, 'ceiling'), readFigure(bracket, 'floorToCeiling', 'drapery/floor-to-ceiling')),
        ]
      : []),
    ...(further && point?.mark ? [{ ...column(-1.4, rise.rod, worked(point.mark, 'drapery/mark')), role: 'mark' as const }] : []),
  ]
}

/** How much each line rises or falls on its way to a further bracket, to the steep scale, beside the level from the first one. */
function falls(sheet: Sheet, { further, x, rise }: Place, outward: 1 | -1, from: number): Drawn {
  if (!further?.reading.level) return { marks: [], working: [] }
  const level = (y: number): Mark => ({ kind: 'line', role: 'level', from: [from, y], to: [x, y] })
  const beside = x - 0.7 * outward * sheet.column
  const fall = (line: Line): Drawn => {
    const own = further.rises[line]
    if (!own) return { marks: [], working: [] }
    const [y, said] = [sheet.at[line], fallOf(own, `drapery/${line}`)]
    return {
      marks: [level(y), ...(own.value === 0 ? [] : [place(beside, y, y + rise[line], said.figure)])],
      working: said.working,
    }
  }
  const all = (['ceiling', 'head', 'floor'] as const).map(fall)
  return { marks: [...all.flatMap(({ marks }) => marks), level(0)], working: all.flatMap(({ working }) => working) }
}
/** What rises is told as it is, what falls by how much it falls. */
function fallOf(rise: LengthReckoning, what: string) {
  if (rise.value >= 0) return { figure: worked(rise, `${what}-rises`), working: [] }
  const fall = sum(`${rise.name}-falls`, `${what}-falls`, minus(rise.what, rise))
  return { figure: worked(fall), working: [fall] }
}

/** The rod as it hangs, with a cross at every mark, and how far it is out of level. */
function rodMarks(sheet: Sheet, places: readonly Place[], { hung, at }: Transfer) {
  const thick = (shares.rod / shares.hatch) * sheet.depth
  const points = places.map(({ x, rise }): Point => [x, rise.rod])
  const ends: readonly Point[] = [
    [(points[0]?.[0] ?? 0) - 0.4 * sheet.column, points[0]?.[1] ?? 0],
    ...points,
    [(points.at(-1)?.[0] ?? 0) + 0.4 * sheet.column, points.at(-1)?.[1] ?? 0],
  ]
  const rod = outline('rod', [
    ...ends.map(([x, y]): Point => [x, y + thick / 2]),
    ...ends.toReversed().map(([x, y]): Point => [x, y - thick / 2]),
  ])
  const first = hung.points.find(({ bracket }) => bracket === hung.first)
  const each = places.map(({ bracket, further, x, rise }) => {
    const point = hung.points.find((one) => one.bracket === bracket.id)
    const cross: Mark = { kind: 'cross', role: 'mark', at: [x, rise.rod], of: point?.height.name ?? '' }
    if (!further?.reading.level || !point || !first || rise.rod === 0) return { marks: [cross], working: [] }
    const out = sum(
      `${at}#rod-out-at-${bracket.id}`,
      'drapery/gap-rod',
      plus('drapery/bears', point.height),
      minus('drapery/bears', first.height),
    )
    const away = x < first.x.value / 1e6 ? 1 : -1
    const said = fallOf(out, 'drapery/rod')
    return { marks: [cross, place(x + 0.7 * away * sheet.column, 0, rise.rod, said.figure)], working: [out, ...said.working] }
  })
  return { marks: [rod, ...each.flatMap(({ marks }) => marks)], working: each.flatMap(({ working }) => working) }
}

/** From bracket to bracket, below everything. */
function row(sheet: Sheet, places: readonly Place[], { at, hung }: Transfer) {
  const [left, right] = [places[0], places.at(-1)]
  const ends = ['left', 'right'].map((side) => hung.points.find(({ bracket }) => bracket === side)?.x)
  if (!left || !right || !ends[0] || !ends[1]) return { marks: [], working: [] }
  const apart = sum(
    `${at}#brackets-apart`,
    'drapery/bracket-to-bracket',
    plus('drapery/bracket-x', ends[1]),
    minus('drapery/bracket-x', ends[0]),
  )
  const y = sheet.at.floor
  const figure = worked(apart)
  return {
    marks: [
      {
        ...place(0, 0, 0, figure),
        side: 'below' as const,
        from: [mm(ends[0].value), y] as Point,
        to: [mm(ends[1].value), y] as Point,
      },
    ],
    working: [apart],
  }
}

/** A picture below another one, for each layer of drapery its own. */
const lowered = (mark: Mark, by: number): Mark => {
  const down = ([x, y]: Point): Point => [x, y - by]
  switch (mark.kind) {
    case 'line':
    case 'dimension':
      return { ...mark, from: down(mark.from), to: down(mark.to) }
    case 'path':
      return { ...mark, d: mark.d.map((one) => (one[0] === 'M' || one[0] === 'L' ? [one[0], one[1], one[2] - by] : one)) }
    case 'hatch':
      return { ...mark, of: mark.of.map(down) }
    case 'cross':
    case 'caption':
      return { ...mark, at: down(mark.at) }
    default:
      return mark
  }
}

/** Level: ceiling, frame and floor as they were read against true level, the rod as it hangs, and every reading at its place. */
export function levelLayers(
  all: Transfer,
  window: Window,
  frame: Frame | undefined,
): { readonly layers: readonly Layer[]; readonly working: readonly LengthReckoning[] } {
  const places = placesOf(all)
  const sheet = sheetOf(places)
  const from = mm(all.first.bracket.planned.x.value)
  const middle = (sheet.left + sheet.right) / 2
  const outward = (x: number): 1 | -1 => (x > middle ? 1 : -1)
  const fallen = places.map((each) => falls(sheet, each, outward(each.x), from))
  const [rod, beneath] = [rodMarks(sheet, places, all), row(sheet, places, all)]
  const foot = sheet.at.floor - sheet.depth
  const note = (code: string, n: number): Mark => ({
    kind: 'caption',
    role: 'dimension',
    at: [sheet.left, foot - n * sheet.depth],
    anchor: 'start',
    code,
  })
  /** Keeps ground free for the words. */
  const ground: Mark = {
    kind: 'line',
    role: 'hidden',
    from: [sheet.left, foot - 1.6 * sheet.depth],
    to: [sheet.left, foot - 1.6 * sheet.depth],
  }
  const isLevelRead = all.further.some(({ reading }) => reading.level)
  const marks: readonly Mark[] = [
    ...surface(sheet, places, 'ceiling'),
    ...frameMarks(sheet, places, frame),
    ...surface(sheet, places, 'floor'),
    ...fallen.flatMap((each) => each.marks),
    ...rod.marks,
  ]
  const numbers: readonly Mark[] = [
    ...places.flatMap((each) => readings(sheet, each, outward(each.x), all)),
    ...beneath.marks,
    ground,
    note('drapery/level-steep', 0.4),
    ...(isLevelRead ? [note('drapery/level-dotted', 1.2)] : []),
  ]
  const nth = Math.max(
    0,
    window.treatments.findIndex(({ id }) => all.at.endsWith(`/treatments/${id}`)),
  )
  const by = nth * (sheet.at.ceiling - sheet.at.floor + 5 * sheet.depth)
  const layer = (depth: number, own: readonly Mark[]): Layer => ({
    view: 'level',
    depth,
    stretch: steep,
    marks: by === 0 ? own : own.map((mark) => lowered(mark, by)),
  })
  return {
    layers: [layer(0, marks), layer(60, numbers)],
    working: [...fallen.flatMap((each) => each.working), ...rod.working, ...beneath.working],
  }
}
