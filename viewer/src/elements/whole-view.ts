import { css, html } from 'lit'
import { words } from '../words.ts'
import { base, buttons, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** A view that takes the whole page: its title has the focus when it opens, Escape and its arrow leave it. Tells of `go-back`. */
export class WholeView extends SpokenElement {
  static readonly look = [
    base,
    buttons,
    css`
      :host { position: fixed; inset: 0; z-index: 2; background: var(--sheet) }
      header { display: flex; align-items: center; gap: 6px; height: 68px; padding: 0 16px 0 8px; border-bottom: 1px solid var(--faint); background: var(--sheet) }
      .back { width: 48px; height: 48px; display: grid; place-items: center; border-radius: 6px; flex: none }
      header div { min-width: 0 }
      h1 { font-size: 23px; line-height: 1.15; font-weight: 600; overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
      small { display: block; font-size: 14.5px; color: var(--ink2) }
      fieldset { border: 0; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 8px; align-items: center }
      legend { padding: 0; font-size: 16px; color: var(--ink2) }
      .chip[aria-pressed='true'] { background: var(--ink); color: var(--sheet); border-color: var(--ink) }
      input { min-width: 0; min-height: 52px; font-size: 18px; color: inherit; background: var(--sheet); border: 2px solid var(--line); border-radius: 6px; padding: 6px 12px }
      form .button { min-height: 52px; font-size: 17px }
    `,
  ]

  override connectedCallback(): void {
    super.connectedCallback()
    addEventListener('keydown', this.onKey)
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('h1')?.focus())
  }
  override disconnectedCallback(): void {
    removeEventListener('keydown', this.onKey)
    super.disconnectedCallback()
  }

  protected head(over: string, title: string) {
    return html`<header><button class="back" aria-label=${words.back} @click=${this.leave}><svg width="22" height="22" aria-hidden="true"><path d="M14 3L6 11l8 8" fill="none" stroke="currentColor" stroke-width="2.4" /></svg></button>
      <div><small>${over}</small><h1 tabindex="-1">${title}</h1></div></header>`
  }
  protected readonly leave = (): void => {
    tell(this, 'go-back')
  }
  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return
    event.preventDefault()
    this.leave()
  }
}
