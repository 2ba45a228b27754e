import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { cut, textWidth, wrap } from '../src/text.ts'

const type = { size: 10, weight: 400 } as const

test('the width table is what the font that the viewer ships says', () => {
  const script = fileURLToPath(new URL('../script/widths.ts', import.meta.url))
  expect(execFileSync(process.execPath, ['--import', 'tsx', script, '--compare'], { encoding: 'utf8' })).toBe('')
}, 30_000)
test('words are as wide as their letters', () => {
  expect(textWidth('frame', type)).toBeCloseTo([...'frame'].reduce((sum, letter) => sum + textWidth(letter, type), 0))
  expect(textWidth('ii', type)).toBeLessThan(textWidth('mm', type))
  expect(textWidth('mm', { ...type, weight: 700 })).toBeGreaterThan(textWidth('mm', type))
})
test('accented letters are in the table, and letters of other scripts are taken to be wide', () => {
  expect(textWidth('ŁódźüñĞ', type)).toBeLessThan(45)
  expect(textWidth('窗', type)).toBeGreaterThanOrEqual(10)
  expect(textWidth('e\u0301', type)).toBe(textWidth('e', type))
})
test('words that fit are left alone', () => expect(cut('left panel', type, 100)).toBe('left panel'))
test('words that do not fit are cut, and never wider than they may be', () => {
  expect(cut('left panel', type, 30)).toBe('left…')
  expect(textWidth(cut('left panel', type, 30), type)).toBeLessThanOrEqual(30)
})
test('where not even one letter fits there is nothing', () => expect(cut('left', type, 5)).toBe(''))
test('words are wrapped between words, and the last line is cut', () => {
  expect(wrap('bottom of casing', type, 50, 2)).toEqual(['bottom of', 'casing'])
  expect(wrap('from the corner to the left bracket', type, 50, 2)).toEqual(['from the', 'corner to…'])
  expect(wrap('', type, 50, 2)).toEqual([])
})
