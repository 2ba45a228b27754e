import type { Written } from '@evenhem/length'
import { css, html, svg, type TemplateResult } from 'lit'
import { spoken } from '../data/spoken.ts'

/** Shapes in hundredths of the size of the whole digits, on a baseline at 0, and how wide they are. */
interface Drawn {
  readonly marks: readonly TemplateResult<2>[]
  readonly width: number
}
type Part = (at: number, weight: number) => Drawn

// Source Sans 3 gives every digit one width, so a figure's width is known before it is drawn and no text is measured.
const digit = (weight: number) => (weight >= 700 ? 52.8 : weight >= 600 ? 51.3 : weight >= 500 ? 50.5 : 49.7)
const heavier = (weight: number) => Math.min(weight + 100, 900)
const nothing: Part = () => ({ marks: [], width: 0 })

const text = (letters: string, width: number, size = 100): Part => (at, weight) => ({
  marks: [svg`<text x=${at} font-size=${size} font-weight=${weight}>${letters}</text>`],
  width,
})
const digits = (letters: string): Part => (at, weight) =>
  text(letters, [...letters].reduce((width, letter) => width + (letter === '.' ? 25 : digit(weight)), 0))(at, weight)
const space = (width: number): Part => () => ({ marks: [], width })
const minus = text('−', 56)
const unitOf = (unit: string): Part => (at, weight) => text(unit, unit === 'mm' ? 78 : unit === 'cm' ? 66 : 42, 45)(at, Math.min(weight, 600))

/** The numerator hangs from cap height, the denominator stands on the baseline, the slash is drawn. */
const fraction = (numerator: number, denominator: number): Part => (at, weight) => {
  const each = digit(heavier(weight)) * 0.63
  const slashAt = at + String(numerator).length * each - 1
  const small = (letters: number, x: number, y: number) => svg`<text x=${x} y=${y} font-size="63" font-weight=${heavier(weight)}>${letters}</text>`
  return {
    marks: [
      small(numerator, at, -25.4),
      svg`<path d="M${slashAt} 5L${slashAt + 31.5} -71" stroke="currentColor" stroke-width=${weight >= 600 ? 6.6 : 5.2} fill="none" />`,
      small(denominator, slashAt + 28, 2),
    ],
    width: (String(numerator).length + String(denominator).length) * each + 28,
  }
}

const beside = (parts: readonly Part[]): Part => (at, weight) =>
  parts.reduce<Drawn>(({ marks, width }, part) => {
    const next = part(at + width, weight)
    return { marks: [...marks, ...next.marks], width: width + next.width }
  }, { marks: [], width: 0 })

const feetAndWhole = ({ feet, whole }: Written): readonly Part[] => [
  ...(feet === undefined ? [] : [digits(String(feet)), space(6), unitOf('ft'), ...(whole === '' ? [] : [space(14)])]),
  ...(whole === '' ? [] : [digits(whole)]),
]
const fractionOf = ({ numerator, denominator }: Written): Part => (numerator && denominator ? fraction(numerator, denominator) : nothing)
const unitAfter = ({ unit, whole, numerator }: Written): readonly Part[] =>
  unit === 'in' || (whole === '' && !numerator) ? [] : [space(10), unitOf(unit === 'ft-in' ? 'in' : unit)]

function whole(written: Written): Part {
  const before = feetAndWhole(written)
  const gap = before.length > 0 && written.numerator ? [space(10)] : []
  return beside([...(written.negative ? [minus] : []), ...before, ...gap, fractionOf(written), ...unitAfter(written)])
}

const inline = (part: Part, weight: number) => {
  const { marks, width } = part(0, weight)
  return html`<svg class="figure" aria-hidden="true" viewBox="-1 -74 ${width + 2} 84" width="${(width + 2) / 100}em" height="0.84em" fill="currentColor">${marks}</svg>`
}

/** A number in a line of text, as it is drawn everywhere, with its name for a screen reader. */
export const figure = (written: Written, weight = 700) =>
  html`<span class="number" role="img" aria-label=${spoken(written)}>${inline(whole(written), weight)}</span>`

/** A number in two cells of a column: whole digits, which align right, and the fraction, which starts in its own column. */
export const inColumns = (written: Written, weight: number) => ({
  before: inline(beside(feetAndWhole(written)), weight),
  after: inline(beside([fractionOf(written), ...unitAfter(written)]), weight),
})

/** A number in a drawing: it ends at x (or starts there), its baseline at y. */
export function placed(written: Written, at: { readonly x: number; readonly y: number; readonly size: number; readonly weight: number; readonly anchor: 'start' | 'end' }) {
  const { marks, width } = whole(written)(0, at.weight)
  const x = at.anchor === 'end' ? at.x - (width * at.size) / 100 : at.x
  return { mark: svg`<g transform="translate(${x} ${at.y}) scale(${at.size / 100})" fill="currentColor">${marks}</g>`, x, width: (width * at.size) / 100 }
}

export const figureStyle = css`
  .figure { display: inline-block; overflow: visible; vertical-align: -0.1em; flex: none }
  .number { white-space: nowrap }
  .frac { font-feature-settings: 'frac' }
`

/** A sentence with its fractions set as fractions. */
export const sentence = (said: string) => said.split(/(\d+\/\d+)/).map((part, n) => (n % 2 ? html`<span class="frac">${part}</span>` : part))
