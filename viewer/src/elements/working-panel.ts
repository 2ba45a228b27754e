import { css, html, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Amount } from '../data/amount.ts'
import { spoken } from '../data/spoken.ts'
import type { Stair, Stairs } from '../data/stairs.ts'
import { words } from '../words.ts'
import { figure, figureStyle, inColumns, placed } from './figure.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, buttons, closeButton, closing, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** A line of the ledger with its words made. `of`: what a touch opens. */
export interface ShownLine {
  readonly kind: 'term' | 'total'
  readonly sign: string
  readonly what: string
  readonly amount: Amount
  readonly measured: boolean
  readonly from: string
  readonly comesTo?: { readonly what: string; readonly amount: Amount; readonly of: string }
  readonly of: string
  /** It is worked out from other numbers. */
  readonly opens: boolean
}
/** Where a number that is not worked out stands. */
export interface Leafing {
  readonly source: string
  readonly facts: readonly { readonly name: string; readonly text: string }[]
  /** Where it can be measured. */
  readonly place?: string
  /** It is a reading, which can be taken back. */
  readonly isReading?: boolean
  /** What was put there before, the latest first; `counts`: choosing it settles two values. */
  readonly history?: readonly { readonly text: string; readonly counts?: () => void }[]
}
export interface Working {
  readonly title: string
  readonly amount: Amount
  readonly measured: boolean
  /** How it is had from its lines, when it is not their sum. */
  readonly how?: string
  readonly lines: readonly ShownLine[]
  readonly stairs?: Stairs
  /** Writes the numbers of the picture. */
  readonly write: (length: number) => Amount
  readonly leaf?: Leafing
  /** What was opened before this, outermost first. */
  readonly trail: readonly { readonly of: string; readonly title: string }[]
}

/** A number's working: the sum as a picture and as a ledger, every term with its source, down to order, hardware or reading. */
@customElement('working-panel')
export class WorkingPanel extends SpokenElement {
  @property({ attribute: false }) working?: Working

  static override readonly styles = [
    base,
    sentenceStyle,
    closing,
    buttons,
    figureStyle,
    css`
      :host { background: var(--panel); overflow: auto; overscroll-behavior: contain; container-type: inline-size }
      section { padding: 14px 20px 18px }
      header { display: flex; align-items: flex-start; gap: 12px; min-height: 32px }
      .close { margin-bottom: -20px }
      header > div { flex: 1; min-width: 0 }
      .trail { display: flex; flex-wrap: wrap; align-items: center; gap: 0 4px; margin: -8px 0 0 -8px; font-size: 16px }
      .trail button { min-height: 48px; padding: 0 8px; color: var(--act); font-weight: 500 }
      .trail li + li::before { content: '›'; color: var(--ink2); margin-right: 4px }
      .head { display: flex; align-items: baseline; justify-content: space-between; gap: 14px; margin: 2px 0 10px }
      h2 { font-size: 23px; line-height: 1.15; font-weight: 600 }
      .head b { font-size: 44px; line-height: 1; color: var(--mark); flex: none }
      .head b.tape { color: var(--tapeink); font-size: 36px; padding: 3px 8px }
      .how { font-size: 16px; color: var(--ink2); margin-bottom: 8px }
      .stairs { display: block; max-width: 100%; height: auto; margin: 4px 0 10px; overflow: visible }
      .stairs text { font-family: inherit }
      .zero { stroke: var(--ink); stroke-width: calc(2.6px * var(--k)); fill: none }
      .up, .down, .break { fill: none; stroke: var(--ink); stroke-width: 1.8 }
      .down { stroke: var(--ink2) }
      .level { stroke: var(--line); stroke-width: 1.2; stroke-dasharray: 1.5 4; fill: none }
      .end { stroke: var(--mark); stroke-width: 1; stroke-dasharray: 14 3 3 3; fill: none }
      .cross { stroke: var(--mark); stroke-width: calc(2.6px * var(--k)); fill: none }
      .tapefill { fill: var(--tape); stroke: var(--tapeedge) }
      .tapehook { fill: var(--tapehook) }
      .ink { color: var(--ink) } .ink2 { color: var(--ink2) } .tapeink { color: var(--tapeink) }
      .line { display: grid; width: 100%; grid-template-columns: 18px 1fr minmax(40px, auto) 44px; align-items: center; min-height: 48px; font-size: 17px; line-height: 1.2; text-align: left; border-top: 1px solid var(--faint) }
      li:first-child .line { border-top: 0 }
      .sign { color: var(--ink2); font-weight: 500; font-size: 18px }
      .what { padding: 4px 6px 4px 4px }
      .from { font-size: 14px; color: var(--ink2); text-align: right; padding-right: 10px }
      .before { justify-self: end; font-size: 19px } .after { justify-self: start; padding-left: 3px; font-size: 19px }
      .on-tape { grid-column: 3 / 5; justify-self: end; margin-right: 8px }
      .tape { background: var(--tape); color: var(--tapeink); border-left: 4px solid var(--tapehook); border-radius: 2px; padding: 1px 7px 2px; font-size: 19px; outline: 1.5px solid var(--tapeedge) }
      .what i { font-style: normal; color: var(--act); font-weight: 600 }
      .from { display: none }
      .what small { display: block; font-size: 14px; line-height: 1.25; color: var(--ink2) }
      .what small b { color: var(--ink); font-size: 15px }
      .total { position: sticky; bottom: 0; background: var(--panel); border-top: calc(2.6px * var(--k)) solid var(--ink); color: var(--mark) }
      .total .what { font-weight: 700 }
      .total .sign { color: var(--mark) }
      .total :is(.before, .after) { font-size: 22px }
      @container (min-width: 700px) {
        section { display: grid; grid-template-columns: 340px 1fr; gap: 0 32px; padding: 14px 20px 20px }
        header { grid-column: 1 / -1 }
        .head { display: block; margin: 0 }
        .head b { display: block; font-size: 60px; margin: 14px 0 18px }
        .head b.tape { display: inline-block }
        .picture { grid-column: 1 }
        .line { grid-template-columns: 18px 1fr auto minmax(40px, auto) 44px }
        .from { display: block }
        .source-here { display: none }
        .on-tape { grid-column: 4 / 6 }
        .rows { grid-column: 2; grid-row: 2 / span 2; align-self: start; border-top: 1px solid var(--faint) }
      }
      dl { display: grid; grid-template-columns: auto 1fr; gap: 6px 16px; font-size: 17px; margin-top: 12px }
      dt { color: var(--ink2) } dd { overflow-wrap: anywhere }
      .measure { display: flex; flex-wrap: wrap; gap: 10px; margin-top: 16px }
      .measure .button { min-height: 60px; font-size: 19px }
      h3 { font-size: 17px; font-weight: 600; margin: 16px 0 4px }
      .history li { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 10px; font-size: 16.5px; padding: 8px 0; border-top: 1px solid var(--faint) }
      .history .button { min-height: 48px; font-size: 17px }
      .source { font-size: 18px; border-left: 5px solid var(--line); padding-left: 10px }
    `,
  ]

  override render() {
    const { working } = this
    if (!working) return nothing
    return html`<section aria-label=${words.howItAddsUp}>
      <header>
        <div>${working.trail.length === 0 ? html`<div class="eyebrow">${working.leaf ? words.where : words.howItAddsUp}</div>` : this.trail(working)}</div>
        ${closeButton(this)}
      </header>
      <div class="head"><h2 tabindex="-1">${sentence(working.title)}</h2><b class=${working.measured ? 'tape' : ''}>${figure(working.amount)}</b></div>
      <div class="picture">${working.how ? html`<p class="how">${sentence(working.how)}</p>` : nothing}${working.stairs ? this.stairs(working.stairs, working) : nothing}</div>
      <div class="rows">${working.leaf ? this.leaf(working.leaf) : html`<ul>${working.lines.map((line) => this.line(line))}</ul>`}</div>
    </section>`
  }

  private trail({ trail }: Working) {
    return html`<nav aria-label=${words.trail}><ol class="trail">${trail.map(
      ({ title }, n) => html`<li><button @click=${() => tell(this, 'back-to', n)}>${title}</button></li>`,
    )}</ol></nav>`
  }

  private line(given: ShownLine) {
    const line = taken(given)
    const { before, after } = inColumns(line.amount, line.kind === 'term' ? 500 : 700)
    const name =
      `${line.sign === '−' ? words.less : ''} ${line.what}, ${spoken(line.amount)}${line.from ? `, ${line.from}` : ''}`.trim()
    const cells = html`<span class="sign">${line.sign}</span><span class="what">${sentence(line.what)}${line.opens ? html`<i>&nbsp;›</i>` : nothing}${this.under(line)}</span><span class="from">${line.from}</span>${
      line.measured
        ? html`<span class="on-tape tape">${figure(line.amount, 600, false)}</span>`
        : html`<span class="before">${before}</span><span class="after">${after}</span>`
    }`
    return html`<li class="${line.kind} ${line.opens ? 'opens' : ''}">${
      line.kind === 'total'
        ? html`<div class="line" role="group" aria-label=${name}>${cells}</div>`
        : html`<button class="line" aria-label=${name} @click=${() => tell(this, 'open-number', line.of)}>${cells}</button>`
    }</li>`
  }

  /** Below a term: its source where the column is narrow, and what the lines down to it come to. */
  private under({ comesTo, from }: ShownLine) {
    const source = from ? html`<span class="source-here">${from}${comesTo ? ' · ' : ''}</span>` : nothing
    return html`<small>${source}${comesTo ? html`= ${comesTo.what} <b>${figure(comesTo.amount, 600, false)}</b>` : nothing}</small>`
  }

  private leaf({ source, facts, place, isReading, history = [] }: Leafing) {
    return html`<p class="source">${source}</p><dl>${facts.map(({ name, text }) => html`<dt>${name}</dt><dd>${sentence(text)}</dd>`)}</dl>
      ${
        place === undefined
          ? nothing
          : html`<div class="measure"><button class="button go" @click=${() => tell(this, 'enter-value', place)}>${isReading ? words.measureAgain : words.measure}</button>
        ${isReading ? html`<button class="button" @click=${() => tell(this, 'put-values', [{ place }])}>${words.withdraw}</button>` : nothing}</div>`
      }
      ${
        history.length === 0
          ? nothing
          : html`<h3>${history.some(({ counts }) => counts) ? words.conflict : words.history}</h3><ul class="history">${history.map(
              ({ text, counts }) =>
                html`<li>${sentence(text)}${counts ? html`<button class="button" @click=${counts}>${words.keepThis}</button>` : nothing}</li>`,
            )}</ul>`
      }`
  }

  private stairs({ stairs, zero, width, height }: Stairs, { write }: Working) {
    const last = stairs.at(-1) as Stair
    return html`<svg class="stairs" aria-hidden="true" width=${width} height=${height} viewBox="0 0 ${width} ${height}">
      <path class="zero" d="M0 ${zero}H${width}" />
      ${stairs.map((stair, n) => svg`${level(stair, stairs[n + 1])}${arrow(stair)}${label(stair, write(stair.line.value))}`)}
      <path class="end" d="M${last.x} ${Math.min(last.to + 12, zero)}V${zero}" />
      <path class="cross" d="M${last.x - 8} ${last.to}h16M${last.x} ${last.to - 8}v16" />
    </svg>`
  }
}

const level = ({ x, to }: Stair, next: Stair | undefined) =>
  next ? svg`<path class="level" d="M${x} ${to}H${next.x}" />` : nothing

function arrow({ x, from, to, broken }: Stair) {
  const down = to > from
  const head = Math.min(9, Math.abs(to - from))
  const back = down ? to - head : to + head
  const middle = (from + to) / 2
  const shaft = broken
    ? `M${x} ${from}V${middle + (down ? -9 : 9)}M${x} ${middle + (down ? 9 : -9)}V${to}`
    : `M${x} ${from}V${to}`
  return svg`<path class=${down ? 'down' : 'up'} d="${shaft}M${x - 6} ${back}L${x} ${to}L${x + 6} ${back}" />${
    broken ? svg`<path class="break" d="M${x - 9} ${middle + 13}l18 -8M${x - 9} ${middle - 5}l18 -8" />` : nothing
  }`
}

/** Adding what is below zero is said as taking it away: one sign, not two. */
function taken(line: ShownLine): ShownLine {
  const other = { '+': '−', '−': '+' }[line.sign]
  return other && line.amount.negative ? { ...line, sign: other, amount: { ...line.amount, negative: false } } : line
}

/** Left of the arrow: beside a long one, above a short one, where the dotted line does not pass. */
function label({ x, from, to, line, broken }: Stair, amount: Amount) {
  const measured = line.origin.kind === 'reading'
  const tall = Math.abs(to - from) > 40
  const y = tall ? (from + to) / 2 + 6 : Math.min(from, to) - 8
  const shown = { ...amount, negative: line.sign === '−' ? !amount.negative : amount.negative }
  const { mark, x: left, width } = placed(shown, { x: x - (broken ? 13 : 9), y, size: 16, weight: measured ? 600 : 500 })
  if (!measured) return svg`<g class=${shown.negative ? 'ink2' : 'ink'}>${mark}</g>`
  return svg`<rect class="tapefill" x=${left - 6} y=${y - 16} width=${width + 11} height="22" rx="2" /><path class="tapehook" d="M${left - 8} ${y - 17}h3.200v27h-3.200z" /><g class="tapeink">${mark}</g>`
}
