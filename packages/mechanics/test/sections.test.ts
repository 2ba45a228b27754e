import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Material,
  materials,
  rectangle,
  rectangleTube,
  roundTube,
  type Section,
  solidRound,
  solidSquare,
  squareTube,
} from '../src/index.ts'

const size = fc.double({ min: 0.001, max: 0.2, noNaN: true })
const sizes = fc
  .tuple(size, fc.double({ min: 0.05, max: 0.95, noNaN: true }))
  .map(([outer, part]) => [outer, outer * part] as const)
const near = (ours: Section, other: Section) => {
  for (const name of ['area', 'inertia', 'modulus'] as const) expect(Math.abs(ours[name] / other[name] - 1)).toBeLessThan(1e-9)
}

test('a section twice as large has 4 times the area, 16 times the inertia and 8 times the modulus', () => {
  const scaled = ({ area, inertia, modulus }: Section) => ({ area: 4 * area, inertia: 16 * inertia, modulus: 8 * modulus })
  fc.assert(
    fc.property(sizes, ([outer, inner]) => {
      near(solidRound(2 * outer), scaled(solidRound(outer)))
      near(roundTube(2 * outer, 2 * inner), scaled(roundTube(outer, inner)))
      near(squareTube(2 * outer, 2 * inner), scaled(squareTube(outer, inner)))
      near(rectangle(2 * outer, 2 * inner), scaled(rectangle(outer, inner)))
    }),
  )
})

test('a tube and its bore together are the solid, and a thicker wall is stiffer', () =>
  fc.assert(
    fc.property(sizes, ([outer, inner]) => {
      expect(roundTube(outer, inner).inertia + solidRound(inner).inertia).toBeCloseTo(solidRound(outer).inertia, 15)
      expect(roundTube(outer, inner * 0.9).inertia).toBeGreaterThan(roundTube(outer, inner).inertia)
    }),
  ))

test('a square is a rectangle of equal sides, with a wall or without', () =>
  fc.assert(
    fc.property(sizes, ([outer, inner]) => {
      near(solidSquare(outer), rectangle(outer, outer))
      near(squareTube(outer, inner), rectangleTube(outer, outer, (outer - inner) / 2))
    }),
  ))

test('a rectangle on edge is stiffer than flat', () => {
  expect(rectangle(0.012, 0.04).inertia).toBeGreaterThan(rectangle(0.04, 0.012).inertia)
  expect(rectangleTube(0.02, 0.04, 0.002).inertia).toBeGreaterThan(rectangleTube(0.04, 0.02, 0.002).inertia)
})

test('sizes that make no section are refused', () => {
  for (const bad of [0, -0.01, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => solidRound(bad)).toThrow(RangeError)
  expect(() => roundTube(0.02, 0.02)).toThrow('Unexpected inner size 0.02 m, expected less than 0.02 m; give a tube its wall.')
  expect(() => squareTube(0.02, 0)).toThrow(RangeError)
  expect(() => rectangleTube(0.02, 0.04, 0.01)).toThrow('Unexpected wall 0.01 m, expected less than half of 0.02 m')
  expect(() => rectangle(0.02, -0.04)).toThrow('Unexpected height -0.04, expected a number above 0')
})

test('of what is published of a material the softest counts, and every number says where it stands', () => {
  for (const { elasticity, density, elasticities } of Object.values<Material>(materials)) {
    expect(elasticity.value).toBe(Math.min(...elasticities.map(({ value }) => value)))
    for (const { source, basis, of } of [...elasticities, density]) {
      expect([source, of].every((each) => each.length > 2)).toBe(true)
      expect(source.includes('from memory')).toBe(basis === 'memory')
    }
  }
})

test('of what is published of its weight the heaviest counts', () => expect(materials.brass.density.value).toBe(8530))
