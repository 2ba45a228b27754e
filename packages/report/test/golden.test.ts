import { tapes } from '@evenhem/length'
import { test } from 'vitest'
import { reportOf } from '../src/index.ts'
import { example } from './example.ts'
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
