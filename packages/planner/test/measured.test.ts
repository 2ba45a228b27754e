import type { Figure, Layer, Mark } from '@evenhem/drawing'
import { inches, type Length, plus, type Reckoning, sum } from '@evenhem/length'
import { expect, test } from 'vitest'
import { asMeasured } from '../src/index.ts'

const known = (from: string) => ({ value: inches(84), from })
const total = sum('w#total', 'total', plus('length', known('/length')))
const taken: Reckoning = { ...total, name: 'w#taken', how: 'given', terms: [plus('length', known('/length'))] }
const again: Reckoning = { ...total, name: 'w#again', how: 'given', terms: [plus('taken', known('w#taken'))] }

const figure = (of: string, more: Partial<Figure> = {}): Figure => ({
  value: inches(84) as Length,
  of,
  what: 'length',
  state: 'ordered',
  ...more,
})
const markOf = (shown: Figure): Mark => ({ kind: 'height', role: 'dimension', at: [0, 0], figure: shown })
const stateOf = (mark: Mark, readings = { '/length': { value: inches(84) } }) => {
  const layers: readonly Layer[] = [{ view: 'elevation', depth: 0, marks: [mark] }]
  return JSON.stringify(asMeasured(layers, readings, [total, taken, again])).match(/"state":"(\w+)"/)?.[1]
}

test('a number that was read lies on tape, and one that only takes it over too', () => {
  expect(['/length', 'w#taken', 'w#again'].map((of) => stateOf(markOf(figure(of))))).toEqual(Array(3).fill('measured'))
})
test('a number that was worked out from a reading, or that nobody read, does not', () => {
  expect([stateOf(markOf(figure('w#total'))), stateOf(markOf(figure('/width')))]).toEqual(['ordered', 'ordered'])
})
test('what is off, unknown or decided stays so', () => {
  const states = ['off', 'unknown', 'decided'] as const
  expect(states.map((state) => stateOf(markOf(figure('/length', { state }))))).toEqual(states)
})
test('numbers in groups and details are seen', () => {
  const group: Mark = { kind: 'group', id: 'g', marks: [markOf(figure('/length'))] }
  const detail: Mark = { kind: 'detail', id: 'd', code: 'd', from: [0, 0], to: [1, 1], marks: [markOf(figure('/length'))] }
  expect([stateOf(group), stateOf(detail)]).toEqual(['measured', 'measured'])
})
