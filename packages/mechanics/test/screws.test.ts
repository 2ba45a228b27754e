import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  gravities,
  isOfHandbook,
  type LoadDuration,
  lagPull,
  loadDurations,
  longTerm,
  type Pulled,
  rolledThread,
  rootDiameter,
  screwBending,
  screwDiameter,
  speciesGroups,
  unknownGravity,
  woodScrewPull,
  woodScrewUltimate,
} from '../src/index.ts'

const inch = 0.0254
const screw: Pulled = { gravity: 0.42, diameter: screwDiameter(8), thread: 0.025, duration: 'permanent' }
const pull = (more: Partial<Pulled> = {}): number => {
  const found = woodScrewPull({ ...screw, ...more })
  return found.ok ? found.value : Number.NaN
}

test('a printed diameter is that of its number, and its root is thinner', () => {
  const printed = { 4: 0.112, 6: 0.138, 8: 0.164, 10: 0.19, 12: 0.216, 14: 0.242, 16: 0.268, 18: 0.294, 20: 0.32, 24: 0.372 }
  for (const [number, size] of Object.entries(printed)) expect(screwDiameter(Number(number)) / inch).toBeCloseTo(size, 9)
  for (const number of [6, 7, 8, 9, 10, 12, 14]) expect(rootDiameter(number)).toBeLessThan(screwDiameter(number) * 0.9)
  expect(rootDiameter(11)).toBeUndefined()
})
test('a number that no screw has is refused', () => {
  for (const bad of [-1, 8.5, 25, Number.NaN]) expect(() => screwDiameter(bad)).toThrow(RangeError)
})
test('a short screw is threaded to its head and no further', () => expect(rolledThread(0.01, 0.005)).toBe(0.01))

test('a screw twice as deep or twice as thick holds twice as much, in wood twice as heavy four times', () =>
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.1, noNaN: true }), (thread) => {
      expect(pull({ thread: 2 * thread }) / pull({ thread })).toBeCloseTo(2, 9)
      expect(pull({ diameter: 0.008, thread }) / pull({ diameter: 0.004, thread })).toBeCloseTo(2, 9)
      expect(pull({ gravity: 0.7, thread }) / pull({ gravity: 0.35, thread })).toBeCloseTo(4, 9)
    }),
  ))

test('the longer a load stays the less a screw may hold', () => {
  const held = (Object.keys(loadDurations) as LoadDuration[]).map((duration) => pull({ duration }))
  expect(held).toEqual([...held].sort((a, b) => a - b))
  expect(new Set(held).size).toBe(5)
})

test('what may stay for long is less than a sixth of a test and close to the design value', () => {
  const sixth = longTerm(woodScrewUltimate(screw))
  expect(pull({ duration: 'permanent' }) / sixth).toBeGreaterThan(0.95)
  expect(pull({ duration: 'permanent' }) / sixth).toBeLessThan(1)
})

test('end grain, woods, sizes and threads that the equations are not for are refused by name', () => {
  expect(woodScrewPull({ ...screw, grain: 'end' })).toEqual({ ok: false, why: 'end-grain' })
  for (const gravity of [0.3, 0.74]) expect(woodScrewPull({ ...screw, gravity })).toEqual({ ok: false, why: 'gravity' })
  for (const number of [5])
    expect(woodScrewPull({ ...screw, diameter: screwDiameter(number) })).toEqual({ ok: false, why: 'size' })
  for (const thread of [0, -0.01, Number.NaN])
    expect(woodScrewPull({ ...screw, thread })).toEqual({ ok: false, why: 'penetration' })
  expect(lagPull({ ...screw, diameter: 0.24 * inch })).toEqual({ ok: false, why: 'size' })
  for (const number of [6, 24]) expect(woodScrewPull({ ...screw, diameter: screwDiameter(number) }).ok).toBe(true)
  for (const gravity of Object.values(gravities)) expect(woodScrewPull({ ...screw, gravity }).ok).toBe(true)
})

test('a lag screw holds three quarters in end grain', () => {
  const lag = { ...screw, diameter: inch / 4 }
  const [side, end] = [lagPull(lag), lagPull({ ...lag, grain: 'end' })]
  expect(side.ok && end.ok && end.value / side.value).toBeCloseTo(0.75, 12)
})

test('the gravity of an unknown stud is the least of all groups', () =>
  expect(unknownGravity).toBe(Math.min(...Object.values(speciesGroups))))

test('the equation of the handbook is for the screws that it prints', () => {
  expect([isOfHandbook(8, inch), isOfHandbook(12, inch), isOfHandbook(13, inch), isOfHandbook(2, inch)]).toEqual([
    true,
    true,
    false,
    false,
  ])
  // between 1 and 1-1/2 in both hold numbers 5 to 12
  expect([4, 5, 12, 13].map((number) => isOfHandbook(number, 1.25 * inch))).toEqual([false, true, true, false])
  expect([isOfHandbook(14, 3.5 * inch), isOfHandbook(4, 0.4 * inch)]).toEqual([false, false])
  expect([isOfHandbook(6, 0.5 * inch), isOfHandbook(14, 3 * inch)]).toEqual([true, true])
})

test('thicker screws are of softer steel, and other sizes have no value', () => {
  const psi = [6, 8, 10, 14].map((number) => Math.round((screwBending(screwDiameter(number)) ?? 0) / 6894.757293))
  expect(psi).toEqual([100_000, 90_000, 80_000, 70_000])
  expect([screwBending(0.098 * inch), screwBending(0.274 * inch)]).toEqual([undefined, undefined])
})

test('sizes that are printed as the last of a range are still in it', () => {
  const bending = (inches: number) => Math.round((screwBending(inches * inch) ?? 0) / 6894.757293)
  expect([0.099, 0.142, 0.177, 0.236, 0.273].map(bending)).toEqual([100_000, 100_000, 90_000, 80_000, 70_000])
  expect(screwDiameter(0)).toBeCloseTo(0.06 * inch, 12)
})
