import { inch } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import { screwListed, screwNamed, woodHolds } from '../src/rules/screw.ts'
import { at, type Change, checkOf, number, over, plan, verdict } from './will-it-hold.ts'

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
