import { inches, type Length, type Tape, tapes, writeLength } from '@evenhem/length'
import { expect, test } from 'vitest'
import { type FigureLook, figureOf, type Glyph } from '../src/index.ts'

const figure = (value: Length, look: Partial<FigureLook> = {}, tape: Tape = tapes.sixteenths) =>
  figureOf(writeLength(value, tape), { size: 100, weight: 500, ...look })
const texts = (glyphs: readonly Glyph[]) => glyphs.map((glyph) => (glyph.kind === 'text' ? glyph.text : '/'))

test('every digit has one width: 0.497 em at 400, 0.513 at 600, 0.528 at 700', () => {
  expect(figure(inches(93), { weight: 400 }).width).toBeCloseTo(2 * 49.7)
  expect(figure(inches(11), { weight: 600 }).width).toBeCloseTo(2 * 51.3)
  expect(figure(inches(48), { weight: 700 }).width).toBeCloseTo(2 * 52.8)
})
test('a fraction is small figures around a drawn slash, one weight heavier', () => {
  const { glyphs, width } = figure(inches(93.125))
  expect(texts(glyphs)).toEqual(['93', '1', '/', '8'])
  expect(glyphs[1]).toMatchObject({ size: 63, weight: 600, y: -25.4 })
  expect(width).toBeCloseTo(2 * 50.5 + 10 + 63 * 0.513 + 24.5 + 63 * 0.513)
})
test('the slash is drawn heavier from 600 up', () => {
  const slash = (weight: FigureLook['weight']) => figure(inches(0.5), { weight }).glyphs.find((glyph) => glyph.kind === 'slash')
  expect(slash(500)).toMatchObject({ thickness: expect.closeTo(5.2, 6) })
  expect(slash(600)).toMatchObject({ thickness: expect.closeTo(6.6, 6) })
})
test('a fraction alone has no gap before it', () => expect(figure(inches(0.375)).glyphs[0]).toMatchObject({ text: '3', x: 0 }))
test('two digits over two digits take no more than they need', () =>
  expect(texts(figure(inches(91.9375)).glyphs)).toEqual(['91', '15', '/', '16']))
test('what is worked out has = before it, and less than nothing a minus', () => {
  expect(texts(figure(inches(92), { sign: '=' }).glyphs)).toEqual(['=', '92'])
  expect(texts(figure(inches(-0.375)).glyphs)).toEqual(['−', '3', '/', '8'])
})
test('feet are said, other units when they are asked for', () => {
  expect(texts(figure(inches(86.5), {}, tapes.feetAndEighths).glyphs)).toEqual(['7', 'ft', '2', '1', '/', '2'])
  expect(texts(figure(inches(86.5), {}, tapes.wholeMillimetres).glyphs)).toEqual(['2197'])
  expect(texts(figure(inches(86.5), { units: true }, tapes.wholeMillimetres).glyphs)).toEqual(['2197', 'mm'])
  expect(texts(figure(inches(86.5), { units: true }, tapes.centimetresToTheMillimetre).glyphs)).toEqual(['219.7', 'cm'])
  expect(texts(figure(inches(3), { units: true }).glyphs)).toEqual(['3', 'in'])
})
test('a figure keeps its proportions at every size', () => {
  expect(figure(inches(93.125), { size: 372 }).width / 372).toBeCloseTo(figure(inches(93.125), { size: 17 }).width / 17, 10)
})
