import { figuresOf } from '@evenhem/drawing'
import { type Job, lay } from '@evenhem/job'
import { tapes } from '@evenhem/length'
import { expect, test } from 'vitest'
import { type ReportOrder, reportOf, type Said, words } from '../src/index.ts'
import { example, handedOver, house, orderOf, outlined, planned, textOf, window } from './example.ts'

const text = (said: Said = []): string => said.map((part) => (typeof part === 'string' ? part : part.written.text)).join('')
const states = (name: string) =>
  Object.fromEntries(
    figuresOf(planned(example(name)).page.drawing?.scene ?? expect.fail('no drawing')).map(({ figure }) => [
      figure.of.slice(window.length),
      figure.state,
    ]),
  )

const { planner } = example('tern-hollow')
const undrawn: Partial<ReportOrder> = {
  planner: { ...planner, window: (...args) => ({ ...planner.window(...args), layers: [] }) },
}

test('the head names the job and says that it is a draft', () => {
  const { outline } = planned(example('tern-hollow'))
  expect(outline.head).toEqual({ job: 'House at Tern Hollow', kind: 'Completion report', state: 'Draft' })
  expect(outline.title).toBe('Garden room, Window 1, House at Tern Hollow')
  expect(outline.foot).toEqual({ job: 'Job 26-117', page: ['', ' of ', ''] })
})

test('the first sentence comes from the plan', () => {
  const { page } = planned(example('tern-hollow'))
  expect(page.lead.map(text)).toEqual([
    'A pair of lined, pleated panels. Closed, they pass the casing by 8 on each side and clear the floor by 1/2.',
  ])
})

test('a fact stands under its name, its number apart', () => {
  const { page } = planned(example('tern-hollow-found'))
  const [hangs, set] = page.facts
  expect(hangs?.title).toBe('What hangs here')
  expect(hangs?.of.map(({ name, says }) => [text(name), text(says[0])])).toEqual([
    ['Panels', '2, 11 pleats each'],
    ['Length, left', '89 1/8'],
    ['Length, right', '89'],
    ['Fabric', 'Oat linen and cotton (linen 55\u00a0%, cotton 45\u00a0%)'],
    ['Lining', 'cotton sateen'],
    ['Returns', '2, to the wall'],
    ['Rod', 'Ash rod with rings, 1 3/8 thick'],
    ['Rings', '24'],
  ])
  expect(set?.of.map(({ name, says }) => [text(name), text(says[0])])).toEqual([
    ['Hem, left', '1/2'],
    ['Hem, right', '5/8'],
    ['Top of rod', '91 1/4'],
  ])
})

test('a number that was read at the window lies on tape, and no other does', () => {
  const panel = (side: string) => `/treatments/over/panels/${side}/finishedLength`
  expect(states('tern-hollow')).toMatchObject({
    [panel('left')]: 'ordered',
    [panel('right')]: 'ordered',
    '/walls/a/space/left': 'ordered',
  })
  expect(states('tern-hollow-found')).toMatchObject({
    [panel('left')]: 'measured',
    [panel('right')]: 'measured',
    '/walls/a/space/left': 'measured',
    '/walls/a/space/right': 'ordered',
  })
})

test('the key shows one number of each kind, and when the tape was read', () => {
  const key = (name: string) =>
    planned(example(name)).page.drawing?.key.map(({ state, number, says }) => [state, number?.written.text, says])
  expect(key('tern-hollow')).toEqual([['computed', '78', 'worked out']])
  expect(key('tern-hollow-found')).toEqual([
    ['measured', '89', 'read from a tape at the window, November 30, 2026'],
    ['computed', '78', 'worked out'],
  ])
})

test('readings of several days name the first and the last', () => {
  const order = example('tern-hollow-found')
  const readings = {
    ...order.readings,
    [`${window}/walls/a/space/left`]: { value: 479425000, when: '2026-12-01T08:00:00-05:00' },
  }
  expect(planned({ ...order, readings }).page.drawing?.key[0]?.says).toBe(
    'read from a tape at the window, November 30, 2026 to December 1, 2026',
  )
})

test('the drawing is for the customer: no holes, no crosses, no enlargements, no tape along the wall', () => {
  const { page } = planned(example('tern-hollow-found'))
  const kinds = new Set(page.drawing?.scene.items.map(({ kind }) => kind))
  expect(['cross', 'height', 'detail', 'tape'].filter((kind) => kinds.has(kind as never))).toEqual([])
  expect(page.drawing?.scene.items.some((item) => 'role' in item && item.role === 'fabric')).toBe(true)
})

test('the alternative text of the drawing is made of sentences and names each number', () => {
  const { alternative = '', scene } = planned(example('tern-hollow-found')).page.drawing ?? {}
  expect(alternative).toMatch(/^Front view of Garden room, Window 1\. /)
  expect(alternative).toContain('Left panel: 89 and one eighth inches, measured.')
  expect(alternative).not.toMatch(/\.\.|undefined|\[/)
  expect(
    figuresOf(scene ?? expect.fail('no drawing')).filter(({ words }) => !alternative.toLowerCase().includes(words.toLowerCase())),
  ).toEqual([])
})

test('the unit is said once, and that a tape rounds', () => {
  expect(planned(example('tern-hollow')).page.drawing?.note).toBe('Inches. Drawn to scale.')
  expect(planned(example('tern-hollow', { tape: tapes.wholeMillimetres })).page.drawing?.note).toBe(
    'Millimetres, rounded. Drawn to scale.',
  )
  expect(planned(example('tern-hollow', { tape: tapes.feetAndSixteenths })).page.drawing?.note).toBe(
    'Feet and inches. Drawn to scale.',
  )
})

test('both papers share the width of the drawing, and Letter takes its shortness from the height', () => {
  const scene = (paper: 'a4' | 'letter') =>
    planned(example('tern-hollow', { paper })).page.drawing?.scene ?? expect.fail('no drawing')
  expect(scene('letter').width).toBe(scene('a4').width)
  expect(scene('a4').height - scene('letter').height).toBeGreaterThanOrEqual(17.6)
})

test('when all is well the report says so, and lists what was checked', () => {
  const { page } = planned(example('tern-hollow'))
  expect(page.open).toMatchObject({
    before: ['This is a draft. Nobody has signed for this window yet.', 'Nothing that was checked is open.'],
    of: [],
  })
  expect(page.checked.of.map(({ verdict }) => verdict)).toEqual(Array(22).fill('pass'))
})

test('what fails stands before what wants a look, with what to do', () => {
  const { page } = planned(example('panels-do-not-meet'))
  expect(page.open.of.map(({ verdict, says, help }) => [verdict, text(says), text(help)])).toEqual([
    [
      'fail',
      'The left panel is 3/4 short of its share of the rod, 39; it may be over by 1/2 at most, and never short.',
      'Measure it again, first pleat to last. If it stays short, call the workroom: it would leave a gap.',
    ],
    [
      'warn',
      'The right panel is 3/4 over its share of the rod, 39.',
      'Within 1/2 it can be dressed; watch that the pair closes in the middle.',
    ],
  ])
})

test('what is not measured is open by name, and the drawing says that it is not to scale there', () => {
  const { page } = planned(example('not-measured-yet'))
  expect(page.drawing?.key.at(-1)).toEqual({ state: 'unknown', says: 'not known yet, and not to scale' })
  expect(page.open.of.map(({ says }) => text(says))).toEqual(
    expect.arrayContaining([
      'Not measured yet: wall, opening, casing, width.',
      'Not measured yet: treatment, panel right, finished length.',
    ]),
  )
})

test('where a plan has nothing to draw the report says so', () => {
  const { page } = planned(example('tern-hollow', undrawn))
  expect([page.drawing, page.notDrawn]).toEqual([undefined, 'There is no drawing yet: what it needs is not known.'])
})

const overridden = (found: Job): Job =>
  ({
    ...found,
    rooms: found.rooms.map((room) => ({ ...room, found: { overrides: { 'drapery/panel-width': 'The customer has seen it.' } } })),
  }) as Job
test('what was gone on with keeps its place, with its reason', () => {
  const { page } = planned(example('panels-do-not-meet'), overridden)
  expect(text(page.open.of.find(({ setAside }) => setAside)?.setAside)).toBe('Gone on all the same: The customer has seen it.')
  expect(page.corrections?.of.map(({ says }) => says.map(text).join('; '))[0]).toMatch(
    /never short; reason: The customer has seen it\.$/,
  )
})

const failing: Partial<ReportOrder> = {
  planner: {
    ...planner,
    window: (...args) => ({
      ...planner.window(...args),
      unread: [{ at: `${window}/treatments/over/hardware`, what: 'hardware', name: 'birch' }],
      faults: [{ plugin: 'p', rule: 'r', at: `${window}/treatments/over`, what: 'threw', message: 'no' }],
    }),
  },
}
test('hardware that nobody knows, and a rule that failed, are open too', () => {
  expect(planned(example('tern-hollow', failing)).page.open.of.map(({ verdict, says }) => [verdict, text(says)])).toEqual([
    ['unknown', 'The job has no hardware named “birch”.'],
    ['unknown', 'Could not work this out: p/r, at treatment.'],
  ])
})

test('the end says for whom, by whom and when', () => {
  const { outline } = planned(example('tern-hollow'))
  expect(outline.about.map(({ name, says }) => [text(name), ...says.map(text)])).toEqual([
    ['For', 'The household at Tern Hollow', 'Tern Hollow, the last house on the lane'],
    ['Made by', 'Workroom at Sandpiper Yard'],
    ['Measured by', 'Sandpiper Yard', 'October 12, 2026'],
    ['Installation', 'November 30, 2026'],
  ])
})

test('days are written in the reader’s language', () => {
  const { outline } = planned(example('tern-hollow', { language: 'en-GB' }))
  expect(text(outline.about.at(-1)?.says[0])).toBe('30 November 2026')
})

test('no code is left without words', () => {
  const shown = ['tern-hollow', 'tern-hollow-found', 'not-measured-yet', 'panels-do-not-meet']
    .map((name) => reportOf(example(name)).html)
    .join('')
  expect(shown).not.toMatch(/\[[a-z-]+\/[a-z.-]+\]/)
})

/** A plan that has nothing to tell the customer. */
const silent: Partial<ReportOrder> = {
  planner: { ...planner, window: (...args) => ({ ...planner.window(...args), entries: [] }) },
}
const written = JSON.parse(textOf('tern-hollow'))
const told = orderOf(
  JSON.stringify({
    ...written,
    job: {
      ...written.job,
      approved: { by: 'The household', date: '2026-10-20' },
      site: { address: 'Tern Hollow', contact: { name: 'A neighbour', phone: 'the green door' } },
      handOver: { openPoints: 'The painter', spares: ['two rings'], remotes: 1, mayUse: 'Everybody' },
    },
    fabrics: [
      { ...written.fabrics[0], interlining: 'bump' },
      { id: 'spare', name: 'Spare cloth' },
    ],
  }),
)
const untold = orderOf(JSON.stringify({ ...written, job: { number: '1', name: 'Bare', country: 'US' } }), silent)

const { fabrics: _fabrics, ...unnamed } = written
/** Nothing here names a fabric. */
const bare = orderOf(JSON.stringify(unnamed).replace('"fabric":"oat-linen",', ''))
const { ordered } = house(['tern-hollow', 'tern-hollow'])
const signed = lay(handedOver().ordered, handedOver().readings).job.job.found
const twoSigned = {
  ...house(['tern-hollow', 'tern-hollow']),
  ordered: { ...ordered, job: { ...ordered.job, found: signed } },
} as ReportOrder

const times = ['before', 'closed', 'open', 'detail', 'after', undefined]
/** A photo of each time, one of them marked. */
const photographed = orderOf(
  JSON.stringify({
    ...written,
    found: Object.fromEntries(
      times.flatMap((time, n) => {
        const at = (member: string) => `${window}/found/${member}/${String(n).repeat(64)}`
        const mark = { [`${at('photoMarks')}/m1`]: { value: { kind: 'point', x: 0.5, y: 0.5, says: 'here' } } }
        const all = { [at('photos')]: { value: 'A photo' }, ...(time ? { [at('photoOf')]: { value: time } } : mark) }
        return Object.entries(all)
      }),
    ),
  }),
)

// Hooks bear 3 1/2 out, the holes are 1/2 before and behind them: 4 and 3. The track covers −12 to 72 of a casing of 60 and its end brackets stand 3 inside.
test('holes in a ceiling are told out from the wall and along it', () => {
  const { windows } = outlined(example('about-the-traverse-rod'))
  const [ceiling] = windows.flatMap((page) => page.ceiling ?? [])
  expect(ceiling?.of.map(({ name, says }) => `${text(name)}: ${text(says[0])}`)).toEqual([
    'Front hole, left: 4 out, 9 from the casing',
    'Back hole, left: 3 out, 9 from the casing',
    'Front hole, support: 4 out, 30 from the casing’s left edge',
    'Back hole, support: 3 out, 30 from the casing’s left edge',
    'Front hole, right: 4 out, 9 from the casing',
    'Back hole, right: 3 out, 9 from the casing',
  ])
})
test('every sentence of the report is said somewhere', () => {
  // Those of the punch list are said in `punch-list.test.ts`.
  const codes = Object.keys(words.en).filter((code) => !/^report\/(punch-|photo-(of-it|before|after|not))/.test(code))
  const own = { en: Object.fromEntries(codes.map((code) => [code, { says: `«${code}» ${words.en[code]?.says}` }])) }
  const said = (name: string, more: Partial<ReportOrder> = {}, changed?: (found: Job) => Job) => {
    const order = example(name, more)
    return JSON.stringify(planned({ ...order, words: [own, ...order.words] }, changed).outline)
  }
  const saidOf = (order: ReportOrder) => JSON.stringify(outlined({ ...order, words: [own, ...order.words] }))
  const read = (when?: string) => ({
    readings: {
      [`${window}/walls/a/space/left`]: { value: 482600000, ...(when ? { when } : {}) },
      ...(when ? { [`${window}/floor/right/y`]: { value: 0, when: '2026-12-01' } } : {}),
    },
  })
  const all = [
    said('tern-hollow-found'),
    said('panels-do-not-meet', { tape: tapes.wholeMillimetres }, overridden),
    said('not-measured-yet'),
    said('tern-hollow', { tape: tapes.feetAndEighths, ...read() }),
    said('tern-hollow', { tape: tapes.centimetresToTheMillimetre, ...read('2026-11-30') }),
    said('tern-hollow', failing),
    saidOf(example('about-the-traverse-rod')),
    said('tern-hollow', undrawn),
    saidOf(house(['tern-hollow', 'tern-hollow'])),
    saidOf(house(['panels-do-not-meet', 'not-measured-yet', 'returns-not-said', 'panels-came-wrong'])),
    saidOf(house(['tern-hollow', 'tern-hollow'], failing)),
    saidOf(told),
    saidOf(untold),
    saidOf(photographed),
    saidOf(handedOver()),
    saidOf(handedOver({}, 'without open points')),
    saidOf(twoSigned),
    saidOf(bare),
    saidOf(example('will-it-hold')),
  ].join('')
  expect(codes.filter((code) => !all.includes(`«${code}»`))).toEqual([])
})
