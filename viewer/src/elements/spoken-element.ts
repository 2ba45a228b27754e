import { LitElement } from 'lit'
import { languageChange } from '../words.ts'

/** An element that is drawn again when the reader changes the language. */
export class SpokenElement extends LitElement {
  private readonly speakAnew = () => this.requestUpdate()

  override connectedCallback(): void {
    super.connectedCallback()
    languageChange.addEventListener('change', this.speakAnew)
  }

  override disconnectedCallback(): void {
    languageChange.removeEventListener('change', this.speakAnew)
    super.disconnectedCallback()
  }
}
