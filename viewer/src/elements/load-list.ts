import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Amount } from '../data/amount.ts'
import { words } from '../words.ts'
import { figure, figureStyle } from './figure.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'
import { type Verdict, verdictSign, verdictStyle } from './verdict.ts'

/** A bracket in words. `of` and those of its shares open how they were come by. */
export interface ShownBracket {
  readonly name: string
  readonly load: Amount
  readonly of: string
  readonly verdict?: Verdict
  /** What it is fixed in and with. */
  readonly fixed: string
  readonly shares: readonly { readonly of: string; readonly says: string; readonly isOver: boolean }[]
  readonly lacks: string
}
/** The brackets of one rod. `name`: which of several layers it is. */
export interface ShownRod {
  readonly name: string
  readonly brackets: readonly ShownBracket[]
  readonly assumes: readonly string[]
}

/** What each bracket carries, what holds it and how much of that is used; then what was taken for granted. */
@customElement('load-list')
export class LoadList extends SpokenElement {
  @property({ attribute: false }) rods: readonly ShownRod[] = []
  @property() estimate = ''

  static override readonly styles = [
    base,
    figureStyle,
    sentenceStyle,
    verdictStyle,
    css`
      :host { background: var(--panel) }
      section { padding: 0 max(20px, 50% - 350px) 20px; display: flow-root }
      h3 { font-size: 17px; font-weight: 600; margin: 10px 0 6px }
      li { border-top: 1px solid var(--faint); font-size: 17px; line-height: 1.3 }
      ol li { display: grid; grid-template-columns: 26px minmax(0, 1fr) auto; gap: 0 14px; padding: 10px 0 }
      ol li > :nth-child(2) { padding-top: 1px }
      small { display: block; font-size: 15px; color: var(--ink2); margin-top: 2px }
      .load { min-height: 48px; min-width: 72px; font-size: 26px; line-height: 1; display: grid; justify-items: end; align-content: start }
      .load small { font-size: 13.5px; line-height: 1.2; margin-top: 4px }
      .shares { display: flex; flex-wrap: wrap; gap: 0 18px; grid-column: 2 / -1 }
      .shares button { min-height: 48px; font-size: 17px; color: var(--act); font-weight: 500; text-align: left }
      .shares .over { font-weight: 700; color: var(--fail) }
      ul li { padding: 8px 0; font-size: 15px; color: var(--ink2) }
      .estimate { margin-top: 10px; padding-top: 10px; border-top: 2px solid var(--ink); font-size: 17px }
      @media print { .shares button, .load { min-height: 0 } }
    `,
  ]

  override render() {
    return html`<section aria-label=${words.bracketByBracket}>${this.rods.map(({ name, brackets }) => html`<h3>${words.bracketByBracket}${name ? `, ${name.toLowerCase()}` : nothing}</h3><ol>${brackets.map((one) => this.bracket(one))}</ol>`)}
      ${this.granted()}<p class="estimate">${this.estimate}</p></section>`
  }

  private bracket({ name, load, of, verdict, fixed, shares, lacks }: ShownBracket) {
    return html`<li>${verdict ? verdictSign(verdict) : html`<span></span>`}<div>${name}${fixed ? html`<small>${fixed}</small>` : nothing}</div>
      <button class="load" @click=${() => tell(this, 'open-number', of)}>${figure(load, 600)}<small>${words.carriesAtMost}</small></button>
      <div class="shares">${shares.map((share) => html`<button class=${share.isOver ? 'over' : nothing} @click=${() => tell(this, 'open-number', share.of)}>${share.says}</button>`)}${lacks ? html`<small>${lacks}</small>` : nothing}</div></li>`
  }

  /** Once for all rods of the window. */
  private granted() {
    const all = [...new Set(this.rods.flatMap(({ assumes }) => assumes))]
    return html`<h3>${words.takenForGranted}</h3><ul>${all.map((says) => html`<li>${sentence(says)}</li>`)}</ul>`
  }
}
