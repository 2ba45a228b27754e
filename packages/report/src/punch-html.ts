import { framed, type ReportPage } from './html.ts'
import { html, type Markup } from './markup.ts'
import type { PrintedOwner, PunchOutline } from './punch-list.ts'
import { punchPoint } from './punch-point-html.ts'
import { heading } from './sentence.ts'

const ofOwner = ({ title, lead, points }: PrintedOwner): Markup =>
  html`<article class="window">${heading(2, title, 'title')}
<p class="lead">${lead}</p>
${points.map(punchPoint)}</article>
`

const style = `
article.window:first-of-type{margin-top:0;border:0}
@media print{article.window:first-of-type{break-before:auto}}`

/** Writes a punch list as one page in the report's look. */
export function punchHtml(outline: PunchOutline): ReportPage {
  const { title, instead, owners } = outline
  const content = html`${heading(1, title, 'title')}
${instead ? html`<p class="lead">${instead}</p>` : undefined}${owners.map(ofOwner)}`
  return framed(outline, content, style)
}
