import { html, type Markup } from './markup.ts'
import { photosHtml } from './photo-html.ts'
import type { PrintedPoint } from './punch-list.ts'
import { heading, line, sign } from './sentence.ts'

/** A point with what is known of it. */
export const punchPoint = ({ title, unsafe, what, facts, photos }: PrintedPoint): Markup =>
  html`<section class="punch">${heading(3, title)}
${
  unsafe
    ? html`<div class="stands fail">${sign('fail')}<p>${unsafe}</p></div>
`
    : undefined
}<p class="what">${what}</p>
<dl>${facts.map(line)}</dl>
${photos.length > 0 ? photosHtml(photos) : undefined}</section>
`

/** How points look, in every paper. */
export const punchStyle = `.punch{margin-top:6mm;border-top:.25mm solid var(--ink);padding-top:1.6mm}
.punch .what{font-size:13pt;line-height:1.35;margin:1.4mm 0;white-space:pre-line}
.punch dl div{display:grid;grid-template-columns:34mm 1fr;column-gap:1.4mm;border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.punch dt{color:var(--ink2)}.punch dd{white-space:pre-line;overflow-wrap:anywhere}
.punch .stands{margin:1.4mm 0}
@media print{.punch{break-inside:avoid}}`
