import { type Length, tapes, writeLength } from '@evenhem/length'
import { expect, test } from 'vitest'
import { type ComposeOptions, compose, type Figure, figuresOf, type Layer, screen, toSvg, words } from '../src/index.ts'

const say = (code: string): string => (words.en as Readonly<Record<string, { says: string }>>)[code]?.says ?? code
const options: ComposeOptions = {
  ...{ view: 'loads', state: 'drawn', width: 600, height: 400, sizes: screen, say },
  write: (length) => writeLength(length, tapes.sixteenths),
  weigh: (mass) => `${mass * 2} lb`,
}
const figure = (more: Partial<Figure>): Figure => ({ of: 'w#load', what: 'left', state: 'computed', ...more })
const drawn = (own: Figure, isLoad = true, more: Partial<ComposeOptions> = {}) => {
  const layer: Layer = {
    ...{ view: 'loads', depth: 0 },
    marks: [
      { kind: 'rect', role: 'rod', at: [0, 0], width: 1000, height: 300 },
      { kind: 'dimension', role: 'dimension', side: 'inside', from: [500, 250], to: [500, 220], figure: own, isLoad },
    ],
  }
  return compose([layer], { ...options, ...more })
}
const labelOf = (...of: Parameters<typeof drawn>) => figuresOf(drawn(...of))[0]

test('a load is written in the reader’s unit and said so', () => {
  expect(labelOf(figure({ mass: 15 }))?.words).toBe('left: 30 lb, worked out')
  const texts = labelOf(figure({ mass: 15 }))?.tag.number?.glyphs.glyphs.map((glyph) => glyph.kind === 'text' && glyph.text)
  expect(texts).toEqual(['=', '30', 'lb'])
})
test('without a reader’s unit it is in whole kilograms', () => {
  expect(labelOf(figure({ mass: 15.4 }), true, { weigh: undefined as never })?.words).toBe('left: 15 kg, worked out')
})
test('a load that nobody knows is a question mark, like any number', () => {
  expect(labelOf(figure({ state: 'unknown' }))?.tag).toMatchObject({ state: 'unknown' })
  expect(labelOf(figure({ state: 'unknown' }))?.words).toBe('left: not known')
})
test('its arrow ends where it says, with its head there and no line beyond it', () => {
  const item = drawn(figure({ mass: 15 })).items.find((each) => each.kind === 'dimension')
  if (item?.kind !== 'dimension') throw new Error('Unexpected scene without a dimension, expected one')
  expect(item.ticks).toHaveLength(1)
  expect(item.ticks[0]?.[1]).toEqual(item.to)
  expect(item.extensions).toEqual([])
  expect(Math.max(...item.line.flat().map(([, y]) => y))).toBe(item.to[1])
  expect(toSvg(drawn(figure({ mass: 15 })), { title: 'Loads' })).toContain('class="line load"')
})
test('what is allowed at most stands beside a number, and is said', () => {
  const own = figure({ value: 12_700_000 as Length, most: 6_350_000 as Length })
  const label = labelOf(own, false)
  expect(label?.words).toBe('left: 1/2 in, worked out, 1/4 in allowed at most')
  expect(label?.tag.beside).toMatchObject({ what: 'most' })
  expect(label?.tag.box.width).toBeGreaterThan((label?.tag.block.width ?? 0) + 20)
})
