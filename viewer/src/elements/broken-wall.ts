import { css, html } from 'lit'

/** Floor and a wall that is not there yet: what is drawn before anything is known. */
export const brokenWall = html`<svg class="broken-wall" viewBox="0 0 420 330" aria-hidden="true"><path class="wall" d="M60 316V20H360V316" /><path class="floor" d="M4 316H416" /></svg>`
export const brokenWallStyle = css`
  .broken-wall { display: block; width: min(380px, 70%); height: auto; margin: 4vh auto 28px; fill: none }
  .broken-wall .wall { stroke: var(--line); stroke-width: 1.1; stroke-dasharray: 5 4 }
  .broken-wall .floor { stroke: var(--ink); stroke-width: calc(2.6px * var(--k)) }
`
