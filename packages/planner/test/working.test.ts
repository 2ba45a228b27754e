import type { Job } from '@evenhem/job'
import { type Known, minus, number, plus, type Reckoning, sum, times } from '@evenhem/length'
import { expect, test } from 'vitest'
import { checkReckonings, leavesOf, openReckoning } from '../src/index.ts'
import { house, over, put } from './invented.ts'

const known = (value: number, from: string): Known => ({ value, from })
const job: Job = put(put(house, `${over}/clearance`, 3), `${over}/rod`, { top: 40, width: 10 })
const defaults = { gap: { value: 2 } }
const half = sum(`${over}#half`, 'p/half', plus('p/top', known(40, `${over}/rod/top`)), minus('p/gap', known(2, 'trade:gap')))
const whole = times(`${over}#whole`, 'p/whole', plus('p/half', half), plus('p/two', number(2)))
const end = sum(
  `${over}#end`,
  'p/end',
  plus('p/whole', whole),
  plus('p/clearance', known(3, `${over}/clearance`)),
  plus('p/top', known(40, `${over}/rod/top`)),
)
const plan = { reckonings: [half, whole, end] }
const problems = (...reckonings: readonly Reckoning[]) =>
  checkReckonings({ reckonings }, job, defaults).map(({ name, what, from }) => [
    name.split('#')[1],
    what,
    ...(from ? [from] : []),
  ])

test('a reckoning is opened by its name; a place is not one', () => {
  expect([openReckoning(plan, whole.name), openReckoning(plan, `${over}/clearance`)]).toEqual([whole, undefined])
})

test('the leaves of a reckoning are places, defaults and numbers, each once', () => {
  expect(leavesOf(plan, end).map(({ from }) => from)).toEqual([`${over}/rod/top`, 'trade:gap', 'number:2', `${over}/clearance`])
})

test('a working that holds has no problems', () => {
  expect(problems(half, whole, end)).toEqual([])
})

test('a value that its terms do not come to is a problem', () => {
  expect(problems({ ...half, value: 39 })).toEqual([['half', 'does-not-come-to-it']])
  expect(checkReckonings({ reckonings: [{ ...half, value: 39 }] }, job, defaults)[0]?.message).toBe(
    `${over}#half: unexpected value 39, expected 38 from its 2 terms by sum`,
  )
})

test('a leaf whose place holds something else, or nothing, is a problem', () => {
  const wrong = sum(
    `${over}#w`,
    'p/w',
    plus('p/a', known(4, `${over}/clearance`)),
    plus('p/b', known(4, `${over}/none`)),
    plus('p/c', known(3, 'trade:gap')),
    plus('p/d', known(1, 'nowhere')),
  )
  expect(problems(wrong)).toEqual([
    ['w', 'not-what-is-there', `${over}/clearance`],
    ['w', 'not-found', `${over}/none`],
    ['w', 'not-what-is-there', 'trade:gap'],
    ['w', 'not-found', 'nowhere'],
  ])
})

test('a term from a reckoning that is not there, or has another value, is a problem', () => {
  expect(problems(whole)).toEqual([['whole', 'not-found', `${over}#half`]])
  expect(problems({ ...half, value: 37, how: 'formula', source: 'p/f' }, whole)).toEqual([
    ['whole', 'not-what-is-there', `${over}#half`],
  ])
})

test('two reckonings of one name are a problem', () => {
  expect(problems(half, half)).toEqual([['half', 'twice']])
})

test('a formula without a source, and a length that is not whole, are problems', () => {
  expect(problems({ ...half, how: 'formula' }, { ...half, name: 'x#part', value: 38.5, how: 'formula', source: 'p/f' })).toEqual([
    ['half', 'without-source'],
    ['part', 'not-whole'],
  ])
})

test('reckonings that come from themselves are a problem, and have no end of leaves', () => {
  const a: Reckoning = { ...half, name: '#a', how: 'sum', value: 1, terms: [{ what: 'p/b', sign: 1, value: 1, from: '#b' }] }
  const b: Reckoning = { ...a, name: '#b', terms: [{ what: 'p/a', sign: 1, value: 1, from: '#a' }] }
  expect(problems(a, b)).toEqual([
    ['a', 'circle'],
    ['b', 'circle'],
  ])
  expect(leavesOf({ reckonings: [a, b] }, a)).toEqual([])
})
