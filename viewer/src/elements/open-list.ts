import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { fill, words } from '../words.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, tell } from './shared.ts'
import { type Verdict, verdictSign, verdictStyle } from './verdict.ts'

/** Something of the house that is open, its words made. */
export interface OpenRow {
  readonly verdict: Verdict
  readonly title: string
  readonly says: string
  readonly rest?: string
  /** The sheet where it is settled. */
  readonly address?: string
}

/** What is open in a house, each row a way to the sheet where it is settled. */
@customElement('open-list')
export class OpenList extends LitElement {
  @property() heading = ''
  /** Said when there is nothing. */
  @property() none = ''
  @property({ attribute: false }) rows: readonly OpenRow[] = []
  /** How many more there are. */
  @property({ type: Number }) more = 0

  static override readonly styles = [
    base,
    sentenceStyle,
    verdictStyle,
    css`
      h2 { font-size: 17px; font-weight: 600; margin: 14px 0 8px }
      .row { display: grid; grid-template-columns: 26px minmax(0, 1fr) 22px; gap: 14px; align-items: center; min-height: 60px; padding: 9px 0; border-top: 1px solid var(--faint); color: inherit; text-decoration: none; font-size: 17px; line-height: 1.28 }
      b { font-weight: 600; display: block }
      small { display: block; font-size: 14.5px; color: var(--ink2); margin-top: 1px }
      p { font-size: 17px; color: var(--ink2); padding: 8px 0 }
      .row > svg:last-child { color: var(--act) }
      .more { min-height: 52px; width: 100%; text-align: center; color: var(--act); font-size: 17px; font-weight: 500; border-top: 1px solid var(--faint) }
    `,
  ]

  override render() {
    return html`<h2>${this.heading}</h2>${this.rows.length === 0 ? html`<p>${this.none}</p>` : nothing}
      <ul>${this.rows.map((row) => html`<li>${this.row(row)}</li>`)}</ul>
      ${this.more > 0 ? html`<button class="more" @click=${() => tell(this, 'show-more')}>${fill(words.showMore, { n: Math.min(40, this.more) })}</button>` : nothing}`
  }

  private row({ verdict, title, says, rest, address }: OpenRow) {
    const inside = html`${verdictSign(verdict)}<div><b>${title}</b>${sentence(says)}${rest ? html`<small>${rest}</small>` : nothing}</div>`
    return address
      ? html`<a class="row" href=${address}>${inside}<svg width="18" height="22" aria-hidden="true"><path d="M5 3l9 8-9 8" fill="none" stroke="currentColor" stroke-width="2.2" /></svg></a>`
      : html`<div class="row">${inside}</div>`
  }
}
