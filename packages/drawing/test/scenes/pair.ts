// A pair on a rod with rings, stacked: the window of the concept, by hand. Inches from the left edge of the casing.
import { inches, type Length } from '@evenhem/length'
import type { Dimension, Figure, Layer, Mark, NumberState, Point, Role, Segment } from '../../src/index.ts'

const mm = (inch: number): number => inch * 25.4
const at = (x: number, y: number): Point => [mm(x), mm(y)]
const box = (role: Role, left: number, bottom: number, right: number, top: number, radius = 0): Mark => ({
  kind: 'rect',
  role,
  at: at(left, bottom),
  width: mm(right - left),
  height: mm(top - bottom),
  radius: mm(radius),
})
const line = (role: Role, from: Point, to: Point): Mark => ({ kind: 'line', role, from, to })
const path = (role: Role, points: readonly Point[], closed = true): Mark => ({
  kind: 'path',
  role,
  d: [...points.map(([x, y], n): Segment => [n === 0 ? 'M' : 'L', x, y]), ...(closed ? [['Z'] as const] : [])],
})
const figure = (value: number | undefined, what: string, state: NumberState, off?: number): Figure => ({
  ...(value === undefined ? {} : { value: inches(value) }),
  of: `/windows/w2#${what.replaceAll(' ', '-')}-${value}`,
  what,
  state,
  ...(off === undefined ? {} : { off: inches(off) as Length }),
})
const across = (side: Dimension['side'], from: number, to: number, y: number, what: string, state: NumberState): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side,
  from: at(from, y),
  to: at(to, y),
  figure: figure(to - from, what, state),
})
const upright = (side: Dimension['side'], from: number, to: number, x: number, what: string, state: NumberState): Dimension => ({
  kind: 'dimension',
  role: 'dimension',
  side,
  from: at(x, from),
  to: at(x, to),
  figure: figure(to - from, what, state),
})
const height = (role: 'mark' | 'dimension', y: number, what: string, state: NumberState, x = -7): Mark => ({
  kind: 'height',
  role,
  at: at(x, y),
  figure: figure(y, what, state),
})

const [left, right, ceiling] = [-22, 73.75, 102]
const wall: readonly Mark[] = [
  box('wall-face', left, 0, right, ceiling),
  {
    kind: 'hatch',
    role: 'hatch',
    of: [
      at(left - 4, -4),
      at(right + 4, -4),
      at(right + 4, ceiling + 4),
      at(left - 4, ceiling + 4),
      at(left - 4, 0),
      at(left, 0),
      at(left, ceiling),
      at(right, ceiling),
      at(right, 0),
      at(left - 4, 0),
    ],
  },
  line('baseboard', at(left, 5), at(right, 5)),
  line('baseboard', at(left, 4.6), at(right, 4.6)),
  path('wall', [at(left, 0), at(left, ceiling), at(right, ceiling), at(right, 0)]),
]
const opening: readonly Mark[] = [
  box('casing', 0, 26, 58.5, 84),
  box('frame', 2.5, 26, 56, 81.5),
  box('frame', 2.5, 26, 29.25, 81.5),
  box('frame', 29.25, 26, 56, 81.5),
  box('glass', 4, 27.5, 27.75, 80),
  box('glass', 30.75, 27.5, 54.5, 80),
  box('casing', -1.25, 25, 59.75, 26),
]

/** A stacked or drawn panel with ten pleats between two edges. */
function panel(from: number, to: number, hem: number): readonly Mark[] {
  const top = 92.5
  const width = (to - from) / 10
  const pleats = Array.from({ length: 10 }, (_, n) => from + (n + 0.5) * width)
  return [
    path('fabric', [at(from, hem), at(from, top), at(to, top), at(to, hem)]),
    ...pleats.map((x) =>
      path('fabric-shade', [at(x, top), at(x + 0.25 * width, top), at(x + 0.32 * width, hem), at(x + 0.05 * width, hem)]),
    ),
    ...pleats.flatMap((x) => [
      line('fold', at(x + 0.25 * width, top - 4), at(x + 0.32 * width, hem)),
      line('pleat', at(x, top), at(x, top - 4)),
    ]),
    line('fold', at(from, top - 4), at(to, top - 4)),
  ]
}
const panels = (state: 'drawn' | 'stacked'): readonly Mark[] =>
  state === 'drawn' ? [...panel(-8, 29.2, 0.5), ...panel(29.3, 66.5, 0.5)] : [...panel(-8, 6, 0.5), ...panel(52.5, 66.5, 0.5)]
const rings = (state: 'drawn' | 'stacked'): readonly Mark[] => {
  const width = state === 'drawn' ? 3.72 : 1.4
  const xs = Array.from({ length: 10 }, (_, n) => (n + 0.5) * width)
  return [...xs.map((x) => x - 8), ...xs.map((x) => 66.5 - x)].map(
    (x): Mark => ({ kind: 'rect', role: 'ring', at: at(x - 0.2, 92.6), width: mm(0.4), height: mm(1.9), radius: mm(0.2) }),
  )
}
const rod: readonly Mark[] = [
  box('bracket', -7.62, 90.9, -6.38, 93.75, 0.2),
  box('bracket', 64.88, 90.9, 66.12, 93.75, 0.2),
  box('rod', -8.9, 92.87, 67.4, 94.25),
  { kind: 'circle', role: 'finial', at: at(-10, 93.56), radius: mm(0.98) },
  { kind: 'circle', role: 'finial', at: at(68.5, 93.56), radius: mm(0.98) },
]
const crosses: readonly Mark[] = [
  { kind: 'cross', role: 'mark', at: at(-7, 93.125), of: 'top-hole' },
  { kind: 'cross', role: 'mark', at: at(-7, 91.625), of: 'lower-hole' },
]

/** What to enlarge at the left bracket, with dimensions that stand nowhere else. */
export const bracketDetail: Mark = {
  kind: 'detail',
  id: 'left-bracket',
  code: 'Left bracket',
  from: at(-11.2, 80.5),
  to: at(2, 97),
  marks: [
    line('centre', at(-7, 96.5), at(-7, 83)),
    { ...across('inside', -7, 0, 86, '', 'computed'), figure: figure(7, '', 'computed') },
    upright('inside', 84, 93.125, -1.9, '', 'computed'),
    upright('inside', 91.625, 93.125, -8.8, '', 'computed'),
    { kind: 'caption', role: 'dimension', at: at(-0.4, 82.2), code: 'frame', anchor: 'end' },
  ],
}

const rows: readonly Mark[] = [
  across('above', left, -7, ceiling, '', 'computed'),
  across('above', -7, 65.5, 93.75, 'bracket to bracket', 'computed'),
  across('above', 65.5, right, ceiling, '', 'computed'),
  across('below', left, 0, 0, 'wall space', 'measured'),
  across('below', 0, 58.5, 0, 'frame', 'measured'),
  across('below', 58.5, right, 0, 'wall space', 'measured'),
  upright('right', 0, 26, right, '', 'ordered'),
  upright('right', 26, 84, right, '', 'computed'),
  upright('right', 84, ceiling, right, '', 'computed'),
]
const heights: readonly Mark[] = [
  height('dimension', 94.25, 'top of rod', 'computed'),
  height('dimension', 93.75, 'top of bracket', 'computed'),
  height('mark', 93.125, 'top hole', 'computed'),
  height('dimension', 92, 'hang line', 'computed'),
  height('mark', 91.625, 'lower hole', 'computed'),
  height('dimension', 0.5, 'clearance', 'ordered'),
]
const lengths: readonly Mark[] = [
  { ...upright('inside', 0.5, 92.5, 10.9, 'left panel', 'measured') },
  { ...upright('inside', 0.5, 92.625, 47.6, 'right panel', 'measured') },
  { kind: 'caption', role: 'dimension', at: at(72.4, 98.7), code: 'ceiling', anchor: 'end' },
  { kind: 'caption', role: 'dimension', at: at(-20.6, 1.2), code: 'wood floor' },
  { kind: 'finding', verdict: 'warn', at: at(6, 40), code: 'stacked, 2 of glass is covered' },
  { kind: 'finding', verdict: 'unknown', at: at(65.5, 88.2), code: 'wall behind right bracket: not known' },
]

export const pair: readonly Layer[] = [
  { view: 'elevation', depth: 0, marks: [{ kind: 'group', id: 'wall', marks: wall }] },
  { view: 'elevation', depth: 10, marks: [{ kind: 'group', id: 'opening', marks: opening }] },
  ...(['drawn', 'stacked'] as const).flatMap((state): Layer[] => [
    { view: 'elevation', state, depth: 30, marks: panels(state) },
    { view: 'elevation', state, depth: 41, marks: rings(state) },
  ]),
  { view: 'elevation', depth: 40, marks: rod },
  { view: 'elevation', depth: 50, marks: crosses },
  { view: 'elevation', depth: 60, marks: [...rows, ...heights, ...lengths, bracketDetail] },
]
