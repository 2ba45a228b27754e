import type { Place, PlacedWindow } from '@evenhem/job'
import { css, html, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Lasting } from '../data/lasting.ts'
import type { Light } from '../data/preferences.ts'
import type { Contact } from '../data/site.ts'
import { fill, words } from '../words.ts'
import { Media } from './media.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, buttons, popover, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'
import './contact-chip.ts'

const lightSigns = {
  paper: svg`<circle cx="11" cy="11" r="7.5" fill="none" stroke="currentColor" stroke-width="2" /><path d="M11 3.5a7.5 7.5 0 0 1 0 15z" fill="currentColor" />`,
  night: svg`<path d="M17.6 13.6A7.4 7.4 0 0 1 8.4 4.4a7.4 7.4 0 1 0 9.2 9.2z" fill="none" stroke="currentColor" stroke-width="2" stroke-linejoin="round" />`,
  sun: svg`<circle cx="11" cy="11" r="4" fill="currentColor" /><path d="M11 1.5v3M11 17.5v3M1.5 11h3M17.5 11h3M4.3 4.3l2.1 2.1M15.6 15.6l2.1 2.1M17.7 4.3l-2.1 2.1M6.4 15.6l-2.1 2.1" stroke="currentColor" stroke-width="2" />`,
}

/** What this sheet is about, and the two choices of whoever reads it: units and light. */
@customElement('sheet-bar')
export class SheetBar extends SpokenElement {
  @property() over = ''
  @property() heading = ''
  @property() unit = ''
  @property() light: Light = 'paper'
  /** Whether there is something to go back from. */
  @property({ type: Boolean }) inside = false
  /** Where the house is; absent on its own page. */
  @property() house?: string
  /** What that place is called; left out: the house. */
  @property() leads?: string
  /** The windows before and after this one. */
  @property({ attribute: false }) previous?: Neighbour
  @property({ attribute: false }) following?: Neighbour
  /** How this tablet stands to the server; absent where nothing is entered. */
  @property({ attribute: false }) contact?: Contact
  @property({ attribute: false }) lasting?: Lasting
  @property({ attribute: false }) windows: readonly PlacedWindow[] = []
  /** The window that is shown. */
  @property() at: Place | '' = ''
  private readonly narrow = new Media(this, '(max-width: 599px)')

  static override readonly styles = [
    base,
    buttons,
    popover,
    sentenceStyle,
    css`
      :host { display: flex; align-items: center; gap: 8px; padding: 0 16px 0 8px; border-bottom: 1px solid var(--faint); background: var(--sheet) }
      .place, .on { width: 48px; height: 48px; display: grid; place-items: center; flex: none; border-radius: 6px; color: inherit }
      .emblem { color: var(--ink2) }
      .titles { flex: 1; min-width: 0; padding-left: 6px }
      .walk { display: flex; flex: none }
      .on:not([href]) { color: var(--faint) }
      small { display: block; font-size: 14.5px; line-height: 1.25; color: var(--ink2); overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
      h1 { font-size: 23px; line-height: 1.1; font-weight: 600; letter-spacing: -0.005em; overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
      [popover]:popover-open { display: flex; gap: 8px }
      @media (max-width: 599px) {
        :host { gap: 2px; padding: 0 6px }
        h1 { font-size: 20px }
        small { font-size: 13.5px }
      }
      @media print { .place, .walk, .chip { display: none } }
    `,
  ]

  override render() {
    return html`
      ${this.inside ? this.back() : this.toHouse()}
      <header class="titles"><small>${this.over}</small><h1>${this.heading}</h1></header>
      <slot></slot>
      ${this.contact ? html`<contact-chip .contact=${this.contact} .lasting=${this.lasting} .windows=${this.windows} .at=${this.at}></contact-chip>` : nothing}
      ${this.previous || this.following ? html`<div class="walk">${this.neighbour(this.previous, words.previousWindow, 'M14 3L6 11l8 8')}${this.neighbour(this.following, words.nextWindow, 'M8 3l8 8-8 8')}</div>` : nothing}
      ${this.narrow.matches ? this.folded() : this.choices()}`
  }

  /** Units, language and light: of whoever reads, kept on the tablet. */
  private choices() {
    return html`
      <button class="chip" aria-label=${fill(words.units, { unit: this.unit })} @click=${() => tell(this, 'next-unit')}>${sentence(this.unit)}</button>
      <button class="chip" aria-label=${words.language} @click=${() => tell(this, 'next-language')}>${words.languageSign}</button>
      <button class="chip" aria-label=${fill(words.light, { light: words.lights[this.light] })} @click=${() => tell(this, 'next-light')}>
        <svg width="22" height="22" aria-hidden="true">${lightSigns[this.light]}</svg>
      </button>`
  }

  /** On a phone they open from one button. */
  private folded() {
    return html`<button class="place" popovertarget="choices" aria-label=${words.moreChoices}><svg width="22" height="22" aria-hidden="true" fill="currentColor"><circle cx="11" cy="4" r="2.2" /><circle cx="11" cy="11" r="2.2" /><circle cx="11" cy="18" r="2.2" /></svg></button>
      <div id="choices" popover>${this.choices()}</div>`
  }

  private neighbour(other: Neighbour | undefined, says: string, d: string) {
    const sign = html`<svg width="22" height="22" aria-hidden="true"><path d=${d} fill="none" stroke="currentColor" stroke-width="2.4" /></svg>`
    return other
      ? html`<a class="on" href=${other.address} aria-label=${fill(says, { window: other.name })}>${sign}</a>`
      : html`<span class="on" aria-hidden="true">${sign}</span>`
  }

  private back() {
    return html`<button class="place" aria-label=${words.back} @click=${() => tell(this, 'go-back')}>
      <svg width="22" height="22" aria-hidden="true"><path d="M14 3L6 11l8 8" fill="none" stroke="currentColor" stroke-width="2.4" /></svg>
    </button>`
  }

  private toHouse() {
    return this.house === undefined
      ? html`<span class="place emblem" aria-hidden="true">${emblem}</span>`
      : html`<a class="place emblem" href=${this.house} aria-label=${this.leads ?? words.house}>${house}</a>`
  }
}

/** A window that is the next one to walk to, and its sheet's address. */
export interface Neighbour {
  readonly name: string
  readonly address: string
}

// A pair on its rod, the hem even: it keeps the place where the way back appears, so that the title never moves.
const emblem = html`<svg width="30" height="30" viewBox="0 0 30 30" fill="none" stroke="currentColor" stroke-width="1.8" aria-hidden="true">
  <path d="M2 5h26" stroke-width="2.6" /><path d="M6 5v20h4.5C9 18 11.500 12 11.500 5M24 5v20h-4.500C21 18 18.500 12 18.500 5" stroke-linejoin="round" /><path d="M2 28.200h26" stroke-width="1.200" /></svg>`
// Four walls of a house, as its page shows them.
const house = html`<svg width="28" height="28" viewBox="0 0 28 28" fill="none" stroke="currentColor" stroke-width="1.8" aria-hidden="true"><path d="M3 4h9v9H3zM16 4h9v9h-9zM3 17h9v7H3zM16 17h9v7h-9z" /></svg>`
