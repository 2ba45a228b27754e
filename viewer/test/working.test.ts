import type { Job } from '@evenhem/job'
import { inches, minus, plus, type Reckoning, sum } from '@evenhem/length'
import { expect, test } from 'vitest'
import { type Ground, ledger, originOf } from '../src/data/working.ts'

const at = (member: string) => `/rooms/den/windows/w1/${member}`
const known = (member: string, value: number) => ({ value: inches(value), from: member })
const hem = sum('w#hem', 'hem', plus('floor', known(at('floor'), 0)), plus('clearance', known(at('clearance'), 0.5)))
const top = sum('w#top', 'top', plus('hem', hem), plus('length', known(at('length'), 84)))
const hook = sum(
  'w#hook',
  'hook',
  plus('top', top),
  minus('pin', known('/hardware/ash/pin', 0.5)),
  minus('slack', known('trade:slack', 0.25)),
)
const given: Reckoning = { ...hem, name: 'w#given', how: 'given', terms: [plus('clearance', known(at('clearance'), 0.5))] }
const ground = (readings = {}): Ground => ({
  ordered: { hardware: [{ id: 'ash', kind: 'rod', name: 'Ash rod' }] } as unknown as Job,
  readings,
  reckonings: new Map([hem, top, hook, given].map((each) => [each.name, each])),
})

test('a sum that goes on from a sum is read as one column, its levels named', () => {
  const lines = ledger(hook, ground())
  expect(lines.map(({ sign, what }) => sign + what)).toEqual(['floor', '+clearance', '+length', '−pin', '−slack', '=hook'])
  expect(lines.map(({ comesTo }) => comesTo?.what)).toEqual([undefined, 'hem', 'top', undefined, undefined, undefined])
})

test('the lines of a column come to its total', () => {
  const [total, ...terms] = ledger(hook, ground()).toReversed()
  expect(terms.reduce((sum, { sign, value }) => sum + (sign === '−' ? -value : value), 0)).toBe(total?.value)
})

test('every term says where it comes from', () => {
  expect(ledger(hook, ground()).map(({ origin }) => origin.kind)).toEqual(['order', 'order', 'order', 'hardware', 'trade', 'sum'])
})

test('a reading wins over the order that it is a reading of', () => {
  const reading = { value: inches(84.25), by: 'tablet 1', when: '2026-11-30T09:12' }
  expect(originOf(at('length'), ground({ [at('length')]: reading }))).toEqual({ kind: 'reading', place: at('length'), reading })
})

test('a number that is only taken over is opened where it stands', () => {
  expect(originOf('w#given', ground())).toEqual({ kind: 'order', place: at('clearance') })
})
