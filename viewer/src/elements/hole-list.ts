import { css, html } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Amount } from '../data/amount.ts'
import { words } from '../words.ts'
import { figure, figureStyle } from './figure.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, buttons, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

interface Number {
  readonly amount: Amount
  readonly of: string
}
/** A hole as it is shown. */
export interface ShownHole {
  readonly what: string
  readonly fromFloor: Number
  readonly fromCasing: Number
}
export interface HoleSide {
  readonly name: string
  /** From which edge its second number is measured. */
  readonly edge: string
  /** In the ceiling: its holes are told from the wall. */
  readonly isOverhead: boolean
  readonly holes: readonly ShownHole[]
}

/** Every hole of the window, large enough to be read at arm's length: from the floor right below it, and from the casing. */
@customElement('hole-list')
export class HoleList extends SpokenElement {
  @property({ attribute: false }) sides: readonly HoleSide[] = []
  /** Why nothing is marked or drilled yet, when a check closes that. */
  @property() closed?: string

  static override readonly styles = [
    base,
    buttons,
    figureStyle,
    sentenceStyle,
    css`
      :host { background: var(--panel); container-type: inline-size; overflow: auto }
      .ladder { margin: 14px 20px 0; min-height: 52px; font-size: 18px }
      @media print { .ladder { display: none } }
      .closed { margin: 14px 20px; border-left: 5px solid var(--fail); padding-left: 10px; font-size: 18px }
      .closed b { color: var(--fail) }
      section { display: grid; grid-template-columns: 1fr 1fr; height: 100%; align-content: start }
      .three { grid-template-columns: repeat(3, 1fr) }
      .three .side { padding: 10px 6px 12px 14px }
      .three td { padding-right: 8px }
      .three td button { font-size: 26px; min-width: 64px; min-height: 54px }
      .three td:last-child button { font-size: 22px; min-width: 52px }
      .three th { padding-right: 8px }
      table { border-collapse: collapse; width: 100% }
      .side { padding: 12px 16px 14px 20px }
      .side + .side { border-left: 1px solid var(--faint) }
      caption { text-align: left; font-size: 20px; font-weight: 600; padding-bottom: 2px }
      th { text-align: left; font-weight: 500; font-size: 14.5px; line-height: 1.2; color: var(--ink2); padding: 0 10px 4px 0; vertical-align: bottom }
      tbody th { font-size: 17px; color: var(--ink); font-weight: 400; vertical-align: middle; padding: 0 10px 0 0 }
      tbody tr { border-top: 1px solid var(--faint) }
      td { padding: 0 14px 0 0; width: 1% }
      tr > :last-child { padding-left: 12px; padding-right: 0; border-left: 1px solid var(--line) }
      td button { min-height: 62px; min-width: 92px; font-size: 34px; line-height: 1; color: var(--mark) }
      td:last-child button { font-size: 28px; min-width: 76px }
      @container (max-width: 599px) {
        section, section.three { grid-template-columns: 1fr }
        .side + .side { border-left: 0; border-top: 1px solid var(--faint) }
      }
    `,
  ]

  override render() {
    // Nothing is marked behind a stop, so there is no number to read off either.
    if (this.closed) return html`<p class="closed" role="status"><b>${words.closed}</b> ${sentence(this.closed)}</p>`
    return html`<button class="button ladder" @click=${() => tell(this, 'open-ladder')}>${words.ladder}</button><section class=${this.sides.length > 2 ? 'three' : ''}>${this.sides.map(
      ({ name, edge, holes, isOverhead }) => html`<div class="side"><table><caption>${name}</caption>
        <thead><tr><th scope="col">${words.hole}</th><th scope="col">${isOverhead ? words.fromWall : words.fromFloor}</th><th scope="col">${edge}</th></tr></thead>
        <tbody>${holes.map(({ what, fromFloor, fromCasing }) => html`<tr><th scope="row">${what}</th>${this.number(fromFloor)}${this.number(fromCasing)}</tr>`)}</tbody></table></div>`,
    )}</section>`
  }

  private number({ amount, of }: Number) {
    return html`<td><button @click=${() => tell(this, 'open-number', of)}>${figure(amount)}</button></td>`
  }
}
