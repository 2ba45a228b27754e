import { expect, test } from 'vitest'
import {
  type Beam,
  type Bent,
  beamOf,
  creepFactors,
  downAt,
  largestMoment,
  momentAt,
  momentPeaks,
  type Point,
  roundTube,
  type Spread,
  sagBetween,
  solidRound,
} from '../src/index.ts'
import cases from './beams.json' with { type: 'json' }

type Given = Readonly<Record<string, number>>
type Worked = (given: Given) => Readonly<Record<string, number>>
interface Case {
  readonly id: string
  readonly topic: string
  readonly quantity: string
  readonly inputs: Readonly<Record<string, { readonly value: number | string }>>
  readonly expected: Readonly<Record<string, { readonly value: number }>>
  readonly tolerance: Readonly<Record<string, { readonly rel?: number; readonly abs?: number }>>
}

/** Spans from 0 to the right, with what runs on beyond the outer supports. */
const over = (
  spans: readonly number[],
  ei = 1,
  beyond: readonly [number, number] = [0, 0],
  downs: readonly number[] = [],
): Beam => {
  const at = [0, ...spans].map((_, i) => spans.slice(0, i).reduce((all, span) => all + span, 0))
  return {
    from: -beyond[0],
    to: (at.at(-1) ?? 0) + beyond[1],
    stiffness: [{ from: -beyond[0], ei }],
    supports: at.map((x, i) => ({ at: x, down: downs[i] ?? 0 })),
  }
}
const under = (beam: Beam, spread: readonly Spread[], points: readonly Point[] = []): Bent => {
  const bent = beamOf(beam)
  if (!bent) throw new Error('Unexpected beam that folds, expected one that stands')
  return bent({ spread, points })
}
/** Equal spans of 1 with 1 on those named. */
const equal = (n: number, loaded: readonly number[] = Array.from({ length: n }, (_, i) => i + 1)): Bent =>
  under(
    over(Array.from({ length: n }, () => 1)),
    loaded.map((i) => ({ from: i - 1, to: i, each: 1 })),
  )
const r = (bent: Bent, n: number): number => bent.reactions[n - 1] ?? Number.NaN
const m = (bent: Bent, n: number): number => bent.moments[n - 1] ?? Number.NaN
/** The largest sagging moment of the nth span of equal ones. */
const inSpan = (bent: Bent, n: number, long = 1): number =>
  Math.max(...momentPeaks(bent).flatMap(({ at, value }) => (at >= (n - 1) * long && at <= n * long ? [value] : [])))
const sag = (bent: Bent, from = 0, to = 1): number => sagBetween(bent, from, to).value
const lowest = (bent: Bent, spans: number): number => Math.max(...Array.from({ length: spans }, (_, i) => sag(bent, i, i + 1)))

/** Each case worked out as we do it; a name as in `expected`. */
const worked: Readonly<Record<string, Worked>> = {
  'DEF-N01': ({ Delta_LT = 0, Delta_ST = 0 }) => ({
    seasoned: creepFactors.seasoned * Delta_LT + Delta_ST,
    unseasoned: creepFactors.unseasoned * Delta_LT + Delta_ST,
  }),
  'BM-01': () => ({ R: r(equal(1), 1), Mmax: inSpan(equal(1), 1), dmax: sag(equal(1)) }),
  'BM-02': () => {
    const bent = under(over([1]), [], [{ at: 0.5, force: 1 }])
    return { R: r(bent, 1), Mmax: largestMoment(bent).value, dmax: sag(bent) }
  },
  'BM-04': ({ a = 0 }) => {
    const bent = under(
      over([1]),
      [],
      [
        { at: a, force: 1 },
        { at: 1 - a, force: 1 },
      ],
    )
    return { Mmax: largestMoment(bent).value, dmax: sag(bent), d_load: downAt(bent, a) }
  },
  'BM-05': ({ a = 0 }) => {
    const bent = under(over([1]), [
      { from: 0, to: a, each: 1 },
      { from: 1 - a, to: 1, each: 1 },
    ])
    return { R: r(bent, 1), M_mid: momentAt(bent, 0.5), d_mid: sag(bent) }
  },
  'BM-06': ({ a = 0, x_out = 0, x_in = 0 }) => {
    const bent = under(over([1]), [{ from: 0, to: a, each: 1 }])
    return {
      R1: r(bent, 1),
      R2: r(bent, 2),
      Mmax: largestMoment(bent).value,
      d_x_out: downAt(bent, x_out),
      d_x_in: downAt(bent, x_in),
    }
  },
  'BM-10': () => {
    const bent = equal(2)
    return {
      R1: r(bent, 1),
      R2: r(bent, 2),
      M_support: m(bent, 2),
      M_span: inSpan(bent, 1),
      dmax: sag(bent),
      x_dmax: sagBetween(bent, 0, 1).at,
    }
  },
  'BM-11': () => {
    const bent = equal(2, [1])
    return {
      R1: r(bent, 1),
      R2: r(bent, 2),
      R3: r(bent, 3),
      M_support: m(bent, 2),
      M_span: inSpan(bent, 1),
      dmax: lowest(bent, 2),
    }
  },
  'BM-12': () => {
    const bent = equal(3)
    return {
      ...{ R1: r(bent, 1), R2: r(bent, 2), M_support: m(bent, 2), M_outer: inSpan(bent, 1), M_centre: inSpan(bent, 2) },
      ...{ dmax: lowest(bent, 3), x_dmax: sagBetween(bent, 0, 1).at },
    }
  },
  'BM-13': () => {
    const bent = equal(3, [1, 2])
    return {
      ...{ R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3), R4: r(bent, 4), M_R2: m(bent, 2), M_R3: m(bent, 3) },
      ...{ M_span1: inSpan(bent, 1), M_span2: inSpan(bent, 2), dmax: lowest(bent, 3) },
    }
  },
  'BM-14': () => {
    const bent = equal(3, [1, 3])
    return { R1: r(bent, 1), R2: r(bent, 2), M_support: m(bent, 2), M_outer: inSpan(bent, 1), dmax: lowest(bent, 3) }
  },
  'BM-15': () => {
    const bent = equal(4)
    return {
      ...{ R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3), M_R2: m(bent, 2), M_R3: m(bent, 3) },
      ...{ M_span1: inSpan(bent, 1), M_span2: inSpan(bent, 2), dmax: lowest(bent, 4) },
    }
  },
  'BM-17': () => {
    const bent = equal(4, [1, 3])
    return { R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3), R4: r(bent, 4), R5: r(bent, 5), dmax: lowest(bent, 4) }
  },
  'BM-18': () => {
    const bent = equal(5)
    return {
      ...{ R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3), M_R2: m(bent, 2), M_R3: m(bent, 3) },
      ...{ M_span1: inSpan(bent, 1), M_span2: inSpan(bent, 2), M_span3: inSpan(bent, 3), dmax: lowest(bent, 5) },
    }
  },
  'BM-19': () => {
    const bent = equal(6)
    return {
      ...{ R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3), R4: r(bent, 4) },
      ...{ M_R2: m(bent, 2), M_R3: m(bent, 3), M_R4: m(bent, 4) },
    }
  },
  'BM-21': () => {
    const bent = under(
      over([1, 1]),
      [],
      [
        { at: 0.5, force: 1 },
        { at: 1.5, force: 1 },
      ],
    )
    return { R1: r(bent, 1), R2: r(bent, 2), M_support: m(bent, 2), M_load: momentAt(bent, 0.5), dmax: lowest(bent, 2) }
  },
  'BM-22': ({ a = 0 }) => {
    const bent = under(over([1, 1]), [], [{ at: a, force: 1 }])
    return {
      R1: r(bent, 1),
      R2: r(bent, 2),
      R3: r(bent, 3),
      M_support: m(bent, 2),
      M_load: momentAt(bent, a),
      dmax: lowest(bent, 2),
    }
  },
  'BM-23': ({ a = 0 }) => {
    const bent = under(over([1, 1]), [], [{ at: a, force: 1 }])
    return { R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3), M_support: m(bent, 2) }
  },
  'BM-24': ({ w = 0, l1 = 0, l2 = 0 }) => {
    const bent = under(over([l1, l2]), [{ from: 0, to: l1 + l2, each: w }])
    return { M_B: m(bent, 2), R1: r(bent, 1), R2: r(bent, 2), R3: r(bent, 3) }
  },
  'BM-25': ({ w = 0, l1 = 0, l2 = 0, l3 = 0, overhang_left = 0, overhang_right = 0, E = 0 }) => {
    const ei = E * 1e9 * roundTube(25.4e-3, 22.1e-3).inertia
    const bent = under(over([l1, l2, l3], ei, [overhang_left, overhang_right]), [{ from: -1, to: 9, each: w }])
    return {
      ...{ M_A: m(bent, 1), M_B: m(bent, 2), M_C: m(bent, 3), M_D: m(bent, 4) },
      ...{ R_A: r(bent, 1), R_B: r(bent, 2), R_C: r(bent, 3), R_D: r(bent, 4), dmax_span2: sag(bent, l1, l1 + l2) },
    }
  },
  'BM-27': ({ w = 0, Lt = 0, x = 0 }) => {
    const set = (beyond: number) => under(over([Lt - 2 * beyond], 1, [beyond, beyond]), [{ from: -Lt, to: 2 * Lt, each: w }])
    const best = (low: number, high: number): number => {
      const middle = (low + high) / 2
      if (high - low < 1e-10) return middle
      const bent = set(middle)
      return -m(bent, 1) < momentAt(bent, (Lt - 2 * middle) / 2) ? best(middle, high) : best(low, middle)
    }
    const vanishes = (low: number, high: number): number => {
      const middle = (low + high) / 2
      if (high - low < 1e-10) return middle
      return momentAt(set(middle), (Lt - 2 * middle) / 2) > 0 ? vanishes(middle, high) : vanishes(low, middle)
    }
    return {
      M_mid: momentAt(set(x), (Lt - 2 * x) / 2),
      x_zero: vanishes(0, Lt / 2 - 0.1),
      L_best: Lt - 2 * best(0, Lt / 2 - 0.1),
    }
  },
  'BM-34': ({ w = 0, L = 0, a = 0 }) => {
    const bent = under(over([L], 1, [a, a]), [{ from: -a, to: L + a, each: w }])
    return { d_mid: downAt(bent, L / 2), d_end: downAt(bent, -a) }
  },
  'BM-35': ({ c = 0, w = 0 }) => {
    const set = (long: number) => under(over([long], 1, [c, c]), [{ from: -c, to: long + c, each: w }])
    const equals = (low: number, high: number): number => {
      const middle = (low + high) / 2
      if (high - low < 1e-12) return middle
      const bent = set(middle)
      return momentAt(bent, middle / 2) < -m(bent, 1) ? equals(middle, high) : equals(low, middle)
    }
    const l = equals(c, 9 * c)
    return { l, M: -m(set(l), 1) }
  },
  'BM-36': ({ w = 0, L = 0, a = 0 }) => {
    const bent = under(over([L], 1, [0, a]), [{ from: L, to: L + a, each: w }])
    const upward = {
      ...bent,
      pieces: bent.pieces.map((piece) => ({
        ...piece,
        down: -piece.down,
        slope: -piece.slope,
        moment: -piece.moment,
        shear: -piece.shear,
        load: -piece.load,
      })),
    }
    return { R1: r(bent, 1), R2: r(bent, 2), d_tip: downAt(bent, L + a), d_up: sag(upward, 0, L) }
  },
  // An arm that is fixed at one end is half of one that lies over a support in its middle, held on both sides of it.
  'BM-37': ({ P = 0, w = 0, L = 0 }) => {
    const near = 1e-6
    const arm = over([2 * near], 1, [L - near, L - near])
    const [point, even] = [
      under(
        arm,
        [],
        [
          { at: near - L, force: P },
          { at: L + near, force: P },
        ],
      ),
      under(arm, [{ from: near - L, to: L + near, each: w }]),
    ]
    return { d_P: downAt(point, L + near), d_w: downAt(even, L + near) }
  },
  'BM-38': ({ D = 0 }) => {
    const bent = under(over([1, 1], 1, [0, 0], [0, -D, 0]), [])
    return { R2: r(bent, 2), R1: r(bent, 1), M2: m(bent, 2) }
  },
  // Mirrored about the fixed end; the end moment is a load at the end of what runs on beyond.
  'BM-39': ({ AB = 0, BC = 0, P_mid_AB = 0, w_BC = 0, M_C = 0 }) => {
    const whole = 2 * (AB + BC)
    const bent = under(
      over([BC, AB, AB, BC], 1, [10, 10]),
      [
        { from: 0, to: BC, each: w_BC },
        { from: whole - BC, to: whole, each: w_BC },
      ],
      [-10, BC + AB / 2, BC + 1.5 * AB, whole + 10].map((at, i) => ({ at, force: i === 1 || i === 2 ? P_mid_AB : -M_C / 10 })),
    )
    return { M_A: m(bent, 3), M_B: m(bent, 2) }
  },
  'ROD-01': ({ OD = 0, wall = 0, E = 0, L = 0, w = 0 }) => {
    const tube = roundTube(OD / 1000, (OD - 2 * wall) / 1000)
    const bent = under(over([L], E * 1e9 * tube.inertia), [{ from: 0, to: L, each: w }])
    return { I: tube.inertia * 1e12, dmax: sag(bent, 0, L) * 1000, Mmax: largestMoment(bent).value }
  },
  // In pounds and inches throughout; the section modulus is the printed one of that pipe.
  'ROD-02': ({ I = 0, E = 0, L = 0, w = 0 }) => {
    const bent = under(over([L], E * I), [{ from: 0, to: L, each: w }])
    return { dmax: sag(bent, 0, L), sigma: largestMoment(bent).value / 0.07055 }
  },
  'ROD-03': ({ d = 0, E = 0, L = 0, w = 0 }) => {
    const bent = under(over([L, L], E * 1e9 * solidRound(d / 1000).inertia), [{ from: 0, to: 2 * L, each: w }])
    const dmax = sag(bent, 0, L) * 1000
    return { dmax, R_centre: r(bent, 2), dmax_longterm: creepFactors.seasoned * dmax }
  },
  'ROD-04': ({ OD = 0, ID = 0, E = 0, L = 0, a = 0, w = 0, P_tip = 0 }) => {
    const ei = E * 1e9 * roundTube(OD / 1000, ID / 1000).inertia
    const tips = [-a, 2 * L + a].map((at) => ({ at, force: P_tip }))
    const bent = under(over([L, L], ei, [a, a]), [{ from: -a, to: 2 * L + a, each: w }], tips)
    return {
      ...{ M_A: m(bent, 1), M_B: m(bent, 2), R_A: r(bent, 1), R_B: r(bent, 2) },
      ...{ dmax: sag(bent, 0, L) * 1000, d_tip: downAt(bent, -a) * 1000 },
    }
  },
}

const all = cases as unknown as readonly Case[]
test.each(all)('$id: $quantity', ({ id, inputs, expected, tolerance }) => {
  const given = Object.fromEntries(
    Object.entries(inputs).flatMap(([name, { value }]) => (typeof value === 'number' ? [[name, value]] : [])),
  )
  const found = worked[id]?.(given) ?? {}
  expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort())
  for (const [name, { value }] of Object.entries(expected)) {
    const allowed = tolerance[name]?.abs ?? (tolerance[name]?.rel ?? 0) * Math.abs(value)
    expect(Math.abs((found[name] ?? Number.NaN) - value), `${id} ${name}: ${found[name]} for ${value}`).toBeLessThanOrEqual(
      allowed,
    )
  }
})

test('every published beam is worked out', () => {
  const byTopic = [...new Set(all.map(({ topic }) => topic))].map((topic) => [
    topic,
    all.filter((each) => each.topic === topic).length,
  ])
  expect(Object.fromEntries(byTopic)).toEqual({ beam: 26, 'rod-sag': 4, 'long-term-deflection': 1 })
  expect(Object.keys(worked).length).toBe(all.length)
})
