import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Dowel,
  handbookShear,
  proportionalShear,
  rootDiameter,
  type Sheared,
  screwDiameter,
  screwShear,
  steelBearing,
  woodBearing,
  type YieldMode,
  yieldLoads,
} from '../src/index.ts'

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const bearing = fc.record({ strength: double(1e7, 5e8), length: double(0.001, 0.06) })
const dowel: fc.Arbitrary<Dowel> = fc.record({
  diameter: double(0.002, 0.006),
  bending: double(4e8, 7e8),
  side: bearing,
  main: bearing,
  gap: fc.oneof(fc.constant(0), double(0, 0.03)),
})
const modes: readonly YieldMode[] = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV']
const least = (each: Dowel) => Math.min(...Object.values(yieldLoads(each)))

/**
 * The moment with which a member holds the screw where it leaves it, when a load stands there. Bent: what yields less what lies before it. Crushed: all of the
 * length bears, forward up to a point and back beyond it.
 */
const bentMoment = (load: number, q: number, yields: number) => yields - load ** 2 / (2 * q)
function crushedMoment(load: number, q: number, length: number): number {
  const forward = (load / q + length) / 2
  const back = length - forward
  return q * back * (forward + back / 2) - (q * forward ** 2) / 2
}

test('with the load of each mode the screw is in balance: what both members hold is the load across the gap', () =>
  fc.assert(
    fc.property(dowel, (each) => {
      const { diameter, bending, side, main, gap } = each
      const loads = yieldLoads(each)
      const yields = (bending * diameter ** 3) / 6
      const [s, m] = [side.strength * diameter, main.strength * diameter]
      const held = {
        II: crushedMoment(loads.II, s, side.length) + crushedMoment(loads.II, m, main.length),
        IIIm: bentMoment(loads.IIIm, s, yields) + crushedMoment(loads.IIIm, m, main.length),
        IIIs: crushedMoment(loads.IIIs, s, side.length) + bentMoment(loads.IIIs, m, yields),
        IV: bentMoment(loads.IV, s, yields) + bentMoment(loads.IV, m, yields),
      }
      const scale = yields + s * side.length ** 2 + m * main.length ** 2
      for (const mode of ['II', 'IIIm', 'IIIs', 'IV'] as const)
        expect(Math.abs(held[mode] - loads[mode] * gap) / scale, mode).toBeLessThan(1e-9)
    }),
  ))

/** The yield modes as the NDS prints them, with coefficients k1, k2 and k3 and without a gap (2018, Table 12.3.1A; from memory). */
function printed({ diameter: d, bending, side, main }: Dowel): Readonly<Record<YieldMode, number>> {
  const [re, rt] = [main.strength / side.strength, main.length / side.length]
  const k1 = (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re)
  const k2 = -1 + Math.sqrt(2 * (1 + re) + (2 * bending * (1 + 2 * re) * d ** 2) / (3 * main.strength * main.length ** 2))
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * bending * (2 + re) * d ** 2) / (3 * main.strength * side.length ** 2))
  return {
    Im: d * main.length * main.strength,
    Is: d * side.length * side.strength,
    II: k1 * d * side.length * side.strength,
    IIIm: (k2 * d * main.length * main.strength) / (1 + 2 * re),
    IIIs: (k3 * d * side.length * main.strength) / (2 + re),
    IV: d ** 2 * Math.sqrt((2 * main.strength * bending) / (3 * (1 + re))),
  }
}

test('without a gap the loads are those of the printed coefficients', () =>
  fc.assert(
    fc.property(dowel, (each) => {
      const [ours, theirs] = [yieldLoads({ ...each, gap: 0 }), printed(each)]
      for (const mode of modes) expect(ours[mode] / theirs[mode], mode).toBeCloseTo(1, 8)
    }),
  ))

test('a wider gap never holds more, and the loads are continuous down to none', () =>
  fc.assert(
    fc.property(dowel, double(1e-4, 0.02), (each, wider) => {
      expect(least({ ...each, gap: each.gap + wider })).toBeLessThanOrEqual(least(each) * (1 + 1e-12))
      expect(least({ ...each, gap: 1e-12 }) / least({ ...each, gap: 0 })).toBeCloseTo(1, 6)
    }),
  ))

test('with all lengths, the gap too, twice as large the loads are four times as large', () =>
  fc.assert(
    fc.property(dowel, (each) => {
      const twice = ({ strength, length }: Dowel['side']) => ({ strength, length: 2 * length })
      const large = { ...each, diameter: 2 * each.diameter, side: twice(each.side), main: twice(each.main), gap: 2 * each.gap }
      for (const mode of modes) expect(yieldLoads(large)[mode] / yieldLoads(each)[mode]).toBeCloseTo(4, 9)
    }),
  ))

test('it does not matter which member is which', () =>
  fc.assert(
    fc.property(dowel, (each) => {
      const [ours, turned] = [yieldLoads(each), yieldLoads({ ...each, side: each.main, main: each.side })]
      expect([turned.Is, turned.IIIs, turned.II, turned.IV]).toEqual([
        ours.Im,
        ours.IIIm,
        expect.closeTo(ours.II, 6),
        expect.closeTo(ours.IV, 6),
      ])
    }),
  ))

/** A No. 8 screw through a steel plate. */
const diameter = screwDiameter(8)
const screw: Sheared = {
  diameter,
  root: rootDiameter(8) ?? Number.NaN,
  side: { strength: steelBearing, length: 0.0015 },
  strength: woodBearing(0.42),
  penetration: 10 * diameter,
  duration: 'ten years',
}
const held = (more: Partial<Sheared>): number => {
  const found = screwShear({ ...screw, ...more })
  return found.ok ? found.value : Number.NaN
}

test('ten diameters hold all, eight at most eight tenths, and less than six nothing that is known', () => {
  expect(held({ penetration: 30 * diameter })).toBe(held({}))
  expect(held({ penetration: 8 * diameter }) / held({})).toBeLessThanOrEqual(0.8 + 1e-12)
  expect(held({ penetration: 6 * diameter })).toBeGreaterThan(0)
  expect(screwShear({ ...screw, penetration: 5.9 * diameter })).toEqual({ ok: false, why: 'penetration' })
  expect(screwShear({ ...screw, penetration: Number.NaN })).toEqual({ ok: false, why: 'penetration' })
})
test('where the wood alone gives way, the shorter length that bears counts', () => {
  // a hardened screw across a wide gap turns in the wood
  const turning = { bending: 5e9, gap: 0.03 }
  expect(held({ ...turning, penetration: 6 * diameter })).toBeLessThan(0.6 * held(turning))
})
test('the last diameter in the wood is half of the tip, which bears nothing', () => {
  // so hard that it does not bend, behind a side so strong that it does not give way: the wood is crushed over nine diameters
  const rigid = { bending: 1e15, side: { strength: 1e15, length: 1 } }
  const { strength, root } = screw
  expect(held(rigid)).toBeCloseTo((strength * root * 9 * diameter) / 2.2, 3)
})
test('half an inch of wallboard under a plate takes away more than half', () => {
  expect(held({ gap: 0 })).toBe(held({}))
  expect(held({ gap: 0.0127 }) / held({})).toBeLessThan(0.5)
})
test('the load is reckoned for how long it stays', () => expect(held({ duration: 'permanent' }) / held({})).toBeCloseTo(0.9, 12))
test('sizes without a bending strength are refused, a gap below nothing throws', () => {
  expect(screwShear({ ...screw, diameter: 0.002 })).toEqual({ ok: false, why: 'size' })
  expect(screwShear({ ...screw, root: 0.00635 })).toEqual({ ok: false, why: 'size' })
  expect(() => screwShear({ ...screw, gap: -0.001 })).toThrow('Unexpected gap -0.001, expected 0 or more')
})

test('between two printed ranges of the handbook the lower counts, and beyond them none', () => {
  expect(handbookShear('softwood', 0.425)).toBe(handbookShear('softwood', 0.42))
  expect(proportionalShear('softwood', 0.53, diameter)).toEqual({ ok: false, why: 'gravity' })
  expect(proportionalShear('hardwood', 0.32, diameter)).toEqual({ ok: false, why: 'gravity' })
})
