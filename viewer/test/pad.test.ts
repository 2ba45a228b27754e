import { inch } from '@evenhem/length'
import { expect, test } from 'vitest'
import { formAt } from '../src/data/form.ts'
import {
  inUnit,
  type Keyed,
  keyedOf,
  keyedValue,
  nothingKeyed,
  outside,
  shorter,
  turned,
  withDigit,
  withParts,
} from '../src/data/pad.ts'

const keys = (text: string, unit: Keyed['unit'] = 'in'): Keyed => [...text].reduce(withDigit, nothingKeyed(unit))
const typed = (text: string, unit: Keyed['unit'] = 'in') => keyedValue({ ...nothingKeyed(unit), typed: text })

test('whole inches and a fraction are a length, written with its unit', () => {
  expect(keyedValue(withParts(keys('92'), 2))).toEqual({ is: 'value', read: 92.125 * inch, raw: '92 1/8 in' })
  expect(keyedValue(withParts(keys(''), 15))).toEqual({ is: 'value', read: (15 / 16) * inch, raw: '15/16 in' })
  expect(keyedValue(keys('92'))).toMatchObject({ raw: '92 in' })
  expect(keyedValue(turned(withParts(keys(''), 10)))).toMatchObject({ read: -0.625 * inch, raw: '-5/8 in' })
})

test('millimetres have tenths, counts have none', () => {
  expect(keyedValue(withParts(keys('2153', 'mm'), 5))).toEqual({ is: 'value', read: 2_153_500_000, raw: '2153.5 mm' })
  expect(keyedValue(keys('14', 'count'))).toEqual({ is: 'value', read: 14, raw: 14 })
})

test('a digit after a fraction begins a new number, and the last key can be taken back', () => {
  expect(keyedValue(withDigit(withParts(keys('92'), 2), '8'))).toMatchObject({ raw: '8 in' })
  expect(keyedValue(shorter(withParts(keys('92'), 2)))).toMatchObject({ raw: '92 in' })
  expect(keyedValue(shorter(keys('92')))).toMatchObject({ raw: '9 in' })
  expect(keyedValue(shorter(keys('9')))).toEqual({ is: 'none' })
})

test('a keyboard writes as people write lengths, and what is no length is said', () => {
  expect(typed('92 1/8')).toMatchObject({ read: 92.125 * inch, raw: '92 1/8 in' })
  expect(typed('7 ft 8')).toMatchObject({ read: 92 * inch })
  expect(typed('2340 mm')).toMatchObject({ raw: '2340 mm' })
  expect(typed('2340', 'mm')).toMatchObject({ read: 2_340_000_000 })
  expect(typed('92 1/')).toMatchObject({ is: 'wrong' })
  expect(typed('a dozen', 'count')).toMatchObject({ is: 'wrong', code: 'pad/no-count' })
})

test('the unit changes and the length stays', () => {
  expect(keyedValue(inUnit(withParts(keys('92'), 2), 'mm'))).toMatchObject({ raw: '2340 mm' })
  expect(keyedValue(inUnit(keys('2540', 'mm'), 'in'))).toMatchObject({ raw: '100 in' })
  expect(keyedOf(-0.625 * inch, 'in')).toMatchObject({ negative: true, whole: '0', parts: 10 })
})

test('what each place takes is known, with what is plausible there', () => {
  const over = '/rooms/den/windows/w1/treatments/over'
  expect(formAt(`${over}/panels/left/finishedLength`)).toMatchObject({ is: 'length' })
  expect(formAt(`${over}/found/came/rod-and-ring~1ring`)).toMatchObject({ is: 'count', least: 0 })
  expect(formAt(`${over}/found/brackets/left/fixed`)).toEqual({ is: 'tick' })
  expect(formAt(`${over}/found/brackets/right/follows`)).toMatchObject({
    is: 'choice',
    choices: ['level', 'head', 'ceiling', 'floor', 'between'],
  })
  expect(formAt(`${over}/nothing`)).toBeUndefined()
  const form = formAt(`${over}/panels/left/finishedLength`)
  expect(form && outside(form, 2150 * inch)).toMatchObject({ end: 'most' })
  expect(form && outside(form, 84 * inch)).toBeUndefined()
})
