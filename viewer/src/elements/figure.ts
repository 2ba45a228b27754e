import { figureOf, type Glyph, type Glyphs, quantityOf } from '@evenhem/drawing'
import type { Length } from '@evenhem/length'
import { css, html, svg } from 'lit'
import type { Amount } from '../data/amount.ts'
import { spoken } from '../data/spoken.ts'

type Weight = 400 | 500 | 600 | 700 | 800

const shape = (glyph: Glyph) =>
  glyph.kind === 'slash'
    ? svg`<path d="M${glyph.from[0]} ${glyph.from[1]}L${glyph.to[0]} ${glyph.to[1]}" stroke="currentColor" stroke-width=${glyph.thickness} fill="none" />`
    : svg`<text x=${glyph.x} y=${glyph.y} font-size=${glyph.size} font-weight=${glyph.weight}>${glyph.text}</text>`

// Drawn at a hundred and scaled: a figure has the same shape on a label, in a ledger and read from a ladder.
const drawn = (amount: Amount, weight: Weight, units = false): Glyphs =>
  amount.suffix === undefined
    ? figureOf(
        { ...amount, unit: amount.unit === 'none' ? 'in' : amount.unit, off: 0 as Length },
        { size: 100, weight, units: units && saysItsUnit(amount), sign: isRounded(amount) ? '≈' : undefined },
      )
    : quantityOf(`${amount.whole} ${amount.suffix}`, { size: 100, weight })
/** Its minus says more than that it is rounded. */
const isRounded = ({ off, negative }: Amount): boolean => (off ?? 0) !== 0 && !negative
/** Inches go without their unit; so does what has none, and feet without inches. */
const saysItsUnit = ({ unit, feet, whole, numerator }: Amount): boolean =>
  unit !== 'in' && unit !== 'none' && (feet === undefined || whole !== '' || numerator !== undefined)

const inline = ({ width, glyphs }: Glyphs) =>
  html`<svg class="figure" aria-hidden="true" viewBox="-1 -74 ${width + 2} 84" width="${(width + 2) / 100}em" height="0.84em" fill="currentColor">${glyphs.map(shape)}</svg>`

/** A number in a line of text, as it is drawn everywhere, with its name for a screen reader. */
export const figure = (amount: Amount, weight: Weight = 700, units = true) =>
  html`<span class="number" role="img" aria-label=${spoken(amount)}>${inline(drawn(amount, weight, units))}</span>`

/** A number in two cells of a column: whole digits, which align right, and the fraction, which starts in its own column. */
export function inColumns(amount: Amount, weight: Weight) {
  if (amount.suffix !== undefined) return { before: inline(drawn(amount, weight)), after: '' }
  const { numerator, denominator, ...whole } = amount
  const before: Amount = { ...whole, unit: 'none' }
  const isFraction = amount.whole === '' && amount.feet === undefined && !amount.negative
  const off = isFraction ? amount.off : undefined
  return {
    before: isFraction ? '' : inline(drawn(before, weight)),
    after: inline(drawn({ ...amount, negative: false, feet: undefined, whole: '', off }, weight)),
  }
}

/** A number in a drawing: it ends at x, its baseline at y. */
export function placed(
  amount: Amount,
  at: { readonly x: number; readonly y: number; readonly size: number; readonly weight: Weight },
) {
  const { width, glyphs } = drawn(amount, at.weight)
  const wide = (width * at.size) / 100
  const x = at.x - wide
  return {
    mark: svg`<g transform="translate(${x} ${at.y}) scale(${at.size / 100})" fill="currentColor">${glyphs.map(shape)}</g>`,
    x,
    width: wide,
  }
}

export const figureStyle = css`
  .figure { display: inline-block; overflow: visible; vertical-align: -0.1em; flex: none }
  .number { white-space: nowrap }
`

/** How wide a number is, in its font size. */
export const figureWidth = (amount: Amount, weight: Weight = 700): number => (drawn(amount, weight, true).width + 2) / 100
