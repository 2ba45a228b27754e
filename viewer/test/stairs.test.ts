import { inches } from '@evenhem/length'
import { expect, test } from 'vitest'
import { brokenFrom, stairsOf } from '../src/data/stairs.ts'
import type { Line } from '../src/data/working.ts'

const line = (sign: Line['sign'], value: number): Line => ({
  kind: 'term',
  sign,
  what: 'x',
  value: inches(value),
  unit: 'length',
  of: '/x',
  origin: { kind: 'order', place: '/x' },
})
const lines = [line('', 0.5), line('+', 92), line('−', 0.5), line('+', 2.25)]

test('the long term is broken, the others are to one scale', () => {
  const stairs = stairsOf(lines, 340, 176)?.stairs ?? []
  expect(stairs.map(({ broken }) => broken)).toEqual([false, true, false, false])
  const [half, , down, drop] = stairs.map(({ from, to }) => from - to)
  expect((drop as number) / (half as number)).toBeCloseTo(4.5)
  expect(down).toBeCloseTo(-(half as number))
})

test('each arrow starts where the one before ended', () => {
  const stairs = stairsOf(lines, 340, 176)?.stairs ?? []
  expect(stairs.slice(1).map(({ from }) => from)).toEqual(stairs.slice(0, -1).map(({ to }) => to))
})

test('the picture stays inside its height', () => {
  const picture = stairsOf([...lines, line('+', 6), line('+', 5)], 340, 176)
  expect(picture?.height).toBeLessThanOrEqual(176)
  expect(Math.min(...(picture?.stairs ?? []).flatMap(({ from, to }) => [from, to]))).toBeGreaterThan(0)
})

test('one length alone is no stairs', () => expect(stairsOf(lines.slice(0, 1), 340, 176)).toBeUndefined())
test('lengths that are alike are not broken', () => expect(brokenFrom([1, 2, 5, 0])).toBe(Number.POSITIVE_INFINITY))
