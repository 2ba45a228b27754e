import { expect, test } from 'vitest'
import { contrast, drawingCss, type Light, lights, lightsCss, pairs, paperCss, quietOnPurpose, type Token } from '../src/index.ts'

const all = Object.keys(lights) as Light[]
const rounded = (front: Token, back: Token) =>
  all.map((light) => contrast(lights[light][front], lights[light][back]).toFixed(1)).join(' ')

test('contrast is that of WCAG 2.2: black on white 21, a colour on itself 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10)
  expect(contrast('#777777', '#777777')).toBe(1)
})
for (const light of all)
  test(`in the light "${light}" text has 4.5 and what has a meaning without text has 3`, () => {
    expect(pairs.filter(({ front, back, least }) => contrast(lights[light][front], lights[light][back]) < least)).toEqual([])
  })
test('the table of the concept comes out of the tokens: paper, night, sun', () => {
  expect(rounded('ink', 'sheet')).toBe('15.9 15.2 21.0')
  expect(rounded('mark', 'markbg')).toBe('6.9 7.0 11.7')
  expect(rounded('line', 'sheet')).toBe('3.6 4.2 11.4')
  expect(rounded('tapeink', 'tape')).toBe('12.6 10.4 16.0')
  expect(rounded('tapehook', 'tape')).toBe('3.7 3.3 16.0')
  expect(rounded('frame', 'casing')).toBe('11.8 8.6 21.0')
})
test('what is quiet is quiet on purpose: below 3 on paper, and named', () => {
  expect(quietOnPurpose.filter((token) => contrast(lights.paper[token], lights.paper.sheet) >= 3)).toEqual([])
})
test('paper follows the system until a light is chosen', () => {
  expect(lightsCss()).toContain('@media (prefers-color-scheme:dark){:root:not([data-light]){')
  for (const light of all) expect(lightsCss()).toContain(`:root[data-light=${light}]{`)
})
test('lines are heavier in the sun', () => {
  expect(lightsCss()).toContain('--k:1.5')
  expect(drawingCss()).toContain('stroke-width:calc(2.6px*var(--k))')
})
test('every colour of the drawing is a token, but those of a page without colour', () => {
  const used = [...(drawingCss() + paperCss()).matchAll(/var\(--(\w+)\)/g)].map((match) => match[1] as string)
  expect(used.filter((name) => name !== 'k' && !(name in lights.paper))).toEqual([])
  expect(drawingCss()).not.toMatch(/#[0-9a-f]{3,6}/)
})
test('on paper weights are mm, and tape prints as light grey with its hook', () => {
  expect(paperCss()).toContain('.drawing.on-paper .wall{fill:none;stroke:var(--ink);stroke-width:0.7;')
  expect(paperCss()).toMatch(/@media print and \(monochrome\).*\.measured>\.block.*#dcdcdc.*\.hook/)
})
