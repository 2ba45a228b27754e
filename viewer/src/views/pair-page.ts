import { html, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { ask, post } from '../data/served.ts'
import { plainPage } from '../elements/plain-page.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { deskWords } from '../words/desk.ts'
import { words } from '../words.ts'

/** This tablet joins: with the code that the desk shows, and a name by which others know it. Tells of `paired`. */
@customElement('pair-page')
export class PairPage extends SpokenElement {
  /** The code that a picture of squares led to. */
  @property() code = ''
  @state() private wrong?: string
  @state() private isAsking = false

  static override readonly styles = [base, buttons, plainPage]

  override render() {
    return html`<main><h1>${deskWords().pairTitle}</h1><p>${deskWords().pairHelp}</p>
      <form @submit=${this.join}>
        <label>${deskWords().pairCode}<input name="code" .value=${this.code} autocomplete="off" autocapitalize="none" spellcheck="false" required maxlength="12" /></label>
        <label>${deskWords().pairName}<input name="name" autocomplete="off" required maxlength="40" /></label>
        ${this.wrong === undefined ? nothing : html`<p class="fail" role="alert">${this.wrong}</p>`}
        <button class="button go" aria-disabled=${this.isAsking}>${deskWords().pairGo}</button>
      </form></main>`
  }

  private async join(event: SubmitEvent): Promise<void> {
    event.preventDefault()
    if (this.isAsking) return
    const filled = new FormData(event.target as HTMLFormElement)
    this.isAsking = true
    try {
      const { ok, body } = await ask('/pair', post({ code: filled.get('code'), name: filled.get('name') }))
      this.wrong = ok ? undefined : (body.message ?? '')
      if (ok) tell(this, 'paired')
    } catch {
      this.wrong = words.couldNotReachHelp
    } finally {
      this.isAsking = false
    }
  }
}
