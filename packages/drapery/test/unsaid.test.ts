import { inch } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import { at, type Change, checkOf, number, over, plan } from './will-it-hold.ts'

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
