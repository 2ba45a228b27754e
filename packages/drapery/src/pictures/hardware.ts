import type { Mark } from '@evenhem/drawing'
import type { Place, Treatment } from '@evenhem/job'
import { inch, type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { straight } from '../arithmetic/floor.ts'
import type { HungLine } from '../facts/index.ts'
import { projectionAt } from '../given.ts'
import type { Brackets, PlateSizes } from '../hardware/index.ts'
import { bearingLine, box, mm, outline } from './shapes.ts'

/** Drawn when the entry does not say how big a plate is; no number is ever read from it. */
const unsaid = { width: inch, height: 3 * inch } as const

/** A plate on the wall, by the middle of its upper edge. */
export const plateOn = (
  x: number,
  top: number,
  { width = unsaid.width as Length, height = unsaid.height as Length }: PlateSizes,
): Mark => box('bracket', [mm(x - width / 2), mm(top)], [mm(x + width / 2), mm(top - height)])

type Tops = { readonly bracket: LengthReckoning; readonly support?: LengthReckoning | undefined }
/** Brackets and supports with the tops of their plates, where the rod hangs on them. */
function platesAt({ left, right, supports }: Brackets, { bracket, support }: Tops, hung: HungLine | undefined) {
  const topOf = (id: string, top: LengthReckoning): number =>
    (hung?.points.find((each) => each.bracket === id)?.plate ?? top).value
  return [
    ...[
      { id: 'left', x: left },
      { id: 'right', x: right },
    ].map(({ id, x }) => ({ x: x.value, top: topOf(id, bracket), part: 'bracket' as const })),
    ...(support ? supports.map(({ id, x }) => ({ x: x.value, top: topOf(id, support), part: 'support' as const })) : []),
  ]
}

/** The plates of brackets and supports. */
export const platesOn = (
  stand: Brackets,
  tops: Tops,
  hardware: { readonly bracket?: PlateSizes; readonly support?: PlateSizes },
  hung?: HungLine,
): readonly Mark[] => platesAt(stand, tops, hung).map(({ x, top, part }) => plateOn(x, top, hardware[part] ?? {}))

const centreOn = (x: number, top: number): Mark => ({
  kind: 'line',
  role: 'centre',
  from: [mm(x), mm(top) + 60],
  to: [mm(x), mm(top) - 140],
})
/** Where the middles of brackets and supports are, on the marks. */
export const centresOn = (stand: Brackets, tops: Tops, hung?: HungLine): readonly Mark[] =>
  platesAt(stand, tops, hung).map(({ x, top }) => centreOn(x, top))

/** How much higher than a level rod the rod is at a place along the walls, both in millimetres; 0 where it is level. */
export function hungBy(hung: HungLine | undefined): (x: number) => number {
  const points = (hung?.points ?? []).map(({ x, moved }) => ({ x: mm(x.value), by: mm(moved?.value ?? 0) }))
  if (points.every(({ by }) => by === 0)) return () => 0
  return (x) => {
    const inner = points.slice(1, -1)
    const [a, b] = [inner.findLast((point) => point.x < x) ?? points[0], inner.find((point) => point.x >= x) ?? points.at(-1)]
    return a && b ? straight(x, a.x, a.by, b.x, b.by) : 0
  }
}
/** A rod from end to end along the brackets. `top`: of a level one, in millimetres, as are the ends and how high it is. */
export function rodAlong([left, right]: readonly [number, number], top: number, high: number, hung?: HungLine): Mark {
  const by = hungBy(hung)
  const xs = [left, ...(hung?.points ?? []).map(({ x }) => mm(x.value)).filter((x) => x > left && x < right), right]
  if (xs.every((x) => by(x) === 0)) return box('rod', [left, top - high], [right, top])
  const upper = xs.map((x): readonly [number, number] => [x, top + by(x)])
  return outline('rod', [...upper, ...upper.toReversed().map(([x, y]): readonly [number, number] => [x, y - high])])
}
/** The heights of a level rod as they are at the left bracket. */
export const heightsAtLeft = (
  top: LengthReckoning,
  plate: LengthReckoning | undefined,
  hung?: HungLine,
): readonly LengthReckoning[] => {
  const left = hung?.points.find(({ bracket }) => bracket === 'left')
  return [left?.rod ?? top, ...(plate ? [left?.plate ?? plate] : [])]
}

/** From the middle of the left bracket to that of the right one. */
export const bracketToBracket = (at: Place, { left, right }: Brackets): LengthReckoning =>
  sum(
    `${at}#bracket-to-bracket`,
    'drapery/bracket-to-bracket',
    plus('drapery/bracket-right', right),
    minus('drapery/bracket-left', left),
  )

/** A distance along the wall, shown as a dimension at this height. */
export const rowOf = (
  side: 'above' | 'below',
  y: number,
  from: LengthReckoning,
  to: LengthReckoning,
  of: LengthReckoning,
): Mark => ({
  kind: 'dimension',
  role: 'dimension',
  side,
  from: [mm(from.value), y],
  to: [mm(to.value), y],
  figure: { value: of.value, of: of.name, what: of.what, state: 'computed' },
})

/** Heights above the floor, told beside this place along the wall. */
export const heightsBeside = (x: LengthReckoning, heights: readonly LengthReckoning[]): readonly Mark[] =>
  heights.map((reckoning) => ({
    kind: 'height',
    role: 'dimension',
    at: [mm(x.value), mm(reckoning.value)],
    figure: { value: reckoning.value, of: reckoning.name, what: reckoning.what, state: 'computed' },
  }))

/** How far out from the wall the hooks bear at a place along it, as y of a section: what is nearer to the room lies lower. */
export function outAt(
  it: Treatment,
  at: Place,
  cover: { readonly left: LengthReckoning; readonly right: LengthReckoning },
  hardware: Known<Length>,
): (x: number) => number {
  const [left, right] = [projectionAt(it, at, 'left', hardware), projectionAt(it, at, 'right', hardware)]
  const bears = bearingLine([mm(cover.left.value), mm(cover.right.value)], [mm(left.value), mm(right.value)])
  return (x) => -bears(x)
}

/** The rod from above, from end to end. `half`: half of its thickness, in millimetres. */
export const rodFromAbove = ([left, right]: readonly [number, number], out: (x: number) => number, half: number): Mark =>
  outline('rod', [
    [left, out(left) - half],
    [right, out(right) - half],
    [right, out(right) + half],
    [left, out(left) + half],
  ])
