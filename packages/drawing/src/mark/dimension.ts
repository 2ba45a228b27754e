import { element, strokeData } from '../element.ts'
import { labelAt } from '../label.ts'
import type { Dimension } from '../marks.ts'
import type { Spot } from '../rows.ts'
import type { PlacedDimension, Stroke } from '../scene.ts'
import { type At, type Box, boundsOf, moved, toScene } from '../space.ts'
import { figureWords } from '../speech.ts'
import { figureSvg } from './label.ts'
import type { MarkTable } from './table.ts'

/** A place on a line: `along` it, and `across` where the line lies. */
const on = (axis: 'x' | 'y', along: number, across: number): At => (axis === 'x' ? [along, across] : [across, along])
const along = (axis: 'x' | 'y', [x, y]: At): number => (axis === 'x' ? x : y)
const across = (axis: 'x' | 'y', [x, y]: At): number => (axis === 'x' ? y : x)

/** A stroke at 45° through an end. */
const tick = ([x, y]: At, half: number): Stroke => [
  [x - half, y + half],
  [x + half, y - half],
]

/** The head of an arrow that ends at a place, coming from another one. */
function arrowHead(axis: 'x' | 'y', tip: At, from: number, size: number): Stroke {
  const back = along(axis, tip) + 1.6 * size * Math.sign(from - along(axis, tip))
  const side = across(axis, tip)
  return [on(axis, back, side - size), tip, on(axis, back, side + size)]
}

/** The line from end to end and a tick beyond, broken where the label's block lies on it. */
function pieces(axis: 'x' | 'y', low: number, high: number, line: number, block: Box): readonly Stroke[] {
  const [from, to] = axis === 'x' ? [block.x, block.x + block.width] : [block.y, block.y + block.height]
  const isOn = axis === 'x' ? block.y < line && line < block.y + block.height : block.x < line && line < block.x + block.width
  const cuts: readonly (readonly [number, number])[] =
    !isOn || to <= low || from >= high
      ? [[low, high]]
      : [
          [low, from],
          [to, high],
        ]
  return cuts.filter(([a, b]) => b > a).map(([a, b]) => [on(axis, a, line), on(axis, b, line)])
}

/** From what is measured to a little beyond the dimension's line; none when the line passes through it. */
function extension(axis: 'x' | 'y', thing: At, line: number, beyond: number): readonly Stroke[] {
  const start = across(axis, thing)
  const away = Math.sign(line - start)
  if (Math.abs(line - start) < 0.5 * beyond) return []
  return [[on(axis, along(axis, thing), start + away * 0.4 * beyond), on(axis, along(axis, thing), line + away * beyond)]]
}

/** Where a broken line has its mark, as a share of the way from where it begins. */
const breakAt = 0.12
/** The break mark of a line whose end lies outside: two strokes across it. */
function breakMark(axis: 'x' | 'y', at: number, line: number, size: number): readonly Stroke[] {
  return [-0.4, 0.4].map((shift) =>
    axis === 'x'
      ? ([
          [at + shift * size - 0.3 * size, line + size],
          [at + shift * size + 0.3 * size, line - size],
        ] as const)
      : ([
          [line - size, at + shift * size + 0.3 * size],
          [line + size, at + shift * size - 0.3 * size],
        ] as const),
  )
}

export const dimension: MarkTable<Dimension, PlacedDimension, Spot> = {
  bounds: (mark) => boundsOf([mark.from, mark.to]),
  place: (mark, { frame, within, options, spot }) => {
    const { axis, line } = spot
    const half = options.sizes.tick
    const [low, high] = axis === 'x' ? [within.x, within.x + within.width] : [within.y, within.y + within.height]
    const things = [toScene(frame, mark.from), toScene(frame, mark.to)] as const
    const ends = things.map((thing) => along(axis, thing))
    const isOut = ends.map((end) => end < low - half || end > high + half)
    const shown = ends.map((end, n) => (isOut[n] ? Math.max(low, Math.min(high, end)) : end)) as [number, number]
    const inside = things.filter((_, n) => !isOut[n])
    return {
      kind: 'dimension',
      role: mark.role,
      from: on(axis, shown[0], line),
      to: on(axis, shown[1], line),
      line: pieces(
        axis,
        Math.min(...shown) - (mark.isLoad ? 0 : half),
        Math.max(...shown) + (mark.isLoad ? 0 : half),
        line,
        moved(spot.tag.block, spot.at),
      ),
      extensions: mark.isLoad ? [] : inside.flatMap((thing) => extension(axis, thing, line, half)),
      ticks: mark.isLoad
        ? [arrowHead(axis, on(axis, shown[1], line), shown[0], half)]
        : [
            ...shown.flatMap((end, n) => (isOut[n] ? breakMark(axis, end, line, half) : [tick(on(axis, end, line), half)])),
            ...(mark.broken ? breakMark(axis, shown[0] + breakAt * (shown[1] - shown[0]), line, half) : []),
          ],
      ...(mark.isLoad ? { isLoad: true } : {}),
      broken: mark.broken === true || isOut.includes(true),
      label: labelAt(mark.figure, mark.role, spot, options),
    }
  },
  svg: ({ extensions, line, ticks, isLoad, label }, ink) => {
    const strokes = (name: string, all: readonly Stroke[]): string =>
      all.length > 0 ? element('path', { class: name, d: strokeData(all) }) : ''
    return figureSvg(
      label,
      strokes('extension', extensions) + strokes(isLoad ? 'line load' : 'line', line) + strokes('tick', ticks),
      ink,
    )
  },
  words: (mark, options) => [figureWords(mark.figure, options)],
}
