import { toSvg } from '@evenhem/drawing'
import type { Closing, FabricCare } from './closing.ts'
import { links } from './house-html.ts'
import type { LoadsShown } from './loads.ts'
import { html, type Markup, raw } from './markup.ts'
import type { Line, Section } from './outline.ts'
import { punchPoint } from './punch-point-html.ts'
import { fact, heading, line, said } from './sentence.ts'
import type { Note } from './shown.ts'
import { signedHtml } from './signed-html.ts'
import type { Technical, TechnicalWindow } from './technical.ts'
import type { WallMarks } from './wall-marks.ts'

const dl = (all: readonly Line[], name: string): Markup => html`<dl class="${name}">${all.map(line)}</dl>`
const begin = ({ id, title }: { readonly id: string; readonly title: string }, name: string, content: Markup): Markup =>
  html`<section id="${id}" class="${name}">${heading(2, title, 'title')}
${content}</section>
`

const care = ({ name, facts, windows, notes, notGiven }: FabricCare): Markup => html`<section class="fabric">${heading(3, name)}
<dl>${facts.map(line)}<div><dt>${windows.title}</dt><dd>${windows.instead ?? links(windows.of)}</dd></div></dl>
<div>${notes.map((each) => html`<p>${said(each)}</p>`)}${notGiven ? html`<p>${notGiven}</p><div class="to-write"></div>` : undefined}</div></section>
`
const note = ({ says, where, windows }: Note): Markup =>
  html`<li>${said(says)}${where ? html` <span class="quiet">${where} ${links(windows)}</span>` : undefined}</li>`
const notes = ({ of, instead }: Section<Note> & { readonly instead?: string }): Markup =>
  instead ? html`<p>${instead}</p>` : html`<ul>${of.map(note)}</ul>`

const open = ({ open: left }: Closing): Markup =>
  begin(
    left,
    'left-open',
    html`<p class="lead">${left.lead}</p>
${left.of.map(punchPoint)}`,
  )

const column = ({ title, of }: Section<Line>): Markup | undefined =>
  of.length > 0
    ? html`<section>${heading(4, title)}
<dl>${of.map(({ name = [], says }) => html`<div><dt>${fact(name)}</dt>${says.map((each) => html`<dd>${fact(each)}</dd>`)}</div>`)}</dl></section>
`
    : undefined
const marks = ({ title, of, instead }: WallMarks): Markup | undefined =>
  instead ? html`<section>${heading(4, title)}<p>${instead}</p></section>` : column({ title, of })

/** What brackets carry: the drawing, bracket by bracket, what was taken for granted, and that it is an estimate. */
const loads = ({ brackets, granted, estimate, drawing, small, alternative }: LoadsShown): Markup => {
  const [wide, narrow] = [drawing, small].map((scene) => raw(toSvg(scene, { title: alternative, desc: '' })))
  return html`<section class="loads">${heading(4, brackets.title)}
<figure><div class="wide">${wide}</div><div class="narrow">${narrow}</div></figure>
<dl>${brackets.of.map(line)}</dl><h4>${granted.title}</h4>
<p>${granted.says}</p><p><b>${estimate}</b></p></section>
`
}

const technicalWindow = ({
  window,
  marks: all,
  hooks,
  pins,
  loads: carried,
}: TechnicalWindow): Markup => html`<section class="for-next">${heading(3, window.text)}
<div>${all.map(marks)}${column(hooks)}${column(pins)}</div>${carried ? loads(carried) : undefined}</section>
`
const technical = (all: Technical & { readonly id: string }): Markup =>
  begin(
    all,
    'technical',
    html`<p class="lead">${all.lead}</p>
${all.of.map(technicalWindow)}`,
  )

/** Who signed; a draft that nobody has signed has no place for it. */
const signatures = (signed: Closing['signed']): Markup | undefined =>
  signed.of.length > 0 ? begin(signed, 'signed', signedHtml(signed)) : undefined

/** What stays with the customer. */
const stays = ({ care: fabrics, safety, contacts }: Closing): Markup =>
  html`${begin(fabrics, 'cares', html`${fabrics.of.map(care)}`)}${begin(
    safety,
    'safety',
    html`${notes(safety)}
<p>${safety.rules}</p>`,
  )}${begin(contacts, 'contacts', contacts.instead ? html`<p>${contacts.instead}</p>` : dl(contacts.of, 'about'))}`

const page = (content: Markup): Markup => html`<div class="closing">
${content}</div>
`

/** What closes a report: what is open, was shown and is signed, what stays with the customer, and the next installer's page. Where nothing is open, shown or signed that takes no page of its own. */
export function closingHtml(closing: Closing): Markup {
  const { open: left, shown, signed } = closing
  const first = html`${open(closing)}${begin(shown, 'shown', notes(shown))}${signatures(signed)}`
  const isShort = left.of.length + shown.of.length + signed.of.length === 0
  const pages = isShort ? [html`${first}${stays(closing)}`] : [first, stays(closing)]
  return html`${pages.map(page)}${page(technical(closing.technical))}`
}
