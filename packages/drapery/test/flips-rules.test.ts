import { readFileSync } from 'node:fs'
import { inch } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { returns } from '@evenhem/plugin-returns'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { expect, test } from 'vitest'
import { exampleOf } from '../../../tests/tools/examples.ts'
import { drapery } from '../src/index.ts'

// The demo window with one member changed at a time, up to the edge of each rule and just past it. Worked out by hand, inches.
// casing 62, rod 78 from -8 to 70, projection 3 1/2, eye drop 2 1/8, tips of the finials 10 5/8 outside the casing

const planner = createPlanner([drapery, rodAndRing, returns])
const demo = readFileSync(new URL('../../../schema/examples/tern-hollow/job.json', import.meta.url), 'utf8')
const at = '/rooms/garden-room/windows/w1/treatments/over'

// biome-ignore lint/suspicious/noExplicitAny: a job is plain data here, changed before it is read
type Plain = any
const planned = (change: (parts: { window: Plain; over: Plain; left: Plain; right: Plain; job: Plain }) => void = () => {}) => {
  const job = JSON.parse(demo)
  const window = job.rooms[0].windows[0]
  const [over] = window.treatments
  change({ job, window, over, left: over.panels[0], right: over.panels[1] })
  const { found, ordered, places, read } = exampleOf('changed', JSON.stringify(job))
  expect(read.diagnostics).toEqual([])
  const plan = planner.window(found, ordered, places[0]!)
  expect(plan.faults).toEqual([])
  return plan
}
type Plan = ReturnType<typeof planned>
const checked = (plan: Plan, code: string, n = 0): Plain => plan.checks.filter((each) => each.code === code)[n]
const verdict = (plan: Plan, code: string) => checked(plan, code).verdict
const comesTo = (plan: Plan, name: string) => plan.reckonings.find((each) => each.name.endsWith(name))?.value
const inchesOf = (plan: Plan, name: string) => (comesTo(plan, name) ?? Number.NaN) / inch
const step = (plan: Plan, id: string): Plain => plan.steps.find((each) => each.id === id)
const entry = (plan: Plan, code: string): Plain => plan.entries.find((each) => each.code.startsWith(code))
const part = (plan: Plan, what: string): Plain => plan.parts.find((each) => each.what === what)
const long = (value: number) => ({ length: value * inch })

test('a drapery that ends at the casing covers it, and one that ends before it is named with its side', () => {
  const cover = (past: string, width: string) => planned(({ over }) => Object.assign(over.rod, { pastLeft: past, width }))
  expect(verdict(cover('0', '62'), 'drapery/coverage')).toBe('pass')
  expect(checked(cover('-1/8', '70'), 'drapery/coverage')).toMatchObject({
    says: 'drapery/coverage.fail',
    stops: 'mark',
    values: { side: { code: 'drapery/left' }, short: long(0.125) },
  })
  expect(checked(cover('1', '62 3/4'), 'drapery/coverage').values).toMatchObject({
    side: { code: 'drapery/right' },
    short: long(0.25),
  })
})
test('what passes says so under its own code and stops nothing', () => {
  const { checks } = planned()
  expect(checks.length).toBe(22)
  expect(checks.filter((each) => 'says' in each || 'stops' in each)).toEqual([])
})

test.each([
  ['38', 'pass', 0.5, 'over'],
  ['38 1/16', 'warn', 0.5625, 'over'],
  ['36 7/8', 'fail', 0.625, 'short'],
])('a right panel of %s first to last is a %s', (firstToLast, expected, off, way) => {
  const plan = planned(({ right }) => Object.assign(right, { firstToLast }))
  expect(verdict(plan, 'drapery/panel-width')).toBe('pass')
  const values = { panel: { code: 'drapery/panel-right' }, share: long(39), less: long(off), way }
  expect(checked(plan, 'drapery/panel-width', 1)).toMatchObject({ verdict: expected, values })
  expect(checked(plan, 'drapery/panel-width', 1).stops).toBe(expected === 'fail' ? 'hang' : undefined)
})

test.each([
  ['91', 'pass', 0.125, 'long'],
  ['90 15/16', 'fail', 0.1875, 'long'],
  ['91 1/4', 'pass', 0.125, 'short'],
  ['91 5/16', 'fail', 0.1875, 'short'],
])('a rod ordered at %s, where the panels put it at 91 1/8, is a %s', (top, expected, apart, way) => {
  const plan = planned(({ over }) => Object.assign(over.rod, { top }))
  expect(checked(plan, 'drapery/rod-height')).toMatchObject({ verdict: expected, values: { apart: long(apart), way } })
  expect(checked(plan, 'drapery/rod-height').stops).toBe(expected === 'fail' ? 'mark' : undefined)
})
test.each([
  ['89', 'drapery/eye-drop.forgotten'],
  ['88 15/16', 'drapery/eye-drop.forgotten'],
  ['88 7/8', 'drapery/no-cause'],
  ['93 1/4', 'drapery/eye-drop.twice'],
])('a rod ordered at %s is explained by %s', (top, code) =>
  expect(
    checked(
      planned(({ over }) => Object.assign(over.rod, { top })),
      'drapery/rod-height',
    ).values.cause,
  ).toEqual({ code }),
)

test.each([[[0, 1, 2]], [[1, 2, 0]], [[2, 1, 0]], [[1, 0, 2]], [[2, 0, 1]]])(
  'the floor’s points may be told in the order %j',
  (order) => {
    const points = [
      { id: 'left', x: '-9', y: '0' },
      { id: 'middle', x: '31', y: '-1/4' },
      { id: 'right', x: '71', y: '-3/4' },
    ]
    const plan = planned(({ window }) => Object.assign(window, { floor: order.map((n) => points[n]) }))
    expect([inchesOf(plan, '#floor-bracket-left'), inchesOf(plan, '#floor-bracket-right')]).toEqual([-0.0125, -0.725])
  },
)

test.each([
  ['3 3/8', 'pass'],
  ['3 5/16', 'fail'],
  ['4 1/2', 'pass'],
  ['4 9/16', 'warn'],
])('a return of %s at a projection of 3 1/2 is a %s', (width, expected) =>
  expect(
    verdict(
      planned(({ left }) => Object.assign(left, { return: width })),
      'drapery/return-fits',
    ),
  ).toBe(expected),
)
test('a wall angle whose hole is not known is asked for', () => {
  const plan = planned(({ over }) => delete over.with.returns.right.hole)
  expect(plan.asks.map((each) => each.at)).toContain(`${at}/with/returns/right/hole`)
})
test('the floor at the right end lifts the drapery as the left does', () => {
  const plan = planned(({ window }) => Object.assign(window.floor[2], { y: '1/4' }))
  expect([inchesOf(plan, '#highest-floor'), inchesOf(plan, '#hang-line')]).toEqual([0.25, 89.25])
})
test('a return on one side takes the ring of that side only', () => {
  const plan = planned(({ over }) => delete over.with.returns.right)
  expect([comesTo(plan, '#rings-left'), comesTo(plan, '#rings-right')]).toEqual([12, 13])
  expect(step(plan, 'thread').values.left).toEqual({ count: 1 })
})

test('as many rings as needed pass, and missing ones are counted and stop the mounting', () => {
  const packed = (rings: number) => planned(({ over }) => Object.assign(over.with['rod-and-ring'], { rings }))
  expect(verdict(packed(24), 'rod-and-ring/rings')).toBe('pass')
  expect(checked(packed(22), 'rod-and-ring/rings')).toMatchObject({
    verdict: 'fail',
    stops: 'mount',
    values: { over: { count: 2 } },
  })
})
test('a finial may touch the side wall and not pass it', () => {
  const free = (space: object) => planned(({ window }) => Object.assign(window.walls[0].space, space))
  expect(verdict(free({ left: '10 5/8' }), 'drapery/wall-fits')).toBe('pass')
  expect(checked(free({ right: '10 1/2' }), 'drapery/wall-fits')).toMatchObject({
    verdict: 'fail',
    stops: 'mark',
    values: { side: { code: 'drapery/right' }, short: long(0.125), space: long(10.5) },
  })
})

test('what is to be measured is expected as it was ordered', () => {
  const plan = planned()
  expect(step(plan, 'measure-panels').captures.map((each: Plain) => [each.at, each.expected, each.tolerance])).toEqual(
    ['left', 'right'].flatMap((side) => [
      [`${at}/panels/${side}/finishedLength`, long(89), long(0.25)],
      [`${at}/panels/${side}/firstToLast`, long(37.5), long(0.5)],
      [`${at}/panels/${side}/return`, long(3.5), long(0.125)],
      [`${at}/panels/${side}/pin`, long(0.5), long(0.0625)],
    ]),
  )
  expect(step(plan, 'measure-window').captures[0].at).toMatch(/\/walls\/a\/openings\/o\/casing\/width$/)
})
const numbers = (plan: Plan, id: string) => step(plan, id).numbers.map((each: Plain) => [each.what, each.value / inch])
test('each bracket is marked by both its holes from its own floor and once from the casing, the left one first', () => {
  const holes = (top: number, lower: number) => [
    ['rod-and-ring/hole-top', top],
    ['rod-and-ring/hole-lower', lower],
    ['drapery/from-casing', 7],
  ]
  expect(numbers(planned(), 'mark-left')).toEqual(holes(90, 88.375))
  expect(numbers(planned(), 'mark-right')).toEqual(holes(90.375, 88.75))
  expect([step(planned(), 'mark-left').after, step(planned(), 'mark-right').after]).toEqual([['set-up'], ['mark-left']])
})
test('the wall angles are marked below their hooks, each from its own floor', () =>
  expect(numbers(planned(), 'mark')).toEqual([
    ['returns/hole-left', 88.75],
    ['drapery/from-casing', 8],
    ['returns/hole-right', 89.125],
    ['drapery/from-casing', 8],
  ]))
test('one screw a bracket is for wood alone', () => {
  const behind = (value: string) =>
    step(
      planned(({ window }) => Object.assign(window.walls[0].buildUp, { behind: value })),
      'drill',
    ).code
  expect([behind('wood'), behind('hollow')]).toEqual(['drapery/drill-wood', 'drapery/drill-other'])
})
test('the pull list has everything once, and no screws where no holes are known', () => {
  const pulled = planned().parts.map((each: Plain) => [
    each.what,
    each.count,
    each.length === undefined ? undefined : each.length / inch,
  ])
  expect(pulled).toEqual([
    ['drapery/panel', 1, 89],
    ['drapery/panel', 1, 89],
    ['returns/part-angle', 2, undefined],
    ['rod-and-ring/part-rod', 1, 78.25],
    ['rod-and-ring/part-bracket', 2, undefined],
    ['rod-and-ring/part-finial', 2, undefined],
    ['rod-and-ring/part-ring', 24, undefined],
    ['rod-and-ring/part-hook', 26, undefined],
    ['rod-and-ring/part-screw', 4, undefined],
  ])
  expect(
    part(
      planned(({ job }) => delete job.hardware[0].bracket.holes),
      'rod-and-ring/part-screw',
    ),
  ).toBeUndefined()
})

test('the report says how far each side passes the casing, and nothing of it when one does not', () => {
  const lead = (rod: object) =>
    entry(
      planned(({ over }) => Object.assign(over.rod, rod)),
      'drapery/entry-lead',
    )
  expect(lead({}).values).toMatchObject({ sides: 'alike', left: long(8), right: long(8) })
  expect(lead({ pastLeft: '9' })).toMatchObject({
    code: 'drapery/entry-lead',
    values: { sides: 'apart', left: long(9), right: long(7) },
  })
  expect(lead({ pastLeft: '0', width: '62' }).code).toBe('drapery/entry-lead')
  expect(lead({ pastLeft: '-1/8' }).code).toBe('drapery/entry-lead.short')
  expect(lead({ pastLeft: '17' }).code).toBe('drapery/entry-lead.short')
})
test('a fabric is told with its fibres, with shares where they are known', () => {
  const fibres = (of: object[] | undefined) =>
    entry(
      planned(({ job }) => Object.assign(job.fabrics[0], { fibres: of })),
      'drapery/entry-fabric',
    ).values.fibres
  expect(fibres([{ fibre: 'linen', percent: 55 }, { fibre: 'cotton' }])).toBe('linen 55\u00a0%, cotton')
  expect(fibres(undefined)).toBe('none')
})

test('a rod ordered by both heights is compared with both, and the one that disagrees is told', () => {
  const plan = planned(({ over }) => Object.assign(over.rod, { aboveCasing: '4' }))
  const both = plan.checks.filter((each) => each.code === 'drapery/rod-height')
  expect(both.map((each) => [each.verdict, each.values.meant])).toEqual([
    ['pass', long(91.125)],
    ['fail', long(90.25)],
  ])
})
test('allowances of one size cannot be told apart', () =>
  expect(
    checked(
      planned(({ over }) => Object.assign(over.rod, { top: '91 5/8' })),
      'drapery/rod-height',
    ).values.cause,
  ).toEqual({ code: 'drapery/several-causes' }))
test('on a floor that is not 0 the order is quoted as it is written', () => {
  const floor = [{ id: 'all', x: '31', y: '1/4' }]
  const plan = planned(({ window }) => Object.assign(window, { floor }))
  expect(checked(plan, 'drapery/rod-height').values).toMatchObject({ meant: long(91.125), worked: long(91.125) })
})
