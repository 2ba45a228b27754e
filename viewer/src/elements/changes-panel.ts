import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { words } from '../words.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, buttons, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** After a value was put: what it was, and what that changed. Stands where the step stands until somebody read it. */
@customElement('changes-panel')
export class ChangesPanel extends SpokenElement {
  /** What was put, in words. */
  @property({ attribute: false }) put: readonly string[] = []
  @property({ attribute: false }) lines: readonly string[] = []
  @property({ type: Boolean }) canUndo = false

  static override readonly styles = [
    base,
    buttons,
    sentenceStyle,
    css`
      :host { background: var(--panel); container-type: inline-size }
      section { display: grid; grid-template-columns: 1fr 236px; gap: 20px; padding: 13px 16px 12px 20px; height: 100%; max-height: 340px }
      h2 { font-size: 23px; line-height: 1.15; font-weight: 700; margin: 1px 0 6px }
      .told { overflow: auto; min-height: 0 }
      li { font-size: 17px; line-height: 1.3; padding: 4px 0; border-top: 1px solid var(--faint) }
      li:first-child { border-top: 0 }
      .go { width: 100%; min-height: 108px; font-size: 24px }
      .undo { width: 100%; margin-top: 10px; min-height: 56px; font-size: 18px }
      @container (max-width: 599px) {
        section { grid-template-columns: 1fr; gap: 8px; padding: 12px 16px }
        .doing { display: grid; grid-template-columns: auto 1fr; gap: 8px } .go { order: 1; min-height: 64px; font-size: 20px } .undo { margin: 0; min-height: 64px }
      }
    `,
  ]

  override render() {
    const { put, lines } = this
    return html`<section aria-label=${words.whatChanged} aria-live="polite"><div class="told">
        <div class="eyebrow">${put.join(' · ')}</div><h2>${lines.length === 0 ? words.changesNothing : words.whatChanged}</h2>
        <ul>${lines.map((line) => html`<li>${sentence(line)}</li>`)}</ul></div>
      <div class="doing"><button class="button go" @click=${() => tell(this, 'changes-read')}>${words.goOnNow}</button>
        ${this.canUndo ? html`<button class="button undo" @click=${() => tell(this, 'changes-undo')}>${words.undo}</button>` : nothing}</div></section>`
  }
}
