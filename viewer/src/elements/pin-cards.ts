import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Amount } from '../data/amount.ts'
import { fill, words } from '../words.ts'
import { figure, figureStyle } from './figure.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** A pin with its number made. `of` opens how it was come by. */
export interface ShownPin {
  readonly n: number
  readonly pin: Amount
  readonly of: string
  /** It is set otherwise than it is now. */
  readonly isChanged: boolean
  /** How deep it sits, as a share of the deepest. */
  readonly deep: number
}
/** The pins of a panel, as it hangs. */
export interface ShownPins {
  readonly name: string
  readonly pins: readonly ShownPin[]
}

/** Pins hook by hook, each at its depth under the top of the drapery and with its number; those to be set again stand out. */
@customElement('pin-cards')
export class PinCards extends SpokenElement {
  @property({ attribute: false }) panels: readonly ShownPins[] = []

  static override readonly styles = [
    base,
    figureStyle,
    css`
      :host { padding: 8px 16px 4px; container-type: inline-size }
      h3 { font-size: 15px; font-weight: 500; color: var(--ink2); margin: 6px 0 4px }
      ol { display: grid; grid-template-columns: repeat(auto-fit, minmax(48px, 1fr)); gap: 5px }
      button { display: grid; grid-template-rows: 34px auto auto; justify-items: center; width: 100%; min-height: 48px; padding: 0 2px 6px; border: 1px solid var(--faint); border-top: 3px solid var(--fedge); border-radius: 4px; background: var(--sheet); font-size: 14.5px; color: var(--ink2) }
      b { font-size: 22px; color: var(--ink) }
      button.changed { background: var(--markbg); border-color: var(--mark); border-width: 2px; border-top: 3px solid var(--fedge) }
      .changed b { color: var(--mark) }
      button > svg { stroke: var(--ink); stroke-width: 2.4; fill: none } .changed > svg { stroke: var(--mark) }
    `,
  ]

  override render() {
    return this.panels.map(
      ({ name, pins }) =>
        html`<h3>${fill(words.pinsOf, { panel: name })}</h3><ol>${pins.map((pin) => html`<li>${this.pin(pin)}</li>`)}</ol>`,
    )
  }
  private pin({ n, pin, of, isChanged, deep }: ShownPin) {
    const top = 2 + 16 * deep
    return html`<button class=${isChanged ? 'changed' : nothing} @click=${() => tell(this, 'open-number', of)}>
      <svg width="14" height="34" aria-hidden="true"><path d="M3 ${top + 4}v-1a3 3 0 0 1 6 0v12" /></svg><span>${fill(words.hookN, { n })}</span><b>${figure(pin)}</b></button>`
  }
}
