import type { Job, Place } from '@evenhem/job'
import { inch, metre } from '@evenhem/length'
import { createPlanner, type WindowPlan } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { traverse } from '@evenhem/plugin-traverse'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { drapery } from '../src/index.ts'
import { screwListed, screwNamed, woodHolds } from '../src/rules/screw.ts'

const planner = createPlanner([drapery, rodAndRing, traverse, returns])
const { found } = example('will-it-hold')
const at = (window: string): Place => `/rooms/barn/windows/${window}`
const over = (window: string): Place => `${at(window)}/treatments/over`
type Change = readonly [place: string, value: unknown]
const jobWith = (changes: readonly Change[], from: Job = found) =>
  changes.reduce<Job>((before, [place, value]) => changed(before, place, value), from)
const plan = (window: string, changes: readonly Change[] = [], from: Job = found): WindowPlan => {
  const job = jobWith(changes, from)
  const planned = planner.window(job, job, at(window))
  expect(planned.faults).toEqual([])
  return planned
}
const number = ({ reckonings }: WindowPlan, name: string): number => {
  const own = reckonings.find((each) => each.name.endsWith(name))
  if (!own) throw new Error(`Unexpected plan without ${name}, expected it`)
  return own.value
}
const checkOf = ({ checks }: WindowPlan, code: string) => checks.find((each) => each.code === code)
const verdict = (window: string, code: string, changes: readonly Change[] = []) => checkOf(plan(window, changes), code)?.verdict

// Two brackets at −7 and 55 in, cover −8 to 56 in, rod from −8 1/8 to 56 1/8, finials 2 1/2 long and 220 g. A solid brass rod of 1/2 in: 97 GPa (14,000 ksi)
// and 8,530 kg/m³. Panels of 7 kg with 11 rings of 30 g each.
describe('a rod on two brackets, worked out by levers and by a table', () => {
  const g = 9.80665
  const planned = plan('sags')
  const inches = (x: number) => x * 0.0254
  const area = (Math.PI / 4) * inches(0.5) ** 2
  const rod = area * 8530 * inches(64.25)
  const panel = 7 + 11 * 0.03

  test('the rod and the panels weigh what they are made of', () => {
    expect(number(planned, 'over#rod-weight')).toBeCloseTo(rod, 9)
    expect(number(planned, 'panels/left#load')).toBeCloseTo(panel, 9)
  })
  test('a bracket carries the most with its own panel open and the other one drawn', () => {
    const stack = number(planned, 'panels/left#stack') / metre
    const fromRight = [
      panel * (inches(55 + 8) - stack / 2),
      panel * inches(55 - 40),
      rod * inches(31),
      0.22 * inches(62 + 2.375),
      -0.22 * inches(2.375),
    ].reduce((sum, each) => sum + each, 0)
    expect(number(planned, '#load-left')).toBeCloseTo((g * fromRight) / inches(62), 6)
  })
  test('it sags as the table says for an even load that runs on beyond both brackets', () => {
    const ei = 14_000_000 * 6894.757293 * ((Math.PI * inches(0.5) ** 4) / 64)
    const [long, beyond] = [inches(62), inches(1)]
    const panels = (g * 2 * panel) / inches(64)
    const even = (w: number, a: number) => (w * long ** 2 * (5 * long ** 2 - 24 * a ** 2)) / (384 * ei)
    const tips = (g * 0.22 * inches(2.375) * long ** 2) / (8 * ei)
    const sag = even(panels, beyond) + even((g * rod) / inches(64.25), inches(1.125)) - tips
    expect(number(planned, '#sag-left-right') / metre).toBeCloseTo(sag, 8)
  })
  test('what is allowed is one part in 240 of the way between them, or what the workroom says', () => {
    expect(number(planned, '#sag-left-right-most')).toBe(Math.round((62 * inch) / 240))
    const other = plan('sags', [['/job/workroom', { rules: { sagOf: 62 } }]])
    expect(number(other, '#sag-left-right-most')).toBe(inch)
  })
})

describe('screws', () => {
  test('the top screw takes load times projection over the distance of the holes', () => {
    const planned = plan('steady')
    expect(number(planned, '#pull-left')).toBeCloseTo((number(planned, '#holds-left') * 3.5) / 1.625, 6)
    expect(number(planned, '#shear-left')).toBeCloseTo(number(planned, '#holds-left') / 2, 9)
  })
  test('alone it also takes all of the shear, and tilts about the lower edge', () => {
    const planned = plan('steady')
    expect(number(planned, '#used-by-one-left')).toBeGreaterThan(0.5 * number(planned, '#used-left'))
  })
  test('a rating is used by the weight that hangs on it', () => {
    const planned = plan('rating')
    const load = number(planned, '#holds-middle')
    expect(number(planned, '#of-rated-middle')).toBeCloseTo(load / (12 * 4.4482216152605), 9)
  })
  test.each([
    ['No. 8 × 1 1/4', 0.164, 1.25],
    ['No. 10 x 3', 0.19, 3],
    ['4 × 40', 4 / 25.4, 40 / 25.4],
  ])('%s is read', (name, diameter, length) => {
    const screw = screwNamed(name)
    expect((screw?.diameter ?? 0) / 0.0254).toBeCloseTo(diameter, 9)
    expect((screw?.length ?? 0) / 0.0254).toBeCloseTo(length, 9)
  })
  test.each(['a good one', 'No. 3 × 2', 'No. 8.5 × 2', 'No. 8 × soon'])('%s is not', (name) =>
    expect(screwNamed(name)).toBeUndefined(),
  )
})

describe('what is behind', () => {
  const left = `${over('hollow')}/found/brackets`
  test('a listing with its margin holds in a hollow wall, in a board of another thickness it is not used', () => {
    expect(verdict('hollow', 'drapery/holds')).toBe('pass')
    const thicker: Change = [`${at('hollow')}/walls/a/buildUp/board`, (5 / 8) * inch]
    expect(checkOf(plan('hollow', [thicker]), 'drapery/holds')).toMatchObject({
      verdict: 'unknown',
      values: { lacks: { code: 'drapery/lacks-board' } },
    })
  })
  test('what the drill met counts before what the order says', () => {
    const met: Change = [left, { left: { behind: 'masonry' } }]
    expect(checkOf(plan('hollow', [met]), 'drapery/holds')).toMatchObject({
      verdict: 'unknown',
      values: { lacks: { code: 'drapery/lacks-margin' } },
    })
  })
  test.each([
    ['anchors-only', 'drapery/lacks-no-fastener'],
    ['masonry', 'drapery/lacks-margin'],
  ])('nothing is guessed: %s', (window, lacks) =>
    expect(checkOf(plan(window), 'drapery/holds')).toMatchObject({ verdict: 'unknown', values: { lacks: { code: lacks } } }),
  )
  test('nobody knows what is behind the wall', () =>
    expect(
      checkOf(plan('steady', [[`${at('steady')}/walls/a/buildUp/behind`, 'unknown']]), 'drapery/holds')?.values.lacks,
    ).toEqual({ code: 'drapery/lacks-wall' }))
  test('on a casing the screw holds in the casing alone', () => {
    const planned = plan('steady', [
      [`${over('steady')}/mount`, 'casing'],
      [`${over('steady')}/fasteners`, ['wall-plug']],
    ])
    // 3/4 in of wood are fewer than six diameters of a No. 10.
    expect(checkOf(planned, 'drapery/holds')).toMatchObject({ says: 'drapery/holds.thin', verdict: 'fail', stops: 'drill' })
  })
})

describe('what is said', () => {
  test.each([
    ['steady', 'drapery/sag', 'pass', undefined],
    ['steady', 'drapery/rod-lifts', 'pass', undefined],
    ['steady', 'drapery/holds', 'pass', undefined],
    ['sags', 'drapery/sag', 'warn', 'drapery/sag.warn'],
    ['lifts', 'drapery/rod-lifts', 'warn', 'drapery/rod-lifts.warn'],
    ['rating', 'drapery/holds', 'fail', 'drapery/holds.fail'],
    ['short', 'drapery/holds', 'fail', 'drapery/holds.short'],
    ['folds', 'drapery/sag', 'fail', 'drapery/sag.folds'],
    ['unweighed', 'drapery/sag', 'unknown', 'drapery/sag.weights'],
  ])('%s: %s %s', (window, code, expected, says) => {
    const own = checkOf(plan(window), code)
    expect([own?.verdict, own?.says]).toEqual([expected, says])
  })
  test('a splice that cannot turn folds nothing up', () =>
    expect(verdict('folds', 'drapery/sag', [['/hardware/two-pieces/rod/splice', 'stiff']])).toBe('pass'))
  test('a rod whose thinner tube is alone sags more', () => {
    const whole = plan('pushed', [
      [`${over('pushed')}/rod/thin`, undefined],
      ['/hardware/pushed-together/rod/inner', undefined],
    ])
    expect(number(plan('pushed'), '#sag-left-middle')).toBeGreaterThan(number(whole, '#sag-left-middle'))
  })
  test('a rod held down does not lift', () =>
    expect(verdict('lifts', 'drapery/rod-lifts', [['/hardware/light-tube/bracket/holdsDown', true]])).toBe('pass'))
  test('without stiffness brackets are still told what they carry', () => {
    const planned = plan('steady', [
      ['/hardware/steel-tube/rod/material', undefined],
      ['/hardware/steel-tube/rod/weight', '1.0566 kg/m'],
    ])
    expect(checkOf(planned, 'drapery/sag')?.says).toBe('drapery/sag.stiffness')
    expect(number(planned, '#load-middle')).toBeCloseTo(number(plan('steady'), '#load-middle'), 2)
  })
  test('a rod of which neither weight nor stiffness is known', () =>
    expect(checkOf(plan('steady', [['/hardware/steel-tube/rod/material', undefined]]), 'drapery/sag')?.says).toBe(
      'drapery/sag.rod',
    ))
  test('an order that says nothing of weights and fasteners is asked nothing', () => {
    const silent = example('tern-hollow').found
    const room = silent.rooms[0]?.id
    const own = planner.window(silent, silent, `/rooms/${room}/windows/${silent.rooms[0]?.windows[0]?.id}`)
    expect(
      own.checks.filter(({ code }) => ['drapery/sag', 'drapery/holds', 'drapery/rod-lifts', 'drapery/supports'].includes(code)),
    ).toEqual([])
  })
})

test.each([
  ['short', 'No. 8 × 2'],
  ['rating', 'none'],
])('a usual screw that would hold is named: %s', (window, enough) =>
  expect(checkOf(plan(window), 'drapery/holds')?.values.enough).toBe(enough),
)

test('with the screws that are named the plan is right by itself', () => {
  const [way] = checkOf(plan('short'), 'drapery/holds')?.ways ?? []
  expect(way).toMatchObject({ code: 'drapery/way-screws', values: { screw: 'No. 8 × 2' } })
  const brackets = Object.fromEntries((way?.put ?? []).map(({ at: place, value }) => [place.split('/').at(-2), { screw: value }]))
  expect(Object.keys(brackets)).toEqual(['left', 'middle', 'right'])
  expect(checkOf(plan('short', [[`${over('short')}/found/brackets`, brackets]]), 'drapery/holds')?.verdict).toBe('pass')
})
test('a screw that was driven and is written otherwise holds nothing that is known', () =>
  expect(
    checkOf(plan('short', [[`${over('short')}/found/brackets`, { left: { screw: 'a long one' } }]]), 'drapery/holds'),
  ).toMatchObject({ verdict: 'fail' }))

describe('where supports go', () => {
  test.each(['sags', 'studs'])('after each way out of %s the plan is right by itself', (window) => {
    const { ways = [] } = checkOf(plan(window), 'drapery/supports') ?? {}
    expect(ways.length).toBeGreaterThan(0)
    for (const { put, values } of ways) {
      const puts = put.map(
        ({ at: place, value }): Change => [place, typeof value === 'object' && 'length' in value ? value.length : value],
      )
      const planned = plan(window, puts)
      for (const code of ['drapery/sag', 'drapery/holds', 'drapery/supports', 'drapery/span'])
        expect([code, checkOf(planned, code)?.verdict]).toEqual([code, 'pass'])
      const [sag, most] = ['#sag-left-s1', '#sag-left-s1-most'].map((name) => number(planned, name)) as [number, number]
      expect(Math.ceil((100 * sag) / most)).toBeLessThanOrEqual((values.sag as { count: number }).count + 2)
    }
  })
  test('closed rings leave the place where the pair meets', () => {
    const [way] = checkOf(plan('sags'), 'drapery/supports')?.ways ?? []
    expect(way?.put).toEqual([{ at: `${over('sags')}/found/supports/s1/x`, value: { length: 24 * inch } }])
  })
  test('studs that are known are taken, and a second way does without the best of them', () => {
    const ways = checkOf(plan('studs'), 'drapery/supports')?.ways ?? []
    expect(ways.map(({ values }) => [values.on, values.a])).toEqual([
      ['studs', { length: 23 * inch }],
      ['studs', { length: 7 * inch }],
    ])
  })
  test('once a bracket is fixed nothing is advised', () =>
    expect(
      checkOf(
        plan('studs', [[`${over('studs')}/found/brackets`, { left: { fixed: true, hole: 88 * inch } }]]),
        'drapery/supports',
      ),
    ).toBeUndefined())
  test('more supports make no screw longer: of screws that are too short nothing is advised', () =>
    expect(checkOf(plan('short'), 'drapery/supports')).toBeUndefined())
  test('where more supports do not help it is said so', () =>
    expect(checkOf(plan('rating'), 'drapery/supports')).toMatchObject({ says: 'drapery/supports.none' }))
})

test('a double bracket carries the rod behind as well, at its own projection', () => {
  const { found: job } = example('two-and-three-layers')
  const place = '/rooms/salon/windows/two'
  const panels =
    job.rooms[0]?.windows
      .find(({ id }) => id === 'two')
      ?.treatments.flatMap(({ id, panels }) => panels.map((panel) => `${id}/panels/${panel.id}`)) ?? []
  const changes: readonly Change[] = [
    ...panels.map((panel): Change => [`${place}/treatments/${panel}/weight`, '3 kg']),
    ['/hardware/sheer-rod/rod/weight', '450 g/m'],
    ['/hardware/white-double/rod/weight', '900 g/m'],
  ]
  const whole = jobWith(changes, job)
  const planned = planner.window(whole, whole, place)
  expect(number(planned, '/over#holds-left')).toBeCloseTo(
    number(planned, '/over#load-left') + number(planned, '/sheer#load-left'),
    6,
  )
  expect(planned.checks.filter(({ code, on }) => code === 'drapery/holds' && on.endsWith('/sheer'))).toEqual([])
  // While nobody says what the rod behind weighs, or where its support stands, nothing is known of the brackets of both.
  const lacking = (change: Change) => {
    const other = changed(whole, change[0], change[1])
    return planner.window(other, other, place).checks.find(({ code, on }) => code === 'drapery/holds' && on.endsWith('/over'))
  }
  for (const change of [
    ['/hardware/sheer-rod/rod/weight', undefined],
    [`${place}/treatments/sheer/rod/supports/mid/x`, 40 * inch],
  ] as const)
    expect(lacking(change)).toMatchObject({ verdict: 'unknown', values: { lacks: { code: 'drapery/lacks-second-rod' } } })
})

describe('what panels weigh by their cloth', () => {
  const lined: readonly Change[] = [
    [
      '/fabrics',
      [
        { id: 'oat-linen', name: 'Oat linen', weight: '320 g/m2' },
        { id: 'sateen', name: 'Sateen', weight: '150 g/m2' },
      ],
    ],
    [
      `${over('steady')}/panels/left`,
      {
        ...found.rooms[0]?.windows[0]?.treatments[0]?.panels[0],
        weight: undefined,
        hem: 4 * inch,
        buckram: 4 * inch,
        hemWeight: '100 g',
      },
    ],
    [`${over('steady')}/lining`, 'sateen'],
  ]
  test('both layers over the flat width and the length with hem and heading, and the weights of the hem', () => {
    const planned = plan('steady', lined)
    const area = 89 * 0.0254 * (87.5 + 8 + 4) * 0.0254
    expect(number(planned, 'left#face-weighs')).toBeCloseTo(0.32 * area, 9)
    expect(number(planned, 'left#weighs')).toBeCloseTo((0.32 + 0.15) * area + 0.1, 9)
  })
  test('a lining that is only named weighs nobody knows what', () => {
    const named = plan('steady', [...lined.slice(1), [`${over('steady')}/lining`, undefined]])
    expect(checkOf(named, 'drapery/sag')).toMatchObject({
      says: 'drapery/sag.weights',
      at: `${over('steady')}/panels/left/weight`,
    })
  })
})

test('a support that stands 1/8 in low carries less, and the outer brackets more', () => {
  const hole = (name: string) => number(plan('steady'), `#planned-hole-${name}`)
  const fixed = { left: hole('left'), middle: hole('support-middle') - inch / 8, right: hole('right') }
  const brackets = Object.fromEntries(Object.entries(fixed).map(([name, each]) => [name, { fixed: true, hole: each }]))
  const low = plan('steady', [[`${over('steady')}/found/brackets`, brackets]])
  // Two equal bays: 6 E I D / L³ less in the middle, half of that more at each end (Kassimali, Eq. D.10), and so much is above what hangs on the middle.
  const [long, outer, inner] = [31 * 0.0254, 1.125 * 0.0254, (1.125 - 2 / 16) * 0.0254]
  const ei = 29_000_000 * 6894.757293 * (Math.PI / 64) * (outer ** 4 - inner ** 4)
  const less = (6 * ei * 0.125 * 0.0254) / long ** 3
  expect(number(low, '#load-middle')).toBeCloseTo(number(plan('steady'), '#load-middle') - less, 5)
  expect(number(low, '#load-left')).toBeCloseTo(number(plan('steady'), '#load-left') + less / 2, 5)
  expect(checkOf(low, 'drapery/rod-lifts')?.verdict).toBe('pass')
})

describe('what nobody says is not known, and nothing is made milder by it', () => {
  const at_ = over('steady')
  const holds = (changes: readonly Change[]) => {
    const own = checkOf(plan('steady', changes), 'drapery/holds')
    return [own?.verdict, (own?.values.lacks as { code?: string } | undefined)?.code]
  }
  test.each<readonly [string, Change, string]>([
    ['how far out the rod is', ['/hardware/steel-tube/bracket/projection', undefined], 'holes'],
    ['what a support is like', ['/hardware/steel-tube/support', undefined], 'holes'],
    ['how thick the board is', [`${at('steady')}/walls/a/buildUp/board`, undefined], 'board'],
  ])('%s', (_, change, lacks) => expect(holds([change])).toEqual(['unknown', `drapery/lacks-${lacks}`]))
  test('wood on the face of a wall is no stud', () =>
    expect(
      holds([
        [`${at('steady')}/walls/a/buildUp/surface`, 'wood'],
        [`${at('steady')}/walls/a/buildUp/board`, undefined],
      ]),
    ).toEqual(['unknown', 'drapery/lacks-board']))
  test('a listing of a hollow wall names its board, or is not used', () => {
    const board: Change = ['/fasteners/board-anchor/listing/board', undefined]
    expect(checkOf(plan('hollow', [board]), 'drapery/holds')?.values.lacks).toEqual({ code: 'drapery/lacks-board' })
  })
  test.each([
    ['no inner tube', [['/hardware/pushed-together/rod/inner', undefined]]],
    ['no place', [[`${over('pushed')}/rod/thin`, undefined]]],
    ['a place the wrong way round', [[`${over('pushed')}/rod/thin`, { from: 54 * inch, to: 12 * inch }]]],
    ['a place beyond the rod', [[`${over('pushed')}/rod/thin`, { from: 80 * inch, to: 90 * inch }]]],
    ['a wall that fills it', [['/hardware/pushed-together/rod/inner/wall', 0.5 * inch]]],
  ] as const)('a rod that is pushed together, with %s', (_, changes) => {
    const own = checkOf(plan('pushed', changes as readonly Change[]), 'drapery/sag')
    expect([own?.verdict, own?.says]).toEqual(['unknown', 'drapery/sag.stiffness'])
  })
  test.each([
    [
      'at one place',
      [
        { id: 'a', x: 24 * inch },
        { id: 'b', x: 24 * inch },
      ],
    ],
    ['at an end bracket', [{ id: 'a', x: 55 * inch }]],
    ['beyond the rod', [{ id: 'a', x: -20 * inch }]],
  ])('supports %s', (_, supports) =>
    expect(checkOf(plan('steady', [[`${at_}/rod/supports`, supports]]), 'drapery/sag')?.says).toBe('drapery/sag.places'),
  )
  test.each([
    ['a rating of nothing', [['/hardware/steel-tube/bracket/rated', '0 lb']], 'steady'],
    ['a listing of nothing', [['/fasteners/board-anchor/listing/pull', '0 lbf']], 'hollow'],
    ['a plate of no thickness', [['/hardware/steel-tube/bracket/thickness', 0]], 'steady'],
    ['a tube of no size', [['/hardware/steel-tube/rod/section', { shape: 'round', height: 0 }]], 'steady'],
    [
      'a splice said twice',
      [
        [
          `${over('pushed')}/rod/splices`,
          [
            { id: 'a', fromLeft: 32 * inch },
            { id: 'b', fromLeft: 32 * inch },
          ],
        ],
      ],
      'pushed',
    ],
    ['a support named as a bracket', [[`${over('steady')}/rod/supports`, [{ id: 'left', x: 24 * inch }]]], 'steady'],
  ] as const)('%s costs no rule', (_, changes, window) =>
    expect(plan(window, changes as unknown as readonly Change[]).faults).toEqual([]),
  )
  test('a panel that covers nothing still weighs', () => {
    const planned = plan('steady', [[`${over('steady')}/found/stacks`, { left: 0 }]])
    const all = ['left', 'middle', 'right'].map((name) => number(planned, `#load-${name}`))
    expect(all.reduce((sum, each) => sum + each, 0)).toBeGreaterThan(number(planned, 'left#load') * 2 * 9.8)
  })
  test('a rod on two brackets that tips out of one is named', () => {
    const changes: readonly Change[] = [
      ['/hardware/slim-open/ring/room', 16 * inch],
      ['/hardware/slim-open/bracket/holdsDown', false],
      ...['left', 'right'].map(
        (panel): Change => [`${over('studs')}/panels/${panel}/weight`, panel === 'left' ? '40 kg' : '0.1 kg'],
      ),
    ]
    expect(checkOf(plan('studs', changes), 'drapery/rod-lifts')?.verdict).toBe('warn')
  })
})

test('a support that is added on site is marked, drilled and counted as one of the order', () => {
  const added: Change = [`${over('studs')}/found/supports`, { s1: { x: 23 * inch } }]
  const steps = plan('studs', [added]).steps.map(({ id }) => id)
  expect(steps).toContain('mark-support-s1')
  expect(plan('studs').steps.map(({ id }) => id)).not.toContain('mark-support-s1')
})

test('what the drill met decides how many holes are drilled', () => {
  const drilled = (changes: readonly Change[]) => plan('steady', changes).steps.find(({ id }) => id === 'drill')?.code
  expect(drilled([])).toBe('drapery/drill-wood')
  expect(drilled([[`${over('steady')}/found/brackets`, { left: { behind: 'hollow' } }]])).toBe('drapery/drill-other')
  expect(drilled([[`${over('steady')}/panels/left/weight`, '11 kg']])).toBe('drapery/drill-all')
})

describe('lag screws', () => {
  const lag = (diameter: number, length: number) =>
    screwListed({
      id: 'lag',
      name: 'Lag',
      into: 'wood',
      as: 'lag screw',
      diameter: (diameter * inch) as never,
      length: (length * inch) as never,
    })
  const layers = { plate: 0.125 * 0.0254, board: 0.5 * 0.0254, wood: Number.POSITIVE_INFINITY, gravity: 0.36 }
  test('hold by their thread without the tip', () => {
    const screw = lag(0.25, 3)
    const holds = screw && woodHolds(screw, layers)
    // 1800 × 0.36^1.5 × 0.25^0.75 lb/in (NDS 2018, Eq. 12.2-1), 0.9 of it for a load that stays, over 1 1/2 + 1/2 − 5/32 in.
    const pull = 1800 * 0.36 ** 1.5 * 0.25 ** 0.75 * 0.9 * (2 - 5 / 32) * 4.4482216152605
    expect(holds).toMatchObject({ ok: true, pull: expect.closeTo(pull, 6) })
  })
  test('whose root is printed nowhere hold nothing here', () => {
    const screw = lag(0.375, 3)
    expect(screw && woodHolds(screw, layers)).toEqual({ ok: false, why: 'size' })
  })
})
