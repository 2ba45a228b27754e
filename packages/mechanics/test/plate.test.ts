import fc from 'fast-check'
import { expect, test } from 'vitest'
import { allowedBy, capacityAt, ceilingPull, combined, pullOf, shareOf } from '../src/index.ts'

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const holes = fc.uniqueArray(double(0.005, 0.2), { minLength: 2, maxLength: 5 })
const plate = fc.record({ load: double(1, 500), projection: double(0.01, 0.3), holes })
const forces = fc.record({ pull: double(1, 1000), shear: double(1, 1000) })

test('a single screw is pulled by tilting alone: the moment over its height', () => {
  expect(pullOf({ load: 100, projection: 0.09, holes: [0.03] })).toEqual({
    couple: undefined,
    tilting: 300,
    pull: 300,
    shear: 100,
  })
  expect(pullOf({ load: 100, projection: 0.09, holes: [0.03, 0.03] })).toMatchObject({
    couple: undefined,
    tilting: 150,
    shear: 50,
  })
})
test('of two screws the couple pulls the upper more, and of the larger is spoken', () => {
  const { couple, tilting, pull } = pullOf({ load: 100, projection: 0.09, holes: [0.01, 0.05] })
  expect([couple, pull]).toEqual([225, 225])
  expect(tilting).toBeCloseTo(173.0769, 4)
})
test('two screws side by side at the top share what one would be pulled with', () => {
  const one = pullOf({ load: 100, projection: 0.09, holes: [0.01, 0.05] })
  const two = pullOf({ load: 100, projection: 0.09, holes: [0.05, 0.01, 0.05] })
  expect(two.couple).toBe((one.couple ?? 0) / 2)
})

test('the order of the holes does not matter, twice the load pulls twice, and the screws carry all of it', () =>
  fc.assert(
    fc.property(plate, (each) => {
      const found = pullOf(each)
      expect(pullOf({ ...each, holes: [...each.holes].reverse() }).pull).toBeCloseTo(found.pull, 6)
      expect(pullOf({ ...each, load: 2 * each.load }).pull / found.pull).toBeCloseTo(2, 9)
      expect(found.shear * each.holes.length).toBeCloseTo(each.load, 9)
    }),
  ))
test('tilting about the edge balances the moment', () =>
  fc.assert(
    fc.property(plate, (each) => {
      const { tilting } = pullOf(each)
      const top = Math.max(...each.holes)
      const moment = each.holes.reduce((sum, height) => sum + ((tilting * height) / top) * height, 0)
      expect(moment / (each.load * each.projection)).toBeCloseTo(1, 9)
    }),
  ))
test('with two screws the couple is never the smaller', () =>
  fc.assert(
    fc.property(plate, ({ load, projection, holes: [a = 0.01, b = 0.02] }) => {
      const { couple = 0, tilting } = pullOf({ load, projection, holes: [a, b] })
      expect(couple).toBeGreaterThanOrEqual(tilting)
    }),
  ))
test('without a lever nothing pulls, and on a ceiling each screw carries its part', () => {
  expect(pullOf({ load: 100, projection: 0, holes: [0.01, 0.05] })).toEqual({ couple: 0, tilting: 0, pull: 0, shear: 50 })
  expect(ceilingPull(90, 3)).toBe(30)
})
test('plates that cannot be are refused', () => {
  expect(() => pullOf({ load: 1, projection: 1, holes: [] })).toThrow('Unexpected plate without holes, expected at least one')
  expect(() => pullOf({ load: 1, projection: 1, holes: [0, 0.05] })).toThrow(
    'Unexpected height of a hole 0, expected a number above 0',
  )
  expect(() => pullOf({ load: -1, projection: 1, holes: [0.05] })).toThrow('Unexpected load -1, expected 0 or more')
  expect(() => ceilingPull(90, 0)).toThrow(RangeError)
})

test('along the wood a screw holds its shear, out of it its pull', () =>
  fc.assert(
    fc.property(forces, (capacity) => {
      expect(capacityAt(0, capacity)).toBeCloseTo(capacity.shear, 9)
      expect(capacityAt(Math.PI / 2, capacity)).toBeCloseTo(capacity.pull, 9)
      expect(combined({ pull: 0, shear: 10 }, capacity).share).toBeCloseTo(10 / capacity.shear, 9)
      expect(combined({ pull: 10, shear: 0 }, capacity).share).toBeCloseTo(10 / capacity.pull, 9)
    }),
  ))
test('at any angle a screw holds something between the two, and what it may hold uses all of it', () =>
  fc.assert(
    fc.property(forces, double(0, Math.PI / 2), (capacity, angle) => {
      const most = capacityAt(angle, capacity)
      expect(most).toBeGreaterThanOrEqual(Math.min(capacity.pull, capacity.shear) * (1 - 1e-12))
      expect(most).toBeLessThanOrEqual(Math.max(capacity.pull, capacity.shear) * (1 + 1e-12))
      const full = combined({ pull: most * Math.sin(angle), shear: most * Math.cos(angle) }, capacity)
      expect([full.share, full.capacity / most]).toEqual([expect.closeTo(1, 9), expect.closeTo(1, 9)])
    }),
  ))
test('without a load nothing of a screw is used', () =>
  expect(combined({ pull: 0, shear: 0 }, { pull: 5, shear: 7 })).toEqual({ angle: 0, capacity: 7, share: 0 }))
test('a straight-line sum never uses less than the curve', () =>
  fc.assert(
    fc.property(forces, forces, (load, capacity) => {
      const line = shareOf(load, { ...capacity, is: 'allowable' })
      expect(line.ok ? line.value : 0).toBeGreaterThanOrEqual(combined(load, capacity).share * (1 - 1e-12))
    }),
  ))

const listed = { pull: 300, shear: 500 }
test('what a listing allows is taken as it is, what broke in its test over its margin', () => {
  expect(allowedBy({ ...listed, is: 'allowable', margin: 4 })).toEqual({ ok: true, ...listed })
  expect(allowedBy({ ...listed, is: 'ultimate', margin: 4 })).toEqual({ ok: true, pull: 75, shear: 125 })
  expect(shareOf({ pull: 37.5, shear: 31.25 }, { ...listed, is: 'ultimate', margin: 4 })).toEqual({ ok: true, value: 0.75 })
})
test('an ultimate load without a margin is refused, and so is a direction that is not listed', () => {
  expect(allowedBy({ ...listed, is: 'ultimate' })).toEqual({ ok: false, why: 'margin' })
  expect(shareOf({ pull: 1, shear: 1 }, { ...listed, is: 'ultimate' })).toEqual({ ok: false, why: 'margin' })
  expect(shareOf({ pull: 1, shear: 1 }, { shear: 500, is: 'allowable' })).toEqual({ ok: false, why: 'not-listed' })
  expect(shareOf({ pull: 0, shear: 50 }, { shear: 500, is: 'allowable' })).toEqual({ ok: true, value: 0.1 })
})
test('a margin of one takes nothing away, and one screw carries all of a ceiling', () => {
  expect(allowedBy({ ...listed, is: 'ultimate', margin: 1 })).toEqual({ ok: true, ...listed })
  expect(ceilingPull(90, 1)).toBe(90)
})
test('listings that say nothing sensible throw', () => {
  expect(() => allowedBy({ pull: 300, is: 'ultimate', margin: 0.5 })).toThrow('Unexpected margin 0.5, expected 1 or more')
  expect(() => allowedBy({ pull: 0, is: 'allowable' })).toThrow('Unexpected pull 0, expected a number above 0')
  expect(() => shareOf({ pull: -1, shear: 0 }, { pull: 300, is: 'allowable' })).toThrow(RangeError)
})
