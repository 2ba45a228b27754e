import type { Written } from '@evenhem/length'
import { css, html, nothing, svg } from 'lit'
import { spoken } from '../data/spoken.ts'

// In hundredths of the size of the whole digits. Source Sans 3 gives every digit one width, so a figure's width is known before it is drawn.
const digit = (weight: number) => (weight >= 700 ? 52.8 : weight >= 600 ? 51.3 : weight >= 500 ? 50.5 : 49.7)
const heavier = (weight: number) => Math.min(weight + 100, 900)
const gap = 10
const slash = 24.5
const small = 0.63

interface Placed {
  readonly marks: unknown
  readonly width: number
}

const digits = (text: string, weight: number): Placed => ({
  marks: svg`<text font-size="100" font-weight=${weight}>${text}</text>`,
  width: [...text].reduce((width, letter) => width + (letter === '.' || letter === ',' ? 25 : digit(weight)), 0),
})

/** Numerator from cap height, slash, denominator on the baseline. */
function fraction(numerator: number, denominator: number, from: number, weight: number): Placed {
  const each = digit(heavier(weight)) * small
  const top = String(numerator).length * each
  const bottom = String(denominator).length * each
  const at = from + top - 1
  return {
    marks: svg`<text x=${from} y="-25.4" font-size="63" font-weight=${heavier(weight)}>${numerator}</text>
      <path d="M${at} 5L${at + slash + 7} -71" stroke="currentColor" stroke-width=${weight >= 600 ? 6.6 : 5.2} fill="none" />
      <text x=${at + slash + 3.5} y="2" font-size="63" font-weight=${heavier(weight)}>${denominator}</text>`,
    width: top + slash + 3 + bottom,
  }
}

const drawn = (marks: unknown, width: number) =>
  html`<svg class="figure" aria-hidden="true" viewBox="-1 -74 ${width + 2} 84" width="${(width + 2) / 100}em" height="0.84em" fill="currentColor">${marks}</svg>`

/** The whole part of a number, its fraction left out; for a column in which whole digits align right. */
export const wholePart = (written: Written, weight: number) => {
  const { marks, width } = digits(`${written.feet === undefined ? '' : `${written.feet}′ `}${written.whole}`, weight)
  return width === 0 ? nothing : drawn(marks, width)
}
/** The fraction of a number alone; nothing when it has none. */
export const fractionPart = (written: Written, weight: number) => {
  if (written.numerator === undefined || written.denominator === undefined) return nothing
  const { marks, width } = fraction(written.numerator, written.denominator, 0, weight)
  return drawn(marks, width)
}

/** A number as it is drawn everywhere: whole digits, a built fraction, its unit when that is not inches. */
export function figure(written: Written, weight = 700) {
  const whole = digits(written.whole, weight)
  const at = whole.width === 0 ? 0 : whole.width + gap
  const part = written.numerator === undefined ? undefined : fraction(written.numerator, written.denominator as number, at, weight)
  return html`<span class="number" role="img" aria-label=${spoken(written)}
    >${written.negative ? html`<span class="sign" aria-hidden="true">−</span>` : nothing}${
      written.feet === undefined ? nothing : html`<span class="feet" aria-hidden="true">${written.feet}<small>ft</small></span>`
    }${written.whole === '' && !part ? nothing : drawn([whole.marks, part?.marks], part ? at + part.width : whole.width)}${
      written.unit === 'in' ? nothing : html`<small class="unit" aria-hidden="true">${written.unit === 'ft-in' ? 'in' : written.unit}</small>`
    }</span>`
}

export const figureStyle = css`
  .figure { display: inline-block; overflow: visible; vertical-align: -0.1em; flex: none }
  .figure text { font-family: inherit }
  .number { white-space: nowrap; display: inline-flex; align-items: baseline }
  .number .sign { margin-right: 0.12em }
  .number small { font-size: 0.45em; font-weight: 600; margin-left: 0.25em }
  .number .feet { margin-right: 0.2em }
  .frac { font-feature-settings: 'frac' }
`

/** A sentence with its fractions set as fractions. */
export const sentence = (text: string) => text.split(/(\d+\/\d+)/).map((part, n) => (n % 2 ? html`<span class="frac">${part}</span>` : part))
