import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Diagnostic, Served } from '../data/served.ts'
import { brokenWall, brokenWallStyle } from '../elements/broken-wall.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { verdictSign, verdictStyle } from '../elements/verdict.ts'
import { fill, language, words } from '../words.ts'

/** What is shown while there is no sheet: the wall before its numbers, or why there are none. */
@customElement('state-page')
export class StatePage extends SpokenElement {
  @property({ attribute: false }) served?: Served
  @property() trouble?: string
  /** The job was read, but has no window. */
  @property({ type: Boolean }) empty = false

  static override readonly styles = [
    base,
    sentenceStyle,
    buttons,
    verdictStyle,
    brokenWallStyle,
    css`
      main { max-width: 720px; margin: 0 auto; padding: 40px 20px 60px }
      h1 { font-size: 29px; line-height: 1.12; margin-bottom: 14px }
      p { font-size: 18px; line-height: 1.36 }
      li { display: grid; grid-template-columns: 26px 1fr; gap: 14px; padding: 14px 0; border-top: 1px solid var(--faint); font-size: 18px; line-height: 1.36 }
      small { display: block; margin-top: 3px; font-size: 15px; color: var(--ink2); overflow-wrap: anywhere }
      .button { margin-top: 22px; width: 100% }
    `,
  ]

  override render() {
    const { served, trouble } = this
    if (trouble !== undefined)
      return this.page(words.couldNotReach, html`<p>${words.couldNotReachHelp}</p><small>${trouble}</small>${this.again()}`)
    if (served && !served.ordered)
      return this.page(words.couldNotRead, html`<ul>${served.diagnostics[language].map(diagnostic)}</ul>${this.again()}`)
    if (this.empty) return this.page(words.noWindow, brokenWall)
    return html`<main aria-busy="true" aria-label=${words.drawingItself}>${brokenWall}</main>`
  }

  private page(title: string, inside: unknown) {
    return html`<main><h1>${title}</h1>${inside}</main>`
  }

  private again() {
    return html`<button class="button go" @click=${() => tell(this, 'try-again')}>${words.tryAgain}</button>`
  }
}

const signOf = { error: 'fail', warning: 'warn', info: 'unknown' } as const

const diagnostic = ({ severity, code, says, help, line, column }: Diagnostic) => html`<li>${verdictSign(signOf[severity])}
  <div>${sentence(says ?? code)}${help ? html`<small>${sentence(help)}</small>` : nothing}
    ${line ? html`<small>${fill(words.line, { n: line, m: column ?? 1 })}</small>` : nothing}</div></li>`
