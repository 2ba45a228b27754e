import { css, html, LitElement, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { base } from './shared.ts'

/** One hook and where it goes, its words made. */
export interface ShownHook {
  readonly n: number
  /** It goes on something that runs along the rod; else it stays at the wall. */
  readonly runs: boolean
  readonly to: string
  readonly on: string
  /** Out of the usual: shown in a heavier frame. */
  readonly special: boolean
}

const signs = {
  runs: svg`<circle cx="15" cy="12" r="10" /><path d="M15 22v9" />`,
  stays: svg`<path d="M25 3v26M25 14H3v13" />`,
}

/** A card a hook, its number to be read at arm's length. Cards stand in the order in which the hooks hang. */
@customElement('hook-cards')
export class HookCards extends LitElement {
  @property({ attribute: false }) hooks: readonly ShownHook[] = []
  /** The leading edge is at the right: the first hook stands there. */
  @property({ type: Boolean, reflect: true }) mirrored = false

  static override readonly styles = [
    base,
    css`
      :host { container-type: inline-size }
      ol { display: grid; gap: 6px; padding: 0 16px; grid-template-columns: repeat(7, 1fr) }
      ol.many { grid-template-columns: repeat(8, 1fr) }
      :host([mirrored]) ol { direction: rtl }
      :host([mirrored]) li { direction: ltr }
      li { display: flex; flex-direction: column; align-items: center; justify-content: flex-start; min-width: 0; border: 1px solid var(--faint); border-radius: 6px; padding: 9px 2px 8px; text-align: center; background: var(--sheet) }
      li.special { border: calc(2px * var(--k)) solid var(--mark); background: var(--markbg); padding: 8px 1px 7px }
      b { font-size: 60px; line-height: 1; font-weight: 700; letter-spacing: -0.01em }
      svg { margin: 6px 0 2px; fill: none; stroke: var(--ink); stroke-width: calc(2.2px * var(--k)) }
      span { font-size: 18px; line-height: 1.15; font-weight: 600 }
      small { font-size: 14.5px; line-height: 1.2; color: var(--ink2); margin-top: 3px; text-wrap: balance }
      .special small { color: var(--ink) }
      @container (min-width: 1000px) {
        ol, ol.many { grid-template-columns: none; grid-auto-flow: column; grid-auto-columns: 1fr; gap: 5px; padding: 0 20px }
        span { font-size: 17px }
        small { font-size: 14px }
      }
      @container (max-width: 599px) {
        ol, ol.many { grid-template-columns: repeat(4, 1fr); padding: 0 10px }
        b { font-size: 48px }
        span { font-size: 16px }
      }
    `,
  ]

  override render() {
    return html`<ol class=${this.hooks.length === 15 || this.hooks.length === 16 ? 'many' : ''}>${this.hooks.map(
      ({ n, runs, to, on, special }) => html`<li class=${special ? 'special' : ''}><b>${n}</b>
        <svg width="30" height="32" aria-hidden="true">${signs[runs ? 'runs' : 'stays']}</svg><span>${to}</span><small>${on}</small></li>`,
    )}</ol>`
  }
}
