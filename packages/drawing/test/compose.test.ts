import { inches, type Length, tapes } from '@evenhem/length'
import { expect, test } from 'vitest'
import {
  compose,
  type Figure,
  figureAt,
  figuresOf,
  type Layer,
  type Mark,
  type PlacedDetail,
  type PlacedHeight,
  type PlacedTape,
  type Scene,
  screen,
} from '../src/index.ts'
import { onTablet } from './scenes/options.ts'
import { bracketDetail, pair } from './scenes/pair.ts'

const figure = (mm: number, what = 'frame'): Figure => ({
  value: (mm * 1e6) as Length,
  of: `/of/${what}`,
  what,
  state: 'ordered',
})
const wall: Mark = { kind: 'rect', role: 'wall', at: [0, 0], width: 2000, height: 2500 }
const layer = (marks: readonly Mark[], more: Partial<Layer> = {}): Layer => ({ view: 'elevation', depth: 0, marks, ...more })
const across = (from: number, to: number, what?: string): Mark => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'below',
  from: [from, 0],
  to: [to, 0],
  figure: figure(Math.abs(to - from), what),
})
const height = (y: number, what = 'top', x = 100, base?: number): Mark => ({
  kind: 'height',
  role: 'mark',
  at: [x, y],
  ...(base === undefined ? {} : { base }),
  figure: figure(y - (base ?? 0), what),
})
const kinds = (scene: Scene) => scene.items.map((item) => item.kind)
const tapeOf = (scene: Scene) => scene.items.find((item): item is PlacedTape => item.kind === 'tape') as PlacedTape
const whats = (scene: Scene) => figuresOf(scene).map((label) => label.figure.what)

test('only the view and the state of the drapery that are asked for are drawn', () => {
  const layers = [
    layer([wall]),
    layer([across(0, 10, 'a')], { view: 'marks' }),
    layer([across(0, 500, 'b')], { state: 'drawn' }),
    layer([across(500, 900, 'c')], { state: 'stacked' }),
  ]
  expect(whats(compose(layers, onTablet({ state: 'drawn' })))).toEqual(['b'])
})
test('layers lie from back to front by depth, and in the order given at one depth', () => {
  const at = (role: 'rod' | 'glass' | 'frame', depth: number) =>
    layer([{ kind: 'circle', role, at: [1000, 1000], radius: 10 }], { depth })
  const scene = compose([at('rod', 40), at('glass', 10), at('frame', 10)], onTablet())
  expect(scene.items.map((item) => 'role' in item && item.role)).toEqual(['glass', 'frame', 'rod'])
})
test('a group is its marks, and its words are said', () => {
  const scene = compose([layer([{ kind: 'group', id: 'wall', words: 'A wall.', marks: [wall, across(0, 500)] }])], onTablet())
  expect(whats(scene)).toEqual(['frame'])
  expect(scene.words).toEqual(['A wall.', 'frame: 19 11/16 in, ordered'])
})
test('the same dimension from two treatments is drawn once', () =>
  expect(whats(compose([layer([wall, across(0, 500)]), layer([across(0, 500)])], onTablet()))).toHaveLength(1))
test("the window of the concept has the concept's scale: 69 px to the foot", () =>
  expect(compose(pair, onTablet()).scale * 304.8).toBeCloseTo(69, 6))
test('the scale is a whole number of quarter pixels to the inch', () => {
  for (const width of [700, 777, 820, 1180])
    expect(Math.abs(((compose(pair, onTablet({ width })).scale * 25.4 * 4 + 0.5) % 1) - 0.5)).toBeLessThan(1e-6)
})
test('everything that a tablet asks of the concept finds its place', () => expect(compose(pair, onTablet()).leftOut).toEqual([]))
test('all labels lie on the page', () => {
  for (const { box } of compose(pair, onTablet()).labels)
    expect(box.x >= 0 && box.y >= 0 && box.x + box.width <= 820 && box.y + box.height <= 726).toBe(true)
})

test('a height is read on the tape as far over its foot as its number says', () => {
  const scene = compose([layer([wall, height(2000, 'top'), height(1990, 'lower', 1900, -10)])], onTablet())
  for (const { foot, reading, label } of scene.items.filter((item): item is PlacedHeight => item.kind === 'height'))
    expect((foot[1] - reading[1]) / scene.scale).toBeCloseTo((label.figure.value as number) / 1e6, 1)
})
test('heights fan out in their order and their leaders never cross', () => {
  const heights = compose(
    [layer([wall, ...[2000, 1990, 1985, 1400, 60, 20].map((y) => height(y, `at ${y}`))])],
    onTablet(),
  ).items.filter((item): item is PlacedHeight => item.kind === 'height')
  const byLabel = heights.toSorted((a, b) => a.label.at[1] - b.label.at[1])
  const byReading = heights.toSorted((a, b) => a.reading[1] - b.reading[1])
  expect(byLabel.map((item) => item.label.figure.what)).toEqual(byReading.map((item) => item.label.figure.what))
  for (const [n, item] of byLabel.slice(1).entries())
    expect(item.label.at[1] - (byLabel[n] as PlacedHeight).label.at[1]).toBeGreaterThanOrEqual(screen.apart)
})
test('of two heights with one caption each says which it is', () => {
  const scene = compose([layer([wall, height(2000, 'top hole', 100), height(2010, 'top hole', 1900)])], onTablet())
  expect(figuresOf(scene).map((label) => label.captions[0]?.text)).toEqual(['top hole, right', 'top hole, left'])
  expect(scene.words.map((words) => words.split(':')[0])).toEqual(['top hole, left', 'top hole, right'])
})
test('the tape stands on what the leftmost height is measured from, and reaches the ceiling', () => {
  const scene = compose([layer([wall, height(2000, 'a', 50, -10), height(2000, 'b', 1500, 5)])], onTablet())
  const { box, foot } = tapeOf(scene)
  expect(box.height / scene.scale).toBeCloseTo(2510, 1)
  expect(foot).toBeCloseTo(box.y + box.height)
})
const bothSides = [
  layer([wall, height(2000, 'top hole', 100), { ...height(2010, 'top hole', 1900, -10), side: 'right' } as Mark]),
]
const heightsOf = (scene: Scene) => scene.items.filter((item): item is PlacedHeight => item.kind === 'height')
const tapesOf = (scene: Scene) => scene.items.filter((item): item is PlacedTape => item.kind === 'tape')

test('heights for the right stand in a column there, on a tape of their own whose zero is what they are measured from', () => {
  const scene = compose(bothSides, onTablet())
  const [left, right] = heightsOf(scene).toSorted((a, b) => a.at[0] - b.at[0]) as [PlacedHeight, PlacedHeight]
  const [, own] = tapesOf(scene) as [PlacedTape, PlacedTape]
  expect(left.label.box.x + left.label.box.width).toBeLessThan(left.at[0])
  expect(right.at[0]).toBeLessThan(own.box.x)
  expect(right.label.box.x).toBeGreaterThan(own.box.x + own.box.width)
  expect(own.foot - (tapesOf(scene)[0] as PlacedTape).foot).toBeCloseTo(10 * scene.scale, 6)
})
test('the dotted stroke of a height on the right goes level from its tape to its cross', () => {
  const right = heightsOf(compose(bothSides, onTablet())).find(({ label }) => label.figure.value === 2020e6)
  expect(right?.dotted?.[0]?.[1]).toBeCloseTo(right?.at[1] ?? 0, 6)
  expect(right?.dotted?.[0]?.[0]).toBeGreaterThan(right?.at[0] ?? 0)
})
test('the column says on which side a height is, and only who cannot see it is told in words', () => {
  const scene = compose(bothSides, onTablet())
  expect(figuresOf(scene).map((label) => label.captions[0]?.text)).toEqual(['top hole', 'top hole'])
  expect(scene.words.map((words) => words.split(':')[0])).toEqual(['top hole, left', 'top hole, right'])
})
test('on a page too narrow for two columns all heights stand in the left one and say which they are', () => {
  const scene = compose(bothSides, onTablet({ width: 400 }))
  expect(tapesOf(scene)).toHaveLength(1)
  expect(figuresOf(scene).map((label) => label.captions[0]?.text)).toEqual(['top hole, right', 'top hole, left'])
})
test('a row on the right stands outside of the column there', () => {
  const up: Mark = {
    ...across(0, 0, 'wall'),
    side: 'right',
    from: [2000, 0],
    to: [2000, 2500],
    figure: figure(2500, 'wall'),
  } as Mark
  const scene = compose([...bothSides, layer([up])], onTablet())
  const ends = heightsOf(scene).map(({ label }) => label.box.x + label.box.width)
  expect(figuresOf(scene).find((label) => label.figure.what === 'wall')?.box.x).toBeGreaterThan(Math.max(...ends))
})
test('the tape is numbered every foot, or every quarter of a metre', () => {
  const numbers = (tape = tapes.sixteenths) =>
    tapeOf(compose([layer([wall])], onTablet({}, tape))).numbers.map((words) => words.text)
  expect(numbers()).toEqual(['12', '24', '36', '48', '60', '72', '84', '96'])
  expect(numbers(tapes.wholeMillimetres as never)).toEqual(['250', '500', '750', '1000', '1250', '1500', '1750', '2000', '2250'])
  expect(numbers(tapes.feetAndEighths as never)[0]).toBe('1 ft')
})
test('a drawing without a tape is asked for, and has one all the same where heights are read', () => {
  expect(kinds(compose([layer([wall])], onTablet({ hasTape: false })))).not.toContain('tape')
  expect(kinds(compose([layer([wall, height(2000)])], onTablet({ hasTape: false })))).toContain('tape')
})
test('no tape stands beside a plan', () =>
  expect(kinds(compose([layer([wall, across(0, 500)], { view: 'plan' })], onTablet({ view: 'plan' })))).not.toContain('tape'))

test('crosses that crowd are enlarged, true to scale, with what was offered for it', () => {
  const scene = compose(pair, onTablet())
  const detail = scene.items.find((item) => item.kind === 'detail')
  if (detail?.kind !== 'detail') throw new Error('Unexpected: no detail')
  const seven = scene.items.find((item) => item.kind === 'dimension' && item.label.figure.value === inches(7))
  if (seven?.kind !== 'dimension') throw new Error('Unexpected: no dimension of 7')
  expect(Math.abs(seven.to[0] - seven.from[0]) / (scene.scale * detail.factor)).toBeCloseTo(7 * 25.4, 1)
  expect(detail.panel.width / detail.source.width).toBeCloseTo(detail.factor, 6)
})
test('two places that are enlarged stand side by side, alike and as far from the middle between them', () => {
  const crosses = [300, 1700].flatMap((x) =>
    [2000, 2020].map((y): Mark => ({ kind: 'cross', role: 'mark', at: [x, y], of: '/x' })),
  )
  const scene = compose([layer([wall, ...crosses])], onTablet())
  // From back to front: the first one lies over the line to the second.
  const [b, a] = scene.items.filter((item): item is PlacedDetail => item.kind === 'detail') as [PlacedDetail, PlacedDetail]
  expect([a.letter, a.factor, a.panel.y]).toEqual(['A', b.factor, b.panel.y])
  const middle = (a.source.x + b.source.x + b.source.width) / 2
  expect(middle - a.panel.x).toBeCloseTo(b.panel.x + b.panel.width - middle, 6)
  expect(a.panel.x + a.panel.width).toBeLessThan(b.panel.x)
})
test('crosses that crowd are enlarged also when nothing was offered', () => {
  const crosses = [1000, 1020].map((y): Mark => ({ kind: 'cross', role: 'mark', at: [300, y], of: '/x' }))
  expect(kinds(compose([layer([wall, ...crosses])], onTablet()))).toContain('detail')
})
test('where nothing crowds there is no detail, and what was offered for it stands on the drawing', () => {
  const offered: Mark = {
    kind: 'detail',
    id: 'a',
    code: 'Bracket',
    from: [400, 400],
    to: [900, 900],
    marks: [{ ...across(500, 800), side: 'inside', from: [500, 500], to: [800, 500] } as Mark],
  }
  const scene = compose([layer([wall, offered])], onTablet())
  expect(kinds(scene)).not.toContain('detail')
  expect(whats(scene)).toEqual(['frame'])
})
test('a detail without room is left out by name', () => {
  const scene = compose(pair, onTablet({ width: 240, height: 200 }))
  const numbers =
    bracketDetail.kind === 'detail' ? bracketDetail.marks.flatMap((mark) => ('figure' in mark ? [mark.figure.of] : [])) : []
  expect(numbers.length).toBe(3)
  expect(scene.leftOut.map((left) => left.of)).toEqual(expect.arrayContaining(numbers))
})
test('a touch means the figure whose target it is in, and nothing beside all targets', () => {
  const scene = compose(pair, onTablet())
  const [first] = figuresOf(scene)
  expect(figureAt(scene, first?.at ?? [0, 0])).toBe(first)
  expect(figureAt(scene, [410, 5000])).toBeUndefined()
})
test('a target is at least 48 by 44 where neighbours leave room', () => {
  const [only] = figuresOf(compose([layer([wall, across(0, 1500)])], onTablet()))
  expect(only?.touch.width).toBeGreaterThanOrEqual(48)
  expect(only?.touch.height).toBeGreaterThanOrEqual(44)
})
test('the selected figure is marked, and only that', () => {
  expect(
    figuresOf(compose([layer([wall, across(0, 500, 'a'), across(500, 900, 'b')])], onTablet({ touched: '/of/a' }))).map(
      (label) => label.touched,
    ),
  ).toEqual([true, false])
})

test('no layers are no drawing', () =>
  expect(compose([], onTablet())).toMatchObject({ items: [], labels: [], words: [], leftOut: [], scale: 1 }))
test('layers of another view are no drawing', () =>
  expect(compose([layer([wall], { view: 'hooks' })], onTablet()).items).toEqual([]))
test('a dimension of nothing has its label outside', () => {
  const scene = compose([layer([wall, across(700, 700)])], onTablet())
  expect(figuresOf(scene)).toHaveLength(1)
  expect(scene.leftOut).toEqual([])
})
test('everything at one height fans out around it', () => {
  const scene = compose([layer([wall, ...Array.from({ length: 6 }, (_, n) => height(1200, `mark ${n}`))])], onTablet())
  expect(figuresOf(scene)).toHaveLength(6)
  expect(scene.leftOut).toEqual([])
})
test('more heights than the column holds are left out by name', () => {
  const scene = compose([layer([wall, ...Array.from({ length: 30 }, (_, n) => height(1000 + n, `mark ${n}`))])], onTablet())
  expect(figuresOf(scene).length + scene.leftOut.length).toBe(30)
  expect(scene.leftOut.every((left) => left.why === 'crowded')).toBe(true)
})
test('a drawing of one point has a scale', () =>
  expect(compose([layer([{ kind: 'cross', role: 'mark', at: [5, 5], of: '/x' }])], onTablet()).scale).toBeGreaterThan(0))
test('what is no place on a wall is left out by name, and the rest is drawn', () => {
  const scene = compose([layer([wall, across(0, Number.NaN), across(0, 1e300, 'far'), across(0, 500, 'near')])], onTablet())
  expect(whats(scene)).toEqual(['near'])
  expect(scene.leftOut.map((left) => left.why)).toEqual(['not a place', 'not a place'])
})
test('a wall of a kilometre is drawn', () =>
  expect(compose([layer([{ ...wall, width: 1e6 } as Mark, across(0, 1e6)])], onTablet()).scale * 1e6).toBeLessThan(820))
test('a dimension that leaves the part of the wall that was asked for ends in a break mark', () => {
  const scene = compose([layer([wall, across(0, 2000)])], onTablet({ bounds: { left: 0, right: 1000, bottom: 0, top: 2500 } }))
  expect(scene.items.find((item) => item.kind === 'dimension')).toMatchObject({ broken: true })
})
test('composing changes nothing that it was given, and comes to the same twice', () => {
  const before = JSON.stringify(pair)
  expect(JSON.stringify(compose(pair, onTablet()))).toBe(JSON.stringify(compose(pair, onTablet())))
  expect(JSON.stringify(pair)).toBe(before)
})
test("an outer dimension's extensions are broken where an inner number stands", () => {
  const scene = compose([layer([wall, across(0, 1000, 'inner'), across(500, 2000, 'outer')])], onTablet())
  const inner = figuresOf(scene).find((label) => label.figure.what === 'inner')
  const outer = scene.items.find((item) => item.kind === 'dimension' && item.label.figure.what === 'outer')
  const strokes = outer?.kind === 'dimension' ? outer.extensions.filter(([from]) => from?.[0] === outer.from[0]) : []
  expect(strokes).toHaveLength(2)
  expect(strokes[0]?.[1]?.[1]).toBeLessThanOrEqual(inner?.box.y ?? 0)
})
