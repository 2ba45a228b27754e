import { css } from 'lit'

/** A page of words and buttons, without a drawing. */
export const plainPage = css`
  :host { min-height: 100dvh; background: var(--sheet) }
  main { max-width: 720px; margin: 0 auto; padding: 36px 20px 60px }
  h1 { font-size: 29px; line-height: 1.12; margin-bottom: 14px }
  h2 { font-size: 20px; line-height: 1.2; margin: 30px 0 8px }
  p { font-size: 18px; line-height: 1.36; overflow-wrap: anywhere }
  p + p { margin-top: 10px }
  .given { margin-top: 24px }
  .address { word-break: break-all; padding: 12px 14px; border: 1px solid var(--line); border-radius: 6px; user-select: all }
  .quiet { color: var(--ink2) }
  .fail { color: var(--fail) }
  label { display: block; margin-top: 20px; font-size: 17px; font-weight: 600 }
  input { display: block; width: 100%; min-height: 64px; margin-top: 6px; padding: 8px 14px; font-size: 26px; color: inherit; background: var(--sheet); border: 2px solid var(--line); border-radius: 6px }
  .button { margin-top: 22px; width: 100% }
  li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 6px 16px; align-items: center; padding: 12px 0; border-top: 1px solid var(--faint); font-size: 18px; line-height: 1.3 }
  small { display: block; font-size: 15.5px; color: var(--ink2) }
  .squares { display: block; width: min(100%, 300px); height: auto; margin: 18px 0; background: #fff }
  .job { color: var(--act); font-weight: 600; display: inline-flex; min-height: 48px; align-items: center }
  .back { display: inline-flex; align-items: center; min-width: 48px; min-height: 48px; margin: -12px 0 8px; color: var(--act); font-size: 17px; font-weight: 600 }
`
