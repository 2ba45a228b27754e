import { css, html } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { deskWords } from '../words/desk.ts'
import { base, closeButton, closing, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** Something to be said beside the sheet: which sentence, and what the machine says of it. */
export interface Notice {
  readonly is: 'otherTab' | 'newOrder' | 'needsServer' | 'notKept'
  readonly why?: string
}

/** One sentence beside whatever is shown, read aloud, until it is closed. */
@customElement('notice-strip')
export class NoticeStrip extends SpokenElement {
  @property({ attribute: false }) notice!: Notice

  static override readonly styles = [
    base,
    closing,
    css`
      :host { position: fixed; inset: auto 12px 12px; z-index: 3; max-width: 640px; margin: 0 auto; background: var(--sheet); border: 2px solid var(--ink); border-radius: 6px; padding: 12px 16px }
      div { display: grid; grid-template-columns: 1fr auto; gap: 12px; align-items: start; font-size: 17px; line-height: 1.36 }
      @media print { :host { display: none } }
    `,
  ]

  override render() {
    return html`<div role="status" @close-working=${this.read}><p>${this.says()}</p>${closeButton(this)}</div>`
  }
  private says(): string {
    const { is, why } = this.notice
    return [deskWords()[is], ...(why === undefined ? [] : [why])].join(' ')
  }
  private read(event: Event): void {
    event.stopPropagation()
    tell(this, 'notice-read')
  }
}
