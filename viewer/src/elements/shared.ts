import { css, html } from 'lit'
import { words } from '../words.ts'

/** An event that crosses shadow roots, with what it is about. */
export const tell = (from: EventTarget, name: string, detail?: unknown): boolean =>
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }))

/** What every element of ours begins with. */
export const base = css`
  *, *::before, *::after { box-sizing: border-box }
  :host { display: block; color: var(--ink) }
  :host([hidden]) { display: none }
  h1, h2, h3, p, ul, ol, dl, dd { margin: 0; padding: 0 }
  ul, ol { list-style: none }
  input, textarea, ::file-selector-button { font: inherit }
  button { font: inherit; color: inherit; background: none; border: 0; padding: 0; margin: 0; cursor: pointer; text-align: inherit; touch-action: manipulation; -webkit-tap-highlight-color: transparent }
  :focus { outline: none }
  :focus-visible { outline: 3px solid var(--act); outline-offset: 2px }
  .eyebrow { font-size: 15px; line-height: 1.25; color: var(--ink2); font-weight: 500 }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap }
`

/** Buttons with words. `go` is the one that says what will be true. */
export const buttons = css`
  .button { display: flex; align-items: center; justify-content: center; min-height: 60px; padding: 6px 18px; border: 2px solid var(--act); border-radius: 6px; background: var(--sheet); color: var(--act); font-size: 20px; line-height: 1.15; font-weight: 600; text-align: center; transition: background-color 120ms }
  .button.go { background: var(--act); color: var(--onact) }
  .button:active { background: var(--markbg); color: var(--ink) }
  .button[aria-disabled='true'] { border-color: var(--line); color: var(--ink2); background: var(--sheet); cursor: default }
  .chip { min-height: 48px; min-width: 48px; padding: 0 12px; display: inline-flex; align-items: center; justify-content: center; gap: 8px; border: 1px solid var(--line); border-radius: 6px; font-size: 16px; font-weight: 500; white-space: nowrap }
  @media (prefers-reduced-motion: reduce) { .button { transition: none } }
`

/** What opens below the bar at a touch. */
export const popover = css`
  [popover] { position: fixed; inset: 66px 8px auto auto; margin: 0; border: 1px solid var(--line); border-radius: 6px; background: var(--sheet); color: var(--ink); padding: 10px }
`

/** Closes what lies over the sheet. */
export const closeButton = (
  host: EventTarget,
) => html`<button class="close" aria-label=${words.close} @click=${() => tell(host, 'close-working')}>
  <svg width="20" height="20" aria-hidden="true"><path d="M4 4l12 12M16 4L4 16" stroke="currentColor" stroke-width="2.4" fill="none" /></svg></button>`
export const closing = css`
  .close { width: 48px; height: 48px; margin: -8px -12px 0 0; display: grid; place-items: center; border-radius: 6px; flex: none }
  h2[tabindex='-1']:focus-visible { outline: none }
`
