import type { Job } from '@evenhem/job'
import { inches, number, plus, type Reckoning } from '@evenhem/length'
import { expect, test } from 'vitest'
import { amountOf, loadOf } from '../src/data/amount.ts'
import { type Ground, linesOf } from '../src/data/working.ts'

const writing = {
  write: () => ({ text: '1', negative: false, whole: '1', unit: 'in', off: 0 }) as never,
  weigh: (kg: number) => `${Math.round(kg)} kg`,
}

test('a load is told as what weighs as much, a weight with its unit, a share bare', () => {
  expect(loadOf(98.0665, writing)).toMatchObject({ text: '10 kg', whole: '10', suffix: 'kg' })
  expect(amountOf(98.0665, 'force', writing)).toEqual(loadOf(98.0665, writing))
  expect(amountOf(7, 'mass', writing)).toMatchObject({ whole: '7', suffix: 'kg' })
  expect(amountOf(0.5, 'ratio', writing)).toMatchObject({ numerator: 1, denominator: 2 })
})

const pull: Reckoning = {
  ...{ name: 'w#pull', what: 'pull', value: 40, unit: 'force', how: 'formula' },
  terms: [
    plus('load', { name: 'w#load', what: 'load', value: 98, unit: 'force', how: 'sum', terms: [] }),
    plus('projection', { value: inches(3.5), from: '/hardware/tube/projection' }),
    plus('finial', { value: 0.22, from: '/hardware/tube/finial' }),
    plus('holes', number(2)),
  ],
}
const ground: Ground = {
  ordered: { hardware: [{ id: 'tube', projection: inches(3.5), finial: '220 g' }] } as unknown as Job,
  readings: {},
  reckonings: new Map([['w#load', { name: 'w#load', what: 'load', value: 98, unit: 'force', how: 'sum', terms: [] }]]),
}
test('what a formula takes from the order is shown as what it is there: a length, a weight, a plain number', () => {
  expect(linesOf(pull, ground).map(({ unit }) => unit)).toEqual(['force', 'length', 'mass', 'count'])
})
