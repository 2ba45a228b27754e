import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Amount } from '../data/amount.ts'
import { inUnit, type Keyed, shorter, turned, withDigit, withParts } from '../data/pad.ts'
import { words } from '../words.ts'
import { figure, figureStyle } from './figure.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** A word on the pad that does something with the whole value. */
export interface PadWord {
  readonly name: string
  readonly event: string
  readonly can: boolean
}

/** The keys of the pad: fractions as they lie on a tape, or tenths of a millimetre, and digits. Tells of `keyed` with what is keyed then. */
@customElement('pad-keys')
export class PadKeys extends SpokenElement {
  @property({ attribute: false }) keyed!: Keyed
  /** What would be saved; absent while it cannot be. */
  @property({ attribute: false }) saves?: Amount
  @property({ type: Boolean }) canBeNegative = false
  /** The two keys beside the upper digits. */
  @property({ attribute: false }) besides: readonly PadWord[] = []

  static override readonly styles = [
    base,
    figureStyle,
    css`
      :host { background: var(--panel); border-top: 1px solid var(--faint); padding: 10px 12px 12px; display: grid; gap: 8px; align-content: start }
      .fractions { display: grid; grid-template-columns: repeat(17, 1fr); gap: 6px }
      .fractions button { grid-column: span 2 }
      .fractions .odd { grid-column: 2 / span 2 }
      .tenths { display: grid; grid-template-columns: repeat(10, 1fr); gap: 6px }
      .digits { display: grid; grid-template-columns: repeat(3, 1fr) 1.3fr; gap: 8px }
      .key { min-height: 62px; border: 1px solid var(--line); border-radius: 6px; background: var(--sheet); font-size: 26px; font-weight: 500; text-align: center; display: grid; place-items: center; border-top: 3px solid var(--tapehook) }
      .digits .key { border-top: 1px solid var(--line); min-height: 66px }
      .digits .word { font-size: 18px }
      .key.on { background: var(--tape); color: var(--tapeink) }
      .small { font-size: 19px; min-height: 56px }
      .save { grid-row: 3 / 5; grid-column: 4; background: var(--act); color: var(--onact); border-color: var(--act); font-size: 24px; font-weight: 600; line-height: 1.1; align-content: center }
      .save .number { display: block; font-size: 34px; font-weight: 700 }
      [aria-disabled='true'] { background: var(--sheet); color: var(--ink2); border-color: var(--line); cursor: default }
      @media (max-width: 599px) {
        .key { min-height: 48px; font-size: 21px } .digits .key { min-height: 50px } .small { font-size: 15px }
        :host { padding: 8px; gap: 6px } .fractions { gap: 3px } .digits { gap: 6px } .save .number { font-size: 26px }
      }
      @media (min-width: 1000px) and (min-aspect-ratio: 1/1) {
        :host { border-top: 0; border-left: 1px solid var(--faint) }
        .key { min-height: 74px } .small { min-height: 66px; font-size: 17px } .digits .key { min-height: 92px }
      }
    `,
  ]

  override render() {
    return html`${this.keyed.unit === 'count' ? nothing : this.fractions()}${this.digits()}`
  }

  private key(change: (keyed: Keyed) => Keyed): void {
    tell(this, 'keyed', change(this.keyed))
  }

  private fractions() {
    if (this.keyed.unit === 'mm')
      return html`<div class="tenths">${Array.from({ length: 10 }, (_, n) => this.fraction(n, `.${n}`, `0.${n}`, 'small'))}</div>`
    const name = (n: number) => figure(writtenFraction(n), 500, false)
    return html`<div class="fractions">${[0, 2, 4, 6, 8, 10, 12, 14].map((n) => this.fraction(n, n === 0 ? words.whole : name(n), undefined, n === 0 ? 'small' : ''))}</div>
      <div class="fractions">${[1, 3, 5, 7, 9, 11, 13, 15].map((n) => this.fraction(n, name(n), undefined, `small ${n === 1 ? 'odd' : ''}`))}</div>`
  }
  private fraction(n: number, shown: unknown, spoken: string | undefined, look: string) {
    const on = this.keyed.typed === '' && this.keyed.parts === n && (n > 0 || this.keyed.whole !== '')
    return html`<button class="key ${look} ${on ? 'on' : ''}" aria-label=${spoken ?? nothing} aria-pressed=${on} @click=${() => this.key((keyed) => withParts(keyed, n))}>${shown}</button>`
  }

  private digits() {
    const [upper, lower] = this.besides
    const digit = (n: string) => html`<button class="key" @click=${() => this.key((keyed) => withDigit(keyed, n))}>${n}</button>`
    return html`<div class="digits">
      ${['7', '8', '9'].map(digit)}${this.word(upper)}${['4', '5', '6'].map(digit)}${this.word(lower)}${['1', '2', '3'].map(digit)}
      <button class="key save" aria-disabled=${!this.saves} @click=${() => this.saves && tell(this, 'save')}>${words.save}${this.saves ? figure(this.saves) : nothing}</button>
      ${this.first()}${digit('0')}
      <button class="key" aria-label=${words.takeBack} @click=${() => this.key(shorter)}><svg width="34" height="26" aria-hidden="true"><path d="M11 3h20v20H11L2 13zM16 9l9 8M25 9l-9 8" fill="none" stroke="currentColor" stroke-width="2.2" /></svg></button>
    </div>`
  }
  private word(given: PadWord | undefined) {
    if (!given) return html`<span></span>`
    const { name, event, can } = given
    return html`<button class="key word" aria-disabled=${!can} @click=${() => can && tell(this, event)}>${name}</button>`
  }
  /** Left of the nought: below zero where that can be, else the other unit. */
  private first() {
    const { unit, negative } = this.keyed
    if (unit === 'count') return html`<span></span>`
    if (this.canBeNegative)
      return html`<button class="key word" aria-pressed=${negative} @click=${() => this.key(turned)}>± ${words.below}</button>`
    const other = unit === 'mm' ? 'in' : 'mm'
    return html`<button class="key word" @click=${() => this.key((keyed) => inUnit(keyed, other))}>${other}</button>`
  }
}

const writtenFraction = (sixteenths: number): Amount => {
  let [above, below] = [sixteenths, 16]
  while (above % 2 === 0) [above, below] = [above / 2, below / 2]
  return { text: `${above}/${below}`, negative: false, whole: '', numerator: above, denominator: below, unit: 'in' }
}
