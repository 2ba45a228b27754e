import { type Hole, type HungLine, holes as holesFact, hungLine } from '@evenhem/drapery/facts'
import { lay, type Readings } from '@evenhem/job'
import { inch, inches, type Length } from '@evenhem/length'
import { createPlanner, type WindowPlan } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { random } from '../../../tests/tools/jobs.ts'

const { ordered, found } = example('from-bracket-to-bracket')
const planner = createPlanner(plugins)
const place = (window: string) => `/rooms/hall/windows/${window}`
const over = (window: string) => `${place(window)}/treatments/over`
/** The window as ordered with these readings, or as the example has it. */
const planOf = (window: string, readings?: Readings): WindowPlan =>
  planner.window(readings ? lay(ordered, readings).job : found, ordered, place(window))
const factOf = <T>(plan: WindowPlan, id: string): T =>
  plan.facts.find(({ id: own, at }) => own === id && at.endsWith('/over'))?.value as T
const hungOf = (plan: WindowPlan) => factOf<HungLine>(plan, hungLine.id)
const topHole = (plan: WindowPlan, id: string): Hole =>
  factOf<readonly Hole[]>(plan, holesFact.id).find((hole) => hole.id === `${id}-top`) as Hole
const inInches = (known: { readonly value: number } | undefined) => known && known.value / inch
const marks = (plan: WindowPlan) => ['bracket-left', 'bracket-right'].map((id) => inInches(topHole(plan, id).fromFloor))
const verdictsOf = (plan: WindowPlan, code: string) =>
  plan.checks
    .filter((check) => check.code === `drapery/${code}`)
    .map(({ verdict, stops }) => (stops ? `${verdict} stops ${stops}` : verdict))
const read = (window: string, values: Readonly<Record<string, number | string | boolean>>): Readings =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      `${over(window)}/found/${name}`,
      { value: typeof value === 'number' ? inches(value) : value },
    ]),
  ) as Readings
const concept = {
  'brackets/left/floorToHead': 84,
  'brackets/left/floorToCeiling': 102,
  'brackets/right/floorToLevel': 93.5,
  'brackets/right/floorToHead': 84.25,
  'brackets/right/floorToCeiling': 102.125,
}

test('without readings every mark is as a level rod has it, and the line to hang on is level', () => {
  const plan = planOf('apart', {})
  expect(marks(plan)).toEqual([93.125, 93.125])
  expect(hungOf(plan).points.map(({ height, moved }) => [inInches(height), moved])).toEqual([
    [92.125, undefined],
    [92.125, undefined],
  ])
  expect(plan.checks.filter(({ by, code }) => by === 'drapery/transfer' && code)).toEqual([])
})
test('marks that are apart stop drilling, move nothing, and offer the choices of the concept page', () => {
  const plan = planOf('apart', read('apart', concept))
  expect(marks(plan)).toEqual([93.125, 93.125])
  expect(verdictsOf(plan, 'marks-agree')).toEqual(['unknown stops drill'])
  const ways = plan.checks.find(({ code }) => code === 'drapery/marks-agree')?.ways ?? []
  expect(ways.map(({ put }) => [put[0]?.at.slice(over('apart').length), put[0]?.value])).toEqual(
    ['ceiling', 'between', 'head', 'floor', 'level'].map((value) => ['/found/brackets/right/follows', value]),
  )
  expect(ways[0]?.values).toMatchObject({ hem: { length: inches(0.125) }, head: { length: inches(-0.125) }, pins: 'yes' })
})
test.each([
  ['ceiling', 93.25, -0.25],
  ['head', 93.375, -0.125],
  ['level', 93.5, 0],
  ['floor', 93.125, -0.375],
])('with the %s the right hole is %f from its floor, and the rod %f out of level', (follows, mark, out) => {
  const plan = planOf('apart', read('apart', { ...concept, 'brackets/right/follows': follows }))
  expect(marks(plan)).toEqual([93.125, mark])
  expect(inInches(topHole(plan, 'bracket-right').height)).toBe(93.125 + out)
  const [left, right] = hungOf(plan).points
  expect(((right?.height.value ?? 0) - (left?.height.value ?? 0)) / inch).toBe(out)
  expect(verdictsOf(plan, 'marks-agree')).toEqual(['pass'])
})
test('plates, both holes and the wall angle go with the mark', () => {
  const plan = planOf('apart', read('apart', { ...concept, 'brackets/right/follows': 'ceiling' }))
  const heights = (ids: readonly string[]) =>
    factOf<readonly Hole[]>(plan, holesFact.id).flatMap(({ id, height }) => (ids.includes(id) ? [inInches(height)] : []))
  expect(heights(['bracket-right-top', 'bracket-right-lower'])).toEqual([92.875, 91.25])
  const plates = factOf<readonly { readonly side: string; readonly top: { readonly value: number } }[]>(plan, 'drapery/plates@1')
  expect(plates.map(({ side, top }) => [side, inInches(top)])).toEqual([
    ['left', 93.75],
    ['right', 93.5],
  ])
  // 92 1/8 less 1/4 at the bracket, and a little more where the ring parks outside of it.
  expect(inInches(factOf<readonly Hole[]>(plan, holesFact.id).find(({ id }) => id === 'return-right')?.height)).toBeCloseTo(
    91.6216,
    3,
  )
})
test('a support between brackets that are apart stands in their line', () => {
  const [left, middle, right] = hungOf(planOf('with-the-ceiling')).points
  expect([left, middle, right].map((point) => [point?.by, inInches(point?.moved)])).toEqual([
    [undefined, undefined],
    ['in-line', -0.125],
    ['ceiling', -0.25],
  ])
})
test('a traverse rod begun at the right takes the other two from there, by what its plates differ', () => {
  const plan = planOf('from-the-right')
  expect(
    [topHole(plan, 'bracket-left'), topHole(plan, 'support-mid'), topHole(plan, 'bracket-right')].map(({ fromFloor }) =>
      inInches(fromFloor),
    ),
  ).toEqual([93.625, 93.625, 94])
  expect(hungOf(plan).points.map(({ height }) => inInches(height))).toEqual([93.125, 93.125, 93.125])
  const steps = plan.steps.filter(({ code }) => code.startsWith('drapery/mark-')).map(({ id }) => id)
  expect(steps[0]).toBe('mark-right')
})
test('the first bracket is the one with the higher floor, whatever is fixed comes before it, and somebody may say', () => {
  const floor = { [`${place('in-the-middle')}/floor/right/y`]: { value: inches(0.25) } } as Readings
  const first = (more: Readings) => hungOf(planOf('in-the-middle', { ...floor, ...more })).first
  expect(first({})).toBe('right')
  expect(first(read('in-the-middle', { first: 'left' }))).toBe('left')
  expect(first(read('in-the-middle', { 'brackets/left/fixed': true, 'brackets/left/floorToHole': 93 }))).toBe('left')
  expect(first(read('in-the-middle', { 'brackets/left/fixed': true }))).toBe('right')
})
test('points of the order stand in where nobody read a line, at both brackets or at none', () => {
  const plan = planOf('in-the-middle')
  // 101 1/2 + 1/4 − 102 + 93 1/8 = 92 7/8 with the ceiling; the frame falls between its own points.
  const mark = (name: string) => plan.reckonings.find((each) => each.name === `${over('in-the-middle')}#right-mark-${name}`)
  expect(inInches(mark('ceiling'))).toBe(92.875)
  expect(inInches(mark('level'))).toBe(93.375)
  expect(inInches(mark('head'))).toBe(93.125)
})

test('a fixed bracket is printed as it was read, and the other one is taken from it', () => {
  const plan = planOf('apart', read('apart', { 'brackets/left/floorToHole': 93, 'brackets/left/fixed': true }))
  expect(marks(plan)).toEqual([93, 93])
  expect(verdictsOf(plan, 'fixed-mark')).toEqual(['warn'])
})
test('a longer panel asks for other pins on fixed brackets, and not for other holes', () => {
  const fixed = {
    'brackets/left/floorToHole': 93.125,
    'brackets/left/fixed': true,
    'brackets/right/floorToHole': 93.125,
    'brackets/right/fixed': true,
  }
  const longer = Object.fromEntries(
    ['left', 'right'].map((panel) => [`${over('apart')}/panels/${panel}/finishedLength`, { value: inches(92.3125) }]),
  ) as Readings
  const plan = planOf('apart', { ...read('apart', fixed), ...longer })
  expect(marks(plan)).toEqual([93.125, 93.125])
  const check = plan.checks.find(({ code }) => code === 'drapery/hung-hem')
  expect(check?.verdict).toBe('warn')
  expect(check?.values).toMatchObject({
    left: { length: inches(0.3125) },
    off: { length: inches(0.1875) },
    pins: 'yes',
    way: 'less',
  })
})
test('of a bracket that is fixed without a height nobody knows where it is: its height is asked for', () => {
  const plan = planOf('fixed-unread')
  expect(verdictsOf(plan, 'fixed-mark')).toEqual(['unknown stops hang'])
})
test('a fixed bracket keeps its mark whatever is chosen afterwards, and an unfixed one follows the choice', () => {
  const after = {
    ...concept,
    'brackets/right/floorToHole': 93,
    'brackets/right/follows': 'level',
    'brackets/left/floorToHole': 93.125,
    'brackets/left/fixed': true,
  }
  expect(marks(planOf('apart', read('apart', after)))).toEqual([93.125, 93.5])
  expect(marks(planOf('apart', read('apart', { ...after, 'brackets/right/fixed': true })))).toEqual([93.125, 93])
})
test('what is fixed far from its mark stops before hanging, and so does a hem that would drag', () => {
  const plan = planOf('fixed-far')
  expect([verdictsOf(plan, 'fixed-mark'), verdictsOf(plan, 'hung-hem')]).toEqual([['fail stops hang'], ['fail stops hang']])
})
test('a support is in line to 1/16, and beyond that stops', () => {
  expect(verdictsOf(planOf('with-the-ceiling'), 'support-in-line')).toEqual(['pass'])
  expect(verdictsOf(planOf('support-high'), 'support-in-line')).toEqual(['fail stops drill'])
})
test('how far out of level a rod is can only be told from a level line or points of the floor', () => {
  expect(['no-level', 'with-the-floor', 'with-the-ceiling'].map((window) => verdictsOf(planOf(window), 'rod-level')[0])).toEqual([
    'unknown',
    'warn',
    'pass',
  ])
})
test('marking reads frame and ceiling at every bracket and the level line at further ones; drilling writes hole and fixed', () => {
  const { steps } = planOf('apart', {})
  const asked = (id: string) =>
    steps
      .find((step) => step.id === id)
      ?.captures?.map(({ at, expected }) => [at.split('/brackets/')[1], (expected as { length: Length } | undefined)?.length])
  expect(asked('mark-left')).toEqual([
    ['left/floorToHead', inches(84)],
    ['left/floorToCeiling', inches(102)],
  ])
  expect(asked('mark-right')?.at(-1)).toEqual(['right/floorToLevel', inches(93.125)])
  expect(asked('drill')).toEqual([
    ['left/floorToHole', inches(93.125)],
    ['left/fixed', undefined],
    ['right/floorToHole', inches(93.125)],
    ['right/fixed', undefined],
  ])
})

/** A reading of anything that can be read at the window after its brackets are fixed; heights within half an inch of what they were. */
function laterReading(next: () => number): Readings {
  const near = (value: number): Length => inches(value + Math.round((next() - 0.5) * 16) / 16)
  const choices: readonly (readonly [string, unknown])[] = [
    ['panels/left/finishedLength', near(92.125)],
    ['panels/right/finishedLength', near(92.125)],
    ['panels/left/pin', near(0.75)],
    ['found/brackets/left/floorToHead', near(84)],
    ['found/brackets/left/floorToCeiling', near(102)],
    ['found/brackets/right/floorToHead', near(84)],
    ['found/brackets/right/floorToCeiling', near(102)],
    ['found/brackets/right/floorToLevel', near(93)],
    ['found/brackets/right/follows', (['ceiling', 'head', 'level', 'floor', 'between'] as const)[Math.floor(next() * 5)]],
    ['found/first', next() < 0.5 ? 'left' : 'right'],
    ['clearance', near(1)],
  ]
  const floors = ['left', 'middle', 'right'].map((point) => [`${place('in-the-middle')}/floor/${point}/y`, near(0)] as const)
  const ceilings = ['left', 'right'].map((point) => [`${place('in-the-middle')}/ceiling/${point}/y`, near(102)] as const)
  const all = [...choices.map(([name, value]) => [`${over('in-the-middle')}/${name}`, value] as const), ...floors, ...ceilings]
  return Object.fromEntries(all.filter(() => next() < 0.4).map(([at, value]) => [at, { value }])) as Readings
}
test('after both brackets are fixed 200 sets of later readings never move a mark', () => {
  const fixed = read('in-the-middle', {
    'brackets/left/floorToHole': 93.125,
    'brackets/left/fixed': true,
    'brackets/right/floorToHole': 93.3125,
    'brackets/right/fixed': true,
  })
  const next = random(7)
  for (let n = 0; n < 200; n++)
    expect(marks(planOf('in-the-middle', { ...laterReading(next), ...fixed })), `reading ${n}`).toEqual([93.125, 93.3125])
})
test('without the fixing those readings do move marks', () => {
  const next = random(7)
  const moved = Array.from({ length: 40 }, () => marks(planOf('in-the-middle', laterReading(next))).join())
  expect(new Set(moved).size).toBeGreaterThan(10)
})
test('a window seen in a mirror has the mirrored marks', () => {
  const from = {
    'brackets/left/floorToHead': 84,
    'brackets/right/floorToHead': 84.25,
    'brackets/right/floorToLevel': 93.5,
    'brackets/right/follows': 'head',
    first: 'left',
  }
  const back = {
    'brackets/right/floorToHead': 84,
    'brackets/left/floorToHead': 84.25,
    'brackets/left/floorToLevel': 93.5,
    'brackets/left/follows': 'head',
    first: 'right',
  }
  expect(marks(planOf('apart', read('apart', back))).toReversed()).toEqual(marks(planOf('apart', read('apart', from))))
})
