import { inches } from '@evenhem/length'
import { expect, test } from 'vitest'
import { compose, type Mark, toSvg } from '../src/index.ts'
import { markBounds, markWords, type tables } from '../src/mark/index.ts'
import { onTablet } from './scenes/options.ts'

const figure = { value: inches(20), of: '/of', what: 'frame', state: 'ordered' } as const
/** One of each kind, with its bounds on the wall and what it says. */
const each: Readonly<
  Record<keyof typeof tables, { readonly mark: Mark; readonly bounds: object | undefined; readonly says: readonly string[] }>
> = {
  line: {
    mark: { kind: 'line', role: 'centre', from: [10, 40], to: [30, 20] },
    bounds: { left: 10, right: 30, bottom: 20, top: 40 },
    says: [],
  },
  path: {
    mark: { kind: 'path', role: 'fabric', d: [['M', 0, 0], ['C', 0, 90, 50, 90, 50, 0], ['Z']] },
    bounds: { left: 0, right: 50, bottom: 0, top: 90 },
    says: [],
  },
  rect: {
    mark: { kind: 'rect', role: 'casing', at: [5, 5], width: -3, height: 10 },
    bounds: { left: 2, right: 5, bottom: 5, top: 15 },
    says: [],
  },
  circle: {
    mark: { kind: 'circle', role: 'finial', at: [10, 10], radius: 4 },
    bounds: { left: 6, right: 14, bottom: 6, top: 14 },
    says: [],
  },
  hatch: {
    mark: {
      kind: 'hatch',
      role: 'hatch',
      of: [
        [0, 0],
        [500, 0],
        [500, 100],
        [0, 100],
      ],
    },
    bounds: undefined,
    says: [],
  },
  caption: {
    mark: { kind: 'caption', role: 'dimension', at: [3, 4], text: 'floor' },
    bounds: { left: 3, right: 3, bottom: 4, top: 4 },
    says: ['floor'],
  },
  cross: {
    mark: { kind: 'cross', role: 'mark', at: [3, 4], of: '/x' },
    bounds: { left: 3, right: 3, bottom: 4, top: 4 },
    says: [],
  },
  dimension: {
    mark: { kind: 'dimension', role: 'dimension', side: 'above', from: [0, 9], to: [508, 9], figure },
    bounds: { left: 0, right: 508, bottom: 9, top: 9 },
    says: ['frame: 20 in, ordered'],
  },
  height: {
    mark: { kind: 'height', role: 'mark', at: [3, 508], figure },
    bounds: { left: 3, right: 3, bottom: 508, top: 508 },
    says: ['frame: 20 in, ordered'],
  },
  finding: {
    mark: { kind: 'finding', verdict: 'warn', at: [3, 4], code: 'too near' },
    bounds: { left: 3, right: 3, bottom: 4, top: 4 },
    says: ['look: too near'],
  },
  detail: {
    mark: { kind: 'detail', id: 'a', code: 'Bracket', from: [9, 0], to: [0, 9], marks: [] },
    bounds: { left: 0, right: 9, bottom: 0, top: 9 },
    says: ['Bracket'],
  },
}

for (const [kind, { mark, bounds, says }] of Object.entries(each)) {
  test(`a ${kind} knows what it takes of the wall`, () => expect(markBounds(mark)).toEqual(bounds))
  test(`a ${kind} says ${says.length === 0 ? 'nothing by itself' : `"${says}"`}`, () =>
    expect(markWords(mark, onTablet())).toEqual(says))
}
test('every kind but a detail of nothing is written on a wall of its own', () => {
  const wall: Mark = { kind: 'rect', role: 'wall', at: [0, 0], width: 600, height: 600 }
  const bare = toSvg(compose([{ view: 'elevation', depth: 0, marks: [wall] }], onTablet()), { title: 'x' })
  for (const [kind, { mark }] of Object.entries(each)) {
    const text = toSvg(compose([{ view: 'elevation', depth: 0, marks: [wall, mark] }], onTablet()), { title: 'x' })
    expect(text.length > bare.length + 30, kind).toBe(kind !== 'detail')
  }
})
test('hatch stands at 45° and only inside its area', () => {
  const scene = compose(
    [{ view: 'plan', depth: 0, marks: [{ kind: 'rect', role: 'wall', at: [0, 0], width: 600, height: 200 }, each.hatch.mark] }],
    onTablet({ view: 'plan' }),
  )
  const hatch = scene.items.find((item) => item.kind === 'hatch')
  const strokes = hatch?.kind === 'hatch' ? hatch.strokes : []
  expect(strokes.length).toBeGreaterThan(10)
  for (const [[x, y], [toX, toY]] of strokes as unknown as [[number, number], [number, number]][]) {
    expect(toX - x).toBeCloseTo(y - toY, 6)
    expect((toX - x) / scene.scale).toBeLessThanOrEqual(100.001)
  }
})
