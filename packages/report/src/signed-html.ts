import { html, type Markup } from './markup.ts'
import { field, type ShownSignature, type Signed } from './signatures.ts'

/** A signature as it was drawn; a name that was typed is set as large. */
const drawn = ({ path, alternative, name }: ShownSignature): Markup =>
  path === ''
    ? html`<p class="typed">${name}</p>`
    : html`<svg role="img" aria-label="${alternative}" viewBox="0 0 ${field.width} ${field.height}"><path d="${path}"/></svg>`

const signature = (one: ShownSignature): Markup => html`<section>${drawn(one)}
<p class="name">${one.name}</p>
<p class="quiet">${one.as}</p>
${one.says.map((text) => html`<p class="quiet">${text}</p>`)}
<p class="words">${one.fingerprint.words.join(' ')}</p>
<p class="hash">${one.fingerprint.hash}</p></section>
`

/** Who signed, how, and the fingerprint of what was signed. */
export const signedHtml = ({
  of,
  instead,
  about,
}: Signed): Markup => html`${instead ? html`<p class="lead">${instead}</p>` : undefined}
${of.length > 0 ? html`<div class="signatures">${of.map(signature)}</div><p class="quiet">${about}</p>` : undefined}`

export const signedStyle = `.signatures{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(78mm,100%),1fr));gap:8mm 9mm;margin:5mm 0 4mm}
.signatures section{break-inside:avoid;max-width:84mm;min-width:0}
.signatures svg{display:block;width:100%;aspect-ratio:${field.width}/${field.height};border-bottom:.25mm solid var(--ink);overflow:visible}
.signatures svg path{fill:none;stroke:var(--ink);stroke-width:.55mm;vector-effect:non-scaling-stroke;stroke-linecap:round;stroke-linejoin:round}
.signatures .typed{font-family:"Source Serif 4 Variable",Georgia,serif;font-size:20pt;line-height:1.2;padding-top:12mm;border-bottom:.25mm solid var(--ink);overflow-wrap:anywhere}
.signatures .name{margin-top:1.6mm;font-weight:600;overflow-wrap:anywhere}
.signatures .words{margin-top:3mm;font-family:"Source Serif 4 Variable",Georgia,serif;font-size:13pt;line-height:1.35;word-spacing:.3em}
.signatures .hash{font-size:9pt;line-height:1.3;color:var(--ink2);overflow-wrap:anywhere}`
