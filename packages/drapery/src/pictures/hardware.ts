import type { Mark } from '@evenhem/drawing'
import type { Place, Treatment } from '@evenhem/job'
import { inch, type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
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

/** The plates of brackets and supports. */
export const platesOn = (
  stand: Brackets,
  tops: { readonly bracket: LengthReckoning; readonly support?: LengthReckoning | undefined },
  hardware: { readonly bracket?: PlateSizes; readonly support?: PlateSizes },
): readonly Mark[] => {
  const { support } = tops
  return [
    ...[stand.left, stand.right].map((x) => plateOn(x.value, tops.bracket.value, hardware.bracket ?? {})),
    ...(support ? stand.supports.map(({ x }) => plateOn(x.value, support.value, hardware.support ?? {})) : []),
  ]
}

const centreOn = (x: number, top: number): Mark => ({
  kind: 'line',
  role: 'centre',
  from: [mm(x), mm(top) + 60],
  to: [mm(x), mm(top) - 140],
})
/** Where the middles of brackets and supports are, on the marks. */
export const centresOn = (
  stand: Brackets,
  tops: { readonly bracket: LengthReckoning; readonly support?: LengthReckoning | undefined },
): readonly Mark[] => {
  const { support } = tops
  return [
    ...[stand.left, stand.right].map((x) => centreOn(x.value, tops.bracket.value)),
    ...(support ? stand.supports.map(({ x }) => centreOn(x.value, support.value)) : []),
  ]
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
