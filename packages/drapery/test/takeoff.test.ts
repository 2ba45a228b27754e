import { type Job, windowsOf } from '@evenhem/job'
import { inch, metre, yard } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import type { FabricSum, Takeoff } from '../src/facts/index.ts'

// A print of 54 with a repeat of 27, half drop; seams of 1/2. Every number here was worked out by hand.
// Window 1: two panels of 42 1/2 × 89, fullness 2.4; hems 4 and headings 4, twice; side hems 1, twice. Window 2: one panel of 51 1/2, fullness 2.

const planner = createPlanner(plugins)
const { ordered } = example('workroom-takeoff')
const rules = (own: object): Job => changed(ordered, '/job/workroom/rules', { ...ordered.job.workroom?.rules, ...own })
const w1 = '/rooms/parlour/windows/w1'
const over = `${w1}/treatments/over`
const planOf = (job: Job, at = w1) => planner.window(job, job, at)
const takeoffOf = (job: Job, at = w1) => planOf(job, at).facts.find(({ id }) => id === 'drapery/takeoff@1')?.value as Takeoff
const face = (job: Job, at = w1) => takeoffOf(job, at).cloths[0]
const inches = (of: { readonly value: number } | undefined): number => (of?.value ?? Number.NaN) / inch
const sumOf = (job: Job, fabric: string) => {
  const sums = planner.job(job, job).facts.find(({ id }) => id === 'drapery/fabric-sums@1')?.value as readonly FabricSum[]
  return sums.find((sum) => sum.fabric === fabric)
}

test('102 and 4 of side hems are two widths of 53; 89 and 16 are four repeats of 27, with 3 left over', () => {
  const { panels, widths, cuts, needed, cut, rest, halfDrop, cloth } = face(ordered) ?? {}
  expect(panels?.map((panel) => [inches(panel.cutWidth), panel.widths.value])).toEqual([
    [106, 2],
    [106, 2],
  ])
  expect([widths?.value, cuts?.value]).toEqual([4, 4])
  expect([needed, cut, rest, halfDrop, cloth].map(inches)).toEqual([105, 108, 3, 13.5, 445.5])
})
test('lining is cut 3 shorter and interlining 8, each to its own width, without a repeat', () => {
  const [, lining, interlining] = takeoffOf(ordered).cloths
  expect([lining?.fabric, inches(lining?.cut), lining?.cuts.value, inches(lining?.cloth)]).toEqual(['sateen', 102, 4, 408])
  expect([interlining?.fabric, inches(interlining?.cut), interlining?.widths.value]).toEqual(['bump', 97, 4])
  expect(lining?.rest ?? lining?.halfDrop).toBeUndefined()
})
test('a panel weighs what its three cloths weigh, hems and all', () => {
  const square = (width: number, length: number): number => width * length * 0.0254 ** 2
  const ounces = 0.45359237 / 16 / 0.9144 ** 2
  const expected = 0.32 * square(106, 105) + 4 * ounces * square(106, 102) + 0.25 * square(106, 97)
  expect(takeoffOf(ordered).panels[0]?.weight?.value).toBeCloseTo(expected, 9)
})
test('a panel with a cloth of unknown weight has none', () =>
  expect(takeoffOf(changed(ordered, '/fabrics/bump/weight')).panels[0]?.weight).toBeUndefined())
test('the job adds up its windows, adds what placing takes once and rounds up once', () => {
  const { needed, placing, order } = sumOf(ordered, 'fern-print') ?? {}
  expect([inches(needed), inches(placing), (order?.value ?? 0) / yard]).toEqual([445.5 + 337.5, 36, 23])
  expect(sumOf(ordered, 'sateen')?.placing).toBeUndefined()
  expect((sumOf(ordered, 'voile')?.order.value ?? 0) / metre).toBe(11)
})

test.each([
  ['up', 3, 6],
  ['half up', 2.5, 5],
  ['nearest', 2, 4],
] as const)('2.08 widths a panel rounded %s are %d, and %d lengths for both', (widthsRounded, widths, cuts) => {
  const cloth = face(changed(rules({ widthsRounded }), `${over}/fullness`, 2.5))
  expect([cloth?.panels[0]?.widths.value, cloth?.cuts.value]).toEqual([widths, cuts])
})
test('rounded once for both panels, 4.16 widths are 5', () => {
  const cloth = face(changed(rules({ widthsOf: 'all panels' }), `${over}/fullness`, 2.5))
  expect([cloth?.widths.value, cloth?.cuts.value]).toEqual([5, 5])
})
test('a single panel of two and a half widths takes three lengths', () => {
  const cloth = face(rules({ widthsRounded: 'half up' }), '/rooms/parlour/windows/w2')
  expect([cloth?.widths.value, cloth?.cuts.value]).toEqual([2.5, 3])
})
test.each([
  ['half a repeat once', 13.5],
  ['one repeat once', 27],
  ['half a repeat on alternate cuts', 27],
] as const)('a half drop of %s adds %d to four cuts', (halfDrop, extra) =>
  expect(inches(face(rules({ halfDrop }))?.halfDrop)).toBe(extra),
)
test('where half a repeat is left of each cut, a half drop adds nothing', () => {
  const [just, short] = [5.5, 5.5625].map((length) => face(changed(ordered, `${over}/cutting`, { length: length * inch })))
  expect([inches(just?.rest), inches(just?.halfDrop)]).toEqual([13.5, 0])
  expect([inches(short?.rest), inches(short?.halfDrop)]).toEqual([13.4375, 13.5])
})
test('a straight match and one cut alone add nothing', () => {
  expect(face(changed(ordered, '/fabrics/fern-print/repeat/match', 'straight'))?.halfDrop).toBeUndefined()
  const narrow = changed(ordered, '/rooms/parlour/windows/w2/treatments/over/fullness', 1)
  const { cuts, halfDrop } = face(changed(narrow, '/fabrics/fern-print/width', 60 * inch), '/rooms/parlour/windows/w2') ?? {}
  expect([cuts?.value, inches(halfDrop)]).toEqual([1, 0])
})
test('a cut that is a whole number of repeats already is not lengthened, a sixteenth more is by a repeat', () => {
  const of = (length: number) => face(changed(ordered, `${over}/cutting`, { length: length * inch }))
  expect([of(19), of(19.0625)].map((cloth) => [inches(cloth?.cut), inches(cloth?.rest)])).toEqual([
    [108, 0],
    [135, 26.9375],
  ])
})
test('the finished length divided by the repeat gives the same cut here, with hems out of its rest', () => {
  const cloth = face(rules({ repeatOf: 'finished length' }))
  expect([inches(cloth?.cut), inches(cloth?.rest)]).toEqual([108, 3])
})
test('the quick way adds one repeat to each cut', () =>
  expect(inches(face(rules({ repeatBy: 'one repeat a cut' }))?.cut)).toBe(132))
test('the repeat of the cloth that came goes before the one that was ordered', () =>
  expect(inches(face(changed(ordered, '/fabrics/fern-print/repeat/received', 26.5 * inch))?.cut)).toBe(106))
test.each([
  ['nothing', undefined],
  ['one repeat', 27],
  ['a yard or a repeat', 36],
] as const)('for placing %s: %s', (placing, extra) => {
  const found = sumOf(rules({ placing }), 'fern-print')?.placing
  expect(found && inches(found)).toBe(extra)
})
test.each([
  ['any length', 408 / 36],
  ['quarter yard', 11.5],
  ['third of a yard', 11 + 1 / 3],
  ['half yard', 11.5],
  ['yard', 12],
  ['half metre', 10.5 / 0.9144],
  ['metre', 11 / 0.9144],
] as const)('408 in sold by %s are %d yd', (soldBy, yards) => {
  const job = changed(rules({ soldBy }), '/rooms/parlour/windows/w2/treatments/over/lining')
  expect((sumOf(job, 'sateen')?.order.value ?? 0) / yard).toBeCloseTo(yards, 9)
})
test.each([
  ['finished width', 42.5 * 2.4],
  ['covered width', 39 * 2.4 + 3.5],
] as const)('fullness of the %s makes a flat width of %d', (fullnessOf, flat) =>
  expect(inches(takeoffOf(rules({ fullnessOf })).panels[0]?.flat)).toBeCloseTo(flat, 9),
)
test.each([
  ['of the width', 85],
  ['beyond the width', 127.5],
] as const)('200 per cent %s make a flat width of %d', (percentMeans, flat) => {
  const percent = changed(changed(rules({ percentMeans }), `${over}/fullness`), `${over}/fullnessPercent`, 200)
  expect(inches(takeoffOf(percent).panels[0]?.flat)).toBe(flat)
})
test('without a fullness the flat width of the order is cut', () =>
  expect(inches(takeoffOf(changed(ordered, `${over}/fullness`)).panels[0]?.flat)).toBe(102))
test('hems and headings take as many layers as the workroom turns', () => {
  const cloth = face(rules({ hemTurns: 1, headingTurns: 1, sideHemTurns: 1, cutExtra: 2 * inch }))
  expect([inches(cloth?.needed), inches(cloth?.panels[0]?.cutWidth)]).toEqual([89 + 4 + 4 + 2, 102 + 2])
})
test('what the order says for cutting goes before hems and headings', () => {
  const cut = { hem: 5 * inch, heading: 6 * inch, sideHems: 3 * inch }
  const cloth = face(changed(ordered, `${over}/cutting`, cut))
  expect([inches(cloth?.needed), inches(cloth?.panels[0]?.cutWidth)]).toEqual([100, 105])
  expect(inches(face(changed(ordered, `${over}/cutting`, { ...cut, length: 14 * inch }))?.needed)).toBe(103)
})
test('a panel that is not made up yet is as wide as its share and its return', () => {
  const open = ['left', 'right'].reduce((job, side) => changed(job, `${over}/panels/${side}/pleats`), ordered)
  expect(takeoffOf(open).panels.map(({ finishedWidth }) => inches(finishedWidth))).toEqual([42.5, 42.5])
})
test('two panels of unlike lengths are cut to the longer', () =>
  expect(inches(face(changed(ordered, `${over}/panels/right/finishedLength`, 90 * inch))?.needed)).toBe(106))
test('what is lacking is named and not asked for at the window', () => {
  const open = [`${over}/fullness`, `${over}/panels/left/flatWidth`, `${over}/panels/left/sideHem`, '/fabrics/sateen/width']
  const job = open.reduce((all, place) => changed(all, place), ordered)
  expect(takeoffOf(job)).toEqual({
    lacks: [`${over}/panels/left/sideHem`, `${over}/fullness`, '/fabrics/sateen/width'],
    panels: [],
    cloths: [],
  })
  expect(planOf(job).asks).toEqual([])
})
test('a fabric without a width is named where the job counts others, and so is a treatment without a fabric', () => {
  expect(takeoffOf(changed(ordered, '/fabrics/fern-print/width')).lacks).toEqual(['/fabrics/fern-print/width'])
  expect(takeoffOf(changed(ordered, `${over}/fabric`)).lacks).toEqual([`${over}/fabric`])
})
test('a job whose fabrics have no width has no takeoff', () => {
  const job = ['fern-print', 'sateen', 'bump', 'voile'].reduce((all, id) => changed(all, `/fabrics/${id}/width`), ordered)
  expect(takeoffOf(job)).toBeUndefined()
  expect(
    planner
      .job(job, job)
      .facts.map(({ id }) => id)
      .filter((id) => id.startsWith('drapery/')),
  ).toEqual(['drapery/fabrics@1', 'drapery/units@1'])
})

const held = (job: Job, at = w1) => planOf(job, at).checks.find(({ code }) => code === 'drapery/fullness-held')
test.each([
  [100, 'pass', 'near'],
  [99.9375, 'warn', 'short'],
  [104, 'pass', 'near'],
  [104.0625, 'warn', 'wide'],
] as const)('a flat width of %d where 102 are asked for and fill two widths: %s', (flat, verdict, way) =>
  expect(held(changed(ordered, `${over}/panels/left/flatWidth`, flat * inch))).toMatchObject({ verdict, values: { way } }),
)
test('a flat width may use all of its rounded widths', () => {
  const flat = (width: number) =>
    changed(changed(ordered, `${over}/fullness`, 2.5), `${over}/panels/left/flatWidth`, width * inch)
  // three widths of 53 less 4 of side hems
  expect(held(changed(flat(157), `${over}/panels/right/flatWidth`, 157 * inch))?.verdict).toBe('pass')
  expect(held(changed(flat(157.0625), `${over}/panels/right/flatWidth`, 155 * inch))?.verdict).toBe('warn')
})
test('widths rounded to the nearest may give less than the fullness asks for', () =>
  expect(held(changed(rules({ widthsRounded: 'nearest' }), `${over}/fullness`, 2.5))?.verdict).toBe('pass'))
test('the panel that is off the most is told of, and without a fullness none is', () => {
  const right = changed(
    changed(ordered, `${over}/panels/left/flatWidth`, 103 * inch),
    `${over}/panels/right/flatWidth`,
    90 * inch,
  )
  expect(held(right)?.values).toMatchObject({ panel: { code: 'drapery/panel-right' }, off: { length: 12 * inch } })
  expect(held(changed(ordered, `${over}/fullness`))).toBeUndefined()
})

test('unlike panels are each cut to their own width', () => {
  // 30 1/2 finished: 73.2 flat, 77.2 cut
  const unlike = changed(ordered, `${over}/panels/right/firstToLast`, 25.5 * inch)
  const { panels, cloths } = takeoffOf(unlike)
  expect(cloths[0]?.panels.map(({ cutWidth }) => inches(cutWidth))).toEqual([106, 77.2])
  expect((panels[0]?.weight?.value ?? 0) / (panels[1]?.weight?.value ?? 0)).toBeCloseTo(106 / 77.2, 9)
  // what two widths of 53 give, less side hems, and 2 more
  const [wide, narrow] = [103, 104].map((width) => width * inch)
  const flats = changed(changed(unlike, `${over}/panels/left/flatWidth`, wide), `${over}/panels/right/flatWidth`, narrow)
  expect(held(flats)?.verdict).toBe('pass')
})
test('panels that are not made up yet have each their own share', () => {
  const open = ['left', 'right'].reduce((job, side) => changed(job, `${over}/panels/${side}/pleats`), ordered)
  const unlike = changed(open, `${over}/panels/left/share`, 30 * inch)
  expect(takeoffOf(unlike).panels.map(({ finishedWidth }) => inches(finishedWidth))).toEqual([33.5, 51.5])
})
test('without its make-up a panel lacks a return, and without a rod too its width', () => {
  const open = changed(ordered, `${over}/panels/left/pleats`)
  expect(takeoffOf(changed(open, `${over}/panels/left/return`)).lacks).toEqual([`${over}/panels/left/return`])
  expect(takeoffOf(changed(open, `${over}/rod/width`)).lacks).toEqual([`${over}/rod/width`])
  expect(takeoffOf(changed(changed(ordered, `${over}/fullness`), `${over}/panels/left/flatWidth`)).lacks).toEqual([
    `${over}/fullness`,
  ])
})
test('a half drop is matched from the second length on', () => {
  const { cuts, halfDrop } = face(changed(ordered, `${over}/fullness`, 1)) ?? {}
  expect([cuts?.value, inches(halfDrop)]).toEqual([2, 13.5])
})

const holds = (job: Job) => planOf(job).checks.find(({ code }) => code === 'drapery/cut-holds')
test.each([
  [19, 'pass', 0],
  [19.0625, 'fail', 0.0625],
] as const)('four repeats of 27 for 89 hold %d more: %s', (length, verdict, rest) =>
  expect(holds(changed(rules({ repeatOf: 'finished length' }), `${over}/cutting`, { length: length * inch }))).toMatchObject({
    verdict,
    values: { rest: { length: rest * inch } },
  }),
)
test('the longest finished length is divided', () => {
  const tall = changed(rules({ repeatOf: 'finished length' }), `${over}/panels/right/finishedLength`, 109 * inch)
  expect(inches(face(tall)?.cut)).toBe(135)
})
test('of several cloths with a repeat the shortest cut is told of; without one there is nothing to tell', () => {
  const both = changed(rules({ repeatOf: 'finished length' }), '/fabrics/sateen/repeat', { vertical: 45 * inch })
  // fabric: 108 against 105; lining: 90 against 102
  expect(holds(both)).toMatchObject({ verdict: 'fail', values: { rest: { length: 12 * inch } } })
  // fabric: 90 against 105
  const fabric = changed(both, '/fabrics/fern-print/repeat/vertical', 22.5 * inch)
  expect(holds(fabric)?.values).toMatchObject({ rest: { length: 15 * inch } })
  expect(planOf(ordered, '/rooms/landing/windows/w1').checks.map(({ code }) => code)).not.toContain('drapery/cut-holds')
})

test('what is taken away in the workings is what must be, and a rule of rounding takes nothing away', () => {
  const jobs = [
    ordered,
    rules({ halfDrop: 'half a repeat on alternate cuts', repeatOf: 'finished length' }),
    example('hems-from-the-repeat').ordered,
  ]
  const one = changed(
    changed(ordered, '/rooms/parlour/windows/w2/treatments/over/fullness', 1),
    '/fabrics/fern-print/width',
    60 * inch,
  )
  const plans = [...jobs, one].flatMap((job) => [...windowsOf(job).map(({ place }) => planOf(job, place)), planner.job(job, job)])
  const ours = plans
    .flatMap(({ reckonings }) => reckonings)
    .filter(({ name }) => /#(face|lining|interlining|cloth|placing|flat|fullness|side-hems|length)/.test(name))
  expect(ours.filter(({ how, terms }) => how === 'formula' && terms.some(({ sign }) => sign < 0))).toEqual([])
  const taken = ours.flatMap(({ what, terms }) => terms.flatMap((term) => (term.sign < 0 ? [`${what} − ${term.what}`] : [])))
  expect([...new Set(taken)].sort()).toEqual([
    'drapery/cut-width − drapery/less-than-face',
    'drapery/face-width − drapery/return-width',
    'drapery/flat-less − drapery/flat-asked',
    'drapery/length-needed − drapery/less-than-face',
    'drapery/rest-of-cut − drapery/length-needed',
    'drapery/usable-width − drapery/seam-edge',
  ])
})

test('what cloth weighs tells whether one person may lift a panel, unless the order says what it weighs', () => {
  const lift = (job: Job) => planOf(job).checks.find(({ code }) => code === 'drapery/lift')
  expect(lift(changed(ordered, '/fabrics/bump/weight', '4000 g/m2'))).toMatchObject({
    verdict: 'warn',
    at: `${over}/panels/left`,
  })
  const said = changed(ordered, `${over}/panels/right/weight`, '6 kg')
  expect(lift(said)).toMatchObject({ verdict: 'pass', at: `${over}/panels/right/weight`, values: { mass: { mass: 6 } } })
})

test('per cent that make cloth narrower than the panel are named: most often they are meant beyond the width', () => {
  const percent = (value: number, rule = {}) =>
    held(changed(changed(rules(rule), `${over}/fullness`), `${over}/fullnessPercent`, value))
  expect(percent(99)).toMatchObject({
    verdict: 'warn',
    at: `${over}/panels/left`,
    values: { way: 'bare', off: { length: 0.425 * inch } },
  })
  expect(percent(100)?.values).toMatchObject({ way: 'wide' })
  expect(percent(140, { percentMeans: 'beyond the width' })?.verdict).toBe('pass')
})
