import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Folding } from '../src/bend.ts'
import { gather } from '../src/gather.ts'
import type { Mark, Path, Point } from '../src/marks.ts'

const near = (a: Point, b: Point): void => {
  expect(a[0]).toBeCloseTo(b[0], 6)
  expect(a[1]).toBeCloseTo(b[1], 6)
}
const far = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by)
const corner = new Folding([{ x: 1000, degrees: 90 }])
const bay = new Folding([
  { x: 0, degrees: 135 },
  { x: 1500, degrees: 135 },
])

test('at an inside corner the next wall runs into the room, at an outside one away from it', () => {
  near(corner.point([1400, 0]), [1000, -400])
  near(new Folding([{ x: 1000, degrees: 270 }]).point([1400, 0]), [1000, 400])
})
test('what stands off the walls meets on the line that halves the corner', () => {
  near(corner.point([900, -100]), [900, -100])
  near(corner.point([1100, -100]), [900, -100])
  near(corner.point([1000, -100]), [900, -100])
})
test('of a bay the middle wall keeps its place, and the others are alike on both sides', () => {
  near(bay.point([700, -80]), [700, -80])
  const [left, right] = [bay.point([-500, 0]), bay.point([2000, 0])]
  expect(left[1]).toBeCloseTo(right[1], 6)
  expect(left[0]).toBeCloseTo(1500 - right[0], 6)
  near(right, [1500 + 500 * Math.cos(Math.PI / 4), -500 * Math.sin(Math.PI / 4)])
})
test('a line at one distance from the walls stays at it, with a vertex at each turn', () => {
  const rod: Mark = { kind: 'line', role: 'rod', from: [-600, -90], to: [2100, -90] }
  const d = (bay.mark(rod) as Path).d.map(([, x, y]) => [x, y] as Point)
  expect(d.length).toBe(4)
  const back = 90 / Math.tan((67.5 * Math.PI) / 180)
  const lengths = d.slice(1).map((to, i) => far(d[i] as Point, to))
  expect(lengths[0]).toBeCloseTo(600 - back, 6)
  expect(lengths[1]).toBeCloseTo(1500 - 2 * back, 6)
  expect(lengths[2]).toBeCloseTo(600 - back, 6)
})
test('a small box is turned as it is, a long one is bent', () => {
  const box = (x: number, width: number): Mark => ({ kind: 'rect', role: 'bracket', at: [x, -40], width, height: 40 })
  const small = (corner.mark(box(1300, 30)) as Path).d
  const points = small.flatMap((segment) => (segment[0] === 'Z' ? [] : [[segment[1], segment[2]] as Point]))
  expect(points.map((to, i) => Math.round(far(points.at(i - 1) as Point, to)))).toEqual([40, 30, 40, 30])
  expect((corner.mark(box(500, 1000)) as Path).d.length).toBe(7)
})
test('a distance is kept where its wall keeps its place, and left out elsewhere', () => {
  const dimension = (from: number, to: number): Mark => ({
    kind: 'dimension',
    role: 'dimension',
    side: 'above',
    from: [from, 100],
    to: [to, 100],
    figure: { of: `#${from}`, what: 'w', state: 'computed', value: 1 as never },
  })
  const layers = [
    { view: 'plan' as const, depth: 0, marks: [dimension(0, 500), dimension(500, 1500)], bends: [{ x: 1000, degrees: 90 }] },
  ]
  const { marks, leftOut } = gather(layers, 'plan', 'drawn')
  expect([marks.length, leftOut]).toEqual([1, [{ what: 'w', of: '#500', why: 'around a corner' }]])
  expect(
    gather(
      layers.map(({ bends: _, ...layer }) => layer),
      'plan',
      'drawn',
    ).marks.length,
  ).toBe(2)
})
test('on one wall all distances stay', () => {
  const place = fc.record({
    x: fc.double({ min: 1200, max: 5000, noNaN: true }),
    y: fc.double({ min: -150, max: 0, noNaN: true }),
  })
  fc.assert(
    fc.property(place, place, (a, b) => {
      expect(far(corner.point([a.x, a.y]), corner.point([b.x, b.y]))).toBeCloseTo(far([a.x, a.y], [b.x, b.y]), 6)
    }),
  )
})
