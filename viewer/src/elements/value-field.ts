import { css, html } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Form } from '../data/form.ts'
import { momentHere } from '../data/moment.ts'
import { choiceName } from '../words/choices.ts'
import { capital, words } from '../words.ts'
import { base, buttons, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** Enters what is no number: a tick, one of several, a day or words. Tells of `value`. */
@customElement('value-field')
export class ValueField extends SpokenElement {
  @property({ attribute: false }) form?: Form
  @property() name = ''
  /** What stands there now. */
  @property({ attribute: false }) value: unknown
  @state() private written?: string

  static override readonly styles = [
    base,
    buttons,
    css`
      :host { display: grid; gap: 10px; padding: 16px 24px }
      .button { width: 100%; min-height: 72px }
      .choice { justify-content: flex-start; text-align: left }
      [aria-pressed='true'] { background: var(--markbg) }
      textarea, input { font: inherit; font-size: 20px; color: inherit; background: var(--sheet); border: 2px solid var(--line); border-radius: 6px; padding: 10px 12px; width: 100% }
      textarea { min-height: 120px }
    `,
  ]

  override render() {
    const { form } = this
    if (form?.is === 'tick') return [true, false].map((value) => this.choice(value, value ? words.yes : words.no))
    if (form?.is === 'choice') return form.choices.map((choice) => this.choice(choice, choiceName(choice)))
    const field =
      form?.is === 'date'
        ? html`<input type="date" .value=${this.text} aria-label=${this.name} @input=${this.onInput} />`
        : html`<textarea .value=${this.text} aria-label=${this.name} @input=${this.onInput}></textarea>`
    return html`${field}<button class="button go" aria-disabled=${this.text.trim() === ''} @click=${this.save}>${words.save}</button>`
  }

  private choice(value: unknown, name: string) {
    return html`<button class="button choice" aria-pressed=${this.value === value} @click=${() => tell(this, 'value', value)}>${capital(name)}</button>`
  }

  /** What is written, what stands there, or the day that it is. */
  private get text(): string {
    if (this.written !== undefined) return this.written
    if (typeof this.value === 'string') return this.value
    return this.form?.is === 'date' ? momentHere(new Date()).slice(0, 10) : ''
  }
  private onInput(event: Event): void {
    this.written = (event.target as HTMLInputElement).value
  }
  private save(): void {
    const value = this.text.trim()
    if (value !== '') tell(this, 'value', value)
  }
}
