import { inch } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import { type Change, checkOf, number, over, plan } from './will-it-hold.ts'

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

test('a support that is added on site is marked, drilled and counted as one of the order', () => {
  const added: Change = [`${over('studs')}/found/supports`, { s1: { x: 23 * inch } }]
  const steps = plan('studs', [added]).steps.map(({ id }) => id)
  expect(steps).toContain('mark-support-s1')
  expect(plan('studs').steps.map(({ id }) => id)).not.toContain('mark-support-s1')
})
