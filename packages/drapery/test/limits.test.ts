import type { Job } from '@evenhem/job'
import { inches } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { drapery } from '../src/index.ts'

// Both sides of the limit of each check, on one good window: a pair, casing 48 × 82, cover −8 to 56, brackets at −7 and 55, hem 1/2,
// finished length 87 1/2, top of rod 89 5/8, plates from 89 1/8 down 3, projection 3 1/2, ceiling 108.

const planner = createPlanner([drapery, rodAndRing, returns])
const { found } = example('heron-point')
const window = '/rooms/living-room/windows/w1'
const over = `${window}/treatments/over`
const wall = `${window}/walls/a`
type Change = readonly [place: string, value: unknown]

const checksOf = (changes: readonly Change[]) => {
  const job = changes.reduce<Job>((before, [place, value]) => changed(before, place, value), found)
  const plan = planner.window(job, job, window)
  expect(plan.faults).toEqual([])
  return plan.checks
}
const verdictOf = (code: string, changes: readonly Change[]) => {
  const all = checksOf(changes).filter((check) => check.code === code)
  const worst = ['fail', 'unknown', 'warn', 'pass'].find((verdict) => all.some((check) => check.verdict === verdict))
  return [worst, all.find((check) => check.verdict === worst)?.stops]
}
const thing = (kind: string, [left, bottom, width, height, depth]: readonly number[], keepOff?: number): Change => [
  `${wall}/obstacles`,
  [
    {
      id: 'thing',
      kind,
      left: inches(left!),
      bottom: inches(bottom!),
      width: inches(width!),
      height: inches(height!),
      depth: inches(depth!),
      ...(keepOff === undefined ? {} : { keepOff: inches(keepOff) }),
    },
  ],
]
const opening = `${wall}/openings/o`
const fabric = (settling: number): Change => ['/fabrics/oat-linen/settling', settling]
const step = 1 / 64

describe('what stands on the wall', () => {
  // the left plate is from −7 5/8 to −6 3/8, from 86 1/8 to 89 1/8
  test.each([
    ['beside the plate', [-9.625, 87.5, 2, 1.5, 1], undefined, 'pass'],
    ['a hair into the plate', [-9.625 + step, 87.5, 2, 1.5, 1], undefined, 'fail'],
    ['as far under it as it must keep', [-9, 78, 4, 6.125, 1], 2, 'pass'],
    ['over the hole of the wall angle', [-9, 87, 2, 0.5, 1], undefined, 'fail'],
    ['a hair nearer than it must keep', [-9, 78, 4, 6.125 + step, 1], 2, 'fail'],
    ['under the plate', [-9, 80, 4, 6.125, 1], undefined, 'pass'],
    ['reaching up into the plate', [-9, 80, 4, 6.125 + step, 1], undefined, 'fail'],
    ['flat on the wall behind the rod', [20, 86, 4, 3, 0.25], undefined, 'pass'],
    ['standing out into the rod', [20, 86, 4, 3, 2], undefined, 'fail'],
  ] as const)('a switch %s', (_, box, keepOff, expected) =>
    expect(verdictOf('drapery/obstacle', [thing('switch', box, keepOff)])).toEqual([
      expected,
      expected === 'fail' ? 'mark' : undefined,
    ]),
  )

  test.each([
    ['switch', [-12, 40, 4, 4, 1], 'pass'],
    ['switch', [-12 + step, 40, 4, 4, 1], 'warn'],
    ['detector', [10, 40, 4, 4, 1], 'warn'],
  ] as const)('a %s at %o and the cloth', (kind, box, expected) =>
    expect(verdictOf('drapery/covered', [thing(kind, box)])[0]).toBe(expected),
  )
  test('an outlet behind the cloth is no trouble', () =>
    expect(checksOf([thing('outlet', [10, 12, 3, 5, 0.25])]).filter(({ code }) => code === 'drapery/covered')).toEqual([]))

  // Seattle Fire Department: at least 12 in from an electric baseboard heater; reference cases heater-1 and heater-2
  test.each([
    ['electric heater', 56 + 12, 'pass', undefined],
    ['electric heater', 56 + 11.875, 'fail', 'mark'],
    ['electric heater', 10, 'fail', 'mark'],
    ['hydronic heater', 56 + 6, 'pass', undefined],
    ['hydronic heater', 56 + 6 - step, 'warn', undefined],
    ['hydronic heater', 10, 'warn', undefined],
  ] as const)('an %s at %s', (kind, left, verdict, stops) =>
    expect(verdictOf('drapery/heater', [thing(kind, [left, 2, 20, 6, 3])])).toEqual([verdict, stops]),
  )
  test('the maker’s own distance wins', () =>
    expect(verdictOf('drapery/heater', [thing('electric heater', [56 + 8, 2, 20, 6, 3], 8)])[0]).toBe('pass'))
})

describe('overhead', () => {
  // rod 89 5/8, its middle 11/16 lower; finials reach 1 1/4 above that: 90 3/16; lifted in 3/8: 90
  test.each([
    [90.1875, 'pass'],
    [90.1875 - step, 'fail'],
  ])('a ceiling at %s', (ceiling, expected) =>
    expect(verdictOf('drapery/head-room', [['/rooms/living-room/ceiling', inches(ceiling)]])).toEqual([
      expected,
      expected === 'fail' ? 'mark' : undefined,
    ]),
  )
  test.each([
    ['over the rod', 3, 'fail'],
    ['behind rod and finials', 2.25, 'pass'],
    ['a hair over the finials', 2.25 + step, 'fail'],
  ])('a low crown %s', (_, out, expected) =>
    expect(verdictOf('drapery/head-room', [[`${wall}/crown`, { bottom: inches(88), projection: inches(out) }]])[0]).toBe(
      expected,
    ),
  )
  test.each([
    [120, 'pass'],
    [89.5, 'warn'],
  ])('work above %s ft-high settings', (most, expected) =>
    expect(verdictOf('drapery/ladder', [['/job/workroom/rules/ladderHeight', inches(most)]])[0]).toBe(expected),
  )
})

describe('the opening', () => {
  // rings hang down to 87 1/2
  test.each([
    [87.5, 'pass'],
    [87.5 + step, 'fail'],
  ])('a sash that swings in to %s', (top, expected) =>
    expect(
      verdictOf('drapery/sash', [
        [`${opening}/opens`, 'in'],
        [`${opening}/swing`, { top: inches(top) }],
      ]),
    ).toEqual([expected, expected === 'fail' ? 'mark' : undefined]),
  )
  test('a sash that opens out is not asked about', () =>
    expect(checksOf([[`${opening}/opens`, 'out']]).filter(({ code }) => code === 'drapery/sash')).toEqual([]))
  test.each([
    [2.5, 'pass'],
    [2.5 + step, 'warn'],
    [3.5, 'warn'],
    [3.5 + step, 'fail'],
  ])('a stool %s deep', (depth, expected) =>
    expect(verdictOf('drapery/stool', [[`${opening}/sill/depth`, inches(depth)]])[0]).toBe(expected),
  )
  test.each([
    ['above the casing', 82, -7, 'pass'],
    ['far beside it', 92, -7, 'pass'],
    ['beside it, edge to edge', 92, -0.625, 'pass'],
    ['a hair on it', 92, -0.625 + step, 'fail'],
    ['half on it', 92, 0, 'fail'],
    ['a hair off it', 92, 0.625 - step, 'fail'],
    ['wholly on it', 92, 0.625, 'pass'],
    ['across its top', 88, 3, 'fail'],
  ] as const)('a bracket %s', (_, top, x, expected) => {
    const changes: readonly Change[] = [
      [`${opening}/casing/top`, inches(top)],
      [`${over}/rod`, { pastLeft: inches(1 - x), pastRight: inches(8) }],
    ]
    expect(verdictOf('drapery/casing-edge', changes)[0]).toBe(expected)
  })
  test.each([
    ['wood', [], 'pass'],
    ['hollow', [], 'warn'],
    ['hollow', [-7.75, 55.75], 'pass'],
    ['hollow', [-7.75 - step, 55], 'warn'],
    ['unknown', [], 'unknown'],
  ] as const)('%s behind the wall and studs at %o', (behind, studs, expected) => {
    const changes: readonly Change[] = [
      [`${wall}/buildUp/behind`, behind],
      [`${wall}/studs`, studs.map((x, i) => ({ id: `s${i}`, x: inches(x) }))],
    ]
    expect(verdictOf('drapery/behind-wall', changes)[0]).toBe(expected)
  })
})

describe('the cloth', () => {
  test.each([
    [0, 'stationary', undefined],
    [-1, 'stationary', 'pass'],
    [-1, 'pair', 'warn'],
  ] as const)('a clearance of %s on a %s', (clearance, draw, expected) =>
    expect(
      verdictOf('drapery/break', [
        [`${over}/clearance`, inches(clearance)],
        [`${over}/draw`, draw],
      ])[0],
    ).toBe(expected),
  )
  test.each([
    [4 - step, 'pass', undefined],
    [4, 'fail', 'mark'],
  ])('pins set %s deep in a heading of 4', (pin, verdict, stops) =>
    expect(verdictOf('drapery/pin-in-heading', [[`${over}/panels/left/pin`, inches(pin)]])).toEqual([verdict, stops]),
  )
  test.each([
    [0.625, 'pass'],
    [0.625 + step, 'warn'],
  ])('pins of 1/2 and %s', (pin, expected) =>
    expect(verdictOf('drapery/pins-alike', [[`${over}/panels/right/pin`, inches(pin)]])[0]).toBe(expected),
  )
  test.each([
    [0.25, 'pass'],
    [0.25 - step, 'warn'],
    [0.75, 'pass'],
    [0.75 + step, 'warn'],
  ])('pins on rings, %s deep', (pin, expected) =>
    expect(verdictOf('rod-and-ring/pins', [[`${over}/panels/right/pin`, inches(pin)]])[0]).toBe(expected),
  )
  // spaces of 30 1/2 in 8 are 3 13/16; in 6 they are 5 1/12; in 7 4 5/14
  test.each([
    [9, 9, 'pass'],
    [9, 8, 'warn'],
    [7, 7, 'warn'],
  ])('%s and %s pleats', (left, right, expected) =>
    expect(
      verdictOf('drapery/pleat-spaces', [
        [`${over}/panels/left/pleats`, left],
        [`${over}/panels/right/pleats`, right],
      ])[0],
    ).toBe(expected),
  )
  // half an inch is 4/7 % of 87 1/2
  test.each([
    [0.571, 'pass'],
    [0.572, 'warn'],
    [2, 'warn'],
  ])('cloth that settles by %s %%', (settling, expected) =>
    expect(verdictOf('drapery/settling', [fabric(settling)])[0]).toBe(expected),
  )
  test.each([
    ['23 kg', 'pass'],
    ['50 lb', 'pass'],
    ['51 lb', 'warn'],
    ['23.01 kg', 'warn'],
  ])('a panel of %s', (weight, expected) =>
    expect(verdictOf('drapery/lift', [[`${over}/panels/left/weight`, weight]])[0]).toBe(expected),
  )
})

describe('rod and rings', () => {
  // needed: 56 1/8 + 8 1/8 = 64 1/4
  test.each([
    [64.125, 'pass', undefined],
    [64.125 - step, 'fail', 'mark'],
    [65.25, 'pass', undefined],
    [65.25 + step, 'warn', undefined],
  ])('a rod cut to %s', (cut, verdict, stops) =>
    expect(verdictOf('drapery/rod-length', [[`${over}/rod/cut`, inches(cut)]])).toEqual([verdict, stops]),
  )
  const support = (x: number): Change => [`${over}/rod/supports`, [{ id: 'one', x: inches(x) }]]
  const splice = (fromLeft: number): Change => [`${over}/rod/splices`, [{ id: 'one', fromLeft: inches(fromLeft) }]]
  // the rod begins at −8 1/8
  test.each([
    [32.125 + 2, 'pass'],
    [32.125 + 2 + step, 'fail'],
    [32.125 - 2, 'pass'],
    [32.125 - 2 - step, 'fail'],
  ])('a splice %s from the left, with a support in the middle', (fromLeft, expected) =>
    expect(verdictOf('drapery/splice-held', [support(24), splice(fromLeft)])[0]).toBe(expected),
  )
  test('a splice away from every support is a fault also beside a bracket it is not', () =>
    expect(verdictOf('drapery/splice-held', [splice(32.125)])[0]).toBe('fail'))
  test.each([
    [62, 'pass'],
    [62 - step, 'fail'],
  ])('a rod that may span %s', (most, expected) =>
    expect(verdictOf('drapery/span', [['/hardware/ash-rod/rod/span', inches(most)]])[0]).toBe(expected),
  )
  // half a support of 1 and half a ring of 1/4: 5/8 from the meeting point
  test.each([
    [24, 'closed', 'pass'],
    [24.625, 'closed', 'pass'],
    [24.625 + step, 'closed', 'fail'],
    [10, 'closed', 'fail'],
    [10, 'passing', 'pass'],
  ] as const)('a support at %s and %s rings', (x, passes, expected) =>
    expect(verdictOf('rod-and-ring/support', [support(x), ['/hardware/ash-rod/ring/passes', passes]])[0]).toBe(expected),
  )
  test.each([
    [1.375, 'fail', 'mount'],
    [1.375 + step, 'pass', undefined],
  ])('rings of %s inside on a rod of 1 3/8', (inside, verdict, stops) =>
    expect(verdictOf('rod-and-ring/ring-on-rod', [['/hardware/ash-rod/ring/inside', inches(inside)]])).toEqual([verdict, stops]),
  )
  test.each([
    [0.1875, 'fail'],
    [0.1875 - step, 'pass'],
  ])('a wire of %s in an eye of 3/16', (wire, expected) =>
    expect(verdictOf('rod-and-ring/hook-in-eye', [[`${over}/hooks/wire`, inches(wire)]])[0]).toBe(expected),
  )
})

describe('brackets that are not on the wall', () => {
  const out = (changes: readonly Change[]) => {
    const job = changes.reduce<Job>((before, [place, value]) => changed(before, place, value), found)
    return planner.window(job, job, window).reckonings.find(({ name }) => name === `${over}#projection`)?.value
  }
  test('on a casing they stand out by its thickness more', () => expect(out([[`${over}/mount`, 'casing']])).toBe(inches(4.25)))
  test('on a crown by its projection more', () =>
    expect(
      out([
        [`${over}/mount`, 'crown'],
        [`${wall}/crown`, { bottom: inches(88), projection: inches(2) }],
      ]),
    ).toBe(inches(5.5)))
  test('a casing whose head was read at three points is as high as the highest', () => {
    const head = [86, 86.25, 86.125].map((y, i) => ({ id: `p${i}`, x: inches(24 * i), y: inches(y) }))
    const job = changed(changed(found, `${opening}/head`, head), `${over}/rod/aboveCasing`, inches(3.375))
    const all = planner.window(job, job, window).checks.filter(({ code }) => code === 'drapery/rod-height')
    expect(all.map(({ verdict }) => verdict)).toEqual(['pass', 'pass'])
  })
})

describe('the order against itself', () => {
  test.each([
    [64.125, 'pass', undefined],
    [64.125 + step, 'fail', 'mark'],
    [63.875, 'pass', undefined],
    [63.875 - step, 'fail', 'mark'],
  ])('a rod width of %s where both pasts make 64', (width, verdict, stops) =>
    expect(
      verdictOf('drapery/widths-agree', [[`${over}/rod`, { width: inches(width), pastLeft: inches(8), pastRight: inches(8) }]]),
    ).toEqual([verdict, stops]),
  )
  test.each([
    ['pair', ['left', 'right'], 'pass'],
    ['pair', ['left', 'left'], 'fail'],
    ['one-way left', ['left', 'right'], 'fail'],
    ['stationary', ['left', 'right'], 'pass'],
  ] as const)('a %s of panels with their outer edges %o', (draw, [left, right], expected) => {
    const changes: readonly Change[] = [
      [`${over}/draw`, draw],
      [`${over}/panels/left/outer`, left],
      [`${over}/panels/right/outer`, right],
    ]
    expect(verdictOf('drapery/panels-of-draw', changes)).toEqual([expected, expected === 'fail' ? 'unpack' : undefined])
  })
  test.each([
    [18, 'pass'],
    [18 - step, 'warn'],
    [18 + step, 'warn'],
  ])('a repeat of 18 that came as %s', (received, expected) =>
    expect(
      verdictOf('drapery/repeat-received', [
        ['/fabrics/oat-linen/repeat', { vertical: inches(18), received: inches(received) }],
      ])[0],
    ).toBe(expected),
  )
  test.each([
    [2, 'pass'],
    [1, 'warn'],
    [0, 'warn'],
  ])('a rod ordered from a ceiling that was read %s times', (times, expected) => {
    const points = [-8, 56].slice(0, times).map((x, i) => ({ id: `p${i}`, x: inches(x), y: inches(108) }))
    expect(
      verdictOf('drapery/ceiling-read', [
        [`${over}/rod/belowCeiling`, inches(18.375)],
        [`${window}/ceiling`, points],
      ])[0],
    ).toBe(expected)
  })
})

describe('several together', () => {
  // The outer layer of two bears further out than the inner one's 3 1/2 by so much.
  test.each([
    [5.5, 'pass', undefined],
    [5.5 - step, 'fail', 'mark'],
  ])('an outer layer at %s', (out, verdict, stops) => {
    const [rod] = (found.hardware ?? []).filter(({ id }) => id === 'ash-rod')
    const far = { ...rod, id: 'far', bracket: { ...(rod as unknown as { bracket: object }).bracket, projection: inches(out) } }
    const [inner] = found.rooms[0]?.windows[0]?.treatments ?? []
    const layers = [
      { ...inner, id: 'inner' },
      { ...inner, hardware: 'far' },
    ]
    expect(
      verdictOf('drapery/layers', [
        ['/hardware', [...(found.hardware ?? []), far]],
        [`${window}/treatments`, layers],
      ]),
    ).toEqual([verdict, stops])
  })

  const room = '/rooms/living-room'
  const ofJob = (code: string, changes: readonly Change[]) => {
    const job = changes.reduce<Job>((before, [place, value]) => changed(before, place, value), found)
    const plan = planner.job(job, job)
    expect(plan.faults).toEqual([])
    return plan.checks
      .filter((check) => check.code === code && (check.at === room || check.at.startsWith(`${room}/`)))
      .map(({ verdict }) => verdict)
  }
  const other = `${room}/windows/w2/treatments/over`
  const longer = (by: number): readonly Change[] =>
    ['left', 'right'].map((side) => [`${other}/panels/${side}/finishedLength`, inches(87.5 + by)])
  test.each([
    [0.125, 'pass'],
    [0.125 + step, 'warn'],
  ])('rods of one room %s apart', (by, expected) => expect(ofJob('drapery/room-rods', longer(by))).toEqual([expected]))
  test.each([
    [0.625, 'pass'],
    [0.625 + step, 'warn'],
    [0.375 - step, 'warn'],
  ])('hems of one room at 1/2 and %s', (clearance, expected) =>
    expect(ofJob('drapery/room-hems', [[`${other}/clearance`, inches(clearance)]])).toEqual([expected]),
  )
  test('what may differ is not compared', () => {
    const changes = [...longer(1), [`${room}/mayDiffer`, ['rods']] as const]
    expect([ofJob('drapery/room-rods', changes), ofJob('drapery/room-hems', changes)]).toEqual([[], ['pass']])
  })
  test.each([
    [2.125, 'pass'],
    [2.125 + step, 'warn'],
  ])('patterns that begin 2 and %s below the top', (start, expected) =>
    expect(
      ofJob('drapery/room-patterns', [
        [`${over}/panels/left/patternStart`, inches(2)],
        [`${other}/panels/left/patternStart`, inches(start)],
      ]),
    ).toEqual([expected]),
  )
  test.each([
    ['LR 1 left', ['fail']],
    ['LR 1 also left', ['pass']],
  ])('a second bag labelled %s', (label, expected) =>
    expect(ofJob('drapery/bag-labels', [[`${other}/panels/left/bag`, label]])).toEqual(expected),
  )
})

describe('what must not be named', () => {
  const named = (changes: readonly Change[]) =>
    checksOf(changes)
      .filter(({ verdict }) => verdict !== 'pass')
      .map(({ code }) => code)
  test('the window itself has nothing open', () => expect(named([])).toEqual([]))
  test('stationary panels that do not cover the frame', () =>
    expect(
      named([
        [`${over}/draw`, 'stationary'],
        [`${over}/panels/left/share`, inches(14)],
        [`${over}/panels/right/share`, inches(14)],
      ]),
    ).toEqual([]))
  test('unlike pleat counts whose spaces are nearly alike', () =>
    expect(
      named([
        [`${over}/rod/middle`, inches(22)],
        [`${over}/panels/left/firstToLast`, inches(28.5)],
        [`${over}/panels/left/pleats`, 8],
        [`${over}/panels/right/firstToLast`, inches(32.5)],
      ]),
    ).toEqual([]))
  test('unlike returns where projections differ', () =>
    expect(
      named([
        [`${over}/projection`, { left: inches(3.5), right: inches(5) }],
        [`${over}/panels/right/return`, inches(5)],
      ]),
    ).toEqual([]))
  test('a support or a splice at the meeting point', () =>
    expect(
      named([
        [`${over}/rod/supports`, [{ id: 'one', x: inches(24) }]],
        [`${over}/rod/splices`, [{ id: 'one', fromLeft: inches(32.125) }]],
      ]),
    ).toEqual([]))
  test('surplus rings', () => expect(named([[`${over}/with/rod-and-ring/rings`, 40]])).toEqual([]))
  test('a plate above its rod', () => expect(named([['/hardware/ash-rod/bracket/top', inches(0.25)]])).toEqual([]))
  test('no return at all', () =>
    expect(
      named([
        [`${over}/with/returns`, undefined],
        ...(['left', 'right'] as const).flatMap((side): readonly Change[] => [
          [`${over}/panels/${side}/return`, inches(0)],
          [`${over}/panels/${side}/outerFlat`, inches(1)],
          [`${over}/panels/${side}/firstToLast`, inches(29.5)],
        ]),
      ]),
    ).toEqual([]))
  test('unequal extensions', () => expect(named([[`${over}/rod/pastLeft`, inches(6)]])).toEqual([]))
  test('a repeat that is larger than the allowance', () =>
    expect(named([['/fabrics/oat-linen/repeat', { vertical: inches(27), received: inches(27) }]])).toEqual([]))
})
