import type { Written } from '@evenhem/length'
import { type Type, textWidth, type Weight } from './text.ts'

/** What stands before the digits: worked out, longer, shorter, rounded to the tape. */
export type Sign = '=' | '+' | '−' | '≈'
/** A piece of a figure, from the figure's left end on its baseline; y down. */
export type Glyph =
  | {
      readonly kind: 'text'
      readonly text: string
      readonly x: number
      readonly y: number
      readonly size: number
      readonly weight: Weight
      readonly part: 'digits' | 'sign' | 'unit'
    }
  | {
      readonly kind: 'slash'
      readonly from: readonly [number, number]
      readonly to: readonly [number, number]
      readonly thickness: number
    }
/** A number as shapes, with a width known before it is drawn. */
export interface Glyphs {
  readonly width: number
  readonly size: number
  readonly glyphs: readonly Glyph[]
}
/** `units`: say the unit (mm, cm, in). Feet are always said. */
export interface FigureLook extends Type {
  readonly sign?: Sign
  readonly units?: boolean
}

/** Height of the digits over their baseline, and half of it: where a figure's middle lies. In parts of its size. */
export const capHeight = 0.66
export const middle = 0.335

const heavier = (weight: Weight): Weight => Math.min(weight + 100, 800) as Weight

/** Sets pieces one after the other and adds up their widths. */
function setter(size: number) {
  const glyphs: Glyph[] = []
  let x = 0
  const text = (words: string, type: Type, part: 'digits' | 'sign' | 'unit', y = 0): void => {
    glyphs.push({ kind: 'text', text: words, x, y, ...type, part })
    x += textWidth(words, type)
  }
  /** The typeface has no ≈: two of its ~, one over the other. */
  const sign = (before: Sign): void => {
    const type: Type = { size: 0.92 * size, weight: 400 }
    const from = x
    if (before === '≈') text('~', type, 'sign', 0.09 * size)
    x = from
    text(before === '≈' ? '~' : before, type, 'sign', before === '≈' ? -0.09 * size : 0)
  }
  const gap = (parts: number): void => {
    x += parts * size
  }
  const slash = (thickness: number): void => {
    glyphs.push({
      kind: 'slash',
      from: [x - 0.035 * size, 0.05 * size],
      to: [x + 0.28 * size, -0.71 * size],
      thickness: thickness * size,
    })
    x += 0.245 * size
  }
  return { text, sign, gap, slash, done: (): Glyphs => ({ width: x, size, glyphs }) }
}

/** A number with its unit behind it, "66 lb". */
export function quantityOf(text: string, { size, weight, sign }: FigureLook): Glyphs {
  const [number = '', unit = ''] = text.split(/\s+(?=\S+$)/)
  const set = setter(size)
  if (sign) {
    set.sign(sign)
    set.gap(0.19)
  }
  set.text(number, { size, weight }, 'digits')
  set.gap(0.16)
  set.text(unit, { size: 0.7 * size, weight: 400 }, 'unit')
  return set.done()
}

/** Words before a figure, in the size of a unit: "max. 1/2". */
export function withWords(words: string, written: Written, { size, weight }: FigureLook): Glyphs {
  const before: Type = { size: 0.86 * size, weight: 400 }
  const by = textWidth(words, before) + 0.3 * size
  const figure = figureOf(written, { size, weight })
  const moved = figure.glyphs.map(
    (glyph): Glyph =>
      glyph.kind === 'text'
        ? { ...glyph, x: glyph.x + by }
        : { ...glyph, from: [glyph.from[0] + by, glyph.from[1]], to: [glyph.to[0] + by, glyph.to[1]] },
  )
  const word: Glyph = { kind: 'text', text: words, x: 0, y: 0, ...before, part: 'unit' }
  return { width: figure.width + by, size, glyphs: [word, ...moved] }
}

/**
 * A length as it is shown, as shapes: whole digits at `size`, numerator and denominator at 0.63 of it and one weight heavier, the slash drawn.
 * All sizes are parts of `size`, so a figure looks the same on a label and read from a ladder.
 */
export function figureOf(written: Written, { size, weight, sign, units = false }: FigureLook): Glyphs {
  const set = setter(size)
  const unit = (word: string): void => {
    set.gap(0.12)
    set.text(word, { size: 0.63 * size, weight: 400 }, 'unit')
  }
  const before = sign ?? (written.negative ? '−' : undefined)
  if (before) {
    set.sign(before)
    set.gap(0.19)
  }
  if (sign === '=' && written.negative) set.text('−', { size: 0.92 * size, weight }, 'digits')
  if (written.feet !== undefined) {
    set.text(`${written.feet}`, { size, weight }, 'digits')
    unit('ft')
    if (written.whole || written.numerator) set.gap(0.22)
  }
  if (written.whole) set.text(written.whole, { size, weight }, 'digits')
  if (written.numerator !== undefined && written.denominator !== undefined) {
    const small = { size: 0.63 * size, weight: heavier(weight) }
    if (written.whole) set.gap(0.1)
    set.text(`${written.numerator}`, small, 'digits', -0.254 * size)
    set.slash(weight < 600 ? 0.052 : 0.066)
    set.text(`${written.denominator}`, small, 'digits', 0.02 * size)
  }
  if (units) unit(written.unit === 'ft-in' ? 'in' : written.unit)
  return set.done()
}
