import { inch, inches, type Known, type Length } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import {
  agreeing,
  type Choice,
  choicesAt,
  type FirstBracket,
  type FurtherBracket,
  gapsAt,
  hungAt,
  marksAt,
  mostOutOfLevel,
  outOfLevel,
  reckoningsOf,
  spreadOf,
} from '../src/arithmetic/index.ts'

const at = (value: number): Known<Length> => ({ value: inches(value), from: '/order' })
const inInches = (known: { readonly value: number } | undefined): number | undefined => known && known.value / inch
const [near, reach] = [inches(0.125), at(12)]
const given = (value: number) =>
  ({ name: '/t#g', what: 'g', value: inches(value), unit: 'length', how: 'given', terms: [] }) as const

// The concept page: first hole 93 1/8, 8 7/8 below the ceiling and 9 1/8 above the frame; at the right the ceiling is 8 5/8 above a level line and the
// frame 9 1/4 below it, the floor 93 1/2.
const first: FirstBracket = { hole: at(93.125), head: at(84), ceiling: at(102) }
const right: FurtherBracket = { level: at(93.5), head: at(84.25), ceiling: at(102.125) }
const choices = choicesAt('/t#right', first, right, near, reach)
const told = ({ follows, mark, gaps, largest }: Choice) =>
  [follows, ...[mark, gaps.ceiling, gaps.head, gaps.hem, gaps.rod, { value: largest }].map(inInches)] as const

test('ceiling falls 1/4, frame head 1/8, floor 3/8 on the concept page', () => {
  const { ceiling, head, floor } = outOfLevel('/t', first, right)
  expect([ceiling, head, floor].map(inInches)).toEqual([-0.25, -0.125, -0.375])
})
test('the choices of the concept page have its marks and its gaps, the best first', () => {
  const { list } = choices
  expect(list.filter(({ follows }) => follows !== 'between').map(told)).toEqual([
    ['ceiling', 93.25, 0, -0.125, 0.125, -0.25, 0.125],
    ['head', 93.375, -0.125, 0, 0.25, -0.125, 0.25],
    ['floor', 93.125, 0.125, -0.25, 0, -0.375, 0.25],
    ['level', 93.5, -0.25, 0.125, 0.375, 0, 0.375],
  ])
  expect(list.map(({ follows }) => follows)).toEqual(['ceiling', 'between', 'head', 'floor', 'level'])
  expect([choices.apart / inch, choices.agree, choices.least.follows]).toEqual([0.375, ['ceiling', 'head'], 'ceiling'])
})
test('between them each line counts by how much nearer than 12 in it is: 3 1/8 of the ceiling and 2 7/8 of the frame', () => {
  const between = choices.list.find(({ follows }) => follows === 'between')?.mark
  // 93 1/4 + 1/8 × 2 7/8 ÷ 6
  expect(inInches(between)).toBeCloseTo(93.25 + (0.125 * 2.875) / 6, 7)
  expect(between?.source).toBe('drapery/by-nearness')
})
test('with no line within 12 in the middle is halfway between the lowest and the highest mark', () => {
  const far = { hole: at(93), head: at(81), ceiling: at(105) }
  const { list } = choicesAt('/t', far, { head: at(81.5), ceiling: at(104) }, near, reach)
  const between = list.find(({ follows }) => follows === 'between')?.mark
  expect([inInches(between), between?.source]).toEqual([92.75, 'drapery/halfway'])
})
test('a frame above the rod counts as near as one below it', () => {
  const { list } = choicesAt('/t', { hole: at(80), head: at(84) }, { head: at(84.5) }, near, reach)
  expect(inInches(list.find(({ follows }) => follows === 'between')?.mark)).toBe(80.5)
})
test('where no two agree the compromise is first, and what leaves the least to be seen is told', () => {
  const { list, agree, least } = choicesAt('/t', first, { head: at(84.5), ceiling: at(101.5) }, near, reach)
  // 92 5/8, 93 5/8 and 93 1/8
  expect([list[0]?.follows, agree, least.follows]).toEqual(['between', [], 'floor'])
  const { list: others, least: nearest } = choicesAt('/t', first, { head: at(84.1875), ceiling: at(103) }, near, reach)
  // 93 5/16, 94 1/8 and 93 1/8: the middle of the near two is 93 45/64
  expect([others[0]?.follows, nearest.follows]).toEqual(['between', 'between'])
})
test('of marks that agree the one is first that leaves the least to be seen, though another leaves less', () => {
  // 92 1/8 with the ceiling, 93 1/8 with floor and frame
  const { list } = choicesAt('/t', first, { head: at(84), ceiling: at(101) }, near, reach)
  expect(list.map(({ follows }) => follows)).toEqual(['head', 'between', 'ceiling', 'floor'])
})
test('equal errors are sorted by level', () => {
  const { list } = choicesAt('/t', first, right, near, reach)
  const equals = list.filter(({ largest }) => largest === inches(0.25))
  expect(equals.map(({ gaps }) => inInches(gaps.rod))).toEqual([-0.125, -0.375])
})
test('a line that was read at one bracket only gives no mark, and the floor always does', () => {
  expect(Object.keys(marksAt('/t', { hole: at(93) }, { head: at(84), ceiling: at(102) }))).toEqual(['floor'])
  expect(Object.keys(marksAt('/t', first, { level: at(93) }))).toEqual(['level', 'floor'])
  expect(Object.keys(gapsAt('/t', { hole: at(93) }, { head: at(84), ceiling: at(102) }, at(93)))).toEqual(['hem'])
  expect(Object.keys(gapsAt('/t', first, { level: at(93) }, at(93)))).toEqual(['hem', 'rod'])
  expect(outOfLevel('/t', first, { head: at(84) })).toEqual({})
  expect(Object.keys(outOfLevel('/t', { hole: at(93) }, right))).toEqual(['floor'])
})
test('a support whose plate sits lower gets a mark that much lower, and the same gaps', () => {
  const lower = { ...right, lower: at(0.5) }
  expect(inInches(marksAt('/t', first, lower).ceiling)).toBe(92.75)
  expect(inInches(marksAt('/t', first, lower).head)).toBe(92.875)
  expect(inInches(marksAt('/t', first, lower).level)).toBe(93)
  expect(inInches(marksAt('/t', first, lower).floor)).toBe(92.625)
  const [best] = choicesAt('/t', first, lower, near, reach).list
  expect(best && told(best)).toEqual(['ceiling', 92.75, 0, -0.125, 0.125, -0.25, 0.125])
})
test('marks agree to the last of the tolerance and no further', () => {
  const marks = (head: number) => marksAt('/t', first, { head: at(head), ceiling: at(101) })
  expect(agreeing(marks(84.125), near)).toEqual([['head', 'floor']])
  expect(agreeing(marks(83.875), near)).toEqual([['head', 'floor']])
  expect(agreeing(marks(84.1875), near)).toEqual([])
  expect(spreadOf(Object.values(marks(84)))).toBe(inches(1))
})
test('every reckoning of the choices has a name of its own', () => {
  const names = reckoningsOf(choices).map(({ name }) => name)
  expect(new Set(names).size).toBe(names.length)
  // two distances; five marks with four gaps each
  expect(names.length).toBe(27)
})

const points = [
  { x: { ...given(0), name: '/t#a' }, height: given(90) },
  { x: { ...given(40), name: '/t#b' }, height: given(91) },
  { x: { ...given(80), name: '/t#c' }, height: given(89) },
]
test('the rod hangs straight from bracket to bracket and runs on beyond the outer ones', () => {
  const heights = [-10, 0, 20, 40, 60, 80, 90].map((x) => inInches(hungAt('/t', points, at(x))))
  expect(heights).toEqual([89.75, 90, 90.5, 91, 90, 89, 88.5])
  const [between] = [hungAt('/t', points, at(40))]
  expect(between.terms.map(({ from }) => from)).toEqual(['/order', '/t#a', '/t#g', '/t#b', '/t#g'])
  expect(inInches(hungAt('/t', [points[0], points[2]] as typeof points, at(40)))).toBe(89.5)
})
test('a rod may be 1/2 in out of level in 6 ft', () => {
  expect([72, -72, 36].map((apart) => inInches(mostOutOfLevel('/t', given(apart), at(0.5))))).toEqual([0.5, 0.5, 0.25])
})

const eighths = (least: number, most: number) => fc.integer({ min: least * 8, max: most * 8 }).map((n) => n / 8)
const readings = fc.record({
  hole: eighths(80, 100),
  head: eighths(70, 80),
  ceiling: eighths(101, 110),
  level: eighths(79, 101),
  otherHead: eighths(69, 81),
  otherCeiling: eighths(100, 111),
})
type Readings = typeof readings extends fc.Arbitrary<infer T> ? T : never
const choose = ({ hole, head, ceiling, level, otherHead, otherCeiling }: Readings, by = { first: 0, further: 0 }) =>
  choicesAt(
    '/t',
    { hole: at(hole + by.first), head: at(head + by.first), ceiling: at(ceiling + by.first) },
    { level: at(level + by.further), head: at(otherHead + by.further), ceiling: at(otherCeiling + by.further) },
    near,
    reach,
  )
const of = (all: ReturnType<typeof choose>, follows: string) => all.list.find((choice) => choice.follows === follows) as Choice

test('with level the rod is not out of level, with a line its gap is the same, with the floor the hem is even', () => {
  fc.assert(
    fc.property(readings, (read) => {
      const all = choose(read)
      expect(
        [of(all, 'level').gaps.rod, of(all, 'ceiling').gaps.ceiling, of(all, 'head').gaps.head, of(all, 'floor').gaps.hem].map(
          inInches,
        ),
      ).toEqual([0, 0, 0, 0])
    }),
  )
})
test('floors that lie higher or lower by the same for all readings of a bracket change ceiling, frame and level, and no gap of those', () => {
  fc.assert(
    fc.property(readings, eighths(-2, 2), (read, by) => {
      const [before, after] = [choose(read), choose(read, { first: 0, further: by })]
      for (const line of ['ceiling', 'head', 'level'] as const) {
        expect((inInches(of(after, line).mark) ?? 0) - (inInches(of(before, line).mark) ?? 0)).toBeCloseTo(by, 6)
        expect(inInches(of(after, line).gaps.ceiling)).toBe(inInches(of(before, line).gaps.ceiling))
        expect(inInches(of(after, line).gaps.rod)).toBe(inInches(of(before, line).gaps.rod))
      }
    }),
  )
})
test('a common shift of all readings shifts all marks and changes no gap, no order and no proposal but the far middle', () => {
  fc.assert(
    fc.property(readings, eighths(-3, 3), (read, by) => {
      const [before, after] = [choose(read), choose(read, { first: by, further: by })]
      const shown = ({ list, apart, agree }: ReturnType<typeof choose>) => [
        list.map((each) => told(each).toSpliced(1, 1)),
        apart,
        agree,
      ]
      expect(shown(after)).toEqual(shown(before))
    }),
  )
})
test('seen from the other end every gap and every rise has the other sign', () => {
  fc.assert(
    fc.property(readings, (read) => {
      const { hole, head, ceiling, level, otherHead, otherCeiling } = read
      const there = { level: at(level), head: at(otherHead), ceiling: at(otherCeiling) }
      const here = { hole: at(hole), head: at(head), ceiling: at(ceiling) }
      const back = { hole: at(level), head: at(otherHead), ceiling: at(otherCeiling) }
      const [over, from] = [
        outOfLevel('/t', here, there),
        outOfLevel('/t', back, { level: at(hole), head: at(head), ceiling: at(ceiling) }),
      ]
      for (const line of ['ceiling', 'head', 'floor'] as const) expect(over[line]?.value).toBe(-(from[line]?.value ?? 0) || 0)
    }),
  )
})

test('of two that leave as much to be seen the more level one is first, though its line comes later', () => {
  // 92 1/2 with the ceiling, 1/2 out of level; 93 1/4 with the frame, 1/4 out of level; both leave 3/4.
  const { list } = choicesAt(
    '/t',
    { hole: at(93), head: at(84), ceiling: at(102) },
    { level: at(93), head: at(84.25), ceiling: at(101.5) },
    near,
    reach,
  )
  const equals = list.filter(({ largest }) => largest === inches(0.75)).map(({ follows }) => follows)
  expect(equals.filter((follows) => follows === 'ceiling' || follows === 'head')).toEqual(['head', 'ceiling'])
})
test('of several sets that agree the one is told that the proposal is in', () => {
  // 92 with ceiling and level; 93 with the frame and 93 1/16 with the floor
  const { list, agree } = choicesAt(
    '/t',
    { hole: at(93.0625), head: at(84), ceiling: at(102) },
    { level: at(92), head: at(83.9375), ceiling: at(100.9375) },
    near,
    reach,
  )
  expect([list[0]?.follows, agree]).toEqual(['head', ['head', 'floor']])
})
test('what goes into a formula stands in it as it is', () => {
  const far = choicesAt('/t', { hole: at(93), head: at(70) }, { head: at(71) }, near, reach)
  const formulas = [choices, far].map(({ list }) => list.find(({ follows }) => follows === 'between')?.mark)
  const all = [...formulas, hungAt('/t', points, at(20)), mostOutOfLevel('/t', given(72), at(0.5))]
  expect(all.map((each) => each?.terms.map(({ sign }) => sign))).toEqual([
    [1, 1, 1, 1, 1],
    [1, 1],
    [1, 1, 1, 1, 1],
    [1, 1],
  ])
})

test('at a support the level line that is expected is of the first bracket’s hole, not of its own lower one', () => {
  const { found, ordered } = example('heron-point')
  const plan = createPlanner(plugins).window(found, ordered, '/rooms/stair-hall/windows/w1')
  const captures = plan.steps.flatMap((step) => step.captures ?? [])
  // The end brackets' top hole is 139 over the level floor; the support's own is 3/4 in from there.
  const level = captures.filter(({ at }) => at.endsWith('/floorToLevel')).map(({ expected }) => expected)
  expect(new Set(level.map((each) => JSON.stringify(each))).size).toBe(1)
  expect(level[0]).toEqual({ length: 139 * inch })
})
