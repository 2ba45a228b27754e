import { dimension } from './mark/dimension.ts'
import type { Figure, NumberState } from './marks.ts'
import { figuresOf, type Placed, type Scene, type Words } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type Box, boxAt } from './space.ts'
import { tagOf } from './tag.ts'
import { wordsAt } from './words.ts'

const order: readonly NumberState[] = ['ordered', 'computed', 'measured', 'off', 'unknown', 'decided']

/** One entry: a dimension in the dress of its state, and what that means. Its left end is at x 0, its middle at y 0. */
interface Sample {
  readonly figure: Figure
  readonly text: string
  readonly line: number
  readonly width: number
}
type Legend = Pick<ComposeOptions, 'sizes' | 'write' | 'say' | 'speak'>

function sampleOf(figure: Figure, options: Legend): Sample {
  const { caption: type, tick } = options.sizes
  const text = options.say(`drawing/legend-${figure.state}`)
  const tag = tagOf(figure, options.sizes.row, options)
  const line = tag.box.width + 2 * (tick + 1.1 * type.size)
  const words = wordsAt(text, [0, 0], type)
  return { figure, text, line, width: line + 0.8 * type.size + words.box.width }
}

/** Where each sample begins: in rows, none wider than the sheet. */
function places(
  samples: readonly Sample[],
  width: number,
  apart: number,
): readonly { readonly x: number; readonly row: number }[] {
  let [x, row] = [0, 0]
  return samples.map((sample, n) => {
    if (n > 0 && x + sample.width > width) [x, row] = [0, row + 1]
    const at = { x, row }
    x += sample.width + apart
    return at
  })
}

function drawn({ figure, text, line }: Sample, [x, y]: readonly [number, number], options: ComposeOptions): readonly Placed[] {
  const { caption: type } = options.sizes
  const mid = x + line / 2
  const tag = tagOf(figure, options.sizes.row, options)
  const spot = { axis: 'x' as const, line: y, at: [mid, y] as const, tag, captions: [], outside: false }
  const within: Box = boxAt([mid, y], 2 * line, 2 * line)
  const pencil = { frame: { scale: 1, x: 0, y }, within, options, spot }
  const mark = { kind: 'dimension', role: 'dimension', side: 'inside', from: [x, 0], to: [x + line, 0], figure } as const
  const words: Words = wordsAt(text, [x + line + 0.8 * type.size, y + 0.34 * type.size], type)
  return [dimension.place(mark, pencil), { kind: 'caption', role: 'dimension', words }]
}

/**
 * The scene with a legend under it: for every way in which one of its numbers is known, that number in its dress and what it means. A scene
 * without numbers stays as it is.
 */
export function withLegend(scene: Scene, options: ComposeOptions): Scene {
  const figures = figuresOf(scene)
  const samples = order
    .flatMap((state) => figures.find(({ tag, role }) => tag.state === state && role === 'dimension') ?? [])
    .map(({ figure, tag }) => sampleOf({ ...figure, state: tag.state }, options))
  const { edge, row, caption: type, tick } = options.sizes
  const left = edge + tick
  const found = places(samples, scene.width - 2 * left, 2 * type.size)
  const high = 2.3 * row.size
  const items = samples.flatMap((sample, n) => {
    const place = found[n] as (typeof found)[0]
    return drawn(sample, [left + place.x, scene.height + (place.row + 0.55) * high], options)
  })
  const rows = samples.length > 0 ? (found.at(-1)?.row ?? 0) + 1 : 0
  return { ...scene, height: scene.height + rows * high, items: [...scene.items, ...items] }
}
