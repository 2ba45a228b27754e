import type { PlacedWindow } from '@evenhem/job'
import { expect, test } from 'vitest'
import { addressOf, deeper, depth, readAddress, start } from '../src/data/way.ts'

test('a number that is touched opens, and another one goes deeper', () => {
  const way = deeper(deeper(start, 'a'), 'b')
  expect(way.over).toEqual({ is: 'working', trail: ['a', 'b'] })
  expect(depth(way)).toBe(2)
})

test('the same number again changes nothing', () => {
  const way = deeper(start, 'a')
  expect(deeper(way, 'a')).toBe(way)
})

const found = { place: '/rooms/a b/windows/w1', room: { id: 'a b' }, window: { id: 'w1' } } as unknown as PlacedWindow

test('an address leads to the window and view that it was made from', () => {
  expect(addressOf(found, 'marks')).toBe('#/a%20b/w1/marks')
  expect(readAddress(addressOf(found, 'marks'))).toEqual({ is: 'window', room: 'a b', window: 'w1', view: 'marks' })
  expect(readAddress(addressOf(found))).toEqual({ is: 'window', room: 'a b', window: 'w1', view: 'drawing' })
})

test.each([
  ['', 'start'],
  ['#', 'start'],
  ['#/', 'house'],
  ['#/den', 'house'],
  ['#/%E0%A4%A/w1', 'window'],
])('the address “%s” leads to: %s', (hash, is) => expect(readAddress(hash).is).toBe(is))
