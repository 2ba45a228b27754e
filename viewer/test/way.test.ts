import { expect, test } from 'vitest'
import { deeper, depth, start } from '../src/data/way.ts'

test('a number that is touched opens, and another one goes deeper', () => {
  const way = deeper(deeper(start, 'a'), 'b')
  expect(way.over).toEqual({ is: 'working', trail: ['a', 'b'] })
  expect(depth(way)).toBe(2)
})

test('the same number again changes nothing', () => {
  const way = deeper(start, 'a')
  expect(deeper(way, 'a')).toBe(way)
})
