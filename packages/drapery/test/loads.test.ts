import { inch, metre } from '@evenhem/length'
import { changed } from '@evenhem/plugin/kit'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import type { RodLoads } from '../src/facts/index.ts'
import { type Change, checkOf, found, jobWith, number, over, plan, planner, verdict } from './will-it-hold.ts'

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

test('years add to how far a rod bends, not to how its brackets stand', () => {
  const wooden: Change = ['/hardware/steel-tube/rod/material', 'wood']
  const hole = (name: string) => number(plan('steady', [wooden]), `#planned-hole-${name}`)
  const fixed = { left: hole('left'), middle: hole('support-middle') - inch / 8, right: hole('right') }
  const brackets = Object.fromEntries(Object.entries(fixed).map(([name, each]) => [name, { fixed: true, hole: each }]))
  const low = plan('steady', [wooden, [`${over('steady')}/found/brackets`, brackets]])
  const loads = low.facts.find(({ id }) => id === 'drapery/rod-loads@1')?.value as RodLoads | undefined
  expect(loads?.line.find(({ x }) => x === 24 * inch)?.down).toBeCloseTo(inch / 8, -1)
})

test('drawing and sentence name the same sag, also where two are alike', () => {
  const same = plan('steady')
  const drawn = same.layers.flatMap(({ view, marks }) => (view === 'loads' ? marks : []))
  const [figure] = drawn.flatMap((mark) =>
    mark.kind === 'dimension' && mark.figure.what === 'drapery/sags-at-most' ? mark.figure : [],
  )
  const x = number(same, `${figure?.of.split('#')[1]}-x`)
  expect(checkOf(same, 'drapery/sag')?.values.x).toEqual({ length: x })
})
