import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Entered } from '../data/site.ts'
import { fill, words } from '../words.ts'
import { figureStyle } from './figure.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'
import { type Verdict, verdictSign, verdictStyle } from './verdict.ts'

/** A finding with its words made. */
export interface ShownFinding {
  readonly code: string
  readonly verdict: Verdict
  readonly says: string
  readonly help?: string
  /** What it closes, in words. */
  readonly stops?: string
  readonly override?: string
  /** What somebody may decide about it, the best first. */
  readonly ways?: readonly ShownWay[]
  /** Where the reason goes for going on in spite of it. */
  readonly overrideAt?: string
}
export interface ShownWay {
  readonly says: string
  readonly put: readonly Entered[]
}

/** Stops first, then what to look at, then what is not known; passes last. */
const order: readonly Verdict[] = ['fail', 'warn', 'unknown', 'pass']
export const byGravity = (findings: readonly ShownFinding[]): readonly ShownFinding[] =>
  order.flatMap((verdict) => findings.filter((finding) => finding.verdict === verdict))

/** Everything that was checked, in one row: passes counted, the rest said. A touch opens the list. */
@customElement('findings-row')
export class FindingsRow extends SpokenElement {
  @property({ attribute: false }) findings: readonly ShownFinding[] = []
  /** How many rules could not work out what they should. */
  @property({ type: Number }) faults = 0

  /** What to measure next. */
  @property({ attribute: false }) next?: { readonly at: string; readonly what: string }

  static override readonly styles = [
    base,
    sentenceStyle,
    verdictStyle,
    figureStyle,
    css`
      :host { display: flex; flex-wrap: wrap; min-width: 0; border-top: 1px solid var(--faint); background: var(--sheet) }
      button { display: flex; align-items: center; gap: 10px; min-height: 48px; padding: 0 14px; border-right: 1px solid var(--faint); font-size: 16.5px; line-height: 1.15; white-space: nowrap }
      button:focus-visible { outline-offset: -4px }
      .said { min-width: 0; flex: 0 1 0; flex-grow: 1; max-width: max-content }
      .said span { overflow: hidden; text-overflow: ellipsis }
      .next { background: var(--markbg); color: var(--mark); font-weight: 600; min-width: 0; flex: 1 0 100%; justify-content: center } .next span { overflow: hidden; text-overflow: ellipsis }
      .count { display: none }
      ::slotted(switch-pair) { margin: 0 8px 0 auto; align-self: center }
      .all { margin-left: auto; border: 0; color: var(--act); font-weight: 500 }
      @media (max-width: 599px) {
        button { padding: 0 8px; gap: 6px; font-size: 15px }
        :host { flex-wrap: wrap }
        .said, .all { display: none } .said.faulty { display: flex } .count { display: flex }
      }
    `,
  ]

  override render() {
    const count = (verdict: Verdict) => this.findings.filter((finding) => finding.verdict === verdict).length
    const open = byGravity(this.findings).filter(({ verdict }) => verdict !== 'pass')
    return html`
      ${this.next ? html`<button class="next" @click=${() => tell(this, 'enter-value', this.next?.at)}><span>${fill(words.measureNext, { what: this.next.what })}</span></button>` : nothing}
      <button @click=${this.openAll}>${verdictSign('pass')}<span>${fill(words.passes, { n: count('pass') })}</span></button>
      ${order
        .filter((verdict) => verdict !== 'pass' && count(verdict) > 0)
        .map(
          (verdict) =>
            html`<button class="count" aria-label=${`${words.verdicts[verdict]}: ${count(verdict)}`} @click=${this.openAll}>${verdictSign(verdict)}<span>${count(verdict)}</span></button>`,
        )}
      ${open.slice(0, 2).map(({ verdict, says }) => html`<button class="said" @click=${this.openAll}>${verdictSign(verdict)}<span>${sentence(says)}</span></button>`)}
      ${this.faults > 0 ? html`<button class="said faulty" @click=${this.openAll}>${verdictSign('unknown')}<span>${fill(words.faulty, { n: this.faults })}</span></button>` : nothing}
      ${open.length > 2 ? html`<button class="all" @click=${this.openAll}>${words.seeAll}</button>` : nothing}
      <slot></slot>`
  }

  private openAll() {
    tell(this, 'open-findings')
  }
}
