import { element, strokeData } from '../element.ts'
import type { Hatch } from '../marks.ts'
import type { PlacedHatch, Stroke } from '../scene.ts'
import { type At, type Box, toScene } from '../space.ts'
import { type MarkTable, silent } from './table.ts'

/** An outline cut to a box, side by side (Sutherland and Hodgman, 1974). */
function cutTo(outline: readonly At[], box: Box): readonly At[] {
  const sides: readonly { readonly axis: 0 | 1; readonly limit: number; readonly sign: 1 | -1 }[] = [
    { axis: 0, limit: box.x, sign: 1 },
    { axis: 0, limit: box.x + box.width, sign: -1 },
    { axis: 1, limit: box.y, sign: 1 },
    { axis: 1, limit: box.y + box.height, sign: -1 },
  ]
  return sides.reduce(
    (shape, { axis, limit, sign }) =>
      shape.flatMap((to, n) => {
        const from = shape.at(n - 1) as At
        const [before, after] = [sign * (from[axis] - limit), sign * (to[axis] - limit)]
        const share = before / (before - after)
        const crossing: At = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
        return [...(before >= 0 === after >= 0 ? [] : [crossing]), ...(after >= 0 ? [to] : [])]
      }),
    outline,
  )
}

/** The stretches of the line x + y = c inside an outline, from where it enters to where it leaves. */
function chords(outline: readonly At[], c: number): readonly Stroke[] {
  const crossings = outline
    .flatMap((to, n) => {
      const from = outline.at(n - 1) as At
      const [before, after] = [from[0] + from[1] - c, to[0] + to[1] - c]
      return before >= 0 === after >= 0 ? [] : [from[0] + ((to[0] - from[0]) * before) / (before - after)]
    })
    .sort((a, b) => a - b)
  return crossings.flatMap((x, n) =>
    n % 2 === 0 && crossings[n + 1] !== undefined
      ? [
          [
            [x, c - x],
            [crossings[n + 1] as number, c - (crossings[n + 1] as number)],
          ] as const,
        ]
      : [],
  )
}

/** Strokes at 45°, `apart` from one another, on one grid for the whole scene, so that neighbouring areas run on. */
function strokesIn(outline: readonly At[], apart: number): readonly Stroke[] {
  const sums = outline.map(([x, y]) => x + y)
  const step = apart * Math.SQRT2
  const first = Math.ceil(Math.min(...sums) / step)
  const count = outline.length < 3 ? 0 : Math.max(0, Math.floor(Math.max(...sums) / step) - first + 1)
  return Array.from({ length: count }, (_, n) => (first + n) * step).flatMap((c) => chords(outline, c))
}

export const hatch: MarkTable<Hatch, PlacedHatch> = {
  // Hatch only says on which side the wall is: it is cut to a narrow edge around the drawing, whatever its size.
  bounds: () => undefined,
  place: (mark, { frame, within, options }) => ({
    kind: 'hatch',
    role: 'hatch',
    strokes: strokesIn(
      cutTo(
        mark.of.map((at) => toScene(frame, at)),
        within,
      ),
      options.sizes.hatch,
    ),
  }),
  svg: ({ strokes }) => (strokes.length === 0 ? '' : element('path', { class: 'stroke hatch', d: strokeData(strokes) })),
  words: silent,
}
