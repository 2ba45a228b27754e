import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { words } from '../words.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** A sheet of this window. With `href` it is a page of its own. */
export interface Leaf {
  readonly id: string
  readonly name: string
  readonly state: string
  readonly href?: string
}

/** The title block of a drawing sheet is the way around: each leaf with its state in words. */
@customElement('title-block')
export class TitleBlock extends SpokenElement {
  @property({ attribute: false }) leaves: readonly Leaf[] = []
  @property() now = ''

  static override readonly styles = [
    base,
    css`
      :host { container-type: inline-size }
      nav { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; height: 100%; border-top: 2px solid var(--ink); background: var(--sheet) }
      nav > * { display: flex; flex-direction: column; align-items: flex-start; min-height: 48px; border-left: 1px solid var(--faint); padding: 11px 8px 8px 14px; font-size: 17px; line-height: 1.2; font-weight: 500; position: relative; color: inherit; text-decoration: none }
      nav > :first-child { border-left: 0 }
      nav > :focus-visible { outline-offset: -4px }
      small { display: block; margin-top: 3px; font-size: 13.5px; font-weight: 400; color: var(--ink2) }
      [aria-current] { background: var(--panel) }
      [aria-current]::before { content: ''; position: absolute; inset: -2px 0 auto; height: 6px; background: var(--act) }
      @media (min-width: 1000px) {
        @container (max-width: 430px) {
          nav { grid-auto-flow: row; grid-template-columns: 1fr 1fr; grid-auto-rows: 1fr }
          nav > * { padding: 8px 8px 7px 14px; border-top: 1px solid var(--faint) }
          nav > :nth-child(odd) { border-left: 0 }
          nav > :nth-child(-n+2) { border-top: 0 }
          [aria-current]:nth-child(n+3)::before { inset: -1px 0 auto }
        }
      }
      @media (max-width: 599px) {
        nav > * { padding: 14px 2px 6px; text-align: center; align-items: center; font-size: 14.5px; min-width: 0 }
        small { max-width: 100%; overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
        /* So many that each is as wide as its name wants. */
        nav.many { grid-auto-columns: minmax(42px, auto) }
        nav.many > * { font-size: 13.5px; padding-inline: 1px }
        nav.many small { width: 0; min-width: 100%; font-size: 13.5px }
      }
    `,
  ]

  override render() {
    return html`<nav class=${this.leaves.length > 7 ? 'many' : nothing} aria-label=${words.sheets}>${this.leaves.map((leaf) => this.leaf(leaf))}${Array.from({ length: Math.max(0, 3 - this.leaves.length) }, () => html`<span></span>`)}</nav>`
  }

  private leaf({ id, name, state, href }: Leaf) {
    const inside = html`${name}<small>${state}</small>`
    if (href) return html`<a href=${href} target="_blank" rel="noopener">${inside}<span class="unseen">${words.newTab}</span></a>`
    return html`<button aria-current=${id === this.now ? 'page' : nothing} @click=${() => tell(this, 'go-to', id)}>${inside}</button>`
  }
}
