import fc from 'fast-check'
import { expect, test } from 'vitest'
import { below, tokens, valueAt } from '../src/index.ts'
import { placeOf, pointerOf } from '../src/read/pointers.ts'
import { jobOf } from './job.ts'

const job = jobOf()

test('the tokens of a place are what it was made of', () =>
  fc.assert(fc.property(fc.array(fc.string()), (names) => void expect(tokens(below('', ...names))).toEqual(names))))

test('a list item is named by its id', () => {
  expect(valueAt(job, '/rooms/den/windows/w1/name')).toBe('Window')
  expect(valueAt(job, '/rooms/0/windows/w1/name')).toBeUndefined()
  expect(valueAt(job, '/rooms/den/constructor')).toBeUndefined()
})

test('a place and its pointer lead to each other', () => {
  const place = '/rooms/den/windows/w1/treatments/over/panels/right/pleats'
  expect(pointerOf(job, place)).toBe('/rooms/0/windows/0/treatments/0/panels/1/pleats')
  expect(placeOf(job, pointerOf(job, place) ?? '')).toBe(place)
  expect(pointerOf(job, '/rooms/attic/name')).toBeUndefined()
})

test('below an item without an id there is no place', () => {
  expect(placeOf({ rooms: [{}] }, '/rooms/0/name')).toBeUndefined()
})
