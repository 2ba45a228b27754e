import { findingShape } from '@evenhem/drawing'
import type { Verdict } from '@evenhem/plugin'
import { html, type Markup, raw } from './markup.ts'
import type { Line } from './outline.ts'
import type { NumberPiece, Said } from './voice.ts'

/** With its unit always, as a fact has it (metric units only), or bare as on the drawing. */
type Dress = 'with unit' | 'as written' | 'bare'
const dressed = ({ written, unit }: NumberPiece, dress: Dress): string => {
  if (dress === 'bare') return written.text.replace(/ (mm|cm)$/, '')
  return dress === 'with unit' && unit ? `${written.text} ${unit}` : written.text
}
/** A number as it is set in a line: its fraction built, its name for a screen reader. */
export function number(piece: NumberPiece, dress: Dress = 'as written'): Markup {
  const { spoken } = piece
  const text = dressed(piece, dress)
  const set = text
    .split(/( ?\d+\/\d+)/)
    .map((part, n) => (n % 2 === 1 ? html`<span class="fraction">${part}</span>` : html`${part}`))
  return spoken === undefined
    ? html`<span class="number">${set}</span>`
    : html`<span class="number" role="img" aria-label="${spoken}">${set}</span>`
}
/** A fact, whose unit is said once for all; a sentence of a text, which says it. */
export const fact = (sentence: Said): Markup => html`${sentence.map((part) => (typeof part === 'string' ? part : number(part)))}`
export const said = (sentence: Said): Markup =>
  html`${sentence.map((part) => (typeof part === 'string' ? part : number(part, 'with unit')))}`

export function line({ name = [], says }: Line): Markup {
  return html`<div><dt>${fact(name)}</dt>${says.map((sentence) => html`<dd>${fact(sentence)}</dd>`)}</div>
`
}
/** The sign of a verdict; what it means is said beside it. */
export const sign = (verdict: Verdict): Markup =>
  html`<svg viewBox="-9 -9 18 18" aria-hidden="true" class="${verdict}">${raw(findingShape[verdict]([0, 0], 7.4))}</svg>`

/** A heading of a rank: 1 is the page's. `title`: set large, the name of a window or of what begins a page. */
export const heading = (rank: 1 | 2 | 3 | 4, text: string, look?: 'title'): Markup =>
  html`${raw(`<h${rank}${look ? ` class="${look}"` : ''}>`)}${text}${raw(`</h${rank}>`)}`
