import {
  checkReckoning,
  comesTo,
  count,
  divided,
  formula,
  given,
  inches,
  type Known,
  type Length,
  least,
  minus,
  most,
  number,
  plus,
  type Reckoning,
  sum,
  times,
  wholeNanometres,
} from '@evenhem/length'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

const at = (value: number, from = '/order'): Known<Length> => ({ value: inches(value), from })
const bracket = sum(
  'w#bracket',
  'top-of-bracket',
  plus('finished-length', at(86.5)),
  plus('eye-drop', at(2.25)),
  minus('pin-setting', at(0.5)),
  plus('clearance', at(0.5)),
  minus('below-rod', at(0.5)),
)

test('a sum comes to its terms, and keeps them as they are held', () => {
  expect(bracket.value).toBe(inches(88.25))
  expect(bracket.terms[2]).toEqual({ what: 'pin-setting', sign: -1, value: inches(0.5), from: '/order' })
})
test('a reckoning is a term of the next under its own name', () => {
  expect(plus('top-of-bracket', bracket)).toEqual({ what: 'top-of-bracket', sign: 1, value: inches(88.25), from: 'w#bracket' })
})

const sound: readonly Reckoning[] = [
  bracket,
  sum('none', 'x'),
  given('g', 'x', minus('y', at(0))),
  least('l', 'x', plus('a', at(3)), plus('b', at(2))),
  most('m', 'x', plus('a', at(3)), plus('b', at(2))),
  times('t', 'x', plus('space', at(3.9)), plus('spaces', number(1 / 3))),
  divided('d', 'x', plus('width', at(40)), plus('spaces', number(3)), plus('halves', number(2))),
  count('c', 'x', plus('pleats', number(8)), plus('edges', number(2))),
  formula('f', 'x', inches(2) / 3, 'trade/circle'),
  {
    name: 'r',
    what: 'fullness',
    unit: 'ratio',
    how: 'divided',
    value: 2.5,
    terms: [plus('flat', at(100)), plus('finished', at(40))],
  },
  { name: 'w', what: 'weight', unit: 'mass', how: 'sum', value: 0.3, terms: [plus('a', number(0.1)), plus('b', number(0.2))] },
]
describe('a reckoning whose terms come to its value is sound', () => {
  test.each(sound)('$name, $how', (reckoning) => expect(checkReckoning(reckoning)).toBeUndefined())
})

const unsound: readonly (readonly [Partial<Reckoning>, string])[] = [
  [{ value: 3 }, 'Unexpected value 3 of w#x, expected 5 (sum of 7, -2); let the value follow from its terms'],
  [{ value: 5.5 }, 'Unexpected value 5.5 of w#x, expected a whole number; round it where it is made'],
  [{ value: Number.NaN, unit: 'force' }, 'Unexpected value NaN of w#x, expected a finite number; round it where it is made'],
  [
    { how: 'given' },
    'Unexpected value 5 of w#x, expected terms that come to one (given of 7, -2); let the value follow from its terms',
  ],
  [
    { how: 'least', terms: [] },
    'Unexpected value 5 of w#x, expected terms that come to one (least of no terms); let the value follow from its terms',
  ],
  [
    { how: 'times', terms: [] },
    'Unexpected value 5 of w#x, expected terms that come to one (times of no terms); let the value follow from its terms',
  ],
  [
    { how: 'divided', terms: [plus('a', number(5)), plus('b', number(0))] },
    'Unexpected value 5 of w#x, expected terms that come to one (divided of 5, 0); let the value follow from its terms',
  ],
  [{ how: 'formula' }, 'Unexpected formula without a source in w#x, expected the code of its words; name it'],
]
describe('a reckoning that does not come to its value says how', () => {
  const right: Reckoning = {
    name: 'w#x',
    what: 'x',
    value: 5,
    unit: 'length',
    how: 'sum',
    terms: [plus('a', number(7)), minus('b', number(2))],
  }
  test.each(unsound)('%j', (wrong, says) => expect(checkReckoning({ ...right, ...wrong })).toBe(says))
})

test('lengths and counts come to whole numbers, everything else to twelve digits', () => {
  const terms = [plus('a', number(10)), plus('b', number(3))]
  expect([comesTo('divided', terms), comesTo('divided', terms, 'count'), comesTo('divided', terms, 'ratio')]).toEqual([
    3, 3, 3.33333333333,
  ])
})
test('what the makers make is sound and never −0', () => {
  const known = fc.integer({ min: -1e12, max: 1e12 }).map((value) => ({ value: value as Length, from: '/x' }))
  fc.assert(
    fc.property(
      fc.array(fc.tuple(known, fc.boolean()), { minLength: 1, maxLength: 8 }),
      fc.constantFrom(sum, least, most),
      (list, make) => {
        const made = make('x', 'x', ...list.map(([value, adds]) => (adds ? plus : minus)('y', value)))
        expect(checkReckoning(made)).toBeUndefined()
        expect(Object.is(made.value, -0)).toBe(false)
      },
    ),
  )
})
test('a length is rounded away from zero at half-way, the same to both sides, and never to −0', () => {
  expect([0.5, -0.5, 1.5, -2.5, -0.4, -0, 7.499].map(wholeNanometres)).toEqual([1, -1, 2, -3, 0, 0, 7])
})
