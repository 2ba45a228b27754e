import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { fill, words } from '../words.ts'
import { figureStyle } from './figure.ts'
import { byGravity, type ShownFinding } from './findings-row.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, buttons, closeButton, closing, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'
import { verdictSign, verdictStyle } from './verdict.ts'

/** A place that is not filled yet, in words, and how many things wait for it. */
export interface ShownAsk {
  readonly at: string
  readonly what: string
  readonly holds: number
}
/** A rule that went wrong, or a part of the job that nobody here reads. The rest of the sheet stands. */
export interface ShownTrouble {
  readonly what: string
  readonly where: string
  readonly says: string
}

/** What was checked, what to measure next, and what could not be worked out. */
@customElement('findings-list')
export class FindingsList extends SpokenElement {
  @property({ attribute: false }) findings: readonly ShownFinding[] = []
  @property({ attribute: false }) asks: readonly ShownAsk[] = []
  @property({ attribute: false }) faults: readonly ShownTrouble[] = []
  @property({ attribute: false }) unread: readonly ShownTrouble[] = []
  /** Places at which two values stand, in words; a touch leads to the choice. */
  @property({ attribute: false }) conflicts: readonly { readonly at: string; readonly what: string }[] = []
  /** Left out: what was checked. */
  @property() heading?: string
  /** A part of the sheet, not something opened over it. */
  @property({ type: Boolean, reflect: true }) embedded = false

  static override readonly styles = [
    base,
    sentenceStyle,
    closing,
    buttons,
    verdictStyle,
    figureStyle,
    css`
      :host { background: var(--panel); min-height: 0; display: flex; flex-direction: column }
      section { flex: 1; min-height: 0; overflow: auto; overscroll-behavior: contain; padding: 14px max(20px, 50% - 350px) 20px }
      section:focus-visible { outline-offset: -3px }
      header { display: flex; align-items: center; justify-content: space-between }
      h2 { font-size: 23px; line-height: 1.15; font-weight: 600; min-height: 34px }
      :host([embedded]) h2 { font-size: 17px; font-weight: 500; color: var(--ink2); min-height: 0; margin-bottom: 8px }
      h3 { font-size: 17px; font-weight: 600; margin: 16px 0 6px }
      h2 + h3, header + h3 { margin-top: 6px }
      li { display: grid; grid-template-columns: 26px 1fr; gap: 2px 14px; padding: 12px 0; border-top: 1px solid var(--faint); font-size: 17px; line-height: 1.3 }
      li > div { padding-top: 1px }
      small { display: block; font-size: 15px; color: var(--ink2); margin-top: 2px }
      .stops { color: var(--fail); font-weight: 600 }
      .plain { display: block; padding: 0 }
      .ask { display: flex; width: 100%; min-height: 56px; align-items: center; justify-content: space-between; gap: 14px; color: var(--act); font-weight: 500 }
      .ask small { font-weight: 400; text-align: right }
      .ways { display: grid; gap: 8px; margin-top: 10px; justify-items: start }
      .ways .button { min-height: 52px; font-size: 17px; text-align: left; justify-content: flex-start; border-width: 1.5px }
      .ways .button.best { background: var(--act); color: var(--onact) }
      s { text-decoration-thickness: 1.5px }
    `,
  ]

  override render() {
    return html`<section aria-labelledby="title" tabindex="0">
      <header><h2 id="title" tabindex="-1">${this.heading ?? words.findings}</h2>
        ${this.embedded ? nothing : closeButton(this)}</header>
      ${this.twoValues()}${this.troubles(words.couldNotWorkOut, this.faults)}${this.toMeasure()}${this.troubles(words.notRead, this.unread)}
      ${this.asks.length + this.faults.length + this.unread.length > 0 ? html`<h3>${words.checks}</h3>` : nothing}
      <ul>${byGravity(this.findings).map((finding) => this.finding(finding))}</ul>
    </section>`
  }

  private twoValues() {
    if (this.conflicts.length === 0) return nothing
    return html`<h3>${words.conflictsTitle}</h3><ul>${this.conflicts.map(
      ({ at, what }) =>
        html`<li class="plain"><button class="ask" @click=${() => tell(this, 'open-number', at)}><span>${what}</span></button></li>`,
    )}</ul>`
  }

  private toMeasure() {
    if (this.asks.length === 0) return nothing
    const waiting = (n: number) => (n === 1 ? words.holdsUpOne : fill(words.holdsUp, { n }))
    return html`<h3>${words.toMeasure}</h3><ul>${this.asks.map(
      ({ at, what, holds }) =>
        html`<li class="plain"><button class="ask" @click=${() => tell(this, 'enter-value', at)}><span>${what}</span><small>${waiting(holds)}</small></button></li>`,
    )}</ul>`
  }

  private troubles(title: string, troubles: readonly ShownTrouble[]) {
    if (troubles.length === 0) return nothing
    return html`<h3>${title}</h3><ul>${troubles.map(
      ({ what, where, says }) =>
        html`<li>${verdictSign('unknown')}<div>${what}<small>${where}</small><small>${says}</small></div></li>`,
    )}</ul>`
  }

  private finding({ verdict, says, help, stops, override, ways, overrideAt }: ShownFinding) {
    return html`<li>${verdictSign(verdict)}<div>${override ? html`<s>${sentence(says)}</s><small>“${override}”</small>` : sentence(says)}
      ${help ? html`<small>${sentence(help)}</small>` : nothing}${stops && !override ? html`<small class="stops">${stops}</small>` : nothing}${this.ways(ways, overrideAt)}</div></li>`
  }

  /** What somebody may decide here; the best is the full button. */
  private ways(ways: ShownFinding['ways'] = [], overrideAt?: string) {
    if (ways.length === 0 && overrideAt === undefined) return nothing
    return html`<div class="ways" role="group" aria-label=${words.ways}>${ways.map(
      ({ says, put }, n) =>
        html`<button class="button ${n === 0 ? 'best' : ''}" @click=${() => tell(this, 'put-values', put)}><span>${sentence(says)}</span></button>`,
    )}${overrideAt === undefined ? nothing : html`<button class="button" @click=${() => tell(this, 'enter-value', overrideAt)}>${words.goOnAnyway}</button>`}</div>`
  }
}
