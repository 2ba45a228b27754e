import { framed, type ReportPage } from './html.ts'
import { html, type Markup } from './markup.ts'
import type { PrintedOwner, PrintedPhoto, PrintedPoint, PunchOutline } from './punch-list.ts'
import { heading, line, sign } from './sentence.ts'

/** A ring around the point. Its place is a share of the picture's box, its size is not, so that it is round on every picture. */
const ring = ({ x, y }: NonNullable<PrintedPhoto['spot']>): Markup => {
  const [across, down] = [x, y].map((share) => `${Math.round(share * 1000) / 10}%`)
  const circle = (name: string) => html`<circle class="${name}" cx="${across}" cy="${down}" r="16"/>`
  return html`<svg aria-hidden="true">${circle('around')}${circle('spot')}</svg>`
}
const picture = ({ says, src, notHere, spot }: PrintedPhoto): Markup =>
  html`<figure>${src ? html`<div><img src="${src}" alt="${says}">${spot ? ring(spot) : undefined}</div>` : html`<p class="missing">${notHere}</p>`}<figcaption>${says}</figcaption></figure>
`

const printed = ({ title, unsafe, what, facts, photos }: PrintedPoint): Markup =>
  html`<section class="punch">${heading(3, title)}
${
  unsafe
    ? html`<div class="stands fail">${sign('fail')}<p>${unsafe}</p></div>
`
    : undefined
}<p class="what">${what}</p>
<dl>${facts.map(line)}</dl>
${photos.length > 0 ? html`<div class="photos">${photos.map(picture)}</div>` : undefined}</section>
`

const ofOwner = ({ title, lead, points }: PrintedOwner): Markup =>
  html`<article class="window">${heading(2, title, 'title')}
<p class="lead">${lead}</p>
${points.map(printed)}</article>
`

const style = `
.punch{margin-top:6mm;border-top:.25mm solid var(--ink);padding-top:1.6mm}
.punch .what{font-size:13pt;line-height:1.35;margin:1.4mm 0;white-space:pre-line}
.punch dl div{display:grid;grid-template-columns:34mm 1fr;column-gap:1.4mm;border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.punch dt{color:var(--ink2)}.punch dd{white-space:pre-line;overflow-wrap:anywhere}
.punch .stands{margin:1.4mm 0}
.photos{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(82mm,100%),1fr));gap:3mm 6mm;margin-top:2.4mm}
.photos figure{display:block}.photos figure div{position:relative}
.photos img{display:block;width:100%;height:auto}
.photos svg{position:absolute;inset:0;width:100%;height:100%;overflow:visible}
.photos circle{fill:none}.photos .around{stroke:var(--sheet);stroke-width:7px}.photos .spot{stroke:var(--fail);stroke-width:3px}
.photos .missing{border:.35mm dashed var(--ink);padding:4mm}
.photos figcaption{margin-top:1mm}
article.window:first-of-type{margin-top:0;border:0}
@media print{article.window:first-of-type{break-before:auto}.punch{break-inside:avoid}.photos figure{break-inside:avoid}}`

/** Writes a punch list as one page in the report's look. */
export function punchHtml(outline: PunchOutline): ReportPage {
  const { title, instead, owners } = outline
  const content = html`${heading(1, title, 'title')}
${instead ? html`<p class="lead">${instead}</p>` : undefined}${owners.map(ofOwner)}`
  return framed(outline, content, style)
}
