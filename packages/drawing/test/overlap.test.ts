import fc from 'fast-check'
import { expect, test } from 'vitest'
import { effort } from '../../../tests/tools/long.ts'
import { gather } from '../src/gather.ts'
import { compose, figuresOf, type Scene } from '../src/index.ts'
import { holds, overlap } from '../src/space.ts'
import { randomScene } from './scenes/random.ts'

/** Pairs of labels, by what they say, that stand on one another. */
const overlapping = ({ labels }: Scene): readonly string[] =>
  labels.flatMap((a, n) =>
    labels
      .slice(n + 1)
      .filter((b) => overlap(a.box, b.box))
      .map((b) => `"${a.text}" on "${b.text}"`),
  )

const runs = { numRuns: { few: 100, slice: 1_000, all: 20_000 }[effort] }

test('labels of random scenes never overlap', () => {
  fc.assert(
    fc.property(randomScene, ({ layers, options }) => {
      expect(overlapping(compose(layers, options))).toEqual([])
    }),
    runs,
  )
})

test('touch boxes of random scenes never overlap', () => {
  fc.assert(
    fc.property(randomScene, ({ layers, options }) => {
      const touches = figuresOf(compose(layers, options)).map((label) => ({ text: label.words, box: label.touch }))
      expect(overlapping({ labels: touches } as unknown as Scene)).toEqual([])
    }),
    runs,
  )
})

test('every number of a random scene is drawn or named as left out, except heights where no tape stands and details that nothing calls for', () => {
  fc.assert(
    fc.property(randomScene, ({ layers, options }) => {
      const scene = compose(layers, options)
      const wanted = gather(layers, options.view, options.state).marks.flatMap((mark) =>
        mark.kind === 'dimension' || (mark.kind === 'height' && options.view !== 'plan') ? [mark.figure.of] : [],
      )
      const found = new Set([...figuresOf(scene).map((label) => label.figure.of), ...scene.leftOut.map((left) => left.of)])
      expect(wanted.filter((of) => !found.has(of))).toEqual([])
    }),
    runs,
  )
})

test('a dimension is as long as its number says, to a tenth of a millimetre', () => {
  fc.assert(
    fc.property(randomScene, ({ layers, options }) => {
      const scene = compose(layers, options)
      const outer = scene.items.flatMap((item) =>
        item.kind === 'dimension' && !item.broken && !insideDetail(scene, item.label.box) && item.label.figure.value !== undefined
          ? [item]
          : [],
      )
      for (const { from, to, label } of outer)
        expect(Math.hypot(to[0] - from[0], to[1] - from[1]) / scene.scale, label.words).toBeCloseTo(
          (label.figure.value as number) / 1e6,
          1,
        )
    }),
    runs,
  )
})

const insideDetail = (scene: Scene, box: { readonly x: number; readonly y: number }): boolean =>
  scene.items.some(
    (item) =>
      item.kind === 'detail' &&
      box.x >= item.panel.x &&
      box.x <= item.panel.x + item.panel.width &&
      box.y >= item.panel.y &&
      box.y <= item.panel.y + item.panel.height,
  )

test('labels of random scenes lie on the page', () => {
  fc.assert(
    fc.property(randomScene, ({ layers, options }) => {
      const page = { x: 0, y: 0, width: options.width, height: options.height }
      expect(compose(layers, options).labels.filter(({ box }) => !holds(page, box))).toEqual([])
    }),
    runs,
  )
})
