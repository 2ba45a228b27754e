import { css, html } from 'lit'

/** A sentence with its fractions set as fractions, never parted from their whole number. */
export const sentence = (said: string) =>
  said
    .split(/((?:\d+ )?\d+\/\d+)/)
    .map((part, n) =>
      n % 2
        ? html`<span class="together">${part.split(/(\d+\/\d+)/).map((piece, m) => (m % 2 ? html`<span class="frac">${piece}</span>` : piece))}</span>`
        : part,
    )

export const sentenceStyle = css`
  .frac { font-feature-settings: 'frac' }
  .together { white-space: nowrap }
`
