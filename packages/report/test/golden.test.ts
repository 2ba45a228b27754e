import { tapes } from '@evenhem/length'
import { test } from 'vitest'
import { reportOf } from '../src/index.ts'
import { example, house } from './example.ts'
import { compare, withoutFonts } from './golden.ts'

test('the report of the window as ordered, on Letter', () => {
  compare('tern-hollow-letter.txt', withoutFonts(reportOf(example('tern-hollow', { paper: 'letter' })).html))
})

test('the report of the window after the tape was laid on it, on A4', () => {
  compare('tern-hollow-found-a4.txt', withoutFonts(reportOf(example('tern-hollow-found')).html))
})

test('the same in millimetres', () => {
  compare(
    'tern-hollow-found-a4-mm.txt',
    withoutFonts(reportOf(example('tern-hollow-found', { tape: tapes.wholeMillimetres })).html),
  )
})

const two = ['tern-hollow', 'panels-do-not-meet']
test('a house of two windows, of which one stops', () => {
  compare('house-letter.txt', withoutFonts(reportOf(house(two, { paper: 'letter' })).html))
})

test('the same in Spanish and millimetres, on A4', () => {
  compare('house-es-a4-mm.txt', withoutFonts(reportOf(house(two, { language: 'es', tape: tapes.wholeMillimetres })).html))
})
