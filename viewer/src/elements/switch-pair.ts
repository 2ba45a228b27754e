import { css, html, LitElement } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { base, tell } from './shared.ts'

/** A few ways to look at the same thing, one of which is on. */
@customElement('switch-pair')
export class SwitchPair extends LitElement {
  @property() name = ''
  @property() on = ''
  @property({ attribute: false }) choices: readonly { readonly id: string; readonly name: string }[] = []

  static override readonly styles = [
    base,
    css`
      div { display: flex; border: 1px solid var(--line); border-radius: 6px; overflow: hidden }
      button { flex: 1; text-align: center; min-height: 48px; padding: 0 15px; font-size: 16px; font-weight: 500; white-space: nowrap; transition: background-color 120ms }
      button + button { border-left: 1px solid var(--line) }
      button[aria-pressed='true'] { background: var(--ink); color: var(--sheet) }
      button:focus-visible { outline-offset: -5px; outline-color: var(--act) }
      button[aria-pressed='true']:focus-visible { outline-color: var(--sheet) }
      div:has(:focus-visible) { outline: 3px solid var(--act); outline-offset: 2px }
      @media (max-width: 599px) { button { padding: 0 8px; font-size: 15px } }
      @media (prefers-reduced-motion: reduce) { button { transition: none } }
    `,
  ]

  override render() {
    return html`<div role="group" aria-label=${this.name}>${this.choices.map(
      ({ id, name }) =>
        html`<button aria-pressed=${id === this.on ? 'true' : 'false'} @click=${() => tell(this, 'switched', id)}>${name}</button>`,
    )}</div>`
  }
}
